package counterpull.scenario.read;

import counterpull.scenario.Files;
import counterpull.scenario.tree.Source;
import counterpull.scenario.write.ScenarioWriter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;

/** More than 200 files that are no scenario, each with what is wrong with it; the same ones every time. */
final class MalformedFiles {
    private static final int MEBIBYTE = 1 << 20;

    private final String yaml = Files.shipped("example.yaml");
    private final String json = ScenarioWriter.json(Files.example());
    private final Random random = new Random(20261125);
    private final Map<String, Source> files = new LinkedHashMap<>();

    static Map<String, Source> all() {
        MalformedFiles malformed = new MalformedFiles();
        malformed.truncated();
        malformed.wrongValues();
        malformed.wrongKeys();
        malformed.binary();
        malformed.large();
        malformed.deep();
        malformed.aliases();
        malformed.notYaml();
        malformed.contradictions();
        malformed.exercises();
        return malformed.files;
    }

    private void add(String what, String extension, String text) {
        files.put(what, Source.of("malformed" + extension, text));
    }

    private void addYaml(String what, String text) {
        add(what, ".yaml", text);
    }

    private void addChanged(String from, String to) {
        if (!yaml.contains(from)) {
            throw new AssertionError("the example no longer holds: " + from);
        }
        int at = yaml.indexOf(from);
        addYaml(
                "\"" + from + "\" became \"" + to + "\"",
                yaml.substring(0, at) + to + yaml.substring(at + from.length()));
    }

    private void truncated() {
        int kit = yaml.indexOf("  anchors:");
        for (int i = 0; i < 30; i++) {
            int at = random.nextInt(kit);
            addYaml("YAML cut at " + at, yaml.substring(0, at));
        }
        for (int i = 0; i < 30; i++) {
            int at = random.nextInt(json.stripTrailing().length());
            add("JSON cut at " + at, ".json", json.substring(0, at));
        }
    }

    private void wrongValues() {
        List<String> quantities = List.of(
                "stature: 5 ft 9 in",
                "mass: 68 kg",
                "age: 34 years",
                "thigh: 43 cm",
                "bottom: 90 deg",
                "force: 28 kgf",
                "rail angle: 45 deg",
                "carriage: 40 kg",
                "constant: 15 N",
                "lever: 34 cm",
                "plates at most: 180 kg",
                "kneecap stress: 6 MPa",
                "natural length: 40 cm",
                "stiffness: 150 N/m",
                "rating: 1.5 kN",
                "rest: 90 s");
        List<String> others =
                List.of("NaN kg", ".nan", ".inf m", "1e999 N", "45", "45 furlongs", "-3", "1,75 m", "[45 cm]");
        for (String quantity : quantities) {
            String key = quantity.substring(0, quantity.indexOf(':') + 2);
            for (int i = 0; i < 4; i++) {
                addChanged(quantity, key + others.get((quantity.length() + 2 * i) % others.size()));
            }
            addChanged(quantity, key + "-" + quantity.substring(key.length()).replace("5 ft 9 in", "5 ft") + "·m");
        }
        for (String positive : List.of("thigh: 43 cm", "force: 28 kgf", "natural length: 40 cm", "lowering: 3 s")) {
            addChanged(positive, positive.replace(": ", ": -"));
            addChanged(positive, positive.replaceAll(": \\d+", ": 0"));
        }
    }

    private void wrongKeys() {
        for (String key :
                List.of("thigh", "rail angle", "segment table", "hip to plate", "natural length", "ceiling")) {
            addChanged(key + ":", key.substring(1) + ":");
            addChanged(key + ":", "? ");
        }
        for (String key : List.of("person", "machine", "exercise", "tempo", "target")) {
            addChanged("\n" + key + ":", "\n" + key.toUpperCase(Locale.ROOT) + ":");
            addYaml(key + " twice", yaml + "\n" + key + ": {}\n");
        }
        addChanged("sex: female", "sex: female\n  sex: male");
        addChanged("thigh: 43 cm", "thigh: 43 cm\n      thigh: 44 cm");
        addChanged("format: counterpull/1", "format: counterpull/2");
        addChanged("format: counterpull/1", "");
        addYaml("nothing", "");
        addYaml("spaces", " ".repeat(5000));
        add("nothing as JSON", ".json", "");
        add("null as JSON", ".json", "null");
        add("a number as JSON", ".json", "42");
    }

    private void binary() {
        for (int i = 0; i < 10; i++) {
            byte[] noise = new byte[1 + random.nextInt(20_000)];
            random.nextBytes(noise);
            noise[0] = 0;
            files.put("noise " + i, Source.of(i % 2 == 0 ? "noise.yaml" : "noise.json", noise));
        }
        files.put("UTF-16", Source.of("wide.yaml", yaml.getBytes(StandardCharsets.UTF_16)));
        files.put("Latin-1", Source.of("latin.yaml", "name: Möwe".getBytes(StandardCharsets.ISO_8859_1)));
        files.put("a zip", Source.of("zip.yaml", new byte[] {'P', 'K', 3, 4, 20, 0, 0, 0, 8, 0}));
        addYaml("a NUL in the middle", yaml.replace("Tern", "Te\u0000rn"));
        addYaml("a bell", yaml.replace("Tern", "Te\u0007rn"));
        addYaml("a line break in a name", yaml.replace("name: Tern", "name: \"Te\\nrn\""));
    }

    private void large() {
        files.put("10 MB of zeros", Source.of("zeros.yaml", new byte[10 << 20]));
        addYaml("10 MB of scenario", yaml.repeat(1 + (10 << 20) / yaml.length()));
        add("10 MB of JSON", ".json", "{\"a\": \"" + "x".repeat(10 << 20) + "\"}");
        addYaml("one long value", "a: " + "x".repeat(MEBIBYTE - 10));
        addYaml("one long key", "x".repeat(MEBIBYTE - 10) + ": a");
        addYaml("many keys", numbered("k%: 1\n"));
        addYaml("one key again and again", "k: 1\n".repeat(MEBIBYTE / 6));
        addYaml("many items", "a:\n" + "- 1\n".repeat(MEBIBYTE / 5));
        addYaml("many quotes", "a: \"" + "\\\"".repeat(MEBIBYTE / 3));
        addYaml("many remarks", "#\n".repeat(MEBIBYTE / 3));
        addYaml("many documents", "---\n".repeat(MEBIBYTE / 5));
        addYaml("many spaces and tabs", ("a:" + " ".repeat(300) + "\t\n").repeat(3000));
        addYaml("a long folded text", "a: >\n" + "  b\n\n".repeat(MEBIBYTE / 7));
        addYaml("a long plain text", "a: b\n" + "  b\n".repeat(MEBIBYTE / 6));
        addYaml("digits", "person: {mass: " + "9".repeat(MEBIBYTE - 40) + " kg}");
        addYaml("question marks", "? ".repeat(MEBIBYTE / 3));
        addYaml("colons", ": ".repeat(MEBIBYTE / 3));
        addYaml("percent signs", "%".repeat(MEBIBYTE / 3));
        addYaml("exclamation marks", "!".repeat(MEBIBYTE / 3));
        addYaml("commas", "a: [" + ",".repeat(MEBIBYTE / 3));
        add("digits as JSON", ".json", "{\"a\": " + "9".repeat(MEBIBYTE - 40) + "}");
        add("spaces as JSON", ".json", " ".repeat(MEBIBYTE - 1));
    }

    private static String numbered(String line) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; text.length() < MEBIBYTE - 20; i++) {
            text.append(line.replace("%", String.valueOf(i)));
        }
        return text.toString();
    }

    private void deep() {
        add("brackets as JSON", ".json", "[".repeat(MEBIBYTE / 2));
        add("braces as JSON", ".json", "{\"a\":".repeat(MEBIBYTE / 6));
        addYaml("brackets", "[".repeat(MEBIBYTE / 2));
        addYaml("braces", "{".repeat(MEBIBYTE / 2));
        addYaml("dashes", "- ".repeat(MEBIBYTE / 3));
        addYaml("flow maps", "{a: ".repeat(MEBIBYTE / 5));
        StringBuilder steps = new StringBuilder();
        for (int i = 0; steps.length() < MEBIBYTE - 3000; i++) {
            steps.append(" ".repeat(i)).append("a:\n");
        }
        addYaml("ever deeper indentation", steps.toString());
        addYaml("just too deep", "a: " + "[".repeat(30) + "]".repeat(30));
    }

    private void aliases() {
        addYaml("an alias", yaml.replace("thigh: 43 cm", "thigh: *x"));
        addYaml("an anchor on a group", yaml.replace("range: {bottom", "range: &r {bottom"));
        addYaml("a merge key", yaml.replace("    right:\n", "    right:\n      <<: *left\n"));
        addYaml("aliases that explode", bomb(40));
        addYaml("aliases that explode in the kit", yaml + bomb(9));
        addYaml("an alias to itself", "a: &a [*a, *a, *a]");
        addYaml("many anchors", numbered("k%: &a% {b: 1}\n"));
        addYaml("a tag", yaml.replace("mass: 68 kg", "mass: !!float 68"));
        addYaml("a class by tag", "!!javax.script.ScriptEngineManager [!!java.net.URL [\"file:a\"]]");
    }

    private static String bomb(int levels) {
        StringBuilder bomb = new StringBuilder("l0: &l0 [gull, gull, gull, gull, gull, gull, gull, gull, gull]\n");
        for (int i = 1; i < levels; i++) {
            bomb.append("l").append(i).append(": &l").append(i).append(" [");
            bomb.append(("*l" + (i - 1) + ", ").repeat(8))
                    .append("*l")
                    .append(i - 1)
                    .append("]\n");
        }
        return bomb.toString();
    }

    private void notYaml() {
        List<String> texts = new ArrayList<>(List.of(
                "a: b: c",
                "a: 'b",
                "a: \"b",
                "a: [b",
                "a: {b",
                "a: ]",
                "a: }",
                "a: @b",
                "a: `b`",
                "a: %b",
                "a:\n\t- b",
                "a:\n  b: 1\n c: 2",
                "- a\nb: c",
                "a: 1\n- b",
                "{a: 1}}",
                "[]",
                "a: |\n b\n\tc: [",
                "\"a\": \"\\q\"",
                "a: &",
                "a: *",
                "a: ! b",
                "<html><body>no</body></html>",
                "name,mass\nTern,68",
                "%YAML 9.9\n---\na: 1",
                "...",
                "? a",
                "a: \"\\uD800\"",
                "a: b\n...\nc"));
        for (String text : texts) {
            addYaml("no YAML: " + text, text);
            if (!text.equals("...")) {
                // three points only end a document, which is no fault
                addYaml("the example and then: " + text, yaml + "\n" + text + "\n");
            }
        }
        for (String text :
                List.of("{", "{\"a\"", "{\"a\": tru}", "{'a': 1}", "{\"a\": 1,}", "{\"a\": 01}", "{\"a\": 1}}")) {
            add("no JSON: " + text, ".json", text);
        }
    }

    private void exercises() {
        String exercise = Files.shipped("example-exercise.yaml");
        Map<String, List<String>> changes = Map.ofEntries(
                Map.entry(
                        "kind: hinge",
                        List.of("kind: hing", "kind: rail press", "kind: [hinge]", "kind: balanced stand")),
                Map.entry("lift: knee extension", List.of("lift: knee", "lift: hip extension", "lift:")),
                Map.entry("plane: upright", List.of("plane: flat", "")),
                Map.entry("thigh direction: 0 deg", List.of("thigh direction: 0", "trunk direction: 90 deg")),
                Map.entry("borne: 100 %", List.of("borne: 0 %", "borne: 110 %")),
                Map.entry("    ankle dorsiflexion: 0 deg", List.of("    elbow flexion: 0 deg", "    ankle: 0 deg")),
                Map.entry(
                        "knee flexion: {bottom: 90 deg, top: 10 deg, pain free: 95 deg}",
                        List.of(
                                "knee: {bottom: 90 deg, top: 10 deg}",
                                "knee flexion: {bottom: 90 deg, top: 10 deg, pain free: 80 deg}",
                                "knee flexion: {bottom: 50 deg, top: 50 deg}")),
                Map.entry("  what: The", List.of("  wat: The")),
                Map.entry(
                        "at: {on: shank, along: 35 cm",
                        List.of(
                                "at: {on: trunk, along: 35 cm",
                                "at: {on: shank, along: half",
                                "at: {on: shank, along: 35 m",
                                "at: {along: 35 cm")),
                Map.entry(
                        "      chosen: 4 kg",
                        List.of("      chosen: -4 kg", "      chosen: 4 cm", "      chosen: 3000 kg")),
                Map.entry(
                        "  - cable:",
                        List.of("  - rope:", "  - dead weight: {}\n    cable:", "  - {}\n  - cable:", "  cable:")),
                Map.entry("ratio: 2", List.of("ratio: 0", "ratio: 2 m")),
                Map.entry(
                        "pad: {on: shank, on lever: 32 cm",
                        List.of(
                                "pad: {on: shank, along: 32 cm",
                                "pad: {on: shank, on lever: 1 cm",
                                "cuff: {on: shank, along: 3 cm}\n      pad: {on: shank, on lever: 32 cm")),
                Map.entry("inertia: 0.40 kg·m2", List.of("inertia: 0.40 kg", "inertia: 0.01 kg·m2")),
                Map.entry(
                        "{angle: -45 deg, radius: 11 cm}",
                        List.of("{angle: -95 deg, radius: 11 cm}", "{angle: -45 deg, radius: 11 N}")),
                Map.entry("up: 9 N·m, down: 7 N·m", List.of("up: 7 N·m, down: 9 N·m", "up: 9 N, down: 7 N")),
                Map.entry("mass of a metre: 1.5 kg", List.of("mass of a metre: 0 kg")),
                Map.entry("floor: -55 cm", List.of("floor: 55 kg")),
                Map.entry("rail direction: 45 deg", List.of("rail direction: 45")),
                Map.entry(
                        "from: {fixed: {name: low hook, forward: -80 cm, up: -40 cm, rating: 800 N}, aside: 0 cm}",
                        List.of(
                                "from: {}",
                                "from: {fixed: {name: low hook, forward: -80 cm}}",
                                "from: {fixed: {name: low hook, forward: -80 cm, up: -40 cm}, aside: 10 cm}")),
                Map.entry("machine: extension lever", List.of("machine: another lever", "machine: sliding bar")),
                Map.entry("machine: sliding bar", List.of("machine: cam machine")),
                Map.entry("tested length: 150 cm", List.of("tested length: 50 cm")),
                Map.entry("{bottom: 15 deg, top: 125 deg}", List.of("{bottom: 15 deg}", "{bottom: 15 deg, top: 125}")));
        new TreeMap<>(changes)
                .forEach((from, all) -> all.forEach(to -> {
                    if (!exercise.contains(from)) {
                        throw new AssertionError("the example no longer holds: " + from);
                    }
                    int at = exercise.indexOf(from);
                    addYaml(
                            "exercise: \"" + from + "\" became \"" + to + "\"",
                            exercise.substring(0, at) + to + exercise.substring(at + from.length()));
                }));
        for (String part : List.of("about", "person", "exercise", "resists", "tempo", "target", "limits")) {
            addYaml(
                    "exercise: " + part + " is text",
                    exercise.replaceFirst("(?m)^" + part + ":", part + ": gull\n" + part + "s:"));
            addYaml(
                    "exercise: " + part + " is a list",
                    exercise.replaceFirst("(?m)^" + part + ":", part + ": [1, 2]\n" + part + "s:"));
        }
        for (int i = 0; i < 20; i++) {
            int at = random.nextInt(exercise.indexOf("tempo:\n"));
            addYaml("exercise cut at " + at, exercise.substring(0, at));
        }
    }

    private void contradictions() {
        addChanged("rubber: R1", "rubber: R9");
        addChanged("anchor: top hook", "anchor: low posts");
        addChanged("seat: back 2", "seat: back 7");
        addChanged("limbs: both", "limbs: none");
        addChanged("top: 10 deg", "top: 95 deg");
        addChanged("tested length: 100 cm", "tested length: 30 cm");
        addChanged("{length: 60 cm, force: 38 N}", "{length: 60 cm, force: 3 N}");
        addChanged("{length: 60 cm, force: 34 N}", "{length: 60 cm, force: 54 N}");
        addChanged("loss: 10 %", "loss: 10 %\n      shortening: [{length: 1 m, force: 9 N}]");
        addChanged("full stop: {", "bounce: {turn time: 1 s}\n  full stop: {");
        addChanged("plates each side: [20 kg, 10 kg]", "plates each side: [20 kg, 20 kg, 20 kg]");
        addChanged("plates at most: 180 kg", "plates at most: 20 kg");
        addChanged("name: back 3", "name: back 2");
        addChanged("tag: R2", "tag: R1");
        addChanged("pieces: 1", "pieces: 7");
        addChanged("not known: [ankle dorsiflexion]", "not known: [knee extenson]");
    }
}
