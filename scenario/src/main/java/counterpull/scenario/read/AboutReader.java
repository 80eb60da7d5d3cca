package counterpull.scenario.read;

import static counterpull.scenario.format.Measures.UP_TO_A_HUNDRED;

import counterpull.scenario.content.About;
import counterpull.scenario.content.About.Measuring;
import counterpull.scenario.fields.Fields;
import counterpull.scenario.format.Shapes;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads what an exercise's author says about it. */
final class AboutReader {
    private AboutReader() {}

    static Optional<About> read(Fields top) {
        return top.optionalGroup("about", Shapes.ABOUT).map(AboutReader::about);
    }

    private static About about(Fields fields) {
        List<Measuring> measure = new ArrayList<>();
        for (Fields item : fields.optionalGroups("measure", Shapes.MEASURING, UP_TO_A_HUNDRED)) {
            measure.add(new Measuring(item.sentence("what"), item.sentence("how")));
        }
        return new About(
                fields.text("name"),
                fields.sentence("what"),
                measure,
                fields.optionalSentences("cautions", UP_TO_A_HUNDRED));
    }
}
