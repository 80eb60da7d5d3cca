package counterpull.scenario.resist;

import static counterpull.scenario.format.Measures.DEAD_LENGTH;
import static counterpull.scenario.format.Measures.GUIDES;
import static counterpull.scenario.format.Measures.LOSS;
import static counterpull.scenario.format.Measures.PIECES;
import static counterpull.scenario.format.Measures.PLACE;

import counterpull.engine.load.ElasticLine.Pieces;
import counterpull.engine.load.Guide;
import counterpull.engine.load.LineEnd;
import counterpull.engine.load.StretchLine;
import counterpull.engine.planar.Vec;
import counterpull.scenario.content.Piece;
import counterpull.scenario.content.Resisting;
import counterpull.scenario.fields.Fields;
import counterpull.scenario.fields.Shape;
import counterpull.scenario.format.Out;
import counterpull.scenario.format.Shapes;
import counterpull.scenario.format.Words;
import counterpull.scenario.units.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Rubber between any two points, over guides. */
final class StretchLineKind implements ResistKind {
    private static final Shape SHAPE = Shape.of(
            "stretch line", "name", "rubber", "pieces", "hang", "placement", "dead length", "from", "to", "guides");
    private static final Shape GUIDE = Shape.of("guide", "name", "forward", "up", "aside", "friction");

    @Override
    public Shape shape() {
        return SHAPE;
    }

    @Override
    public List<Shape> parts() {
        List<Shape> parts = new ArrayList<>(LineEnds.SHAPES);
        parts.add(GUIDE);
        return parts;
    }

    @Override
    public Optional<Resisting> read(Fields fields, Setting setting) {
        String name = fields.text("name");
        Optional<Piece> piece = fields.group("rubber", Shapes.RUBBER).flatMap(RubberReader::read);
        Optional<Pieces> pieces = pieces(fields);
        double dead = fields.orElse("dead length", DEAD_LENGTH, 0);
        Optional<LineEnd> from = LineEnds.read(fields, "from", setting);
        Optional<LineEnd> to = LineEnds.read(fields, "to", setting);
        List<Guide> guides = new ArrayList<>();
        for (Fields group : fields.optionalGroups("guides", GUIDE, GUIDES)) {
            guide(group).ifPresent(guides::add);
        }
        return fields.built(() -> {
            StretchLine line = new StretchLine(
                    name,
                    piece.orElseThrow().rubber(),
                    pieces.orElseThrow(),
                    dead,
                    from.orElseThrow(),
                    to.orElseThrow(),
                    guides);
            return new Resisting(line, Optional.empty(), piece);
        });
    }

    private static Optional<Pieces> pieces(Fields fields) {
        int count = fields.optionalCount("pieces", PIECES).orElse(1);
        var hang = fields.choice("hang", Words.HANG);
        var placement = fields.choice("placement", Words.PLACEMENT);
        return fields.built(() -> new Pieces(count, hang, placement));
    }

    private static Optional<Guide> guide(Fields fields) {
        String name = fields.text("name");
        Vec at = Places.inside(fields);
        double aside = fields.orElse("aside", PLACE, 0);
        double friction = fields.orElse("friction", LOSS, 0);
        return fields.built(() -> new Guide(name, at, aside, friction));
    }

    @Override
    public Optional<Out> write(Resisting resisting, Setting setting) {
        if (!(resisting.resistance() instanceof StretchLine line)) {
            return Optional.empty();
        }
        Piece piece = resisting.rubber().orElseThrow();
        return Optional.of(new Out()
                .put("name", line.name())
                .put("rubber", RubberWriter.piece(piece))
                .put("pieces", line.pieces().count())
                .put("hang", Words.HANG.word(line.pieces().hang()))
                .put("placement", Words.PLACEMENT.word(line.pieces().placement()))
                .put("dead length", line.deadLength(), Dimension.LENGTH)
                .put("from", LineEnds.write(line.from(), setting))
                .put("to", LineEnds.write(line.to(), setting))
                .putGroups("guides", line.guides(), StretchLineKind::guide));
    }

    private static Out guide(Guide guide) {
        return Places.inside(new Out().put("name", guide.name()), guide.at())
                .put("aside", guide.lateral(), Dimension.LENGTH)
                .put("friction", guide.loss(), Dimension.RATIO);
    }
}
