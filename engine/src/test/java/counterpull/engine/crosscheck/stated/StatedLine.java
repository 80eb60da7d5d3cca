package counterpull.engine.crosscheck.stated;

import counterpull.engine.elastic.ElasticLaw;
import counterpull.engine.elastic.LinearLaw;
import counterpull.engine.elastic.LossFraction;
import counterpull.engine.elastic.MooneyRivlin;
import counterpull.engine.elastic.Ogden;
import counterpull.engine.elastic.OgdenTerm;
import counterpull.engine.elastic.Rubber;
import counterpull.engine.load.ElasticLine;
import counterpull.engine.load.FixedPoint;
import counterpull.engine.load.Guide;
import counterpull.engine.load.Hang;
import counterpull.engine.load.LineEnd;
import counterpull.engine.load.OnBody;
import counterpull.engine.load.OnGuidedMass;
import counterpull.engine.load.OnLever;
import counterpull.engine.load.Placement;
import counterpull.engine.load.RailFrame;
import counterpull.engine.load.StretchLine;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** An elastic line as a reference file states it. */
final class StatedLine {
    private StatedLine() {}

    /** law, piece, pieces, dead length, both ends, guides. */
    static StretchLine of(String name, Words in) {
        Rubber rubber = rubber(name, in);
        ElasticLine.Pieces pieces = pieces(in);
        double dead = in.number();
        LineEnd from = end(in);
        LineEnd to = end(in);
        return new StretchLine(name, rubber, pieces, dead, from, to, guides(in));
    }

    private static Rubber rubber(String name, Words in) {
        ElasticLaw law = law(in);
        double piece = in.number();
        double hardware = in.number();
        double tested = in.number();
        return new Rubber(name, piece, law, new LossFraction(in.number()), tested, 0, hardware);
    }

    private static ElasticLaw law(Words in) {
        return switch (in.word()) {
            case "linear" -> new LinearLaw(in.number());
            case "mooney" -> new MooneyRivlin(in.number(), in.number(), in.number());
            default -> ogden(in);
        };
    }

    private static ElasticLaw ogden(Words in) {
        double area = in.number();
        List<OgdenTerm> terms = new ArrayList<>();
        for (int left = in.whole(); left > 0; left--) {
            terms.add(new OgdenTerm(in.number(), in.number()));
        }
        return new Ogden(area, terms);
    }

    private static ElasticLine.Pieces pieces(Words in) {
        int count = in.whole();
        Hang hang = Hang.valueOf(in.word().toUpperCase(Locale.ROOT));
        Placement placement = in.word().equals("pair") ? Placement.MATCHED_PAIR : Placement.CENTRED;
        return new ElasticLine.Pieces(count, hang, placement);
    }

    private static LineEnd end(Words in) {
        return switch (in.word()) {
            case "fixed" -> new FixedPoint("hook", in.place(), in.number(), Double.POSITIVE_INFINITY);
            case "body" -> new OnBody(StatedThings.point(in), in.number());
            case "lever" -> new OnLever("peg", StatedThings.frame(in), in.number(), in.number(), in.number());
            default -> new OnGuidedMass("peg", rail(in), in.place(), in.number());
        };
    }

    private static RailFrame rail(Words in) {
        return new RailFrame(StatedThings.point(in), in.number());
    }

    private static List<Guide> guides(Words in) {
        List<Guide> guides = new ArrayList<>();
        for (int left = in.whole(); left > 0; left--) {
            guides.add(new Guide("guide", in.place(), in.number(), in.number()));
        }
        return guides;
    }
}
