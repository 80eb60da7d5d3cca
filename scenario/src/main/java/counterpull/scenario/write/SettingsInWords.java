package counterpull.scenario.write;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import counterpull.scenario.ExerciseScenario;
import counterpull.scenario.content.Doing;
import counterpull.scenario.format.Out;
import counterpull.scenario.movement.MovingBody;
import counterpull.scenario.resist.ResistKinds;
import counterpull.scenario.resist.Setting;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What resists in an exercise, as its file states it, a line each for a person who sets it up; zeros left out. */
public final class SettingsInWords {
    /** How a rubber behaves is on its bench record, not something to set. */
    private static final Set<String> NOT_SET =
            Set.of("law", "loss", "shortening", "tested length", "size", "count", "inertia", "itself");

    private SettingsInWords() {}

    /** One line for everything that resists, in the file's order, in metric units. */
    public static List<String> of(ExerciseScenario scenario) {
        Doing doing = scenario.doing();
        Setting setting = new Setting(MovingBody.of(doing.motion()), Optional.of(doing.resists()));
        List<String> lines = new ArrayList<>();
        doing.resists().forEach(resisting -> {
            Out written = ResistKinds.write(resisting, setting);
            written.node().properties().forEach(kind -> lines.add(line(kind.getKey(), kind.getValue())));
        });
        return lines;
    }

    private static String line(String kind, JsonNode group) {
        String name = group.path("name").asText(kind);
        return name + ": " + inside((ObjectNode) group) + ".";
    }

    private static String inside(ObjectNode group) {
        List<String> parts = new ArrayList<>();
        group.properties().forEach(entry -> {
            String key = entry.getKey();
            if (!key.equals("name") && !NOT_SET.contains(key)) {
                String value = value(entry.getValue());
                if (!value.isEmpty()) {
                    parts.add(key + " " + value);
                }
            }
        });
        return String.join(", ", parts);
    }

    private static String value(JsonNode value) {
        if (value.isObject()) {
            return inside((ObjectNode) value);
        }
        if (value.isArray()) {
            List<String> all = new ArrayList<>();
            value.forEach(one -> all.add("(" + value(one) + ")"));
            return String.join(" ", all);
        }
        String text = value.asText();
        return text.matches("0( .*)?") ? "" : text;
    }
}
