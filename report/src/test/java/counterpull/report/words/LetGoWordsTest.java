package counterpull.report.words;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.engine.Constants;
import counterpull.engine.choice.Candidate;
import counterpull.engine.choice.Strategy;
import counterpull.engine.profile.Groundwork;
import counterpull.engine.profile.PressProfile;
import counterpull.letgo.EnergyAccount;
import counterpull.letgo.Releases;
import counterpull.letgo.SledReleases;
import counterpull.report.Cases;
import counterpull.report.Demo;
import counterpull.report.Findings;
import counterpull.report.Setup;
import counterpull.report.page.ReportWriter;
import counterpull.report.table.Decimals;
import counterpull.report.table.UnitSet;
import counterpull.scenario.units.Units;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The sentences say what the sled does, and what nobody expects is a caution. */
class LetGoWordsTest {
    private static LetGoWords metric(PressProfile profile) {
        return new LetGoWords(profile, UnitSet.METRIC);
    }

    @Test
    void platesAloneDropAsOnAnInclineWithFriction() {
        PressProfile profile = Cases.noLines().first().profile();
        // 40 kg and 62.5 kg on 45°, a counterweight of 5 kg along the rail, friction 15 N and 0.02; by hand
        double mass = 40 + 62.5;
        double along = Constants.STANDARD_GRAVITY * Math.sqrt(0.5);
        double a = ((mass - 5) * along - 15 - 0.02 * mass * along) / (mass + 5);
        double way = profile.plate(profile.positions() - 1) - profile.plate(0);
        String drop = "drops " + Decimals.fixed(100 * way, 1) + " cm onto the stop in "
                + Decimals.fixed(Math.sqrt(2 * way / a), 2) + " s and arrives at "
                + Decimals.fixed(Math.sqrt(2 * a * way), 1) + " m/s.";
        List<String> sentences = metric(profile).sentences();
        assertThat(sentences.get(0)).isEqualTo("Let go at the bottom, the carriage rests on the stop.");
        assertThat(plain(sentences.get(1))).isEqualTo("Let go at the top, the carriage " + drop);
        assertThat(sentences).hasSize(3);
        assertThat(plain(sentences.get(2)))
                .contains("as from a free fall of " + Decimals.fixed(100 * a * way / Constants.STANDARD_GRAVITY, 0)
                        + " cm");
        assertThat(metric(profile).cautions()).isEmpty();
        assertThat(metric(profile).hangs()).isEmpty();
    }

    private static String plain(String words) {
        return words.replace('\u00A0', ' ');
    }

    @Test
    void anotherReaderGetsFeetAndInches() {
        String words = plain(
                String.join(" ", new LetGoWords(Cases.noLines().first().profile(), UnitSet.IMPERIAL).sentences()));
        assertThat(words).contains(" in onto the stop", " ft/s").doesNotContain(" cm", " m/s");
    }

    @Test
    void withoutAStopNothingCatchesIt() {
        String yaml = Demo.text().replace("stops: [10 cm, 15 cm, 20 cm, 25 cm]", "stops: []");
        List<String> words =
                metric(Demo.asLoaded(yaml, Units.METRIC).first().profile()).sentences();
        // the left leg is pain-free to 95°, and the range ends at 90°
        assertThat(words.get(0)).startsWith("Let go at the bottom, the carriage passes the deepest pain-free bend");
        assertThat(words.get(1)).contains("pain-free bend after").endsWith("and nothing catches it.");
    }

    @Test
    void aCarriageThatRubberPullsUpIsACaution() {
        PressProfile profile = pulledUp();
        assertThat(metric(profile).sentences().get(0)).startsWith("Let go at the bottom, rubber pulls the carriage up");
        assertThat(metric(profile).cautions())
                .singleElement()
                .asString()
                .startsWith("Rubber pulls the carriage up by itself: let go at mark");
        Findings usual = Demo.usual();
        Setup setup = new Setup(
                "pulled up",
                profile,
                usual.first().plates(),
                usual.first().verdict(),
                usual.first().order());
        Findings findings = new Findings(
                usual.heading(), usual.scenario(), List.of(setup), usual.others(), usual.plan(), usual.units());
        assertThat(ReportWriter.html(findings)).contains("Careful. </strong>Rubber pulls the carriage up by itself");
        assertThat(ReportWriter.html(usual)).doesNotContain("by itself: let go");
    }

    /** The example with a carriage that is lighter than its rubber from above; its plates weigh what the usual setup's do. */
    private static PressProfile pulledUp() {
        var usual = Demo.usual().first();
        String light = Cases.threeLines()
                .replace("carriage: 40 kg", "carriage: 0 kg")
                .replace(
                        "counterweight: {mass: 5 kg",
                        "counterweight: {mass: " + (usual.plates().total() - 2) + " kg");
        var task = Demo.scenario(light).task();
        Groundwork ground = Groundwork.of(task);
        var loading = new counterpull.engine.profile.Loading(
                usual.plates().total(), task.loading().lines());
        return PressProfile.onGround(
                ground.with(loading.lines().stream().map(ground::series).toList()), loading);
    }

    /** The safe order leaves friction out and asks for a margin, so what stays down by it must stay down here too. */
    @Test
    void whatStaysDownByItsOrderIsNotPulledUpFromItsStop() {
        Findings usual = Demo.usual();
        int seen = 0;
        for (Strategy strategy : List.of(Strategy.LOAD_ALONE, Strategy.RELIEVE_LOW, Strategy.ADD_HIGH, Strategy.BOTH)) {
            for (Candidate candidate : usual.others()
                    .choice()
                    .orElseThrow()
                    .ranking(strategy)
                    .map(r -> r.best(5))
                    .orElse(List.of())) {
                Setup setup = Setup.of("any", candidate, usual.scenario());
                Releases releases = SledReleases.of(setup.profile());
                if (setup.order().staysDown()) {
                    assertThat(releases.atBottom().pulledUp()).isFalse();
                    seen++;
                }
                assertThat(releases.largestError()).isLessThan(EnergyAccount.ALLOWED / 1000);
            }
        }
        assertThat(seen).isGreaterThan(3);
    }
}
