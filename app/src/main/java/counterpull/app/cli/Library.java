package counterpull.app.cli;

import counterpull.scenario.problem.Nearest;
import counterpull.scenario.problem.Shown;
import counterpull.scenario.tree.Source;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The exercises that travel with the program, by the names of their files without the ending. */
final class Library {
    private static final String FOLDER = "/counterpull/exercises";
    private static final String ENDING = ".yaml";
    private static final String NAME = "[a-z0-9-]{1,80}";

    private Library() {}

    /** The exercise with that name, if there is one. */
    static Optional<Source> named(String name) {
        if (!name.matches(NAME)) {
            return Optional.empty();
        }
        try (InputStream in = Library.class.getResourceAsStream(FOLDER + "/" + name + ENDING)) {
            return in == null ? Optional.empty() : Optional.of(Source.of(name + ENDING, in.readAllBytes()));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** The exercise with that name, else the file of that name. */
    static Source namedOrFile(String nameOrFile) {
        if (nameOrFile.equals("-")) {
            throw new BadInput(
                    List.of("--exercise: standard input is for the person's files; name an exercise or a file"));
        }
        Optional<Source> known = named(nameOrFile);
        Path file = Path.of(nameOrFile);
        if (known.isEmpty() && Files.isDirectory(file)) {
            throw new BadInput(List.of(Shown.shortened(nameOrFile) + " is a folder; name an exercise or a file"));
        }
        if (known.isEmpty() && !Files.exists(file)) {
            throw new BadInput(List.of(
                    "there is no exercise and no file \"" + Shown.shortened(nameOrFile) + "\"; " + near(nameOrFile)));
        }
        return known.orElseGet(() -> Source.of(file));
    }

    /** What a person who mistyped a name may have meant, and where the names stand. */
    private static String near(String name) {
        String last = name.substring(name.lastIndexOf('/') + 1).replaceFirst("\\.[A-Za-z]+$", "");
        return Nearest.to(last, names())
                        .map(nearest -> "did you mean \"" + nearest + "\"? ")
                        .orElse("")
                + "\"counterpull exercises\" lists the names";
    }

    /** The text of an exercise. */
    static String text(String name) {
        try (InputStream in = named(name)
                .orElseThrow(() ->
                        new BadInput(List.of("there is no exercise \"" + Shown.shortened(name) + "\"; " + near(name))))
                .open()) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** All names, by the alphabet. */
    static List<String> names() {
        try {
            Path program = Path.of(Library.class
                    .getProtectionDomain()
                    .getCodeSource()
                    .getLocation()
                    .toURI());
            return Files.isDirectory(program) ? names(program.resolve(FOLDER.substring(1))) : namesInJar(program);
        } catch (URISyntaxException impossible) {
            throw new IllegalStateException("the program's own place can always be written", impossible);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static List<String> namesInJar(Path jar) throws IOException {
        try (FileSystem inside = FileSystems.newFileSystem(jar)) {
            return names(inside.getPath(FOLDER));
        }
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(file -> file.endsWith(ENDING))
                    .map(file -> file.substring(0, file.length() - ENDING.length()))
                    .sorted()
                    .toList();
        }
    }
}
