package counterpull.report.words;

import counterpull.engine.choice.Candidate;
import counterpull.engine.choice.PlateSet;
import counterpull.engine.choice.Question;
import java.util.Optional;

/** Setups next to a chosen one. */
final class Neighbours {
    private Neighbours() {}

    /** The same rubber in the same place with the next heavier total of plates that the kit and the machine allow. */
    static Optional<Candidate> heavier(Question question, Candidate candidate) {
        for (PlateSet set : PlateSet.within(
                question.kit(), question.task().sled().carriage().mostPlates())) {
            if (set.total() > candidate.plates().total() + 1e-6) {
                return Optional.of(candidate.with(set));
            }
        }
        return Optional.empty();
    }
}
