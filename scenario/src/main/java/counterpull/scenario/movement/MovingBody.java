package counterpull.scenario.movement;

import counterpull.engine.body.BodySide;
import counterpull.engine.body.Joint;
import counterpull.engine.motion.BodyPoint;
import counterpull.engine.motion.Motion;
import counterpull.engine.planar.Vec;
import counterpull.scenario.content.Client;
import counterpull.scenario.content.Sides;
import counterpull.scenario.fields.Choices;
import counterpull.scenario.fields.Fields;
import counterpull.scenario.format.Measures;
import counterpull.scenario.format.Out;
import counterpull.scenario.format.Shapes;
import counterpull.scenario.problem.Code;
import counterpull.scenario.units.Dimension;
import counterpull.scenario.units.Units;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The parts of a person that move in a movement: turns words like "shank, 35 cm" into the engine's points and back.
 *
 * @param links the parts, as the engine's chain has them
 * @param driver the joint whose angle drives the movement; empty where travel along a path does
 * @param sides lengths of the limbs that take part; empty where the person could not be read
 */
public record MovingBody(List<Link> links, Optional<Joint> driver, List<BodySide> sides) {
    /** How a file names the parts. */
    public static final Choices<String> PARTS = Choices.of(
            word -> word,
            Arrays.stream(Link.values()).map(Link::words).distinct().toArray(String[]::new));

    /** "As long as the part is". */
    public static final String WHOLE = "whole";

    private static final double SAME = 1e-9;

    /** How far a place may lie before the part's first joint (a heel, a weight behind the neck), m; our own. */
    private static final double BEFORE = 0.3;

    public MovingBody {
        links = List.copyOf(links);
        sides = List.copyOf(sides);
    }

    /** The limbs that take part in a movement. */
    public static MovingBody of(Motion motion, Optional<Client> client, Sides who) {
        List<BodySide> sides = client.map(Client::limbs).orElse(List.of()).stream()
                .filter(limb -> who.using().uses(limb.side()))
                .map(limb -> client.orElseThrow().body(limb))
                .toList();
        return new MovingBody(Link.of(motion), motion.driver(), sides);
    }

    /** The parts that move in a movement, of nobody in particular. */
    public static MovingBody of(Motion motion) {
        return new MovingBody(Link.of(motion), motion.driver(), List.of());
    }

    /** The point of the body that a group under a key describes. */
    public Optional<BodyPoint> point(Fields fields, String key) {
        return fields.group(key, Shapes.BODY_POINT).flatMap(this::point);
    }

    private Optional<BodyPoint> point(Fields fields) {
        Optional<Integer> index = index(fields);
        Optional<Double> along = index.flatMap(found -> along(fields, links.get(found)));
        double across = fields.orElse("across", Measures.ON_BODY, 0);
        if (index.isEmpty() || along.isEmpty()) {
            return Optional.empty();
        }
        Vec at = new Vec(along.get(), across);
        return fields.built(() -> new BodyPoint(name(links.get(index.get()), at), index.get(), at));
    }

    /** Which part of the chain the key "on" names. */
    public Optional<Integer> index(Fields fields) {
        return fields.sound(() -> fields.choice("on", PARTS)).flatMap(word -> index(fields, word));
    }

    private Optional<Integer> index(Fields fields, String word) {
        for (int index = 0; index < links.size(); index++) {
            if (links.get(index).words().equals(word)) {
                return Optional.of(index);
            }
        }
        List<String> known = links.stream().map(Link::words).toList();
        fields.report(
                Code.UNKNOWN_NAME,
                "on",
                "the " + word + " does not move in this exercise",
                "What moves: " + String.join(", ", known));
        return Optional.empty();
    }

    private Optional<Double> along(Fields fields, Link link) {
        if (!fields.peek("along").equals(Optional.of(WHOLE))) {
            Optional<Double> along = fields.sound(() -> fields.required("along", Measures.ON_BODY));
            return along.filter(place -> isOn(fields, link, place));
        }
        return whole(fields, link);
    }

    /** Whether a place is on the part, or no farther beyond it than what is worn or held there: else the tape slipped. */
    private boolean isOn(Fields fields, Link link, double along) {
        double longest = sides.stream()
                .map(link::length)
                .flatMap(Optional::stream)
                .mapToDouble(Double::doubleValue)
                .max()
                .orElse(Double.POSITIVE_INFINITY);
        boolean on = along >= -BEFORE && along <= longest + link.beyond();
        if (!on) {
            fields.report(
                    Code.OUT_OF_REACH,
                    "along",
                    length(along) + " from the " + link.from() + " is not on the " + link.words() + ", which is "
                            + length(longest) + " long; the limits are " + length(-BEFORE) + " and "
                            + length(longest + link.beyond()),
                    "Measure from the " + link.from() + " to where it acts");
        }
        return on;
    }

    private Optional<Double> whole(Fields fields, Link link) {
        List<Double> lengths =
                sides.stream().map(link::length).flatMap(Optional::stream).toList();
        boolean alike = lengths.stream().allMatch(length -> Math.abs(length - lengths.get(0)) < SAME);
        if (!alike) {
            fields.report(
                    Code.CONTRADICTION,
                    "along",
                    "left and right " + link.words() + " differ in length, so one place cannot be the end of both",
                    "Give the distance from the " + link.from() + " as a length, or do one limb at a time");
        }
        if (lengths.isEmpty()) {
            unknown(fields, link);
        }
        return alike ? lengths.stream().findFirst() : Optional.empty();
    }

    private void unknown(Fields fields, Link link) {
        if (sides.isEmpty()) {
            fields.stumble();
            return;
        }
        fields.report(
                Code.OUTSIDE_PUBLISHED_RANGE,
                "along",
                "this person's segment table has no row of the " + link.words() + " with all that it carries",
                "Name another segment table, or give the distance from the " + link.from() + " as a length");
    }

    /** What a point of a part is called. */
    static String name(Link link, Vec at) {
        String along = length(at.x()) + " from the " + link.from();
        return link.words() + ", " + along + (at.y() == 0 ? "" : ", " + length(at.y()) + " across");
    }

    private static String length(double metres) {
        return Units.METRIC.written(metres, Dimension.LENGTH).toString();
    }

    /** The word for a part of the chain. */
    public String word(int segment) {
        return links.get(segment).words();
    }

    /** A point as a group of keys. */
    public Out written(BodyPoint point) {
        return new Out()
                .put("on", word(point.segment()))
                .put("along", point.at().x(), Dimension.LENGTH)
                .put("across", point.at().y(), Dimension.LENGTH);
    }
}
