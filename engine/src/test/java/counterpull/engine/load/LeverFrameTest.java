package counterpull.engine.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.motion.ChainPath;
import counterpull.engine.planar.Vec;
import org.junit.jupiter.api.Test;

/** Where a lever points and touches: by the picture it must fit, and by differences instead of derivatives. */
class LeverFrameTest {
    private static final double[] STENCIL = {4.0 / 5, -1.0 / 5, 4.0 / 105, -1.0 / 280};

    @Test
    void padAndCuffLieOnLimbAndLeverAtTheirStatedDistance() {
        RandomLever levers = new RandomLever(new RandomLimb(5));
        for (int trial = 0; trial < 60; trial++) {
            ChainPath path = levers.swinging();
            LeverFrame frame = levers.on(path);
            LeverPath lever = frame.over(path);
            int k = frame.contact().segment();
            for (int i = 0; i < path.positions(); i += 50) {
                Vec fromPivot = lever.contact(i).minus(frame.pivot());
                Vec fromJoint = lever.contact(i).minus(path.joint(k, i));
                // lengths of half a metre, a few roundings
                assertThat(fromPivot.cross(Vec.unit(lever.angle(i)))).isCloseTo(0, within(1e-13));
                assertThat(fromPivot.dot(Vec.unit(lever.angle(i)))).isPositive();
                assertThat(fromJoint.cross(Vec.unit(path.direction(k, i)))).isCloseTo(0, within(1e-13));
                double stated = frame.contact() instanceof Cuff cuff
                        ? fromJoint.norm() - cuff.onLimb()
                        : fromPivot.norm() - ((RollerPad) frame.contact()).onLever();
                assertThat(stated).isCloseTo(0, within(1e-13));
                assertThat(Math.abs(fromPivot.cross(lever.direction(i))))
                        .as("arm about the pivot")
                        .isCloseTo(lever.arm(i), within(1e-13));
                assertThat(Vec.unit(lever.angle(i)).dot(Vec.unit(path.direction(k, i))))
                        .as("of two answers the one along the limb")
                        .isPositive();
            }
        }
    }

    @Test
    void derivativesAreThoseOfTheAngles() {
        RandomLever levers = new RandomLever(new RandomLimb(6));
        for (int trial = 0; trial < 60; trial++) {
            ChainPath path = levers.swinging();
            LeverPath lever = levers.on(path).over(path);
            double h = path.course().travel() / (path.positions() - 1);
            for (int i = 10; i < path.positions() - 10; i += 20) {
                double slope = 0;
                double curve = 0;
                for (int k = 1; k <= STENCIL.length; k++) {
                    slope += STENCIL[k - 1] * (lever.angle(i + k) - lever.angle(i - k)) / h;
                    curve += STENCIL[k - 1] * (lever.slope(i + k) - lever.slope(i - k)) / h;
                }
                // h⁸ with h of some thousandths; near 80° the eighth derivative is large
                assertThat(lever.slope(i)).isCloseTo(slope, within(1e-9 * (1 + Math.abs(slope))));
                assertThat(lever.curve(i)).isCloseTo(curve, within(1e-7 * (1 + Math.abs(curve))));
            }
        }
    }

    @Test
    void aLeverAboutTheJointItselfPointsAlongTheLimb() {
        ChainPath path = new RandomLimb(8).next();
        for (Contact contact : new Contact[] {RollerPad.against(0, 0.25), new Cuff(0, 0.25)}) {
            LeverPath lever = new LeverFrame(new Vec(0, 0), contact).over(path);
            for (int i = 0; i < path.positions(); i += 40) {
                assertThat(lever.angle(i)).isCloseTo(path.direction(0, i), within(1e-14));
                assertThat(lever.slope(i)).isCloseTo(path.slope(0, i), within(1e-14));
                assertThat(lever.arm(i)).isCloseTo(0.25, within(1e-15));
                assertThat(lever.along(i)).isCloseTo(0.25, within(1e-15));
            }
        }
    }

    @Test
    void aPivotTooFarBesideTheLimbIsRefusedWithValueAndLimit() {
        ChainPath path = new RandomLimb(8).next();
        // beside the limb where it starts, by 0.3 m; a pad at 0.25 m reaches 0.25 sin 80°
        Vec beside = Vec.unit(path.direction(0, 0)).left().times(0.3);
        assertThatThrownBy(() -> new LeverFrame(beside, RollerPad.against(0, 0.25)).over(path))
                .isInstanceOfSatisfying(Refusal.class, refusal -> {
                    assertThat(refusal.fault()).isEqualTo(Fault.OUT_OF_REACH);
                    assertThat(refusal.value()).isCloseTo(0.3, within(1e-12));
                    assertThat(refusal.limit()).isCloseTo(0.25 * Math.sin(Math.toRadians(80)), within(1e-12));
                });
        Vec atCuff = Vec.unit(path.direction(0, 0)).times(0.25);
        assertThatThrownBy(() -> new LeverFrame(atCuff, new Cuff(0, 0.25)).over(path))
                .isInstanceOfSatisfying(Refusal.class, refusal -> {
                    assertThat(refusal.fault()).isEqualTo(Fault.OUT_OF_REACH);
                    assertThat(refusal.limit()).isEqualTo(0.02);
                });
        Vec behind = Vec.unit(path.direction(0, 0)).times(0.35);
        assertThatThrownBy(() -> new LeverFrame(behind, new Cuff(0, 0.25)).over(path))
                .as("a pivot beyond the cuff")
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.unit()).isEqualTo("rad"));
    }

    @Test
    void aPadThatWouldLeaveTheLimbIsRefused() {
        ChainPath path = new RandomLimb(8).next();
        double tooFar = path.chain().length(0) + 0.26;
        assertThatThrownBy(() -> new LeverFrame(new Vec(0, 0), RollerPad.against(0, tooFar)).over(path))
                .isInstanceOfSatisfying(Refusal.class, refusal -> {
                    assertThat(refusal.fault()).isEqualTo(Fault.OUT_OF_REACH);
                    assertThat(refusal.value()).isCloseTo(tooFar, within(1e-12));
                });
        Vec before = Vec.unit(path.direction(0, 0)).times(-0.3);
        assertThatThrownBy(() -> new LeverFrame(before, RollerPad.against(0, 0.25)).over(path))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.limit()).isZero());
        assertThatThrownBy(() -> new LeverFrame(new Vec(0, 0), new Cuff(9, 0.25)).over(path))
                .as("a segment that the chain has not")
                .isInstanceOf(Refusal.class);
    }
}
