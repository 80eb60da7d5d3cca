package counterpull.readings.table;

import java.util.Optional;

/**
 * What a column of a file is used for.
 *
 * @param number which column, counted from 1
 * @param heading as it stands in the file; empty where the file has none
 * @param means what it is; empty where it is not used
 * @param unit the unit of its numbers, {@link #IN_CELLS} or {@link Mapping#OPEN}; empty for words
 * @param sign how its numbers are signed
 */
public record ColumnUse(int number, String heading, Optional<Wanted> means, String unit, Sign sign) {
    /** The unit stands in each cell behind its number. */
    public static final String IN_CELLS = "in the cells";

    /** How a column's numbers are signed. */
    public enum Sign {
        AS_IT_IS("as it is"),
        TURNED_AROUND("turned around"),
        OPEN(Mapping.OPEN);

        private final String word;

        Sign(String word) {
            this.word = word;
        }

        /** As a mapping has it. */
        public String word() {
            return word;
        }

        String turned(String number) {
            if (this != TURNED_AROUND) {
                return number.startsWith("+") ? number.substring(1) : number;
            }
            return number.startsWith("-") ? number.substring(1) : "-" + number.replace("+", "");
        }
    }

    /** How a person finds it: "column 2 (Force (kgf))". */
    public String named() {
        return "column " + number + (heading.isEmpty() ? "" : " (" + heading + ")");
    }
}
