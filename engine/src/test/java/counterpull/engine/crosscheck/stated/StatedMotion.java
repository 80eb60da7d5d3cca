package counterpull.engine.crosscheck.stated;

import counterpull.engine.body.Joint;
import counterpull.engine.motion.AnkleGive;
import counterpull.engine.motion.BalancedStand;
import counterpull.engine.motion.BodyPoint;
import counterpull.engine.motion.Bounce;
import counterpull.engine.motion.ElbowSide;
import counterpull.engine.motion.Flowing;
import counterpull.engine.motion.FullStop;
import counterpull.engine.motion.Hinge;
import counterpull.engine.motion.Motion;
import counterpull.engine.motion.Reach;
import counterpull.engine.motion.StandDrive;
import counterpull.engine.motion.StraightPath;
import counterpull.engine.motion.Tempo;
import counterpull.engine.planar.Vec;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/** Movements and tempos as a reference file states them. */
final class StatedMotion {
    private StatedMotion() {}

    /** joint, attitude, lie, joints held. */
    static Motion hinge(Words in) {
        Joint joint = Joint.valueOf(in.word());
        double attitude = in.number();
        Hinge.Lie lie = Hinge.Lie.valueOf(in.word());
        Map<Joint, Double> held = new EnumMap<>(Joint.class);
        for (int left = in.whole(); left > 0; left--) {
            held.put(Joint.valueOf(in.word()), in.number());
        }
        return new Hinge(joint, attitude, held, lie);
    }

    /** what is led, attitude, start, end, grip or the foot's direction. */
    static Motion straight(Words in) {
        String led = in.word();
        double attitude = in.number();
        Vec start = in.place();
        Vec end = in.place();
        return new StraightPath(reach(led, in), attitude, start, end);
    }

    private static Reach reach(String led, Words in) {
        return switch (led) {
            case "hand" -> new Reach.Hand(grip(in));
            case "head" -> new Reach.HandSideways(grip(in), ElbowSide.TOWARD_HEAD);
            case "feet" -> new Reach.HandSideways(grip(in), ElbowSide.TOWARD_FEET);
            default -> new Reach.FlatFoot(in.number());
        };
    }

    private static Optional<BodyPoint> grip(Words in) {
        return in.word().equals("wrist") ? Optional.empty() : Optional.of(new BodyPoint("grip", 1, in.place()));
    }

    /** what drives, point of balance, how the ankle or the knee follows. */
    static Motion stand(Words in) {
        boolean knee = in.word().equals("knee");
        double over = in.number();
        double first = in.number();
        double second = in.number();
        StandDrive drive = knee ? new StandDrive.Knee(new AnkleGive(first, second)) : new StandDrive.Hip(first, second);
        return new BalancedStand(drive, over);
    }

    static Tempo tempo(Words in) {
        String kind = in.word();
        double down = in.number();
        double up = in.number();
        return switch (kind) {
            case "full" -> new FullStop(new Tempo.Seconds(down, 0, up, 0));
            case "flowing" -> new Flowing(down, up, Flowing.Turn.valueOf(in.word()));
            default -> new Bounce(down, up, in.number());
        };
    }
}
