package counterpull.letgo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.load.LineSeries;
import counterpull.engine.load.Part;
import counterpull.engine.motion.Phase;
import counterpull.engine.motion.Ride;
import counterpull.engine.profile.Groundwork;
import counterpull.engine.profile.PressProfile;
import counterpull.engine.profile.PressTask;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A sled by itself against the profile of the same sled with a person on it: two ways to the same forces. */
class SledCrosscheckTest {
    private static final int SLEDS = 200;
    // a few hundred newtons out of sums and products
    private static final double ROUNDING = 1e-8;

    @Test
    void pullsWithWhatThePersonHasToPushWithLessWhatAcceleratesIt() {
        RandomMachines machines = new RandomMachines(21);
        for (int k = 0; k < SLEDS; k++) {
            PressTask task = machines.task();
            FreeSled sled = FreeSled.of(task);
            PressProfile profile = evenWithoutContact(task);
            for (int i = 0; i < profile.positions(); i++) {
                double x = sled.placeOf(profile.plate(i));
                double friction = sled.friction(x);
                assertThat(sled.drive(x, Sense.DOWN) + friction)
                        .isCloseTo(-still(profile, Phase.LOWERING, i), within(ROUNDING));
                assertThat(sled.drive(x, Sense.UP) - friction)
                        .isCloseTo(-still(profile, Phase.LIFTING, i), within(ROUNDING));
                assertThat(sled.weight(x) + sled.storing(x))
                        .isCloseTo(-still(profile, Phase.HELD, i), within(ROUNDING));
            }
        }
    }

    @Test
    void whereThePlateRidesItsInertiaIsTheProfiles() {
        RandomMachines machines = new RandomMachines(22);
        int seen = 0;
        for (int k = 0; k < SLEDS; k++) {
            PressTask task = machines.task();
            if (task.sled().rail().ride() == Ride.PLATE) {
                PressProfile profile = evenWithoutContact(task);
                double a = profile.ground().motion().acceleration(Phase.LIFTING, 1);
                assertThat(FreeSled.of(task).inertia(0) * a)
                        .isCloseTo(profile.force(Part.INERTIA, Phase.LIFTING, 1), within(ROUNDING));
                seen++;
            }
        }
        assertThat(seen).isGreaterThan(SLEDS / 4);
    }

    private static double still(PressProfile profile, Phase phase, int i) {
        return profile.force(phase, i) - profile.force(Part.INERTIA, phase, i);
    }

    private static PressProfile evenWithoutContact(PressTask task) {
        Groundwork ground = Groundwork.of(task);
        List<LineSeries> lines = new ArrayList<>();
        task.loading().lines().forEach(line -> lines.add(ground.series(line)));
        return PressProfile.onGround(ground.with(lines), task.loading());
    }
}
