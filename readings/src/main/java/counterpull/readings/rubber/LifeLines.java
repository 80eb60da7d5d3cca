package counterpull.readings.rubber;

import counterpull.bench.Estimate;
import counterpull.bench.tubing.TubingResult;
import counterpull.bench.tubing.WearLimits;
import counterpull.bench.tubing.WearRecord;
import counterpull.bench.tubing.WearTest;
import counterpull.engine.Refusal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The record of a piece as a file has it.
 *
 * @param tested date of the readings in the file
 * @param day on which it is judged
 * @param compared length at which forces are compared, m; empty: the longest that was tested
 * @param cycles stretches since the last test
 * @param before earlier tests: date, natural length m, force of one strand N
 * @param damage what was seen
 */
record LifeLines(
        LocalDate tested,
        LocalDate day,
        OptionalDouble compared,
        int cycles,
        List<Earlier> before,
        List<String> damage) {
    /** Of an earlier test only these were noted; how sure they were is taken as the tape's and scale's usual (our assumption). */
    record Earlier(LocalDate on, double natural, double force) {
        private static final double NATURAL_SD = 0.002;
        private static final double FORCE_SHARE = 0.02;

        WearTest at(double length) {
            return new WearTest(
                    on, Estimate.normal(natural, NATURAL_SD), length, Estimate.normal(force, FORCE_SHARE * force));
        }
    }

    RubberSubject.Life life(String tag, Optional<TubingResult> result) {
        double length = compared.orElse(
                result.map(found -> found.rubber().testedMaxLength()).orElse(Double.NaN));
        List<WearTest> tests =
                new ArrayList<>(before.stream().map(each -> each.at(length)).toList());
        result.flatMap(found -> now(found, length)).ifPresent(tests::add);
        WearRecord record = new WearRecord(tag, tests, cycles, damage);
        return new RubberSubject.Life(day, cycles, tests.size(), record.on(day, WearLimits.USUAL));
    }

    private Optional<WearTest> now(TubingResult result, double length) {
        try {
            return Optional.of(WearTest.of(tested, result, length));
        } catch (Refusal pastTested) {
            return Optional.empty();
        }
    }
}
