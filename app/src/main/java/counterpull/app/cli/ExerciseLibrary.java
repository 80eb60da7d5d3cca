package counterpull.app.cli;

import counterpull.scenario.tree.Source;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The exercises that come with the program: data files, found by their names. */
final class ExerciseLibrary {
    private static final String FOLDER = "/counterpull/exercises";
    private static final String END = ".yaml";
    private static final int MOST_BYTES = 1 << 20;

    private ExerciseLibrary() {}

    /** Names of all exercises, in alphabetical order. */
    static List<String> names() {
        URL folder = ExerciseLibrary.class.getResource(FOLDER);
        if (folder == null) {
            throw new IllegalStateException("the exercises are missing from the program");
        }
        try {
            return names(folder.toURI());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    private static List<String> names(URI folder) throws IOException {
        if (!folder.getScheme().equals("jar")) {
            return names(Path.of(folder));
        }
        try (FileSystem jar = FileSystems.newFileSystem(folder, Map.of())) {
            return names(jar.getPath(FOLDER));
        }
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(END))
                    .map(name -> name.substring(0, name.length() - END.length()))
                    .sorted()
                    .toList();
        }
    }

    /** The text of an exercise of the library. */
    static String text(String name) {
        return bytes(name)
                .map(bytes -> new String(bytes, StandardCharsets.UTF_8))
                .orElseThrow(() -> new BadInput(
                        List.of("there is no exercise \"" + name + "\"; \"counterpull exercises\" lists the names")));
    }

    private static Optional<byte[]> bytes(String name) {
        if (!name.matches("[a-z0-9-]+")) {
            return Optional.empty();
        }
        try (InputStream in = ExerciseLibrary.class.getResourceAsStream(FOLDER + "/" + name + END)) {
            return in == null ? Optional.empty() : Optional.of(in.readNBytes(MOST_BYTES));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** An exercise by its name in the library, else the file of that name. */
    static Source source(String nameOrFile) {
        Optional<byte[]> known = bytes(nameOrFile);
        if (known.isPresent()) {
            return Source.of(nameOrFile + END, known.get());
        }
        Path file = Path.of(nameOrFile);
        if (!Files.exists(file)) {
            throw new BadInput(List.of("--exercise: there is no exercise and no file \"" + nameOrFile
                    + "\"; \"counterpull exercises\" lists the names"));
        }
        return Source.of(file);
    }
}
