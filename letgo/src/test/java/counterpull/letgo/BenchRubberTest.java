package counterpull.letgo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.engine.elastic.BenchCurve;
import counterpull.engine.elastic.BenchReading;
import counterpull.engine.elastic.Rubber;
import counterpull.engine.elastic.UnloadingCurve;
import counterpull.engine.load.ElasticLine;
import counterpull.engine.load.Friction;
import counterpull.engine.load.Hang;
import counterpull.engine.load.Placement;
import counterpull.engine.planar.Vec;
import counterpull.engine.profile.Groundwork;
import counterpull.engine.profile.Loading;
import counterpull.engine.profile.PressProfile;
import counterpull.engine.profile.Trials;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Rubber as measured on a bench both ways (invented readings), hung above and below, all along a range. */
class BenchRubberTest {
    private static final Rubber MEASURED = new Rubber(
            "m",
            0.45,
            new BenchCurve(0.45, List.of(at(0.54, 28), at(0.63, 44), at(0.72, 56), at(0.90, 77), at(1.08, 98))),
            new UnloadingCurve(0.45, List.of(at(0.54, 24), at(0.63, 39.5), at(0.72, 51), at(0.90, 72.5))),
            1.08,
            0.05,
            0);

    private static BenchReading at(double length, double force) {
        return new BenchReading(length, force);
    }

    private static Releases along(double anchor, double plates) {
        var line = Trials.line(MEASURED, new Vec(Sleds.BOTTOM + anchor, 0.1), new Vec(0, 0));
        return SledReleases.of(
                PressProfile.of(Sleds.stopped(45, new Friction(15, 0.02, 24), new Loading(plates, List.of(line)))));
    }

    @Test
    void fromAboveItSoftensTheFall() {
        Releases with = along(0.9, 40);
        Releases without =
                SledReleases.of(PressProfile.of(Sleds.stopped(45, new Friction(15, 0.02, 24), Loading.plates(40))));
        assertThat(with.held()).hasSize(SledReleases.PLACES);
        assertThat(with.pulledUp()).isEmpty();
        assertThat(with.hangs()).isEmpty();
        assertThat(with.overstretches()).isFalse();
        assertThat(with.atBottom().arrivalSpeed()).isZero();
        assertThat(with.atTop().arrivalSpeed())
                .isLessThan(without.atTop().arrivalSpeed())
                .isGreaterThan(1);
        // energies that come from a cubic's exact integral, losses from steps held to 1e-11
        assertThat(with.largestError()).isLessThan(1e-8);
        assertThat(with.atTop().energy().hysteresis()).isZero();
    }

    @Test
    void fromBelowItGivesBackLessThanWasPutIn() {
        Releases with = along(-0.6, 40);
        EnergyAccount energy = with.atTop().energy();
        assertThat(energy.hysteresis()).isPositive();
        var strand = MEASURED.single();
        double top = Math.hypot(0.6 + with.atTop().release().place(), 0.1);
        double bottom = Math.hypot(0.6, 0.1);
        double lost =
                strand.energy(top) - strand.energyReturned(top) - strand.energy(bottom) + strand.energyReturned(bottom);
        // two exact integrals of cubics against an integration whose steps go over the joints of the cubics
        assertThat(energy.hysteresis()).isCloseTo(lost, within(1e-7));
        assertThat(with.largestError()).isLessThan(1e-8);
    }

    @Test
    void theHardestArrivalIsAtLeastEveryOther() {
        Releases with = along(0.9, 40);
        double most = with.hardest().orElseThrow().end().kinetic();
        assertThat(with.all())
                .allSatisfy(outcome -> assertThat(outcome.end().kinetic()).isLessThanOrEqualTo(most));
        int middle = SledReleases.PLACES / 2;
        assertThat(with.lowering().get(middle).arrivalSpeed())
                .as("the speed of lowering adds to the fall")
                .isGreaterThan(with.held().get(middle).arrivalSpeed());
    }

    @Test
    void withoutPlatesItPullsTheCarriageUpOrLeavesItHanging() {
        // 40 kg on 45° weigh 277 N, four pieces pull about 90 N each at the bottom
        var four = new ElasticLine(
                MEASURED,
                new ElasticLine.Pieces(4, Hang.SINGLE, Placement.CENTRED),
                0,
                Trials.ends(new Vec(Sleds.BOTTOM + 1, 0), new Vec(0, 0)));
        var task = Sleds.stopped(45, new Friction(15, 0.02, 24), new Loading(0, List.of(four)));
        var ground = Groundwork.of(task);
        var profile = PressProfile.onGround(ground, task.loading());
        Releases releases = SledReleases.of(profile);
        assertThat(releases.pulledUp()).isPresent();
        assertThat(releases.hangs()).isPresent();
        assertThat(releases.largestError()).isLessThan(1e-8);
    }
}
