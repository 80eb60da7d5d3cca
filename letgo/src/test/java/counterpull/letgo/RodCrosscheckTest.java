package counterpull.letgo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.Constants;
import counterpull.engine.Refusal;
import counterpull.engine.body.Joint;
import counterpull.engine.load.Contact;
import counterpull.engine.load.Cuff;
import counterpull.engine.load.GuidedMass;
import counterpull.engine.load.Ledger;
import counterpull.engine.load.LeverFrame;
import counterpull.engine.load.LeverPath;
import counterpull.engine.load.Pull;
import counterpull.engine.load.Resistance;
import counterpull.engine.load.RollerPad;
import counterpull.engine.motion.BodyPoint;
import counterpull.engine.motion.ChainPath;
import counterpull.engine.motion.Course;
import counterpull.engine.motion.FullStop;
import counterpull.engine.motion.Hinge;
import counterpull.engine.motion.Motion;
import counterpull.engine.motion.Phase;
import counterpull.engine.motion.PointTrack;
import counterpull.engine.motion.Tempo;
import counterpull.engine.motion.WorkingRange;
import counterpull.engine.planar.Angles;
import counterpull.engine.planar.Vec;
import counterpull.engine.regression.Examples;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * The machine alone against the same machine as a limb moves it: seeded random levers by pads and cuffs off the joint, and carriages that a
 * shank pushes along its arc. What the limb puts in, by the engine's forces on the limb, is what the machine's own equation of motion
 * says; what is stored, in motion and lost, by the engine's ledgers, is what its energies say.
 */
class RodCrosscheckTest {
    private static final int TRIALS = 400;
    private static final double PLATES = 20;
    // a few hundred newtons, through two geometries and differences of friction over accelerations below 1
    private static final double TOLERANCE = 1e-9;

    private final Random random = new Random(71);
    private final RandomParts parts = new RandomParts(random);

    private ChainPath shank() {
        Hinge hinge = new Hinge(Joint.KNEE, parts.between(-0.5, 0.5), Map.of(), Hinge.Lie.UPRIGHT);
        double bottom = Angles.radians(parts.between(70, 90));
        double top = Angles.radians(parts.between(10, 40));
        Tempo tempo = new FullStop(new Tempo.Seconds(parts.between(1, 4), 0, parts.between(1, 4), 0));
        return hinge.path(new Motion.Moving(
                Examples.body().side(),
                1,
                new WorkingRange(bottom, top, bottom),
                Course.even(bottom - top, 9, tempo),
                List.of()));
    }

    /** The same machine on the limb and on the rod, with how u goes with the stroke. */
    private record Pair(ChainPath limb, List<Resistance> resists, FreePart part, double[] u, PointTrack way) {}

    private static FreePart part(Rod rod, List<Resistance> resists) {
        List<Resistance> carried = new ArrayList<>();
        resists.forEach(one -> carried.add(rod.carry(one).orElseThrow()));
        FreePart.Surroundings around = new FreePart.Surroundings(Constants.STANDARD_GRAVITY, PLATES);
        return new FreePart(rod, carried, around, Ends.Bottom.NOTHING);
    }

    private Pair lever() {
        ChainPath limb = shank();
        Contact contact = random.nextBoolean()
                ? new Cuff(0, parts.between(0.2, 0.35))
                : new RollerPad(0, parts.between(0.2, 0.35), RollerPad.Pushes.values()[random.nextInt(2)]);
        LeverFrame frame = new LeverFrame(new Vec(parts.between(-0.08, 0.08), parts.between(-0.08, 0.08)), contact);
        LeverPath lever = frame.over(limb);
        double[] u = new double[limb.positions()];
        PointTrack way = new PointTrack(u.length);
        for (int i = 0; i < u.length; i++) {
            u[i] = lever.sense() * (lever.angle(i) - lever.angle(0));
            way.set(
                    i,
                    new Vec(u[i], 0),
                    new Vec(lever.sense() * lever.slope(i), 0),
                    new Vec(lever.sense() * lever.curve(i), 0));
        }
        LeverRod rod = new LeverRod(frame, lever.angle(0), lever.sense(), u[u.length - 1]);
        List<Resistance> resists = parts.on(rod);
        return new Pair(limb, resists, part(rod, resists), u, way);
    }

    private Pair carriage() {
        ChainPath limb = shank();
        BodyPoint at = new BodyPoint("shank", 0, new Vec(0.4, 0.03));
        PointTrack track = limb.track(at);
        Vec chord = track.at(limb.positions() - 1).minus(track.at(0));
        double toward = Math.atan2(chord.y(), chord.x()) + parts.between(-0.3, 0.3);
        List<Resistance> resists = parts.onRail(at, track.at(0), toward);
        Vec along = Vec.unit(toward);
        double[] u = new double[limb.positions()];
        PointTrack way = new PointTrack(u.length);
        for (int i = 0; i < u.length; i++) {
            u[i] = along.dot(track.at(i).minus(track.at(0)));
            way.set(i, new Vec(u[i], 0), new Vec(along.dot(track.slope(i)), 0), new Vec(along.dot(track.curve(i)), 0));
        }
        RailRod rod = new RailRod(((GuidedMass) resists.get(0)).frame(), track.at(0), toward, u[u.length - 1]);
        return new Pair(limb, resists, part(rod, resists), u, way);
    }

    @Test
    void theLimbPutsInWhatTheEquationOfMotionSays() {
        int compared = 0;
        for (int trial = 0; trial < TRIALS; trial++) {
            try {
                Pair pair = trial % 3 == 0 ? carriage() : lever();
                for (Phase phase : Phase.values()) {
                    for (int i = 0; i < pair.u().length; i++) {
                        force(pair, phase, i, "trial " + trial + ", " + phase + " at " + i);
                        lost(pair, phase, i, "trial " + trial + ", " + phase + " at " + i);
                    }
                }
                energies(pair);
                compared++;
            } catch (Refusal refusal) {
                assertThat(refusal.fault())
                        .as("a geometry that no limb can carry")
                        .isNotNull();
            }
        }
        assertThat(compared).isGreaterThan(TRIALS * 3 / 4);
    }

    private static void force(Pair pair, Phase phase, int i, String where) {
        double onMachine = 0;
        double scale = 1;
        for (Resistance resistance : pair.resists()) {
            for (Pull pull : resistance.on(pair.limb(), Constants.STANDARD_GRAVITY)) {
                double size = pull.size(pair.limb().course().cell(phase, i), PLATES);
                onMachine += size
                        * (pull.isCouple()
                                ? pair.limb().slope(pull.at().segment(), i)
                                : pull.direction(i)
                                        .dot(pair.limb().track(pull.at()).slope(i)));
                scale = Math.max(scale, Math.abs(size));
            }
        }
        double own = equation(pair, phase, i) * pair.way().slope(i).x();
        assertThat(onMachine).as(where).isCloseTo(own, within(TOLERANCE * scale));
    }

    /** Everything but the limb, less M ü + ½ M′ u̇²: what the limb has to hold against. */
    private static double equation(Pair pair, Phase phase, int i) {
        FreePart part = pair.part();
        double u = pair.u()[i];
        if (phase == Phase.HELD) {
            return part.weight(u) + part.storing(u);
        }
        double v = pair.way().velocity(pair.limb().course(), phase, i).x();
        double a = pair.way().acceleration(pair.limb().course(), phase, i).x();
        Sense sense = phase == Phase.LIFTING ? Sense.UP : Sense.DOWN;
        return part.weight(u)
                + part.rubber(u, sense)
                - sense.sign() * rubs(part, u, v, a)
                - part.inertia(u) * a
                - part.inertiaSlope(u) * v * v / 2;
    }

    private static double rubs(FreePart part, double u, double v, double a) {
        return part.friction(u) + part.rubbedInertia(u) * a + part.rubbedInertiaSlope(u) * v * v / 2;
    }

    private static void lost(Pair pair, Phase phase, int i, String where) {
        if (phase == Phase.HELD) {
            return;
        }
        Course course = pair.limb().course();
        double lost = 0;
        double kinetic = 0;
        for (Resistance resistance : pair.resists()) {
            Ledger ledger = resistance.ledger(pair.limb(), Constants.STANDARD_GRAVITY, PLATES);
            lost += ledger.lost()[course.cell(phase, i)];
            kinetic += ledger.kinetic()[course.cell(phase, i)];
        }
        FreePart part = pair.part();
        double u = pair.u()[i];
        double v = pair.way().velocity(course, phase, i).x();
        double a = pair.way().acceleration(course, phase, i).x();
        Sense sense = phase == Phase.LIFTING ? Sense.UP : Sense.DOWN;
        double own = sense.sign() * rubs(part, u, v, a) * v + (part.storing(u) - part.rubber(u, sense)) * v;
        assertThat(own).as("lost, " + where).isCloseTo(lost, within(1e-8));
        assertThat(part.inertia(u) * v * v / 2).as("in motion, " + where).isCloseTo(kinetic, within(1e-9));
    }

    private static void energies(Pair pair) {
        Course course = pair.limb().course();
        int top = pair.u().length - 1;
        double stored = 0;
        for (Resistance resistance : pair.resists()) {
            Ledger ledger = resistance.ledger(pair.limb(), Constants.STANDARD_GRAVITY, PLATES);
            stored += ledger.stored()[course.cell(Phase.HELD, top)] - ledger.stored()[course.cell(Phase.HELD, 0)];
        }
        FreePart part = pair.part();
        double up = pair.u()[top];
        double own = part.weightEnergy(up) - part.weightEnergy(0) + part.rubberEnergy(up) - part.rubberEnergy(0);
        assertThat(own).as("stored on the way up").isCloseTo(stored, within(1e-9));
    }
}
