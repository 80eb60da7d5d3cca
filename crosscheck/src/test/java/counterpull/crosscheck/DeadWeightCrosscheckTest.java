package counterpull.crosscheck;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.engine.load.DeadWeight;
import counterpull.engine.load.Loaded;
import counterpull.engine.load.Resistance;
import counterpull.engine.motion.BodyPoint;
import counterpull.engine.motion.ChainPath;
import counterpull.engine.motion.Phase;
import counterpull.engine.planar.Chain;
import counterpull.engine.planar.Vec;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Dead weights anywhere on moving chains: forces on points for the engine, part of the bodies themselves for the multibody library
 * (heavier segments, their centres of mass moved, the parallel axis). It never hears of a force.
 *
 * <p>Tolerance: 1e-9 of the largest torque; rounding leaves some 1e-14.
 */
class DeadWeightCrosscheckTest {
    private static final double CLOSE = 1e-9;
    private static final int TRIALS = 60;
    private static final double PLATES = 12.5;

    private record Ridden(BodyPoint at, double mass) {}

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6})
    void aWeightThatRidesIsAPartOfItsSegment(int segments) {
        MovingPath random = new MovingPath(40 + segments);
        for (int trial = 0; trial < TRIALS; trial++) {
            assertThat(worst(random.next(segments), random, 1))
                    .as("trial %s", trial)
                    .isLessThan(CLOSE);
        }
    }

    /** A control: a weight a millionth too heavy in one of the two is seen. */
    @ParameterizedTest
    @ValueSource(ints = {1, 3, 6})
    void aMillionthIsSeen(int segments) {
        MovingPath random = new MovingPath(50 + segments);
        for (int trial = 0; trial < TRIALS; trial++) {
            assertThat(worst(random.next(segments), random, 1 + 1e-6)).isGreaterThan(CLOSE);
        }
    }

    private static double worst(ChainPath path, MovingPath random, double factor) {
        List<Resistance> things = new ArrayList<>();
        List<Ridden> ridden = new ArrayList<>();
        for (int k = 0; k < 3; k++) {
            BodyPoint at = random.point(path);
            double own = random.between(0.5, 20);
            Loaded loaded = k == 0 ? Loaded.with(own) : Loaded.always(own);
            things.add(new DeadWeight("weight " + k, at, loaded));
            ridden.add(new Ridden(at, factor * loaded.mass(PLATES)));
        }
        LibraryChain library = new LibraryChain(heavier(path.chain(), ridden), 0, -MovingChain.GRAVITY);
        double worst = 0;
        for (Phase phase : Phase.values()) {
            for (int i = 0; i < path.positions(); i++) {
                PathRoutes.Moment at = new PathRoutes.Moment(phase, i);
                double[] theirs = new double[path.segments()];
                PathRoutes.library(library, path, at).torques(theirs);
                worst = Math.max(worst, PathRoutes.mismatch(PathRoutes.engine(path, things, PLATES, at), theirs));
            }
        }
        return worst;
    }

    private static Chain heavier(Chain chain, List<Ridden> ridden) {
        Chain.Builder builder = Chain.build();
        for (int i = 0; i < chain.size(); i++) {
            int segment = i;
            List<Ridden> here = new ArrayList<>();
            here.add(new Ridden(
                    new BodyPoint("segment", i, new Vec(chain.comAlong(i), chain.comAcross(i))), chain.mass(i)));
            ridden.stream().filter(each -> each.at().segment() == segment).forEach(here::add);
            add(builder, chain.length(i), here, chain.inertia(i));
        }
        return builder.done();
    }

    private static void add(Chain.Builder builder, double length, List<Ridden> parts, double inertia) {
        double mass = 0;
        Vec moment = new Vec(0, 0);
        for (Ridden part : parts) {
            mass += part.mass();
            moment = moment.plus(part.at().at().times(part.mass()));
        }
        Vec com = moment.times(1 / mass);
        double sum = inertia;
        for (Ridden part : parts) {
            Vec apart = part.at().at().minus(com);
            sum += part.mass() * apart.dot(apart);
        }
        builder.segment(length, mass, com, sum);
    }
}
