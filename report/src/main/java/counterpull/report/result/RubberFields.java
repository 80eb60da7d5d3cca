package counterpull.report.result;

import counterpull.engine.load.LineSeries;
import counterpull.engine.profile.PressProfile;
import counterpull.report.table.Measure;
import java.util.ArrayList;
import java.util.List;

/** Length, stretch, looseness and pull of every elastic line. */
final class RubberFields {
    private RubberFields() {}

    static List<Field> of(PressProfile profile) {
        List<Field> fields = new ArrayList<>();
        for (int k = 0; k < profile.lines().size(); k++) {
            fields.addAll(line(profile.lines().get(k), k + 1));
        }
        return fields;
    }

    private static List<Field> line(LineSeries line, int number) {
        String key = "line_" + number + "_";
        String name = "line " + number + " ";
        String whose = " of " + line.line().words();
        return List.of(
                Field.number(
                        key + "length",
                        name + "length",
                        Measure.LENGTH,
                        "length left for the rubber" + whose,
                        spot -> line.rubberLength(spot.position())),
                Field.number(
                        key + "stretch",
                        name + "stretch ratio",
                        Measure.NUMBER,
                        "rubber length over natural length" + whose + "; below 1 it hangs loose",
                        spot -> line.stretch(spot.position())),
                Field.number(
                        key + "looseness",
                        name + "looseness",
                        Measure.LENGTH,
                        "looseness" + whose + ": positive hangs loose, negative is pre-stretched",
                        spot -> line.looseness(spot.position())),
                Field.number(
                        key + "force",
                        name + "pull",
                        Measure.FORCE,
                        "pull of all its strands along themselves" + whose,
                        spot -> line.line().strands() * line.tension(spot.phase(), spot.position())),
                Field.number(
                        key + "push",
                        name + "adds to push",
                        Measure.FORCE,
                        "what all its strands add to the push on the plate" + whose + "; negative relieves",
                        spot -> line.line().strands() * line.push(spot.phase(), spot.position())));
    }
}
