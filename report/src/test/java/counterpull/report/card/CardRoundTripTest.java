package counterpull.report.card;

import static org.assertj.core.api.Assertions.assertThat;

import counterpull.engine.body.Joint;
import counterpull.engine.choice.PlateKind;
import counterpull.engine.load.ElasticLine;
import counterpull.engine.load.Hang;
import counterpull.engine.load.Placement;
import counterpull.engine.motion.FullStop;
import counterpull.engine.motion.Phase;
import counterpull.engine.motion.RailStroke;
import counterpull.engine.motion.SeatSetting;
import counterpull.engine.motion.Stance;
import counterpull.engine.motion.Tempo;
import counterpull.engine.profile.Groundwork;
import counterpull.engine.profile.Loading;
import counterpull.engine.profile.PressProfile;
import counterpull.engine.profile.PressTask;
import counterpull.report.Demo;
import counterpull.report.Findings;
import counterpull.scenario.PressScenario;
import counterpull.scenario.units.Dimension;
import counterpull.scenario.units.QuantityText;
import counterpull.scenario.units.Reading;
import counterpull.scenario.units.Units;
import java.io.IOException;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * A stranger has the machine, the kit, the person and the card, and types in what the card says: the same profile comes out, to
 * the last digit.
 */
class CardRoundTripTest {
    private final PressScenario scenario = Demo.usual().scenario();

    @Test
    void theCardsNumbersGiveTheSameProfile() throws IOException {
        for (Units units : Units.values()) {
            Findings given = Demo.usual();
            Findings findings = new Findings(
                    given.heading(), given.scenario(), given.chosen(), given.others(), given.plan(), units);
            PressProfile typed = profile(CardText.of(findings));
            same(typed, findings.first().profile());
        }
    }

    @Test
    void anotherDeadLengthWouldBeNoticed() throws IOException {
        PressProfile chosen = Demo.usual().first().profile();
        Loading wrong = new Loading(
                chosen.loading().plates(),
                chosen.loading().lines().stream()
                        .map(line ->
                                new ElasticLine(line.rubber(), line.pieces(), line.deadLength() + 0.001, line.ends()))
                        .toList());
        PressProfile other = PressProfile.of(chosen.ground(), wrong);
        assertThat(other.force(Phase.HELD, 60)).isNotEqualTo(chosen.force(Phase.HELD, 60));
    }

    private static void same(PressProfile typed, PressProfile chosen) {
        assertThat(typed.positions()).isEqualTo(chosen.positions());
        for (Phase phase : Phase.values()) {
            for (int i = 0; i < chosen.positions(); i++) {
                assertThat(typed.force(phase, i)).isEqualTo(chosen.force(phase, i));
                for (int k = 0; k < chosen.limbs().size(); k++) {
                    for (Joint joint : Joint.LEG) {
                        assertThat(typed.limbs().get(k).torque(joint, phase, i))
                                .isEqualTo(chosen.limbs().get(k).torque(joint, phase, i));
                    }
                }
            }
        }
    }

    private PressProfile profile(CardText card) {
        Stance today = scenario.exercise().stance();
        SeatSetting seat = scenario.machine().places().seats().stream()
                .filter(one -> one.name().equals(card.after("Seat and back")))
                .findFirst()
                .orElseThrow();
        var row = scenario.machine().places().rows().stream()
                .filter(one -> one.name().equals(card.after("Heels on")))
                .findFirst()
                .orElseThrow();
        double press = number(found(card, "Press through (.*?) of the foot"), Dimension.RATIO);
        Stance stance = new Stance(seat, row, press, today.hipShift());
        assertThat(card.words.replaceAll("\\s+", " ")).contains("straight along the rail", "full stop at both ends");
        Loading loading = new Loading(plates(card), List.of(line(card)));
        PressTask task = new PressTask(
                scenario.person(),
                scenario.machine().sled(),
                stance,
                scenario.exercise().pushing(),
                tempo(card),
                loading,
                PressTask.USUAL_POSITIONS);
        double stop = seat.plateAt(
                number(card.after("Bottom stop at"), Dimension.LENGTH),
                scenario.machine().rail());
        RailStroke stroke = task.ownStroke().from(stop);
        double[] plate = stroke.equalAngles(task.legs().get(stroke.reference()), task.positions());
        return PressProfile.of(Groundwork.of(task, stroke, plate), loading);
    }

    private double plates(CardText card) {
        double sum = 0;
        for (String part : card.after("Plates each side").split(" \\+ ")) {
            Matcher matcher = Pattern.compile("(?:(\\d+) × )?(.*)").matcher(part.strip());
            assertThat(matcher.matches()).isTrue();
            int count = matcher.group(1) == null ? 1 : Integer.parseInt(matcher.group(1));
            PlateKind kind = scenario.room().plates().stream()
                    .filter(one -> one.name().equals(matcher.group(2)))
                    .findFirst()
                    .orElseThrow();
            sum += 2 * count * kind.mass();
        }
        // the search adds plates up in its own order
        return Math.abs(sum - Demo.usual().first().plates().total()) < 1e-9
                ? Demo.usual().first().profile().loading().plates()
                : sum;
    }

    private ElasticLine line(CardText card) {
        var rubber = scenario.room().pieces().stream()
                .filter(one -> one.tag().equals(card.after("Rubber")))
                .findFirst()
                .orElseThrow()
                .rubber();
        var anchor = scenario.room().hooks().anchors().stream()
                .filter(one -> one.name().equals(card.after("Anchor")))
                .findFirst()
                .orElseThrow();
        String to = found(card, "→ (.*)");
        var attachment = scenario.room().hooks().attachments().stream()
                .filter(one -> one.name().equals(to))
                .findFirst()
                .orElseThrow();
        Matcher hang = Pattern.compile("(\\d+) × (single|doubled)").matcher(card.words);
        assertThat(hang.find()).isTrue();
        Hang how = hang.group(2).equals("single") ? Hang.SINGLE : Hang.DOUBLED;
        boolean aside = card.words.replaceAll("\\s+", " ").contains("half on each side");
        return new ElasticLine(
                rubber,
                new ElasticLine.Pieces(
                        Integer.parseInt(hang.group(1)), how, aside ? Placement.MATCHED_PAIR : Placement.CENTRED),
                number(card.after("Dead length"), Dimension.LENGTH),
                new ElasticLine.Ends(anchor, attachment));
    }

    private Tempo tempo(CardText card) {
        return new FullStop(new Tempo.Seconds(
                number(card.after("Down"), Dimension.TIME),
                number(card.after("Wait low"), Dimension.TIME),
                number(card.after("Up"), Dimension.TIME),
                number(card.after("Wait high"), Dimension.TIME)));
    }

    private static String found(CardText card, String pattern) {
        Matcher matcher = Pattern.compile(pattern).matcher(card.words);
        assertThat(matcher.find()).as(pattern).isTrue();
        return matcher.group(1).strip();
    }

    private static double number(String words, Dimension dimension) {
        String shown = words.replaceAll(" \\(about.*", "");
        Reading reading = QuantityText.read(shown, dimension);
        assertThat(reading).as(shown).isInstanceOf(Reading.Read.class);
        return ((Reading.Read) reading).quantity().si();
    }
}
