package counterpull.engine.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.body.Action;
import counterpull.engine.body.Joint;
import counterpull.engine.body.Sex;
import counterpull.engine.body.Side;
import counterpull.engine.profile.Limb;
import counterpull.engine.profile.Person;
import counterpull.engine.profile.PressTask;
import counterpull.engine.profile.Trials;
import counterpull.engine.strength.BentCurve;
import counterpull.engine.strength.IsometricTest;
import counterpull.engine.strength.Physique;
import counterpull.engine.strength.Prior;
import counterpull.engine.strength.StrengthCurve;
import counterpull.engine.strength.Tester;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Which reading next, against doing it. */
class NextReadingsTest {
    private static final Prior PRIOR = Prior.of(Action.KNEE_EXTENSION, new Physique(Sex.MALE, 35, 80, 1.75))
            .orElseThrow();

    private static PressTask with(List<IsometricTest> left) {
        List<Limb> limbs = new ArrayList<>();
        for (Limb limb : UnsureTasks.press().person().limbs()) {
            StrengthCurve curve = limb.side() == Side.LEFT ? BentCurve.of(PRIOR, left) : PRIOR;
            double share = limb.side() == Side.LEFT ? 0.6 : 0.4;
            limbs.add(
                    Trials.limb(limb.side(), limb.leg(), share, limb.strength().with(Action.KNEE_EXTENSION, curve)));
        }
        return UnsureTasks.press().with(new Person(80, limbs));
    }

    private static List<NextReading> next(PressTask task, Stated stated) {
        Doubts<PressTrial> doubts = Doubts.of(task, stated);
        return NextReadings.of(doubts, now(task, stated), Tester.BELT_FIXED);
    }

    private static Contributions now(PressTask task, Stated stated) {
        return Contributions.of(Doubts.of(task, stated), List.of(Joint.KNEE)).orElseThrow();
    }

    /** The closed form of one test: k(s, x)²/(k(x, x) + n) at the hardest place s. Between the angles of the draws a straight line. */
    @Test
    void aTestTakesWhatTheClosedFormSays() {
        PressTask task = with(List.of());
        Contributions now = now(task, Stated.certain());
        NextReading first = next(task, Stated.certain()).get(0);
        NextReading.Test test = (NextReading.Test) first.what();
        assertThat(test.side()).isEqualTo(Side.LEFT);
        assertThat(test.action()).isEqualTo(Action.KNEE_EXTENSION);
        double s = now.hardest().angle();
        double x = test.angle();
        double noise = Math.log(1 + 0.08 * 0.08);
        double shared = PRIOR.logCovariance(s, x);
        double left = PRIOR.logCovariance(s, s) - shared * shared / (PRIOR.logCovariance(x, x) + noise);
        assertThat(first.after()).isCloseTo(Math.sqrt(left), within(0.01 * Math.sqrt(left)));
        assertThat(Math.abs(s - x))
                .as("a test near the hardest place tells most")
                .isLessThan(Math.toRadians(15));
    }

    /** The test done, whatever it shows near the middle: the spread is what was promised. */
    @Test
    void doingItShrinksTheSpreadAsPromised() {
        PressTask task = with(List.of());
        NextReading first = next(task, Stated.nothing()).get(0);
        NextReading.Test test = (NextReading.Test) first.what();
        IsometricTest done = new IsometricTest(test.angle(), PRIOR.held(test.angle()), 0.08);
        Contributions after = now(with(List.of(done)), Stated.nothing());
        assertThat(first.before()).isCloseTo(now(task, Stated.nothing()).total(), within(1e-12));
        assertThat(after.total()).isLessThan(first.before()).isCloseTo(first.after(), within(0.03 * first.after()));
    }

    /** With strength well tested the next reading is another one, and it is worth what halving its variance is worth. */
    @Test
    void aSecondReadingHalvesAVariance() {
        Stated stated = Stated.certain().with(Input.RAIL_ANGLE, Math.toRadians(3));
        PressTask task = UnsureTasks.certain();
        NextReading first = next(task, stated).get(0);
        assertThat(((NextReading.Measure) first.what()).words()).isEqualTo("measure the rail's angle once more");
        assertThat(first.after()).isCloseTo(first.before() * Math.sqrt(0.5), within(1e-9));
        assertThat(first.gain()).isCloseTo(0.5, within(1e-9));
    }

    @Test
    void whatNoReadingHelpsIsNotNamed() {
        Stated stated = Stated.certain().with(Input.PUSH, Math.toRadians(5));
        assertThat(next(UnsureTasks.certain(), stated)).isEmpty();
    }

    @Test
    void theBestComesFirst() {
        List<NextReading> found = next(with(List.of()), Stated.nothing());
        assertThat(found).hasSizeGreaterThan(2);
        for (int k = 1; k < found.size(); k++) {
            assertThat(found.get(k).after())
                    .isGreaterThanOrEqualTo(found.get(k - 1).after());
        }
    }
}
