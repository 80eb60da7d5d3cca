package counterpull.engine.uncertainty;

import java.util.ArrayList;
import java.util.List;

/** What no draw varies, in words: a band is too narrow by what these would add. */
final class NotVaried {
    private static final List<String> ALWAYS = List.of(
            "what speed takes from strength",
            "where the limbs' masses lie",
            "what two-joint muscles and tired muscles change",
            "the share of the load that each side takes",
            "what rubber loses on its way back");

    private NotVaried() {}

    static List<String> ofPress() {
        return with(
                "the knee's angle where the range ends without a stop", "the counterweight", "how the stroke turns");
    }

    static List<String> ofExercise() {
        return with(
                "where the range starts and ends", "places of pulleys, pivots, pads and hooks", "how the stroke turns");
    }

    private static List<String> with(String... more) {
        List<String> all = new ArrayList<>(ALWAYS);
        all.addAll(List.of(more));
        return all;
    }
}
