package counterpull.readings.table;

import counterpull.scenario.fields.Measure;
import counterpull.scenario.units.Quantity;
import counterpull.scenario.units.QuantityText;
import counterpull.scenario.units.Reading;
import counterpull.scenario.units.Unit;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What may stand in the cells of a column. */
public sealed interface Due permits Due.Amount, Due.Whole, Due.OneOf, Due.Words {
    /** What came of a cell: the text for a file of readings, or why there is none. */
    record Cell(Optional<String> text, String why) {
        static Cell of(String text) {
            return new Cell(Optional.of(text), "");
        }

        static Cell refused(String why) {
            return new Cell(Optional.empty(), why);
        }
    }

    /** A cell that is not empty, as a file of readings has it. */
    Cell cell(String written, ColumnUse use, DecimalSign decimals);

    /** In words: "a force". */
    String inWords();

    /** The text in which a quantity reads the same when it comes back: for columns that need it. */
    record Amount(Measure measure) implements Due {
        private static final Pattern NUMBER =
                Pattern.compile("([+-]?(?:\\d+[.,]?\\d*|[.,]\\d+)(?:[eE][+-]?\\d+)?)\\s*(.*)");
        private static final UnaryOperator<String> PLAIN = text -> text.replace('\u2212', '-')
                .replace('\u00A0', ' ')
                .replace('\u2009', ' ')
                .replace('\u202F', ' ')
                .strip();

        @Override
        public Cell cell(String written, ColumnUse use, DecimalSign decimals) {
            Matcher parts = NUMBER.matcher(PLAIN.apply(written));
            if (!parts.matches()) {
                return Cell.refused("this is not a number");
            }
            Optional<String> number = decimals.withPoint(parts.group(1));
            if (number.isEmpty()) {
                return Cell.refused("its decimal sign is not the " + decimals.word() + " of the other numbers");
            }
            return unit(parts.group(2), use)
                    .map(unit -> within(use.sign().turned(number.get()) + " " + unit.symbol()))
                    .orElseGet(() -> Cell.refused(unitFault(parts.group(2), use)));
        }

        private Optional<Unit> unit(String inCell, ColumnUse use) {
            if (use.unit().equals(ColumnUse.IN_CELLS)) {
                return Heading.known(inCell);
            }
            Optional<Unit> ofColumn = Heading.known(use.unit());
            boolean agrees = inCell.isEmpty() || Heading.known(inCell).equals(ofColumn);
            return agrees ? ofColumn : Optional.empty();
        }

        private String unitFault(String inCell, ColumnUse use) {
            if (inCell.isEmpty()) {
                return "it has no unit; " + inWords() + " is due";
            }
            return Heading.known(inCell).isEmpty()
                    ? "what stands behind the number, \"" + inCell + "\", is no unit of " + dimension()
                    : "its unit is " + inCell + " in a column of " + use.unit();
        }

        private Cell within(String text) {
            Reading reading = QuantityText.read(text, measure.dimension());
            if (!(reading instanceof Reading.Read read)) {
                return Cell.refused("this is not " + inWords());
            }
            Quantity value = read.quantity();
            if (value.si() < measure.low().si()) {
                return Cell.refused("it is below " + measure.low() + ", the limit for this value");
            }
            if (value.si() > measure.high().si()) {
                return Cell.refused("it is above " + measure.high() + ", the limit for this value");
            }
            return Cell.of(text);
        }

        private String dimension() {
            return measure.dimension().words();
        }

        @Override
        public String inWords() {
            return ("aeiou".indexOf(dimension().charAt(0)) >= 0 ? "an " : "a ") + dimension();
        }
    }

    /** A whole number between two limits. */
    record Whole(int low, int high) implements Due {
        @Override
        public Cell cell(String written, ColumnUse use, DecimalSign decimals) {
            if (!written.matches("\\d{1,9}")) {
                return Cell.refused("this is not a whole number");
            }
            int value = Integer.parseInt(written);
            if (value < low || value > high) {
                return Cell.refused("a whole number from " + low + " to " + high + " is due");
            }
            return Cell.of(String.valueOf(value));
        }

        @Override
        public String inWords() {
            return "a whole number";
        }
    }

    /**
     * One of several words.
     *
     * @param words as files of readings have them
     * @param also other words, lower case, that mean one of them
     */
    record OneOf(List<String> words, Map<String, String> also) implements Due {
        /** Only these words. */
        OneOf(List<String> words) {
            this(words, Map.of());
        }

        @Override
        public Cell cell(String written, ColumnUse use, DecimalSign decimals) {
            String plain = written.toLowerCase(Locale.ROOT).replace('_', ' ').strip();
            String meant = also.getOrDefault(plain, plain);
            return words.stream()
                    .filter(word -> word.replace('-', ' ').equals(meant.replace('-', ' ')))
                    .findFirst()
                    .map(Cell::of)
                    .orElseGet(() -> Cell.refused("it is none of: " + String.join(", ", words)));
        }

        @Override
        public String inWords() {
            return "one of: " + String.join(", ", words);
        }
    }

    /** Any words on one line. */
    record Words(int longest) implements Due {
        @Override
        public Cell cell(String written, ColumnUse use, DecimalSign decimals) {
            String text = Guard.off(written);
            return text.length() > longest || text.contains("\n") || text.contains("\r")
                    ? Cell.refused("words on one line, at most " + longest + " characters, are due")
                    : Cell.of(text);
        }

        @Override
        public String inWords() {
            return "words";
        }
    }
}
