package counterpull.report;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.engine.profile.Loading;
import counterpull.engine.profile.PressProfile;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Warm-up steps are lighter everywhere, rise, and use plates that are there anyway. */
class WarmUpsTest {
    @Test
    void stepsRiseAndStayUnderTheirShares() {
        for (Findings findings : List.of(Demo.usual(), Cases.noLines(), Cases.oneLimb())) {
            Setup setup = findings.first();
            double before = 0;
            for (WarmUp step : WarmUps.of(setup)) {
                assertThat(step.share()).isGreaterThan(before).isLessThanOrEqualTo(0.8);
                before = step.share();
                step.plates()
                        .stacks()
                        .forEach(part -> assertThat(setup.plates().stacks())
                                .anyMatch(
                                        whole -> whole.plate().equals(part.plate()) && part.count() <= whole.count()));
                PressProfile bare = PressProfile.of(
                        setup.profile().ground(), Loading.plates(step.plates().total()));
                assertThat(bare.turnaround().total()).isPositive();
            }
        }
    }
}
