package counterpull.scenario.fields;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.body.Side;
import counterpull.scenario.problem.Code;
import counterpull.scenario.problem.Problem;
import counterpull.scenario.problem.Problems;
import counterpull.scenario.tree.Source;
import counterpull.scenario.tree.TreeReader;
import counterpull.scenario.units.Dimension;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class FieldsTest {
    private static final Measure LENGTH = Measure.between(Dimension.LENGTH, "5 cm", "1 m");
    private static final Choices<Side> SIDES =
            Choices.of(side -> side.name().toLowerCase(Locale.ROOT), Side.LEFT, Side.RIGHT);
    private static final Shape SHAPE =
            Shape.of("limb", "thigh", "shank", "side", "sets", "name", "inner", "list", "lengths");
    private static final Span FEW = new Span(1, 3);

    private final Problems problems = new Problems();

    private Fields fields(String yaml) {
        return Fields.open(TreeReader.read(Source.of("a.yaml", yaml), problems).orElseThrow(), SHAPE, problems);
    }

    private List<Code> codes() {
        return problems.all().stream().map(Problem::code).toList();
    }

    @Test
    void readsWhatIsThere() {
        Fields fields = fields("thigh: 41 cm\nside: right\nsets: 3\nname: Plover\ninner: {shank: 15 in}\n"
                + "list: [{thigh: 1 ft}]\nlengths: [6 cm, 7 cm]");
        assertThat(fields.required("thigh", LENGTH)).isEqualTo(0.41);
        assertThat(fields.optional("shank", LENGTH)).isEmpty();
        assertThat(fields.choice("side", SIDES)).isEqualTo(Side.RIGHT);
        assertThat(fields.count("sets", FEW)).isEqualTo(3);
        assertThat(fields.text("name")).isEqualTo("Plover");
        assertThat(fields.group("inner", SHAPE).orElseThrow().required("shank", LENGTH))
                .isEqualTo(0.381);
        assertThat(fields.groups("list", SHAPE, FEW)).hasSize(1);
        assertThat(fields.quantities("lengths", LENGTH, FEW)).containsExactly(0.06, 0.07);
        assertThat(problems.isEmpty()).isTrue();
        assertThat(fields.built(() -> "built")).contains("built");
    }

    @Test
    void collectsEveryProblemInOnePass() {
        Fields fields = fields("thigh: 41\nshank: 9 m\nside: rihgt\nsets: 2.5\nname: ''\ninner: 5\nlist: []\n"
                + "lengths: [6 cm, -7 cm, 8 kg]\nthihg: 41 cm");
        fields.required("thigh", LENGTH);
        fields.required("shank", LENGTH);
        fields.choice("side", SIDES);
        fields.count("sets", FEW);
        fields.text("name");
        assertThat(fields.group("inner", SHAPE)).isEmpty();
        fields.groups("list", SHAPE, FEW);
        assertThat(fields.quantities("lengths", LENGTH, FEW)).hasSize(3);
        assertThat(codes())
                .containsExactly(
                        Code.UNIT_MISSING,
                        Code.OUTSIDE_LIMITS,
                        Code.NOT_A_CHOICE,
                        Code.NOT_A_NUMBER,
                        Code.VALUE_MISSING,
                        Code.WRONG_KIND,
                        Code.TOO_FEW,
                        Code.MUST_BE_POSITIVE,
                        Code.WRONG_UNIT,
                        Code.UNKNOWN_KEY);
        assertThat(problems.lines().get(9)).contains("Did you mean \"thigh\"?");
        assertThat(problems.lines().get(2)).contains("Did you mean \"right\"?");
        assertThat(fields.built(() -> "built")).isEmpty();
    }

    @Test
    void aProblemCarriesValueUnitAndLimit() {
        fields("shank: 9 m").required("shank", LENGTH);
        Problem problem = problems.all().get(0);
        assertThat(problem.found().value()).isEqualTo("9 m");
        assertThat(problem.found().unit()).isEqualTo("m");
        assertThat(problem.found().limit()).isEqualTo("1 m");
        assertThat(problem.line())
                .isEqualTo("a.yaml:1:8  shank: 9 m is above 1 m, the limit for this value. "
                        + "Check the number and its unit. [outside-limits]");
    }

    @Test
    void limitsThemselvesAreAllowed() {
        Fields fields = fields("thigh: 5 cm\nshank: 100 cm");
        assertThat(fields.required("thigh", LENGTH)).isEqualTo(0.05);
        assertThat(fields.required("shank", LENGTH)).isEqualTo(1);
        assertThat(problems.isEmpty()).isTrue();
    }

    @Test
    void aForceInKilogramsGetsTheHintThatHelps() {
        fields("thigh: 12 kg").required("thigh", Measure.between(Dimension.FORCE, "1 N", "5 kN"));
        assertThat(problems.lines().get(0)).contains("\"kg\" measures mass, but a force is due", "kgf");
    }

    @Test
    void missingKeysNameTheirWay() {
        fields("inner: {shank: 9 cm}").group("inner", SHAPE).orElseThrow().required("thigh", LENGTH);
        assertThat(problems.lines()).singleElement().asString().contains("inner.thigh: this key is missing in limb");
    }

    @Test
    void whatIsReportedOnceIsNotReportedAgain() {
        Fields fields = fields("thigh: *x\ninner: !t {a: b}");
        fields.required("thigh", LENGTH);
        fields.group("inner", SHAPE);
        assertThat(codes()).containsExactly(Code.ALIAS, Code.TYPE_TAG);
        assertThat(fields.isSound()).isFalse();
    }

    @Test
    void exactlyOneOfSeveralKeys() {
        assertThat(fields("thigh: 6 cm").oneOf("thigh", "shank")).contains("thigh");
        assertThat(problems.isEmpty()).isTrue();
        assertThat(fields("name: x").oneOf("thigh", "shank")).isEmpty();
        assertThat(fields("thigh: 6 cm\nshank: 6 cm").oneOf("thigh", "shank")).isEmpty();
        assertThat(codes()).containsExactlyInAnyOrder(Code.MISSING_KEY, Code.CONTRADICTION);
    }

    @Test
    void aRefusalOfTheEngineBecomesAProblemInAPersonsUnits() {
        Fields fields = fields("thigh: 6 cm");
        assertThat(fields.built(() -> {
                    throw new Refusal(Fault.OUTSIDE_LIMITS, "knee flexion", Math.PI, Math.PI / 2, "rad", "too far");
                }))
                .isEmpty();
        assertThat(problems.all()).singleElement().satisfies(problem -> {
            assertThat(problem.code()).isEqualTo(Code.OUTSIDE_LIMITS);
            assertThat(problem.message()).isEqualTo("knee flexion must be at most 90°");
            assertThat(problem.found().value()).isEqualTo("180°");
        });
    }

    @Test
    void askingForAKeyThatIsNotDeclaredIsOurOwnFault() {
        Fields fields = fields("thigh: 6 cm");
        assertThatThrownBy(() -> fields.text("colour")).isInstanceOf(IllegalArgumentException.class);
    }
}
