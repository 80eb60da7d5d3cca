package counterpull.engine.profile;

import counterpull.engine.body.Joint;
import counterpull.engine.load.Part;
import counterpull.engine.load.Pull;
import counterpull.engine.load.Share;
import counterpull.engine.motion.Phase;
import counterpull.engine.planar.Vec;
import java.util.ArrayList;
import java.util.List;

/** Answers "why" for the numbers of an exercise's profile. */
public final class ExerciseReasons extends Reasons {
    private static final String NOTATION = "docs/notation.md";
    private static final double LEVEL = 1e-9;
    private final ExerciseProfile profile;

    ExerciseReasons(ExerciseProfile profile) {
        super(profile);
        this.profile = profile;
    }

    @Override
    public Why torque(Why.Place at) {
        ExerciseLimb limb = limb(at);
        List<Why.Summand> summands = new ArrayList<>();
        for (Part own : new Part[] {Part.LIMB_WEIGHT, Part.LIMB_INERTIA}) {
            double value = limb.torque(own, at.joint(), at.phase(), at.position());
            summands.add(new Why.Summand(own, own.words(), 1, value, value));
        }
        for (int p = 0; p < limb.pulls().size(); p++) {
            summands.addAll(summands(p, at));
        }
        return new Why(
                limb.torque(at.joint(), at.phase(), at.position()),
                "N·m",
                "τ = the limb's own weight and inertia + Σ share × pull × moment arm",
                inputs(at),
                summands,
                NOTATION + ", Newton–Euler; positive where it asks for "
                        + at.joint().action().words());
    }

    private List<Why.Input> inputs(Why.Place at) {
        ExerciseLimb limb = limb(at);
        List<Why.Input> inputs = new ArrayList<>();
        inputs.add(new Why.Input(at.joint().words() + " angle", limb.angle(at.joint(), at.position()), "rad"));
        inputs.add(new Why.Input("share of the load that this limb bears", limb.share(), ""));
        for (int p = 0; p < limb.pulls().size(); p++) {
            Pull pull = limb.pulls().get(p);
            inputs.add(new Why.Input(
                    "pull of " + pull.words() + way(pull, at.position()),
                    limb.size(p, at.phase(), at.position()),
                    pull.isCouple() ? "N·m" : "N"));
            inputs.add(new Why.Input(
                    "its moment arm about the " + at.joint().words(),
                    limb.arm(p, at.joint(), at.position()),
                    pull.isCouple() ? "" : "m"));
        }
        return inputs;
    }

    /** Which way counts as positive, in the words of the places in a file. */
    private static String way(Pull pull, int position) {
        if (pull.isCouple()) {
            return "";
        }
        Vec way = pull.direction(position);
        if (Math.abs(way.x()) < LEVEL) {
            return way.y() > 0 ? ", upward" : ", downward";
        }
        if (Math.abs(way.y()) < LEVEL) {
            return way.x() > 0 ? ", forward" : ", backward";
        }
        return ", toward " + Math.round(Math.toDegrees(Math.atan2(way.y(), way.x()))) + "° (0° is forward, 90° up)";
    }

    private List<Why.Summand> summands(int p, Why.Place at) {
        ExerciseLimb limb = limb(at);
        List<Why.Summand> found = new ArrayList<>();
        for (Share summand : limb.pulls().get(p).shares()) {
            double perUnit = limb.share()
                    * summand.perUnit()[profile.course().cell(at.phase(), at.position())]
                    * limb.arm(p, at.joint(), at.position());
            double amount = limb.amount(summand);
            found.add(new Why.Summand(summand.part(), summand.label(), amount, perUnit, amount * perUnit));
        }
        return found;
    }

    /** Size of one pull on a limb, N or N·m, for the whole load, term by term. */
    public Why pull(int limb, int pull, Phase phase, int position) {
        ExerciseLimb looked = profile.limbs().get(limb);
        Pull pulls = looked.pulls().get(pull);
        List<Why.Summand> summands = new ArrayList<>();
        for (Share share : pulls.shares()) {
            double perUnit = share.perUnit()[profile.course().cell(phase, position)];
            double amount = looked.amount(share);
            summands.add(new Why.Summand(share.part(), share.label(), amount, perUnit, amount * perUnit));
        }
        List<Why.Input> inputs = List.of(
                new Why.Input("chosen weight, kg", profile.task().plates(), ""),
                new Why.Input(
                        "parts of the stroke in a second", profile.course().speed(phase, position), "per s"),
                new Why.Input(
                        "and how that changes in a second", profile.course().acceleration(phase, position), "per s²"));
        return new Why(
                looked.size(pull, phase, position),
                pulls.isCouple() ? "N·m" : "N",
                "pull of " + pulls.words() + " = Σ amount × pull per unit",
                inputs,
                summands,
                NOTATION + ", what resists");
    }

    @Override
    public Why angle(Why.Place at) {
        ExerciseLimb limb = limb(at);
        List<Why.Input> inputs = new ArrayList<>();
        for (Joint joint : limb.joints()) {
            inputs.add(new Why.Input(
                    "direction of the segment beyond the " + joint.words(),
                    limb.path().direction(limb.path().index(joint), at.position()),
                    "rad"));
        }
        boolean turns = profile.driver().isPresent();
        String driving = profile.driver().map(Joint::angleWords).orElse("travel");
        inputs.add(new Why.Input(driving, profile.driving(at.position()), turns ? "rad" : "m"));
        return new Why(
                limb.angle(at.joint(), at.position()),
                "rad",
                profile.task().exercise().motion().words(),
                inputs,
                List.of(),
                NOTATION + ", movements; lengths as measured or from the named tables");
    }

    private ExerciseLimb limb(Why.Place at) {
        return profile.limbs().get(at.limb());
    }
}
