package counterpull.bench.person;

import counterpull.engine.body.Action;
import counterpull.engine.body.Anthropometry;
import counterpull.engine.body.DempsterWinter;
import counterpull.engine.body.MeasuredLengths;
import counterpull.engine.body.Sex;
import counterpull.engine.body.Side;
import counterpull.engine.strength.Physique;
import counterpull.engine.strength.Prior;
import counterpull.engine.strength.Tester;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One invented person, and tests of theirs that differ in one thing. */
final class Birds {
    static final Anthropometry BODY =
            new Anthropometry(new DempsterWinter(), Sex.FEMALE, 1.70, 64, MeasuredLengths.none());
    static final Physique PERSON = new Physique(Sex.FEMALE, 34, 64, 1.70);
    static final double SIXTY = Math.toRadians(60);

    private Birds() {}

    static Optional<Prior> published(Action action) {
        return Prior.of(action, PERSON);
    }

    static StrengthBench.Subject knee(Side side) {
        return new StrengthBench.Subject(Action.KNEE_EXTENSION, side, SIXTY);
    }

    /** Sitting: the shank 60° below level. */
    static LimbWeight sitting() {
        return new LimbWeight.FromTable(Attitude.straight(-SIXTY));
    }

    static StrengthBench belt(List<Effort> efforts) {
        return new StrengthBench(
                knee(Side.LEFT),
                efforts,
                new StrengthBench.Setting(Pad.at(0.34), sitting()),
                Way.of(Tester.BELT_FIXED));
    }

    static List<Effort> reached(double... forces) {
        List<Effort> efforts = new ArrayList<>();
        for (double force : forces) {
            efforts.add(Effort.reached(force));
        }
        return efforts;
    }
}
