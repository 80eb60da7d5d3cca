package counterpull.scenario.problem;

/**
 * Where something stands.
 *
 * @param file the file's name without its folder
 * @param line counted from 1; 0 where the whole file is meant
 * @param column counted from 1; 0 where the whole line or file is meant
 * @param key the way to the value
 */
public record Place(String file, int line, int column, Key key) {

    /** The whole file. */
    public static Place file(String name) {
        return new Place(name, 0, 0, Key.TOP);
    }

    /** The same spot under another key. */
    public Place at(Key other) {
        return new Place(file, line, column, other);
    }

    /** {@code plover.yaml, line 12} */
    public String inWords() {
        return line == 0 ? file : file + ", line " + line;
    }
}
