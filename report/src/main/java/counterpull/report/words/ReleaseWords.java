package counterpull.report.words;

import counterpull.engine.Constants;
import counterpull.engine.profile.ExerciseProfile;
import counterpull.letgo.EnergyAccount;
import counterpull.letgo.ExerciseReleases;
import counterpull.letgo.LeftAlone;
import counterpull.letgo.MachineReleases;
import counterpull.letgo.Outcome;
import counterpull.report.table.Measure;
import counterpull.report.table.UnitSet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** What the machines of an exercise do by themselves if the person lets go, in sentences for the floor. */
public final class ReleaseWords {
    private static final double HARDLY = 5e-4;
    private static final double ALIKE = 1.05;
    private final ExerciseReleases releases;
    private final ChallengeWords places;
    private final UnitSet units;

    /** For one exercise in a reader's units. */
    public ReleaseWords(ExerciseProfile profile, UnitSet units) {
        this.units = units;
        places = new ChallengeWords(profile, units);
        releases = ExerciseReleases.of(profile);
    }

    /** The machines that move by themselves, in the order of the exercise. */
    public List<MachineReleases> machines() {
        return releases.machines();
    }

    /** What is on a machine. */
    public String name(MachineReleases machine) {
        return capital(String.join(", ", machine.names()));
    }

    /** Whether anything is computed at all. */
    public boolean tells() {
        return !releases.machines().isEmpty();
    }

    /** From the top, and the fastest arrival of the range. */
    public List<String> sentences(MachineReleases machine) {
        if (machine.releases().largestError() > EnergyAccount.ALLOWED) {
            return List.of("What happens is not known: the computed energies do not add up.");
        }
        List<String> words = new ArrayList<>();
        Outcome top = machine.releases().atTop();
        words.add("Let go at the top, " + happens(machine, top) + ".");
        machine.releases().hardest().ifPresent(hardest -> words.add(fastest(machine, hardest)));
        return words;
    }

    private String fastest(MachineReleases machine, Outcome hardest) {
        double speed = machine.arrivalSpeed(hardest);
        String fall = ", as from a free fall of " + rough(speed * speed / (2 * Constants.STANDARD_GRAVITY)) + ".";
        return speed > ALIKE * machine.arrivalSpeed(machine.releases().atTop())
                ? "The fastest of the range: let go " + from(machine, hardest) + ", " + speed(speed) + fall
                : "That is about the fastest of the range" + fall;
    }

    private String happens(MachineReleases machine, Outcome outcome) {
        return switch (outcome.ending()) {
            case ON_THE_STOP, NOTHING_CATCHES_IT -> falls(machine, outcome);
            case AT_THE_TOP ->
                outcome.end().time() == 0
                        ? "it goes on up by itself"
                        : "it goes up by itself, to the top of the range in " + time(outcome) + ", "
                                + at(machine, outcome);
            case AT_REST -> rests(machine, outcome);
            case RUBBER_AT_TESTED_LENGTH ->
                "it stretches a rubber to its tested length within " + time(outcome)
                        + ", and what then happens is not known";
            case STILL_SWINGING -> "it swings by itself, at up to " + speed(machine.fastest(outcome));
        };
    }

    private String falls(MachineReleases machine, Outcome outcome) {
        return machine.kind() == MachineReleases.Kind.LINE
                ? "the stack falls and draws the handle to the pulley: after " + time(outcome)
                        + " the line is as short as anywhere in this range, " + at(machine, outcome) + " and going on"
                : "it falls to the bottom of the range in " + time(outcome) + ", " + at(machine, outcome)
                        + "; no stop is stated there, so nothing is known to catch it";
    }

    private String at(MachineReleases machine, Outcome outcome) {
        String speed = speed(machine.arrivalSpeed(outcome));
        return switch (machine.kind()) {
            case LEVER -> "the pad at " + speed;
            case CARRIAGE -> "at " + speed;
            case LINE -> "the handle at " + speed;
        };
    }

    private String rests(MachineReleases machine, Outcome outcome) {
        if (outcome.first().isEmpty()) {
            return "it stays where it is, held by friction or balance alone: do not rely on it";
        }
        double drop = machine.drop(outcome);
        if (Math.abs(drop) < HARDLY) {
            return "it moves and comes to rest about where it was";
        }
        return drop > 0
                ? "it sinks " + length(drop) + " and comes to rest by itself"
                : "it goes up by itself, " + length(-drop) + " until it rests";
    }

    /** What makes letting go dangerous in a way that nobody expects; empty where nothing does. */
    public List<String> cautions(MachineReleases machine) {
        List<String> words = new ArrayList<>();
        machine.releases()
                .pulledUp()
                .ifPresent(outcome -> words.add("It can go up by itself: let go " + from(machine, outcome)
                        + ", it moves at up to " + speed(machine.fastest(outcome)) + "."));
        hangs(machine).ifPresent(words::add);
        if (machine.releases().overstretches()) {
            words.add("Let go somewhere in this range, it can stretch a rubber to its tested length.");
        }
        return words;
    }

    private Optional<String> hangs(MachineReleases machine) {
        return machine.releases()
                .hangs()
                .map(outcome -> "Let go " + from(machine, outcome)
                        + ", it may stay where it is, held by friction or balance alone: a touch can set it moving.");
    }

    /** What is not followed, each with what is known of it. */
    public List<String> others() {
        return releases.others().stream()
                .map(other -> capital(other.words()) + ": " + alone(other.why()))
                .toList();
    }

    private static String alone(LeftAlone.Why why) {
        String unknown = "what happens is not known: ";
        return switch (why) {
            case FALLS_FREELY -> "a free fall, unless strapped on.";
            case SNAPS_BACK -> "snaps back to where its other end is fastened; keep faces out of its line.";
            case MASS_NOT_MEASURED -> unknown + "readings of force do not say how much mass is in it.";
            case TIED_TO_SOMETHING_LOOSE -> unknown + "a line runs from there to the body or to another machine.";
            case WITHOUT_MASS -> unknown + "no mass is stated.";
            case TURNS_BACK -> unknown + "in this range the machine turns back, or hardly moves.";
            case NO_ANSWER_ON_THE_WAY -> unknown + "somewhere on the way the geometry has no answer.";
        };
    }

    /** What the sentences take for granted, and what to do in any case. */
    public String how() {
        List<String> words =
                new ArrayList<>(List.of("Computed for each machine alone, with its whole load and nobody on it."));
        if (any(kind -> kind != MachineReleases.Kind.LINE)) {
            words.add(
                    "A limb that is still at a pad goes with it; set the machine's own pins or catches at the bottom of the range"
                            + " in any case.");
        }
        if (any(kind -> kind == MachineReleases.Kind.LINE)) {
            words.add("Nothing is taken to slow a handle: keep clear of its way to the pulley.");
        }
        return String.join(" ", words);
    }

    private boolean any(Predicate<MachineReleases.Kind> wanted) {
        return releases.machines().stream().map(MachineReleases::kind).anyMatch(wanted);
    }

    private String from(MachineReleases machine, Outcome outcome) {
        String where = "at " + places.at(machine.position(outcome));
        return outcome.release().speed() < 0 ? "while lowering " + where : where;
    }

    private static String capital(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
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
