package counterpull.scenario.format;

import counterpull.engine.body.Action;
import counterpull.engine.body.DeLeva1996;
import counterpull.engine.body.DempsterWinter;
import counterpull.engine.body.Joint;
import counterpull.engine.body.SegmentTable;
import counterpull.engine.body.Sex;
import counterpull.engine.choice.Goal.Straying;
import counterpull.engine.load.Counterweight.Run;
import counterpull.engine.load.Hang;
import counterpull.engine.load.Loaded;
import counterpull.engine.load.Placement;
import counterpull.engine.motion.Flowing.Turn;
import counterpull.engine.motion.Ride;
import counterpull.engine.profile.Push.BodyPoint;
import counterpull.engine.strength.Tester;
import counterpull.scenario.content.Ended;
import counterpull.scenario.content.Exercise.Using;
import counterpull.scenario.content.Machine.PlatesGoOn;
import counterpull.scenario.fields.Choices;
import java.util.Locale;

/** The words of the format, read and written alike. */
public final class Words {
    public static final Choices<Sex> SEX = Choices.of(Words::lower, Sex.values());
    public static final Choices<SegmentTable> TABLE = Choices.of(Words::table, new DempsterWinter(), new DeLeva1996());
    public static final Choices<Action> ACTION = Choices.of(Action::words, Action.values());
    public static final Choices<Tester> TESTER = Choices.of(Words::tester, Tester.values());
    public static final Choices<Ended> ENDED = Choices.of(Ended::words, Ended.values());
    public static final Choices<Ride> RIDE = Choices.of(Words::lower, Ride.values());
    public static final Choices<Integer> TAPE =
            Choices.of(sense -> sense > 0 ? "rises with distance" : "falls with distance", 1, -1);
    public static final Choices<Run> RUN = Choices.of(Words::run, Run.values());
    public static final Choices<Loaded.Plates> STACKED = Choices.of(
            plates -> plates == Loaded.Plates.HERE ? "on the stack" : "on the carriage", Loaded.Plates.values());
    public static final Choices<PlatesGoOn> PLATES_GO_ON = Choices.of(PlatesGoOn::words, PlatesGoOn.values());
    public static final Choices<Using> LIMBS = Choices.of(Using::words, Using.values());
    public static final Choices<BodyPoint> BODY_POINT = Choices.of(BodyPoint::words, BodyPoint.values());
    public static final Choices<Hang> HANG = Choices.of(Hang::words, Hang.values());
    public static final Choices<Placement> PLACEMENT = Choices.of(Placement::words, Placement.values());
    public static final Choices<Turn> TURN = Choices.of(Words::turn, Turn.values());
    public static final Choices<Joint> JOINT = Choices.of(Joint::words, Joint.values());
    public static final Choices<Straying> STRAYING = Choices.of(Words::straying, Straying.values());

    private Words() {}

    /** The key of a joint's angle. */
    public static String angle(Joint joint) {
        return switch (joint) {
            case HIP -> "hip flexion";
            case KNEE -> "knee flexion";
            case ANKLE -> "ankle dorsiflexion";
            case HIP_SIDEWAYS -> "hip abduction";
            case SHOULDER -> "shoulder flexion";
            case SHOULDER_SIDEWAYS -> "shoulder abduction";
            case SHOULDER_TURNING -> "external rotation";
            case ELBOW -> "elbow flexion";
        };
    }

    /** The key of a joint's own limit: that of its angle, but a shorter word at the ankle. */
    public static String limit(Joint joint) {
        return joint == Joint.ANKLE ? "dorsiflexion" : angle(joint);
    }

    private static String lower(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }

    private static String table(SegmentTable table) {
        return table instanceof DempsterWinter ? "dempster-winter" : "de-leva-1996";
    }

    private static String tester(Tester tester) {
        return switch (tester) {
            case HAND_HELD -> "hand-held";
            case BELT_FIXED -> "belt-fixed";
            case ISOKINETIC -> "isokinetic";
            case REPETITIONS -> "repetitions";
        };
    }

    private static String run(Run run) {
        return switch (run) {
            case ALONG_RAIL -> "along the rail";
            case HANGING -> "hanging";
        };
    }

    private static String turn(Turn turn) {
        return switch (turn) {
            case BOTTOM -> "bottom";
            case TOP -> "top";
            case BOTH -> "both ends";
        };
    }

    private static String straying(Straying straying) {
        return switch (straying) {
            case AS_TOLD -> "push as told";
            case WHOLE_INTERVAL -> "whole interval";
        };
    }
}
