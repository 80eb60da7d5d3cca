package counterpull.engine.profile;

import counterpull.engine.load.LineSeries;
import counterpull.engine.motion.LegOnPlate;
import counterpull.engine.motion.Phase;
import counterpull.engine.planar.Vec;
import java.util.ArrayList;
import java.util.List;

/** Answers "why" for the numbers of one profile. */
public final class PressReasons extends Reasons {
    private static final String NOTATION = "docs/notation.md";
    private final PressProfile profile;

    PressReasons(PressProfile profile) {
        super(profile);
        this.profile = profile;
    }

    /** The contact force along the rail, N, term by term. */
    public Why push(Phase phase, int position) {
        int cell = profile.ground().terms().grid().cell(phase, position);
        List<Why.Summand> summands = new ArrayList<>();
        List<Term> all = profile.ground().terms().all();
        for (int t = 0; t < all.size(); t++) {
            if (all.get(t).throughContact()) {
                summands.add(
                        summand(all.get(t), profile.amounts()[t], all.get(t).contact(cell)));
            }
        }
        List<Why.Input> inputs = List.of(
                new Why.Input(
                        "rail angle from the horizontal",
                        profile.task().sled().rail().angle(),
                        "rad"),
                new Why.Input("speed toward the top", profile.ground().motion().speed(phase, position), "m/s"),
                new Why.Input(
                        "acceleration toward the top",
                        profile.ground().motion().acceleration(phase, position),
                        "m/s²"));
        return new Why(
                profile.force(phase, position),
                "N",
                "F = Σ amount × force per unit, along the rail",
                inputs,
                summands,
                NOTATION + ", carriage on a rail");
    }

    @Override
    public Why torque(Why.Place at) {
        Terms terms = profile.ground().terms();
        int cell = terms.grid().cell(at.phase(), at.position());
        double arm = arm(at);
        List<Why.Summand> summands = new ArrayList<>();
        List<Term> all = terms.all();
        for (int t = 0; t < all.size(); t++) {
            Term term = all.get(t);
            double perUnit = term.throughContact()
                    ? term.contact(cell) * arm
                    : term.torque(at.limb(), terms.grid().jointCell(at.joint(), at.phase(), at.position()));
            summands.add(summand(term, profile.amounts()[t], perUnit));
        }
        PressLimb limb = limb(at);
        List<Why.Input> inputs = List.of(
                new Why.Input("push along the rail, all limbs", profile.force(at.phase(), at.position()), "N"),
                new Why.Input("this limb's share", limb.limb().share(), ""),
                new Why.Input(
                        "moment arm of the push about the " + at.joint().words(),
                        arm / limb.limb().share(),
                        "m"),
                new Why.Input("push angle to the rail", limb.pushAngle(at.phase(), at.position()), "rad"));
        return new Why(
                limb.torque(at.joint(), at.phase(), at.position()),
                "N·m",
                "τ = the limb's own weight and inertia + share × push × moment arm",
                inputs,
                summands,
                NOTATION + ", Newton–Euler; moment arm positive where the push asks for "
                        + at.joint().action().words());
    }

    private double arm(Why.Place at) {
        Terms terms = profile.ground().terms();
        double tangent = profile.asked().tangent[at.limb()][terms.grid().cell(at.phase(), at.position())];
        return terms.armAlong(at.limb(), at.joint(), at.position())
                + tangent * terms.armAcross(at.limb(), at.joint(), at.position());
    }

    private static Why.Summand summand(Term term, double amount, double perUnit) {
        return new Why.Summand(term.part(), term.label(), amount, perUnit, amount * perUnit);
    }

    @Override
    public Why angle(Why.Place at) {
        PressLimb limb = limb(at);
        PressTask task = profile.task();
        LegOnPlate leg = task.legs().get(at.limb());
        List<Why.Input> inputs = List.of(
                new Why.Input("hip to plate along the rail", profile.plate(at.position()), "m"),
                new Why.Input("hip to ankle along the rail", leg.ankleAlong(profile.plate(at.position())), "m"),
                new Why.Input("ankle across the rail", leg.ankleAcross(), "m"),
                new Why.Input("thigh", limb.limb().leg().thigh().length(), "m"),
                new Why.Input("shank", limb.limb().leg().shank().length(), "m"),
                new Why.Input("rail angle", task.sled().rail().angle(), "rad"),
                new Why.Input(
                        "trunk direction from the horizontal",
                        task.stance().seat().trunkDirection(),
                        "rad"));
        return new Why(
                limb.angle(at.joint(), at.position()),
                "rad",
                "two-link triangle hip, knee, ankle with the foot flat on the plate",
                inputs,
                List.of(),
                NOTATION + ", rail press; lengths as measured or from the named tables");
    }

    /** The moment arm of a limb's push about a joint, m, without sign. */
    public Why momentArm(Why.Place at) {
        PressLimb limb = limb(at);
        Vec way = profile.ground().terms().pressureFrom(at.limb(), at.joint(), at.position());
        List<Why.Input> inputs = List.of(
                new Why.Input("pressure point from the " + at.joint().words() + ", along the rail", way.x(), "m"),
                new Why.Input("and across it", way.y(), "m"),
                new Why.Input("push angle to the rail", limb.pushAngle(at.phase(), at.position()), "rad"));
        return new Why(
                limb.momentArm(at.joint(), at.phase(), at.position()),
                "m",
                "distance of the joint from the line of the push through the pressure point",
                inputs,
                List.of(),
                NOTATION + ", direction of push");
    }

    /** What one line pulls along the rail, N, positive toward the top. */
    public Why rubber(int line, Phase phase, int position) {
        LineSeries series = profile.lines().get(line);
        double strands = series.line().strands();
        double tension = strands * series.tension(phase, position);
        double along = -strands * series.push(phase, position);
        List<Why.Input> inputs = List.of(
                new Why.Input("path from anchor to attachment", series.path(position), "m"),
                new Why.Input("dead length", series.line().deadLength(), "m"),
                new Why.Input("length of the rubber", series.rubberLength(position), "m"),
                new Why.Input("its natural length as hung", series.strand().naturalLength(), "m"),
                new Why.Input("stretch (length over natural length)", series.stretch(position), ""),
                new Why.Input("strands", strands, ""),
                new Why.Input("pull of one strand", series.tension(phase, position), "N"),
                new Why.Input("pull of all strands", tension, "N"));
        return new Why(
                along,
                "N",
                "strands × pull of one strand × the share of it along the rail",
                inputs,
                List.of(),
                series.line().rubber().law().formula() + "; "
                        + series.line().rubber().unloading().formula());
    }

    private PressLimb limb(Why.Place at) {
        return profile.limbs().get(at.limb());
    }
}
