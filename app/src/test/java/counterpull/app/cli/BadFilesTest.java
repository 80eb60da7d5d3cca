package counterpull.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Bad files through the whole program: exit code 2, words for a person, no trace of the inside. The three hundred ways a file
 * can be bad are tested where files are read; here one of each kind shows that none of them leaves the program otherwise.
 */
class BadFilesTest {
    private static final String GOOD = Ran.with("format").out();

    @TempDir
    Path folder;

    private void refused(String name, byte[] content) throws IOException {
        Path file = folder.resolve(name);
        Files.write(file, content);
        for (String command : new String[] {"read", "profile", "choose", "why"}) {
            Ran ran = Ran.with(command, file.toString());
            assertThat(ran.code()).as(name + ", " + command).isEqualTo(Exit.BAD_INPUT);
            assertThat(ran.err()).contains(name).doesNotContain("Exception").doesNotContain("\tat ");
            assertThat(ran.out()).isEmpty();
        }
    }

    private void refused(String name, String content) throws IOException {
        refused(name, content.getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void everyKindOfBadFileEndsWithWordsAndCodeTwo() throws IOException {
        byte[] noise = new byte[5000];
        new Random(1).nextBytes(noise);
        refused("noise.yaml", noise);
        refused("empty.yaml", "");
        refused("cut.yaml", GOOD.substring(0, 1500));
        refused("flood.yaml", "a: b\n".repeat(2_500_000));
        refused("deep.yaml", "[".repeat(20_000));
        refused("deep.json", "{\"a\":".repeat(20_000));
        refused("aliases.yaml", "format: counterpull/1\nperson: &a [x, x]\nmachine: [*a, *a]\n");
        refused("twice.yaml", GOOD.replace("mass: 68 kg", "mass: 68 kg\n  mass: 70 kg"));
        refused("nan.yaml", GOOD.replace("mass: 68 kg", "mass: .nan kg"));
        refused("negative.yaml", GOOD.replace("mass: 68 kg", "mass: -68 kg"));
        refused("unit.yaml", GOOD.replace("rail angle: 45 deg", "rail angle: 45 furlong"));
        refused("bare.yaml", GOOD.replace("rail angle: 45 deg", "rail angle: 45"));
    }

    @Test
    void theSameCheckLetsAGoodFileThrough() throws IOException {
        Path file = folder.resolve("good.yaml");
        Files.writeString(file, GOOD);
        assertThat(Ran.with("read", file.toString()).code()).isEqualTo(Exit.GOOD);
    }
}
