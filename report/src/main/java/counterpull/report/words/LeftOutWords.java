package counterpull.report.words;

import counterpull.engine.Refusal;
import counterpull.engine.choice.Rejections;
import counterpull.report.Exact;
import counterpull.report.table.UnitSet;
import counterpull.scenario.units.Dimension;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a search left out before it judged it: each reason once, with the ways that it stopped. */
final class LeftOutWords {
    private static final String BETWEEN = ": ";
    // as the engine writes it
    private static final Pattern DEAD_LENGTH = Pattern.compile("dead length (\\d+) mm");
    private final Rejections rejections;
    private final UnitSet units;

    LeftOutWords(Rejections rejections, UnitSet units) {
        this.rejections = rejections;
        this.units = units;
    }

    List<String> sentences() {
        Map<String, List<String>> ways = new LinkedHashMap<>();
        for (String told : rejections.leftOut()) {
            int cut = told.indexOf(BETWEEN);
            String what = cut < 0 ? told : told.substring(0, cut);
            String reason = cut < 0 ? "" : untagged(what, told.substring(cut + BETWEEN.length()));
            ways.computeIfAbsent(reason, first -> new ArrayList<>()).add(what);
        }
        List<String> sentences = new ArrayList<>();
        ways.forEach((reason, whats) -> sentences.add(sentence(reason, whats)));
        return sentences;
    }

    /** A reason that begins with the piece's tag, said of any piece: so that alike reasons are told once. */
    private static String untagged(String what, String reason) {
        int comma = what.indexOf(',');
        String tag = comma < 0 ? "" : what.substring(0, comma);
        return !tag.isEmpty() && reason.startsWith(tag + " ") ? "the rubber" + reason.substring(tag.length()) : reason;
    }

    private String sentence(String reason, List<String> whats) {
        String first = whats.get(0);
        String numbers = whats.size() > 1 || reason.matches(".*\\d.*")
                ? ""
                : rejections.refusal(first).map(this::numbers).orElse("");
        String others = whats.size() == 1
                ? ""
                : whats.size() == 2 ? " and one like it" : " and " + (whats.size() - 1) + " like it";
        return "Left out: " + own(first) + others + (reason.isEmpty() ? "" : BETWEEN + reason) + numbers + ".";
    }

    /** The engine's whole millimetres in the reader's unit. */
    private String own(String what) {
        Matcher found = DEAD_LENGTH.matcher(what);
        return found.replaceAll(
                match -> Exact.words(Integer.parseInt(match.group(1)) / 1000.0, Dimension.LENGTH, units.people())
                        + " of webbing and links");
    }

    private String numbers(Refusal refusal) {
        String value = RefusalNumbers.words(refusal, refusal.value(), units);
        String limit = RefusalNumbers.words(refusal, refusal.limit(), units);
        return value.isEmpty() || limit.isEmpty() ? "" : " (" + value + ", limit " + limit + ")";
    }
}
