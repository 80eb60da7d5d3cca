package counterpull.engine.profile;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.engine.body.Action;
import counterpull.engine.body.Joint;
import counterpull.engine.choice.Caps;
import counterpull.engine.choice.EffortTarget;
import counterpull.engine.choice.Goal;
import counterpull.engine.choice.Judge;
import counterpull.engine.choice.LimitKind;
import counterpull.engine.choice.Verdict;
import counterpull.engine.motion.Phase;
import counterpull.engine.planar.Angles;
import counterpull.engine.strength.LimbStrength;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What the stated interval of push directions changes. */
class PushIntervalTest {
    private static final List<Joint> ALL = Joint.LEG;

    private static Goal goal(double ceiling, Goal.Straying straying) {
        return new Goal(EffortTarget.flat(0.5), ceiling, 0, ALL, Caps.none(), straying);
    }

    @Test
    void aCeilingPassedOnlyInsideTheIntervalRejectsOnlyIfItMustHoldThere() {
        PressProfile profile = PressProfile.of(Trials.task());
        double told = Judge.of(profile, goal(2, Goal.Straying.AS_TOLD))
                .peak()
                .orElseThrow()
                .limiting()
                .effort();
        PushCheck check = PushCheck.of(profile, ALL);
        assertThat(check.peak()).isGreaterThan(told);
        double between = (told + check.peak()) / 2;
        assertThat(check.matters(between)).isTrue();
        assertThat(Judge.of(profile, goal(between, Goal.Straying.AS_TOLD)).feasible())
                .isTrue();
        Verdict strict = Judge.of(profile, goal(between, Goal.Straying.WHOLE_INTERVAL));
        assertThat(strict.feasible()).isFalse();
        assertThat(strict.tightest().orElseThrow().kind()).isEqualTo(LimitKind.CEILING);
        assertThat(strict.tightest().orElseThrow().value()).isEqualTo(check.peak());
    }

    @Test
    void aBreachInsideTheIntervalNamesWhatIsAskedThere() {
        // near straight the knee is asked for flexion as told, for extension when pushing 20° toward the head
        LimbStrength strength = Trials.strong(5000, 20, 5000).with(Action.KNEE_FLEXION, Trials.flat(500));
        Limb old = Trials.pair(strength).limbs().get(0);
        Limb limbNearStraight = new Limb(old.side(), old.leg(), 1, Trials.range(16, 8), old.ranges(), strength);
        PressTask task = Trials.with(
                Trials.with(Trials.task(), new Person(80, List.of(limbNearStraight))),
                new Pushing(new Push.Angled(0), Angles.radians(20)));
        PressProfile profile = PressProfile.of(task);
        Verdict verdict = Judge.of(profile, goal(2, Goal.Straying.WHOLE_INTERVAL));
        var where = verdict.nearest().get(0).where();
        PressLimb limb = profile.limbs().get(0);
        double angle = limb.pushAngle(where.phase(), where.position());
        double most = 0;
        Joint worst = null;
        double asked = 0;
        for (double turn : new double[] {-1, 1}) {
            double tangent = Math.tan(angle + turn * Angles.radians(20));
            for (Joint joint : ALL) {
                double effort = limb.effortPushing(joint, where.phase(), where.position(), tangent);
                if (effort > most) {
                    most = effort;
                    worst = joint;
                    asked = limb.torquePushing(joint, where.phase(), where.position(), tangent);
                }
            }
        }
        assertThat(verdict.nearest().get(0).value()).isEqualTo(most);
        assertThat(where.action()).contains(asked >= 0 ? worst.action() : worst.opposite());
        assertThat(Math.signum(asked)).isNotEqualTo(Math.signum(limb.torque(worst, where.phase(), where.position())));
    }

    @Test
    void anotherJointThatLimitsInsideTheIntervalIsCounted() {
        PressProfile profile = PressProfile.of(Trials.task(Trials.strong(70, 180, 900)));
        PushCheck check = PushCheck.of(profile, ALL);
        assertThat(check.changes()).isPositive();
        assertThat(check.looked()).isEqualTo(3 * 21);
        assertThat(check.matters(100)).isTrue();
    }

    @Test
    void oneNamedJointNeverChanges() {
        PushCheck check = PushCheck.of(PressProfile.of(Trials.task()), List.of(Joint.KNEE));
        assertThat(check.changes()).isZero();
    }

    @Test
    void findsEveryChangeThatAFineScanFinds() {
        Random random = new Random(20261125);
        int inside = 0;
        for (int trial = 0; trial < 60; trial++) {
            PressTask base = Trials.task(Trials.strong(
                    40 + 400 * random.nextDouble(), 10 + 60 * random.nextDouble(), 100 + 2000 * random.nextDouble()));
            double spread = Angles.radians(5 + 20 * random.nextDouble());
            double angle = Angles.radians(30 * random.nextDouble() - 15);
            PressProfile profile = PressProfile.of(Trials.with(base, new Pushing(new Push.Angled(angle), spread)));
            int scanned = 0;
            int ends = 0;
            for (Phase phase : Phase.values()) {
                for (int i = 0; i < profile.positions(); i++) {
                    scanned += changes(profile, phase, i, 1000) ? 1 : 0;
                    ends += changes(profile, phase, i, 2) ? 1 : 0;
                }
            }
            assertThat(PushCheck.of(profile, ALL).changes()).isGreaterThanOrEqualTo(scanned);
            inside += scanned - ends;
        }
        // the trials must hold cases that the two ends alone would miss, or this test shows nothing
        assertThat(inside).isPositive();
    }

    private static boolean changes(PressProfile profile, Phase phase, int i, int steps) {
        Joint told = limiting(profile, phase, i, 0);
        double spread = profile.task().pushing().spread();
        for (int k = 0; k <= steps; k++) {
            if (limiting(profile, phase, i, spread * (2.0 * k / steps - 1)) != told) {
                return true;
            }
        }
        return false;
    }

    private static Joint limiting(PressProfile profile, Phase phase, int i, double turn) {
        PressLimb limb = profile.limbs().get(0);
        double tangent = Math.tan(limb.pushAngle(phase, i) + turn);
        Joint found = Joint.HIP;
        for (Joint joint : ALL) {
            double effort = limb.effortPushing(joint, phase, i, tangent);
            found = effort > limb.effortPushing(found, phase, i, tangent) + Limiting.TIE ? joint : found;
        }
        return found;
    }
}
