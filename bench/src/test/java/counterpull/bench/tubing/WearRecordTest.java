package counterpull.bench.tubing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import counterpull.bench.Estimate;
import counterpull.bench.Remark;
import counterpull.engine.validation.Published;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

class WearRecordTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 1);

    private static WearTest test(LocalDate on, double natural, double force) {
        return new WearTest(on, Estimate.normal(natural, 0.001), 0.9, Estimate.normal(force, 0.4));
    }

    private static Wear wear(LocalDate today, int cycles, List<String> damage, WearTest... tests) {
        return new WearRecord("T1", List.of(tests), cycles, damage).on(today, WearLimits.USUAL);
    }

    private static List<String> codes(Wear wear) {
        return wear.reasons().stream().map(Remark::code).toList();
    }

    @Test
    void aFreshTestAsksForNothing() {
        Wear wear = wear(DAY.plusDays(91), 500, List.of(), test(DAY, 0.45, 38));
        assertThat(wear.due()).isEqualTo(Wear.Due.NOTHING);
        assertThat(wear.reasons()).isEmpty();
        assertThat(wear.sinceFirst()).isEmpty();
    }

    @Test
    void timeAndCyclesAskForATestOnTheFirstDayAndCycleTooMany() {
        Wear wear = wear(DAY.plusDays(92), 501, List.of(), test(DAY, 0.45, 38));
        assertThat(wear.due()).isEqualTo(Wear.Due.TEST);
        assertThat(codes(wear)).containsExactly("long-ago", "many-cycles");
        assertThat(wear.reasons().get(0).inSi()).contains("92 days").contains("2026-03-01");
        assertThat(codes(wear(DAY.minusDays(1), 0, List.of(), test(DAY, 0.45, 38))))
                .containsExactly("tested-in-future");
        assertThat(wear(DAY, 0, List.of()).due()).isEqualTo(Wear.Due.TEST);
    }

    @Test
    void driftIsWatchedAndThenBinned() {
        WearTest first = test(DAY, 0.45, 40);
        Wear watched = wear(DAY.plusDays(80), 0, List.of(), first, test(DAY.plusDays(80), 0.45, 35));
        assertThat(codes(watched)).containsExactly("force-drifts");
        assertThat(watched.due()).isEqualTo(Wear.Due.TEST);
        Estimate lost = watched.sinceFirst().orElseThrow();
        assertThat(lost.value()).isCloseTo(0.125, within(1e-12));
        assertThat(lost.standardError())
                .as("two relative errors added by squares")
                .isCloseTo(0.875 * Math.hypot(0.4 / 40, 0.4 / 35), within(1e-12));
        Wear gone = wear(DAY.plusDays(80), 0, List.of(), test(DAY.plusDays(80), 0.45, 31), first);
        assertThat(gone.due()).as("tests are put in order").isEqualTo(Wear.Due.BIN);
        assertThat(codes(gone)).containsExactly("force-lost");
    }

    @Test
    void lengthAndDamageBin() {
        assertThat(codes(wear(DAY, 0, List.of(), test(DAY.minusDays(9), 0.45, 38), test(DAY, 0.50, 38))))
                .containsExactly("stays-longer");
        Wear nick = wear(DAY, 0, List.of("a nick at the hook"), test(DAY, 0.45, 38));
        assertThat(nick.due()).isEqualTo(Wear.Due.BIN);
        assertThat(nick.reasons().get(0).inSi()).contains("a nick at the hook");
    }

    @Test
    void testsAtDifferentLengthsAreNotCompared() {
        WearTest other = new WearTest(DAY, Estimate.normal(0.45, 0.001), 1.0, Estimate.normal(20, 0.4));
        assertThat(wear(DAY, 0, List.of(), test(DAY.minusDays(9), 0.45, 38), other)
                        .sinceLast())
                .isEmpty();
    }

    @Test
    void whatCyclesTakeIsThePublishedRange() {
        double[] share = Wear.expectedLoss(3000).orElseThrow();
        published("least", 9.5, share[0]);
        published("most", 15.5, share[1]);
        assertThat(Wear.expectedLoss(0).orElseThrow()).containsExactly(0, 0);
        assertThat(Wear.expectedLoss(3001)).as("not published").isEmpty();
    }

    private static void published(String which, double published, double share) {
        Published.of("force of latex tubing lost by 3000 stretches to twice its length, " + which, "%")
                .section("Wear of rubber")
                .source(
                        "de Paula and others, latex and natural-rubber tubing cycled 0/1000/3000 times to 100 % strain; looked up")
                .value(published)
                .ours(100 * share)
                .within(1e-9, "taken from there");
    }
}
