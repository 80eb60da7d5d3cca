package counterpull.scenario.read;

import static counterpull.scenario.format.Measures.UP_TO_A_HUNDRED;

import counterpull.engine.uncertainty.Input;
import counterpull.engine.uncertainty.Spread;
import counterpull.scenario.content.Piece;
import counterpull.scenario.content.Unsure;
import counterpull.scenario.content.Unsure.UnsurePiece;
import counterpull.scenario.fields.Fields;
import counterpull.scenario.fields.Named;
import counterpull.scenario.format.Shapes;
import counterpull.scenario.format.UnsureKeys;
import counterpull.scenario.problem.Code;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/** Reads standard uncertainties, as far as they are stated. */
final class UnsureReader {
    private static final double NOT_STATED = Double.NaN;

    private final Predicate<Input> meant;
    private final String where;
    private final Named<Piece> rubber;

    private UnsureReader(Predicate<Input> meant, String where, Named<Piece> rubber) {
        this.meant = meant;
        this.where = where;
        this.rubber = rubber;
    }

    /** Those of a press on a sled with rubber out of this kit. */
    static Unsure ofPress(Fields top, Optional<List<Piece>> pieces) {
        Named<Piece> rubber = new Named<>("rubber in the kit", pieces, Piece::tag);
        return new UnsureReader(UnsureKeys::ofPress, "an exercise of the library", rubber).read(top);
    }

    /** Those of any other exercise. */
    static Unsure ofExercise(Fields top) {
        Named<Piece> none = new Named<>("rubber in the kit", Optional.of(List.of()), Piece::tag);
        return new UnsureReader(UnsureKeys::ofExercise, "a rail press", none).read(top);
    }

    private Unsure read(Fields top) {
        return top.optionalGroup("uncertainty", Shapes.UNCERTAINTY)
                .map(this::unsure)
                .orElse(Unsure.nothing());
    }

    private Unsure unsure(Fields fields) {
        Map<Input, Double> inputs = new EnumMap<>(Input.class);
        for (Input input : UnsureKeys.plain()) {
            if (fields.has(UnsureKeys.key(input)) && !meant.test(input)) {
                onlyElsewhere(fields, UnsureKeys.key(input));
            }
            put(fields, input, inputs);
        }
        fields.optionalGroup("friction", Shapes.UNSURE_FRICTION)
                .ifPresent(friction -> UnsureKeys.FRICTION.forEach(input -> put(friction, input, inputs)));
        return new Unsure(inputs, pieces(fields));
    }

    private void onlyElsewhere(Fields fields, String key) {
        fields.report(Code.CONTRADICTION, key, "only " + where + " has this", "Leave it out here");
    }

    private static void put(Fields fields, Input input, Map<Input, Double> inputs) {
        fields.optional(UnsureKeys.key(input), UnsureKeys.measure(input.kind()))
                .ifPresent(value -> inputs.put(input, value));
    }

    private List<UnsurePiece> pieces(Fields fields) {
        List<UnsurePiece> pieces = new ArrayList<>();
        Set<String> tags = new HashSet<>();
        for (Fields piece : fields.optionalGroups("rubber", Shapes.UNSURE_RUBBER, UP_TO_A_HUNDRED)) {
            Optional<Piece> named = piece.named("tag", rubber);
            double force = piece.orElse("force", UnsureKeys.measure(Spread.Kind.SHARE), NOT_STATED);
            double length = piece.orElse("natural length", UnsureKeys.measure(Spread.Kind.LENGTH), NOT_STATED);
            named.ifPresent(found -> {
                if (!tags.add(found.tag())) {
                    piece.report(Code.DUPLICATE_NAME, "tag", "this piece is named already", "Keep one of them");
                }
                pieces.add(new UnsurePiece(found.tag(), force, length));
            });
        }
        return pieces;
    }
}
