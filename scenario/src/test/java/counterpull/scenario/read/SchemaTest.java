package counterpull.scenario.read;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import counterpull.scenario.Files;
import counterpull.scenario.fields.Choices;
import counterpull.scenario.fields.Shape;
import counterpull.scenario.format.Words;
import counterpull.scenario.movement.MovementKinds;
import counterpull.scenario.movement.MovingBody;
import counterpull.scenario.problem.Code;
import counterpull.scenario.problem.Problem;
import counterpull.scenario.tree.Source;
import counterpull.scenario.units.Dimension;
import counterpull.scenario.units.Unit;
import counterpull.scenario.write.ScenarioWriter;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The JSON Schema and the reader say the same. */
class SchemaTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final JsonNode TEXT = tree(Files.shipped("scenario.schema.json"));
    private static final Schema SCHEMA = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(Files.shipped("scenario.schema.json"), InputFormat.JSON);

    /** Problems of form: what a schema can see. Ranges, names elsewhere and the engine's refusals it cannot. */
    private static final Set<Code> FORM = EnumSet.of(
            Code.UNKNOWN_KEY,
            Code.MISSING_KEY,
            Code.WRONG_KIND,
            Code.VALUE_MISSING,
            Code.TOO_FEW,
            Code.NOT_A_NUMBER,
            Code.NOT_FINITE,
            Code.DECIMAL_COMMA,
            Code.UNIT_MISSING,
            Code.UNKNOWN_UNIT,
            Code.WRONG_UNIT,
            Code.NOT_A_CHOICE,
            Code.UNKNOWN_FORMAT);

    private static JsonNode tree(String json) {
        try {
            return MAPPER.readTree(json);
        } catch (JsonProcessingException broken) {
            throw new AssertionError(broken);
        }
    }

    private static List<Error> errors(JsonNode node) {
        return SCHEMA.validate(node.toString(), InputFormat.JSON);
    }

    static Stream<Shape> shapes() {
        return Groups.all();
    }

    @ParameterizedTest
    @MethodSource("shapes")
    void definesTheReadersKeys(Shape shape) {
        JsonNode definition = TEXT.path("$defs").path(shape.name());
        List<String> keys = new ArrayList<>();
        definition.path("properties").fieldNames().forEachRemaining(keys::add);
        assertThat(keys).containsExactlyInAnyOrderElementsOf(shape.keys());
        assertThat(definition.path("additionalProperties").asBoolean(true)).isFalse();
    }

    @Test
    void definesNoGroupThatTheReaderDoesNotKnow() {
        List<String> groups = new ArrayList<>();
        TEXT.path("$defs").properties().stream()
                .filter(entry -> entry.getValue().has("properties"))
                .forEach(entry -> groups.add(entry.getKey()));
        assertThat(groups)
                .containsExactlyInAnyOrderElementsOf(
                        Groups.all().map(Shape::name).toList());
    }

    @Test
    void listsTheReadersWords() {
        Map<String, Choices<?>> words = Map.ofEntries(
                Map.entry("person/sex", Words.SEX),
                Map.entry("person/segment table", Words.TABLE),
                Map.entry("strength test/action", Words.ACTION),
                Map.entry("strength test/with", Words.TESTER),
                Map.entry("strength test/ended", Words.ENDED),
                Map.entry("machine/rides", Words.RIDE),
                Map.entry("machine/tape", Words.TAPE),
                Map.entry("machine/plates go on", Words.PLATES_GO_ON),
                Map.entry("weight stack/plates", Words.STACKED),
                Map.entry("counterweight/runs", Words.RUN),
                Map.entry("body point/on", MovingBody.PARTS),
                Map.entry("pad/on", MovingBody.PARTS),
                Map.entry("cuff/on", MovingBody.PARTS),
                Map.entry("hinge/lift", Words.ACTION),
                Map.entry("straight path/limbs", Words.LIMBS),
                Map.entry("balanced stand/limbs", Words.LIMBS),
                Map.entry("stretch line/hang", Words.HANG),
                Map.entry("stretch line/placement", Words.PLACEMENT),
                Map.entry("exercise/limbs", Words.LIMBS),
                Map.entry("hinge/limbs", Words.LIMBS),
                Map.entry("push/through", Words.BODY_POINT),
                Map.entry("line/hang", Words.HANG),
                Map.entry("line/placement", Words.PLACEMENT),
                Map.entry("flowing/at", Words.TURN),
                Map.entry("limits/hold for", Words.STRAYING));
        words.forEach((path, choices) -> {
            String[] step = path.split("/");
            JsonNode values = TEXT.path("$defs")
                    .path(step[0])
                    .path("properties")
                    .path(step[1])
                    .path("enum");
            List<String> listed = new ArrayList<>();
            values.forEach(value -> listed.add(value.asText()));
            assertThat(listed).as(path).containsExactlyElementsOf(choices.words());
        });
    }

    @Test
    void listsTheKindsOfExercise() {
        JsonNode kinds = TEXT.at("/$defs/scenario/properties/exercise/properties/kind/enum");
        List<String> listed = new ArrayList<>();
        kinds.forEach(kind -> listed.add(kind.asText()));
        assertThat(listed).containsExactlyElementsOf(MovementKinds.words().words());
    }

    @Test
    void readsEveryUnitThatTheReaderReads() {
        Set<Dimension> inNoFile = EnumSet.of(Dimension.AREA, Dimension.ANGULAR_SPEED, Dimension.RATIO);
        for (Unit unit : Unit.values()) {
            if (!inNoFile.contains(unit.dimension())) {
                String pattern = TEXT.path("$defs")
                        .path(unit.dimension().words())
                        .path("pattern")
                        .asText();
                for (String spelling : unit.spellings()) {
                    assertThat("-1.5e2 " + spelling).matches(pattern);
                    assertThat("7" + spelling).matches(pattern);
                    assertThat("7 " + spelling + "x").doesNotMatch(pattern);
                }
            }
        }
    }

    @Test
    void acceptsTheExampleAndWhatIsWritten() throws JsonProcessingException {
        for (String example : List.of("example.yaml", "example-exercise.yaml")) {
            assertThat(errors(new YAMLMapper().readTree(Files.shipped(example))))
                    .as(example)
                    .isEmpty();
        }
        assertThat(Files.all().map(ScenarioWriter::json).map(SchemaTest::tree))
                .allSatisfy(node -> assertThat(errors(node)).isEmpty());
    }

    /** crosscheck: each part of a whole scenario taken away, renamed or replaced; both find a fault of form or neither does. */
    @Test
    void agreesWithTheReaderOnEverySingleChange() {
        agrees((ObjectNode) tree(ScenarioWriter.json(Files.example())), 2000);
    }

    @Test
    void agreesWithTheReaderOnEverySingleChangeOfAPressWithAStack() {
        agrees((ObjectNode) tree(ScenarioWriter.json(Files.stackPress())), 2000);
    }

    @Test
    void agreesWithTheReaderOnEverySingleChangeOfAnExercise() {
        agrees((ObjectNode) tree(ScenarioWriter.json(Files.exercise())), 3000);
    }

    static Stream<String> everyKind() {
        return Files.kinds();
    }

    @ParameterizedTest
    @MethodSource("everyKind")
    void agreesWithTheReaderOnEverySingleChangeOfEveryKind(String yaml) {
        agrees((ObjectNode) tree(ScenarioWriter.json(Files.exercise(yaml))), 300);
    }

    private static void agrees(ObjectNode whole, int atLeast) {
        int refused = 0;
        List<JsonNode> changes = SingleChanges.of(whole);
        for (JsonNode changed : changes) {
            boolean valid = errors(changed).isEmpty();
            List<Problem> problems = ScenarioReader.read(List.of(Source.of("a.json", changed.toString())))
                    .problems()
                    .all();
            boolean formed = problems.stream().noneMatch(problem -> FORM.contains(problem.code()));
            String where = SingleChanges.difference(whole, changed) + " " + problems;
            assertThat(valid ? formed : !problems.isEmpty()).as(where).isTrue();
            refused += valid ? 0 : 1;
        }
        assertThat(changes).hasSizeGreaterThan(atLeast);
        assertThat(refused).isBetween(changes.size() / 2, changes.size() - 50);
    }

    @Test
    void refusesWhatHasNoForm() {
        assertThat(errors(MAPPER.createObjectNode())).isNotEmpty();
        assertThat(errors(new ArrayNode(MAPPER.getNodeFactory()))).isNotEmpty();
    }
}
