package counterpull.scenario.read;

import counterpull.scenario.tree.Source;
import java.nio.file.*;
import java.util.List;
import org.junit.jupiter.api.Test;

class ExampleTest {
    @Test
    void go() throws Exception {
        var r = ScenarioReader.read(
                List.of(Source.of(Path.of("src/main/resources/counterpull/scenario/example.yaml"))));
        r.problems().lines().forEach(System.out::println);
        System.out.println(r.scenario());
        if (r.scenario().isPresent()) {
            var s = r.scenario().get();
            var p = counterpull.engine.profile.Profile.class;
            for (var m : p.getDeclaredMethods())
                if (java.lang.reflect.Modifier.isStatic(m.getModifiers())) System.out.println(m);
        }
    }
}
