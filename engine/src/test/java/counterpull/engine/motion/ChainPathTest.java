package counterpull.engine.motion;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import counterpull.engine.Refusal;
import counterpull.engine.body.Anthropometry;
import counterpull.engine.body.DempsterWinter;
import counterpull.engine.body.Joint;
import counterpull.engine.body.MeasuredLengths;
import counterpull.engine.body.Sex;
import counterpull.engine.planar.Vec;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ChainPathTest {
    private static final Tempo TEMPO = new FullStop(new Tempo.Seconds(2, 0, 2, 0));

    /** Abduction moves the leg as one piece: a cuff on "the second segment" would hang on nothing. */
    @Test
    void aPointBeyondTheChainIsRefused() {
        Anthropometry body = new Anthropometry(new DempsterWinter(), Sex.MALE, 1.75, 80, MeasuredLengths.none());
        WorkingRange range = new WorkingRange(0, 0.5, 0);
        Motion leg = new Hinge(Joint.HIP_SIDEWAYS, 1.5, Map.of(), Hinge.Lie.UPRIGHT);
        ChainPath path = leg.path(new Motion.Moving(body.side(), 1, range, Course.even(0.5, 3, TEMPO), List.of()));
        BodyPoint cuff = new BodyPoint("cuff", 1, new Vec(0.3, 0));
        assertThatThrownBy(() -> path.track(cuff))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("segment of cuff must be at most 0");
    }
}
