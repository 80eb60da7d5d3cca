package counterpull.readings.table;

import java.util.List;
import java.util.Locale;

/**
 * Something that a row of readings may hold.
 *
 * @param key its name in a file of readings and in a mapping
 * @param due what may stand in its cells
 * @param need whether a row is of use without it
 * @param names how a heading may call it, lower case; its key is one of them without saying
 * @param question what is asked where no heading names it; empty for the usual question
 */
public record Wanted(String key, Due due, Need need, List<String> names, String question) {
    /** Whether a row is of use without it. */
    public enum Need {
        MUST,
        MAY
    }

    public Wanted {
        names = List.copyOf(names);
    }

    static Wanted must(String key, Due due, String... names) {
        return new Wanted(key, due, Need.MUST, List.of(names), "");
    }

    /** The same where a row is of use without it. */
    Wanted optional() {
        return new Wanted(key, due, Need.MAY, names, question);
    }

    /** The same with its own question. */
    Wanted asking(String other) {
        return new Wanted(key, due, need, names, other);
    }

    static Wanted may(String key, Due due, String... names) {
        return new Wanted(key, due, Need.MAY, List.of(names), "");
    }

    /** How well a heading names it: 3 by its whole name, 2 by a name among other words, 1 by its unit alone, 0 not. */
    int likeness(Heading heading) {
        String folded = Heading.folded(heading.name());
        String own = Heading.folded(key);
        if (folded.equals(own) || names.contains(folded)) {
            return 3;
        }
        String padded = " " + folded + " ";
        boolean among = padded.contains(" " + own + " ")
                || names.stream().anyMatch(name -> padded.contains(" " + name.toLowerCase(Locale.ROOT) + " "));
        if (among) {
            return 2;
        }
        return folded.isEmpty() && ofItsUnit(heading) ? 1 : 0;
    }

    private boolean ofItsUnit(Heading heading) {
        return due instanceof Due.Amount amount
                && Heading.known(heading.unit())
                        .filter(unit -> unit.dimension() == amount.measure().dimension())
                        .isPresent();
    }
}
