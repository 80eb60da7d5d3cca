package counterpull.report;

import java.util.List;

/** The cautions that stand wherever a number could be acted on. The one place for their words. */
public final class Cautions {
    /** What the numbers are not. */
    public static final String COMPUTES = "These numbers are computed; nothing here diagnoses or treats.";

    /** Who decides. */
    public static final String DECIDES = "Joint limits, pain rules and return-to-load decisions belong to the licensed"
            + " professional and to local rules.";

    /** What stands above. */
    public static final String MAKER =
            "The manufacturer's limits of the machine, tubing and anchors stand above any number here.";

    /** What rubber does. */
    public static final String RUBBER =
            "Tubing can snap: inspect it, stay within its tested length, keep faces out of" + " the line of pull.";

    /** What a published curve is. */
    public static final String AVERAGES = "Published averages are not this person.";

    /** What is not modelled. */
    public static final String FIRST_REPETITION = "Fatigue is not modelled: the numbers describe the first repetition.";

    /** What a net torque leaves out. */
    public static final String NET_TORQUE = "Torques are net: muscles that work against each other load a joint more"
            + " than is shown, and muscles that cross two joints are not told apart.";

    /** All that a floor card has room for, in fewer words. */
    public static final String FOR_CARD =
            "Computed numbers: they diagnose and treat nothing. Joint limits, pain rules, return"
                    + " to load: the licensed professional and local rules. The maker's limits stand above all. Tubing can snap:"
                    + " inspect it, keep faces out of its line. Averages are not this person.";

    private Cautions() {}

    /** All of them, in the order in which they are shown. */
    public static List<String> all() {
        return List.of(COMPUTES, DECIDES, MAKER, RUBBER, AVERAGES, FIRST_REPETITION, NET_TORQUE);
    }
}
