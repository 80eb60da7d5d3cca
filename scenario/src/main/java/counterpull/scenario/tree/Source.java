package counterpull.scenario.tree;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Where a scenario's bytes come from. */
public sealed interface Source {

    /** The name by which problems speak of it, without a folder. */
    String name();

    /** How many bytes it has, as far as that is known before reading; 0 if not. */
    long size() throws IOException;

    /** Its bytes. */
    InputStream open() throws IOException;

    /** A file on disk. */
    static Source of(Path path) {
        return new OnDisk(path);
    }

    /** Text at hand: a form's answer, a test. */
    static Source of(String name, String text) {
        return new AtHand(name, text.getBytes(StandardCharsets.UTF_8));
    }

    /** Bytes at hand: standard input, an upload. */
    static Source of(String name, byte[] bytes) {
        return new AtHand(name, bytes.clone());
    }

    /** A file on disk. */
    record OnDisk(Path path) implements Source {
        @Override
        public String name() {
            Path last = path.getFileName();
            return last == null ? path.toString() : last.toString();
        }

        @Override
        public long size() throws IOException {
            return Files.size(path);
        }

        @Override
        public InputStream open() throws IOException {
            return Files.newInputStream(path);
        }
    }

    /** Bytes in memory; not to be changed by anyone. */
    record AtHand(String name, byte[] bytes) implements Source {
        @Override
        public long size() {
            return bytes.length;
        }

        @Override
        public InputStream open() {
            return new ByteArrayInputStream(bytes);
        }
    }
}
