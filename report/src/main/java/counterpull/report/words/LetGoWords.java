package counterpull.report.words;

import counterpull.engine.Constants;
import counterpull.engine.load.Part;
import counterpull.engine.motion.Phase;
import counterpull.engine.motion.Ride;
import counterpull.engine.profile.PressProfile;
import counterpull.engine.profile.PressTask;
import counterpull.letgo.Ending;
import counterpull.letgo.EnergyAccount;
import counterpull.letgo.Outcome;
import counterpull.letgo.Releases;
import counterpull.letgo.SledReleases;
import counterpull.report.table.Measure;
import counterpull.report.table.UnitSet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a setup does by itself if the person stops pushing, in sentences for the floor. */
public final class LetGoWords {
    private static final double HARDLY = 5e-4;
    private static final double ALIKE = 1.05;
    private final PressProfile profile;
    private final UnitSet units;
    private final Releases releases;

    /** For one setup in a reader's units. */
    public LetGoWords(PressProfile profile, UnitSet units) {
        this.profile = profile;
        this.units = units;
        releases = SledReleases.of(profile);
    }

    /** What the sentences take for granted. */
    public String how() {
        return "Computed with nobody pushing: "
                + (plateRides() ? "legs neither hold nor slow the carriage" : "the person rides along with limp legs")
                + ", and what a stop gives way is not counted.";
    }

    private boolean plateRides() {
        return profile.task().sled().rail().ride() == Ride.PLATE;
    }

    /** From the bottom, from the top, and the hardest arrival of the range. */
    public List<String> sentences() {
        if (releases.largestError() > EnergyAccount.ALLOWED) {
            return List.of("What happens if they let go is not known: the computed energies do not add up.");
        }
        List<String> words = new ArrayList<>();
        words.add("Let go at the bottom, " + happens(releases.atBottom()) + ".");
        words.add("Let go at the top, " + happens(releases.atTop()) + ".");
        releases.hardest().map(this::hardest).ifPresent(words::add);
        return words;
    }

    /** In few words, for a card that says "If they let go" before it: the top, or where the arrival is hardest. */
    public String brief() {
        if (releases.largestError() > EnergyAccount.ALLOWED) {
            return "is not known.";
        }
        Outcome outcome = releases.hardest().filter(this::harderThanFromTheTop).orElseGet(releases::atTop);
        String where = outcome == releases.atTop() ? "at the top" : from(outcome);
        boolean dropped = outcome.ending() == Ending.ON_THE_STOP && !lies(outcome);
        return where + ", "
                + (dropped
                        ? it() + " is on the stop in " + time(outcome) + ", at " + speed(outcome.arrivalSpeed())
                        : happens(outcome))
                + ".";
    }

    private boolean harderThanFromTheTop(Outcome outcome) {
        return outcome.arrivalSpeed() > ALIKE * releases.atTop().arrivalSpeed();
    }

    private String hardest(Outcome outcome) {
        String what = outcome.ending() == Ending.ON_THE_STOP ? "the hardest arrival" : "the fastest";
        String fall = ", as from a free fall of " + rough(height(outcome.arrivalSpeed())) + ".";
        return harderThanFromTheTop(outcome)
                ? capital(what) + " of the range: let go " + from(outcome) + ", " + speed(outcome.arrivalSpeed()) + fall
                : "That is about " + what + " of the range" + fall;
    }

    private static double height(double speed) {
        return speed * speed / (2 * Constants.STANDARD_GRAVITY);
    }

    private String from(Outcome outcome) {
        String where = "at mark " + mark(outcome.release().place());
        return outcome.release().speed() < 0 ? "while lowering " + where : where;
    }

    /** "the carriage drops 31 cm onto the stop in 0.35 s and arrives at 1.9 m/s". */
    private String happens(Outcome outcome) {
        String it = it();
        return switch (outcome.ending()) {
            case ON_THE_STOP ->
                lies(outcome)
                        ? it + " rests on the stop"
                        : it + " drops " + length(outcome.drop()) + " onto the stop in " + time(outcome)
                                + " and arrives at " + speed(outcome.arrivalSpeed());
            case NOTHING_CATCHES_IT ->
                lies(outcome)
                        ? it + " goes on down and nothing catches it"
                        : it + " passes " + depth() + " after " + time(outcome) + " at " + speed(outcome.arrivalSpeed())
                                + " and nothing catches it";
            case AT_THE_TOP ->
                puller() + it + " up by itself: it is past straight legs after " + time(outcome) + ", at "
                        + speed(outcome.arrivalSpeed());
            case AT_REST -> rests(outcome);
            case RUBBER_AT_TESTED_LENGTH ->
                it + " stretches a rubber to its tested length within " + time(outcome)
                        + ", and what then happens is not known";
            case STILL_SWINGING ->
                it + " swings up and down by itself, at up to "
                        + speed(outcome.way().fastest());
        };
    }

    private static boolean lies(Outcome outcome) {
        return outcome.end().time() == 0;
    }

    private String rests(Outcome outcome) {
        if (outcome.first().isEmpty()) {
            return it() + " stays where it is, held by friction alone: do not rely on it";
        }
        double drop = outcome.drop();
        if (Math.abs(drop) < HARDLY) {
            return it() + " moves and comes to rest about where it was";
        }
        return drop > 0
                ? it() + " sinks " + length(drop) + " and comes to rest by itself"
                : puller() + it() + " up by itself, " + length(-drop) + " until it rests";
    }

    /** What makes letting go dangerous in a way that nobody expects; empty where nothing does. */
    public List<String> cautions() {
        List<String> words = new ArrayList<>();
        releases.pulledUp()
                .ifPresent(outcome -> words.add(capital(puller()) + it() + " up by itself: let go at mark "
                        + mark(outcome.release().place()) + " it rises "
                        + length(outcome.way().highest() - outcome.release().place()) + ", at up to "
                        + speed(outcome.way().fastest()) + "."));
        if (releases.overstretches()) {
            words.add("Let go somewhere in this range, " + it() + " can stretch a rubber to its tested length.");
        }
        return words;
    }

    /** Where it stays by friction alone; empty where it moves from everywhere. */
    public Optional<String> hangs() {
        return releases.hangs()
                .map(outcome -> "Let go at mark " + mark(outcome.release().place()) + ", " + it()
                        + " may stay where it is, held by friction alone: a touch can set it moving.");
    }

    /** What can pull it up: rubber, unless the weights do so on their own. */
    private String puller() {
        return profile.force(Part.GRAVITY, Phase.HELD, 0) >= 0 ? "rubber pulls " : "the machine's own weights pull ";
    }

    private static String capital(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    private String it() {
        return plateRides() ? "the carriage" : "the seat with the person on it";
    }

    private String depth() {
        return releases.atTop().end().place() < -HARDLY ? "the deepest pain-free bend" : "the bottom of the range";
    }

    private String mark(double place) {
        PressTask task = profile.task();
        double mark = task.stance()
                .seat()
                .markAt(profile.plate(0) + place, task.sled().rail());
        return Measure.LENGTH.words(mark, units);
    }

    private String length(double metres) {
        return Measure.LENGTH.words(metres, units);
    }

    private String rough(double metres) {
        return Measure.LENGTH_ROUGH.words(metres, units);
    }

    private String speed(double speed) {
        return Measure.SPEED_ROUGH.words(speed, units);
    }

    private String time(Outcome outcome) {
        return Measure.TIME.words(outcome.end().time(), units);
    }
}
