package counterpull.app.cli;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;

/** Why something could not be written, as a person would say it. */
final class Unwritable {
    private Unwritable() {}

    /** A file that an option names. */
    static BadInput file(Path file, IOException why) {
        return new BadInput(List.of("--output: " + name(file) + " cannot be written: " + reason(file, why)));
    }

    /** A file that another option names. */
    static BadInput named(String option, Path file, IOException why) {
        return new BadInput(List.of(option + ": " + name(file) + " cannot be written: " + reason(file, why)));
    }

    /** A page that an option names. */
    static BadInput page(Path file, IOException why) {
        return new BadInput(List.of("--into: " + name(file) + " cannot be written: " + reason(file, why)));
    }

    /** A folder that an option names. */
    static BadInput folder(Path folder, IOException why) {
        return new BadInput(
                List.of("--into: the folder " + name(folder) + " cannot be written: " + reason(folder, why)));
    }

    private static String name(Path path) {
        return path.toString().isEmpty() ? "\"\"" : path.toString();
    }

    private static String reason(Path path, IOException why) {
        if (path.toString().isEmpty()) {
            return "it is no name; give one, for instance today.html";
        }
        if (Files.isDirectory(path) && !(why instanceof AccessDeniedException)) {
            return "it is a folder";
        }
        if (why instanceof NoSuchFileException) {
            return "the folder that it would be in does not exist";
        }
        if (why instanceof FileAlreadyExistsException) {
            return "there is a file of that name";
        }
        if (why instanceof AccessDeniedException) {
            return "that is not allowed";
        }
        return why.getMessage();
    }
}
