package counterpull.report;

import counterpull.scenario.units.Units;
import java.util.ArrayList;
import java.util.List;

/** Scenarios at the edges of what has to be shown. All invented. */
public final class Cases {
    /** A name that markup and spreadsheets would like to read as their own. */
    public static final String NASTY = "<b>&\"'; =1+1";

    private static final String LINES = "  lines:\n    - rubber: R1";

    private Cases() {}

    /** The example with nothing but plates on it. */
    public static Findings noLines() {
        String yaml = Demo.text();
        int from = yaml.indexOf("  lines:\n    - rubber: R1");
        int to = yaml.indexOf("# How fast.");
        return Demo.asLoaded(yaml.substring(0, from) + "\n" + yaml.substring(to), Units.METRIC);
    }

    /** One limb alone. */
    public static Findings oneLimb() {
        String yaml = Demo.text()
                .replace("limbs: both                         #", "limbs: left                         #")
                .replace("  left share: 50 %", "  #")
                .replace("plates each side: [20 kg, 10 kg]", "plates each side: [10 kg]");
        return Demo.asLoaded(yaml, Units.IMPERIAL);
    }

    /** Three lines, long names, six steps of warm-up. */
    public static Findings hardest() {
        String yaml = threeLines()
                .replace("name: Tern ", "name: Wilhelmina-Alexandrina M. ")
                .replace("sled by the window", "inclined leg sled by the north window")
                .replace("back 2", "back 12 long cushion")
                .replace("row 2", "upper row 12")
                .replace("top hook", "overhead bar hole 14")
                .replace("low posts", "low posts third hole");
        return sixSteps(Demo.asLoaded(yaml, Units.METRIC));
    }

    /** The example with three lines on it. */
    public static String threeLines() {
        String more =
                "  lines:\n" + line("R2", "top hook", "10 cm") + line("R3", "top hook", "20 cm") + "    - rubber: R1";
        return Demo.text().replace(LINES, more).replace("lines at most: 2", "lines at most: 3");
    }

    private static String line(String tag, String anchor, String dead) {
        return "    - {rubber: " + tag + ", pieces: 1, hang: single, placement: centred, anchor: " + anchor
                + ", attachment: plate bar, dead length: " + dead + "}\n";
    }

    private static Findings sixSteps(Findings given) {
        List<WarmUp> steps = new ArrayList<>();
        for (int k = 1; k <= 6; k++) {
            steps.add(new WarmUp(given.first().plates(), 9 - k, k / 10.0));
        }
        SessionPlan plan =
                new SessionPlan(given.plan().dose(), steps, SessionPlan.USUAL_STOPS, SessionPlan.Origin.USUAL);
        return new Findings(given.heading(), given.scenario(), given.chosen(), given.others(), plan, given.units());
    }

    /** The example in which every name that a person typed is {@link #NASTY}. */
    public static Findings nasty() {
        String name = "'" + NASTY.replace("'", "''") + "'";
        String yaml = Demo.text()
                .replace("name: Tern ", "name: " + name + " ")
                .replace("name: sled by the window", "name: " + name)
                .replace("back 2", "BACK2")
                .replace("seat: BACK2", "seat: " + name)
                .replace("{name: BACK2,", "{name: " + name + ",")
                .replace("[BACK2]", "[" + name + "]");
        return Demo.asLoaded(yaml, Units.METRIC);
    }
}
