package counterpull.report.page;

import counterpull.engine.body.Joint;
import counterpull.engine.motion.Phase;
import counterpull.engine.profile.LimbProfile;
import counterpull.engine.profile.Profile;
import counterpull.picture.Compared;
import counterpull.picture.Crossing;
import counterpull.picture.SideBySide;
import counterpull.picture.SideBySide.Quantity;
import counterpull.picture.StressChart;
import counterpull.report.Cautions;
import counterpull.report.Heading;
import counterpull.report.Html;
import counterpull.report.result.ChallengeTable;
import counterpull.report.words.ChallengeWords;
import counterpull.scenario.units.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Writes several exercises or setups of one person on one page: where in its range each joint is challenged by each, so that a person
 * can choose the exercise as well as the load. The page stands alone, needs no script and loads nothing.
 */
public final class SideBySidePage {
    private static final double LEAST_TURN = Math.toRadians(2);
    private final List<ChallengeTable.Entry> entries;
    private final Paper paper;
    private final Html html;

    private SideBySidePage(List<ChallengeTable.Entry> entries, Units units) {
        this.entries = List.copyOf(entries);
        paper = new Paper(units);
        html = paper.html();
    }

    /**
     * The page as text.
     *
     * @param heading what stands at the head
     * @param entries two to four exercises or setups
     * @param units what the reader reads
     */
    public static String html(Heading heading, List<ChallengeTable.Entry> entries, Units units) {
        return new SideBySidePage(entries, units).write(heading);
    }

    private String write(Heading heading) {
        Sheets.open(html, heading.client() + ": side by side", heading);
        answer();
        ChallengeTable table = new ChallengeTable(entries);
        html.open("section").put("h2", "Joint by joint");
        paper.table(table.table());
        html.close().line();
        for (Joint joint : table.joints()) {
            joint(joint);
        }
        html.open("section")
                .put("h2", "Before you act on a number")
                .open("div.cautions")
                .open("ul");
        Cautions.all().forEach(one -> html.put("li", one));
        html.close().close().close().line();
        return Sheets.close(html);
    }

    private void answer() {
        html.open("div.answer").put("h2", "What each asks most");
        html.open("dl.settings");
        for (ChallengeTable.Entry entry : entries) {
            ChallengeWords words = new ChallengeWords(entry.profile(), paper.unitSet());
            html.open("div.wide").put("dt", entry.name());
            html.open("dd").text(words.headline());
            html.put("small", sentence(words.range()) + ". " + String.join(" ", words.unknown()));
            html.close().close();
        }
        html.close();
        html.put("p.small", Cautions.FOR_CARD).close().line();
    }

    private void joint(Joint joint) {
        List<Compared> compared = compared(joint);
        if (compared.size() < 2) {
            return;
        }
        html.open("section").put("h2", sentence(joint.words()));
        html.open("div.pictures");
        for (Quantity quantity : Quantity.values()) {
            if (quantity != Quantity.KNEECAP_STRESS || joint == Joint.KNEE && stressed(compared)) {
                SideBySide side = SideBySide.of(joint, quantity, Phase.LIFTING, compared);
                paper.chart(side.chart(), crossings(joint, side.crossings()));
            }
        }
        html.close().close().line();
    }

    private static boolean stressed(List<Compared> compared) {
        return compared.stream().anyMatch(one -> StressChart.tells(one.limb()));
    }

    private String crossings(Joint joint, List<Crossing> crossings) {
        List<String> words = new ArrayList<>();
        for (Crossing crossing : crossings) {
            words.add(sentence(crossing.words(joint, paper.wording())) + ".");
        }
        return String.join(" ", words);
    }

    private static String sentence(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    private List<Compared> compared(Joint joint) {
        List<Compared> compared = new ArrayList<>();
        for (ChallengeTable.Entry entry : entries) {
            if (entry.profile().joints().contains(joint) && turns(first(entry.profile()), joint)) {
                compared.add(new Compared(entry.name(), first(entry.profile())));
            }
        }
        return compared;
    }

    /** Whether a joint turns at all; one that is held has a row in the table and nothing to draw. */
    private static boolean turns(LimbProfile limb, Joint joint) {
        double[] angles = limb.path().angles(joint);
        double low = angles[0];
        double high = angles[0];
        for (double angle : angles) {
            low = Math.min(low, angle);
            high = Math.max(high, angle);
        }
        return high - low > LEAST_TURN;
    }

    private static LimbProfile first(Profile profile) {
        return profile.limbs().get(0);
    }
}
