package counterpull.crosscheck;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.engine.Refusal;
import counterpull.engine.load.Cable;
import counterpull.engine.load.Loaded;
import counterpull.engine.load.Resistance;
import counterpull.engine.load.StackLine;
import counterpull.engine.motion.BodyPoint;
import counterpull.engine.motion.ChainPath;
import counterpull.engine.motion.Phase;
import counterpull.engine.planar.Vec;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import us.ihmc.euclid.tuple3D.Vector3D;

/**
 * The engine's cables on moving chains, whole ranges and all phases, against the multibody library: how a line runs comes from the
 * library's own place, velocity and acceleration of its end, the tension from the law as it is written down.
 *
 * <p>Tolerance: 1e-9 of the largest torque; rounding leaves some 1e-13.
 */
class CableCrosscheckTest {
    private static final double CLOSE = 1e-9;
    private static final int TRIALS = 80;
    private static final double PLATES = 15;

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6})
    void cablesOnMovingChains(int segments) {
        MovingPath random = new MovingPath(60 + segments);
        int compared = 0;
        for (int trial = 0; trial < TRIALS; trial++) {
            OptionalDouble worst = worst(random, segments, UnaryOperator.identity());
            if (worst.isPresent()) {
                assertThat(worst.getAsDouble()).as("trial %s", trial).isLessThan(CLOSE);
                compared++;
            }
        }
        assertThat(compared).as("movements without a slack stack").isGreaterThan(TRIALS / 2);
    }

    /** Controls: the library's line without its acceleration, or rubbing the other way, is seen. */
    @Test
    void aWrongLineIsSeen() {
        for (UnaryOperator<LineMotion> wrong :
                List.<UnaryOperator<LineMotion>>of(line -> line.withAcceleration(0), LineMotion::backwards)) {
            MovingPath random = new MovingPath(9);
            for (int trial = 0; trial < TRIALS; trial++) {
                OptionalDouble worst = worst(random, 1 + trial % 6, wrong);
                assertThat(worst.orElse(1)).isGreaterThan(CLOSE);
            }
        }
    }

    /** Largest mismatch over a random movement with two cables and a random line; empty where the engine refuses a slack stack. */
    private static OptionalDouble worst(MovingPath random, int segments, UnaryOperator<LineMotion> seen) {
        ChainPath path = random.next(segments);
        List<Cable> cables = List.of(cable(random, path, true), cable(random, path, false));
        LibraryChain library = new LibraryChain(path.chain(), 0, -MovingChain.GRAVITY);
        LibraryPoints points = new LibraryPoints(library);
        double worst = 0;
        for (Phase phase : Phase.values()) {
            for (int i = 0; i < path.positions(); i++) {
                PathRoutes.Moment at = new PathRoutes.Moment(phase, i);
                double[] ours;
                try {
                    ours = PathRoutes.engine(path, new ArrayList<Resistance>(cables), PLATES, at);
                } catch (Refusal slack) {
                    return OptionalDouble.empty();
                }
                double[] theirs = new double[segments];
                List<LineMotion> lines = cables.stream()
                        .map(cable -> seen.apply(line(library, points, cable, path, at)))
                        .toList();
                PathRoutes.library(library, path, at);
                for (int k = 0; k < lines.size(); k++) {
                    pull(library, cables.get(k), lines.get(k));
                }
                library.torques(theirs);
                worst = Math.max(worst, PathRoutes.mismatch(ours, theirs));
            }
        }
        return OptionalDouble.of(worst);
    }

    private static Cable cable(MovingPath random, ChainPath path, boolean plates) {
        double own = random.between(2, 60);
        StackLine line = new StackLine(
                1 + 0.5 * random.below(4),
                random.between(0, 0.2),
                plates ? Loaded.with(own) : Loaded.always(own),
                random.between(0, 0.5));
        Vec pulley = Vec.unit(random.between(-3, 3)).times(random.between(4, 6));
        return new Cable("cable", random.point(path), pulley, line);
    }

    /** As the library has it; where nothing moves, the way it would run: from the same instant with x at unit speed. */
    private static LineMotion line(
            LibraryChain library, LibraryPoints points, Cable cable, ChainPath path, PathRoutes.Moment at) {
        PathRoutes.library(library, path, at);
        LineMotion now = line(points, cable);
        if (at.phase() == Phase.HELD || path.course().speed(at.phase(), at.position()) != 0) {
            return now;
        }
        double sense = at.phase() == Phase.LIFTING ? 1 : -1;
        PathRoutes.library(library, path, at.position(), new Vec(sense, 0));
        return new LineMotion(now.direction(), now.length(), line(points, cable).rate(), now.acceleration());
    }

    private static LineMotion line(LibraryPoints points, Cable cable) {
        points.update();
        BodyPoint end = cable.at();
        return LineMotion.of(
                vec(points.place(end.segment(), end.at().x(), end.at().y())).minus(cable.pulley()),
                vec(points.velocity(end.segment(), end.at().x(), end.at().y())),
                vec(points.acceleration(end.segment(), end.at().x(), end.at().y())));
    }

    private static void pull(LibraryChain library, Cable cable, LineMotion line) {
        StackLine stack = cable.line();
        StackCable law = new StackCable(
                cable.at().segment(),
                cable.at().at().x(),
                cable.at().at().y(),
                cable.pulley(),
                new StackCable.Stack(stack.stack().mass(PLATES), stack.moving(), stack.ratio(), stack.friction()));
        Vec pull = law.pull(StackCable::tension, line, MovingChain.GRAVITY);
        library.loadAt(law.segment(), new Vector3D(law.along(), law.across(), 0), new Vector3D(pull.x(), pull.y(), 0));
    }

    private static Vec vec(Vector3D vector) {
        return new Vec(vector.getX(), vector.getY());
    }
}
