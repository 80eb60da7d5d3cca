package counterpull.engine.crosscheck.stated;

import counterpull.engine.body.Joint;
import counterpull.engine.load.Cable;
import counterpull.engine.load.CamRadius;
import counterpull.engine.load.CamStack;
import counterpull.engine.load.Carriage;
import counterpull.engine.load.Contact;
import counterpull.engine.load.Counterweight;
import counterpull.engine.load.Cuff;
import counterpull.engine.load.DeadWeight;
import counterpull.engine.load.Friction;
import counterpull.engine.load.GuidedMass;
import counterpull.engine.load.HangingChain;
import counterpull.engine.load.Horn;
import counterpull.engine.load.Lever;
import counterpull.engine.load.LeverBody;
import counterpull.engine.load.LeverFrame;
import counterpull.engine.load.Loaded;
import counterpull.engine.load.MeasuredProfile;
import counterpull.engine.load.Resistance;
import counterpull.engine.load.RollerPad;
import counterpull.engine.load.StackLine;
import counterpull.engine.motion.BodyPoint;
import counterpull.engine.planar.Vec;
import java.util.ArrayList;
import java.util.List;

/** What weighs or pulls, as a reference file states it: one line each, SI, radians. */
final class StatedThings {
    private StatedThings() {}

    static Resistance of(String kind, Words in) {
        String name = in.word();
        return switch (kind) {
            case "weight" -> new DeadWeight(name, point(in), loaded(in));
            case "cable" -> cable(name, in);
            case "lever" -> lever(name, in);
            case "cam" -> cam(name, in);
            case "measured" -> measured(name, in);
            case "rail" -> rail(name, in);
            case "chain" -> new HangingChain(name, point(in), in.number(), in.number(), in.number());
            case "stretch" -> StatedLine.of(name, in);
            default -> throw new IllegalArgumentException(kind);
        };
    }

    static BodyPoint point(Words in) {
        int segment = in.whole();
        return new BodyPoint("point on " + segment, segment, in.place());
    }

    static LeverFrame frame(Words in) {
        Vec pivot = in.place();
        String kind = in.word();
        int segment = in.whole();
        double far = in.number();
        Contact contact = switch (kind) {
            case "cuff" -> new Cuff(segment, far);
            case "pad-against" -> RollerPad.against(segment, far);
            default -> new RollerPad(segment, far, RollerPad.Pushes.WITH_THE_LIFT);
        };
        return new LeverFrame(pivot, contact);
    }

    private static Loaded loaded(Words in) {
        double own = in.number();
        return in.whole() == 1 ? Loaded.with(own) : Loaded.always(own);
    }

    private static Resistance cable(String name, Words in) {
        BodyPoint at = point(in);
        Vec pulley = in.place();
        return new Cable(name, at, pulley, line(in));
    }

    private static StackLine line(Words in) {
        double ratio = in.number();
        double friction = in.number();
        return new StackLine(ratio, friction, loaded(in), in.number());
    }

    private static Resistance lever(String name, Words in) {
        LeverFrame frame = frame(in);
        LeverBody body = new LeverBody(in.number(), in.number(), in.number(), in.number());
        double friction = in.number();
        List<Horn> horns = new ArrayList<>();
        for (int left = in.whole(); left > 0; left--) {
            horns.add(new Horn(in.word(), in.number(), in.number(), loaded(in)));
        }
        return new Lever(name, frame, body, horns, friction);
    }

    private static Resistance cam(String name, Words in) {
        LeverFrame frame = frame(in);
        StackLine line = line(in);
        double inertia = in.number();
        List<CamRadius.Reading> readings = new ArrayList<>();
        for (int left = in.whole(); left > 0; left--) {
            readings.add(new CamRadius.Reading(in.number(), in.number()));
        }
        return new CamStack(name, frame, new CamRadius(readings), line, inertia);
    }

    private static Resistance measured(String name, Words in) {
        MeasuredProfile.Acts acts = in.word().equals("torque") ? torque(in) : force(in);
        List<MeasuredProfile.Reading> readings = new ArrayList<>();
        for (int left = in.whole(); left > 0; left--) {
            readings.add(new MeasuredProfile.Reading(in.number(), in.number(), in.number()));
        }
        return new MeasuredProfile(name, acts, readings);
    }

    private static MeasuredProfile.Acts torque(Words in) {
        return new MeasuredProfile.Torque(Joint.valueOf(in.word()));
    }

    private static MeasuredProfile.Acts force(Words in) {
        BodyPoint at = point(in);
        MeasuredProfile.Position position = in.word().equals("angle")
                ? new MeasuredProfile.Angle(Joint.valueOf(in.word()))
                : new MeasuredProfile.Travel(in.number());
        return new MeasuredProfile.Force(at, position);
    }

    private static Resistance rail(String name, Words in) {
        BodyPoint at = point(in);
        double angle = in.number();
        double mass = in.number();
        Counterweight weight = new Counterweight(in.number(), Counterweight.Run.valueOf(in.word()));
        Friction friction = new Friction(in.number(), in.number(), 0);
        Loaded.Plates plates = in.whole() == 1 ? Loaded.Plates.HERE : Loaded.Plates.ELSEWHERE;
        return new GuidedMass(name, at, angle, new Carriage(mass, weight, friction, Double.POSITIVE_INFINITY), plates);
    }
}
