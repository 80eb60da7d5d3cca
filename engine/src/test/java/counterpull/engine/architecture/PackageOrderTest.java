package counterpull.engine.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Inside the engine a package is a noun of the trade, and each knows only those below it. */
class PackageOrderTest {
    private static final List<String> BOTTOM_UP = List.of(
            "",
            "planar",
            "body",
            "motion",
            "elastic",
            "load",
            "strength",
            "jointload",
            "profile",
            "uncertainty",
            "choice");

    private final JavaClasses engine = EngineClasses.all();

    @Test
    void eachPackageKnowsOnlyThoseBelowIt() {
        assertThat(EngineClasses.violations(engine, type -> upward(type, BOTTOM_UP)))
                .isEmpty();
    }

    @Test
    void everyPackageHasItsPlaceInTheOrder() {
        assertThat(engine.stream().map(PackageOrderTest::nounOf).distinct())
                .containsExactlyInAnyOrderElementsOf(BOTTOM_UP);
    }

    /** The control: with two packages exchanged, the classes that use one from the other are found. */
    @Test
    void aWrongOrderIsFound() {
        List<String> wrong = BOTTOM_UP.stream()
                .map(noun -> noun.equals("profile") ? "strength" : noun.equals("strength") ? "profile" : noun)
                .toList();
        assertThat(EngineClasses.violations(engine, type -> upward(type, wrong)))
                .anyMatch(line -> line.contains("profile.Limb ") && line.contains("strength.LimbStrength"));
    }

    private static Stream<String> upward(JavaClass type, List<String> order) {
        int place = order.indexOf(nounOf(type));
        return type.getDirectDependenciesFromSelf().stream()
                .map(dependency -> dependency.getTargetClass().getBaseComponentType())
                .filter(target -> target.getPackageName().startsWith(EngineClasses.ROOT))
                .filter(target -> order.indexOf(nounOf(target)) > place)
                .map(target -> type.getName() + " knows " + target.getName());
    }

    private static String nounOf(JavaClass type) {
        String rest = type.getPackageName().substring(EngineClasses.ROOT.length());
        return rest.isEmpty() ? "" : rest.substring(1);
    }
}
