package counterpull.letgo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.Constants;
import counterpull.engine.load.Friction;
import counterpull.engine.load.Loaded;
import counterpull.engine.load.StackLine;
import counterpull.engine.profile.Loading;
import counterpull.engine.profile.PressTask;
import counterpull.engine.profile.Sled;
import counterpull.engine.profile.Trials;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A sled that a stack draws back to its stop when nobody pushes: closed forms. */
class StackOutcomeTest {
    private static final double G = Constants.STANDARD_GRAVITY;
    // steps are held to 1e-11 of every component, and there are a few dozen
    private static final double STEPS = 1e-9;

    private static Outcome letGo(double degrees, StackLine line) {
        PressTask bare = Sleds.stopped(degrees, Friction.none(), Loading.plates(60));
        Sled sled = bare.sled();
        PressTask task = Trials.with(bare, new Sled(sled.rail(), sled.carriage(), sled.stops(), Optional.of(line)));
        return LetGo.of(FreeSled.of(task), Release.held(0.2));
    }

    /** Level: the stack of 60 kg at 2:1 pulls 30 g on 40 kg of carriage, 15 kg of felt stack and 2 kg of line. */
    @Test
    void theStackDrawsALevelCarriageBack() {
        Outcome outcome = letGo(0, new StackLine(2, 0, Loaded.with(0), 2));
        double a = 30 * G / 57;
        assertThat(outcome.ending()).isEqualTo(Ending.ON_THE_STOP);
        assertThat(outcome.arrivalSpeed()).isCloseTo(Math.sqrt(2 * a * 0.2), within(STEPS));
        assertThat(outcome.end().time()).isCloseTo(Math.sqrt(2 * 0.2 / a), within(STEPS));
    }

    /** A tenth of what the stack pulls is lost in the line, of what slows its fall too: 0.9 · 60 (g − a/2)/2 draws 42 kg. */
    @Test
    void frictionOfTheLineTakesItsShare() {
        Outcome outcome = letGo(0, new StackLine(2, 0.1, Loaded.with(0), 2));
        double a = 27 * G / (42 + 0.9 * 15);
        assertThat(outcome.arrivalSpeed()).isCloseTo(Math.sqrt(2 * a * 0.2), within(STEPS));
        assertThat(outcome.energy().friction()).isCloseTo(0.1 * 30 * (G - a / 2) * 0.2, within(1e-8));
        assertThat(outcome.energy().error()).isLessThan(STEPS);
    }

    /** Upright and one to one it falls as if all of it were on the carriage. */
    @Test
    void oneToOneOnAnUprightRailItFallsFreely() {
        Outcome outcome = letGo(90, new StackLine(1, 0, Loaded.with(0), 0));
        assertThat(outcome.arrivalSpeed()).isCloseTo(Math.sqrt(2 * G * 0.2), within(STEPS));
    }
}
