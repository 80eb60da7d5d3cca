package counterpull.engine.load;

import counterpull.engine.elastic.ElasticLaw;
import counterpull.engine.elastic.LinearLaw;
import counterpull.engine.elastic.LossFraction;
import counterpull.engine.elastic.MooneyRivlin;
import counterpull.engine.elastic.Rubber;
import counterpull.engine.motion.BodyPoint;
import counterpull.engine.motion.ChainPath;
import counterpull.engine.planar.Vec;
import java.util.ArrayList;
import java.util.List;

/** Seeded random elastic lines between all kinds of ends, for contract tests. */
final class RandomStretch {
    private final RandomLimb random;
    private final RandomLever levers;

    RandomStretch(RandomLimb random) {
        this.random = random;
        levers = new RandomLever(random);
    }

    /** A limb on which such a line can be tried: on a rail one whose points do not turn back along it. */
    ChainPath limb(String ends) {
        return ends.contains("G") ? random.next() : levers.swinging();
    }

    /** A line with ends of stated kinds: F fixed, B on the body, L on a lever, G on a guided mass. */
    StretchLine line(ChainPath path, String ends) {
        double lateral = random.below(2) == 0 ? 0 : random.between(-0.3, 0.3);
        Placement placement = lateral == 0 ? Placement.CENTRED : Placement.MATCHED_PAIR;
        Hang hang = random.below(2) == 0 ? Hang.SINGLE : Hang.DOUBLED;
        ElasticLine.Pieces pieces = new ElasticLine.Pieces(2, hang, placement);
        LineEnd from = end(path, ends.charAt(0), lateral);
        LineEnd to = end(path, ends.charAt(1), lateral / 2);
        List<Guide> guides = new ArrayList<>();
        for (int k = ends.length() - 2; k > 0; k--) {
            guides.add(new Guide("guide", away(k), lateral, random.between(0, 0.2)));
        }
        return new StretchLine(
                "line", rubber(), pieces, random.between(0, 0.05 + 0.5 * guides.size()), from, to, guides);
    }

    /** Well apart from what moves. */
    private Vec away(int k) {
        return Vec.unit(random.between(-3, 3)).times(1.1 + 0.4 * k);
    }

    private LineEnd end(ChainPath path, char kind, double lateral) {
        return switch (kind) {
            case 'F' -> new FixedPoint("post", away(0), lateral, 500);
            case 'B' -> new OnBody(random.point(path), lateral);
            case 'L' -> new OnLever("peg", levers.on(path), random.between(0.1, 0.5), random.between(-3, 3), lateral);
            default -> new OnGuidedMass("bar", rail(path), new Vec(0.05, random.between(-0.2, 0.2)), lateral);
        };
    }

    private RailFrame rail(ChainPath path) {
        BodyPoint at = random.point(path);
        Vec whole = path.track(at).at(path.positions() - 1).minus(path.track(at).at(0));
        return new RailFrame(at, Math.atan2(whole.y(), whole.x()) + random.between(-0.2, 0.2));
    }

    private Rubber rubber() {
        ElasticLaw law = random.below(2) == 0 ? LinearLaw.ofStiffness(200, 0.5) : new MooneyRivlin(6e-5, 1.2e5, 0.8e5);
        return new Rubber(
                "red tag", random.between(0.05, 0.5), law, new LossFraction(random.between(0, 0.2)), 100, 0, 0.02);
    }
}
