package counterpull.bench.person;

import counterpull.bench.Kind;
import counterpull.bench.Remark;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;

/**
 * Slips of the decimal point among repeated readings of one thing: a reading about ten times, or a tenth of, the middle of them.
 *
 * @param kind what they measure
 * @param name how a reading is called, by its index
 */
record Slips(Kind kind, IntFunction<String> name) {
    /** Between these a ratio is nearer to ten than to anything that repeats of one thing show; ours. */
    private static final double FROM = 5;

    private static final double TO = 20;

    List<Remark> in(List<Double> readings) {
        List<Remark> remarks = new ArrayList<>();
        double middle = middle(readings);
        for (int i = 0; i < readings.size(); i++) {
            double ratio = Math.max(readings.get(i) / middle, middle / readings.get(i));
            if (ratio > FROM && ratio < TO) {
                remarks.add(Remark.refuses("decimal-slip", name.apply(i) + " is ")
                        .then(readings.get(i), kind)
                        .then(" beside ")
                        .then(middle, kind)
                        .then(" of the others, about ten times apart: check its decimal point"));
            }
        }
        return remarks;
    }

    /** The median; of an even number the lower one of the two in the middle, so that of two readings one is named. */
    private static double middle(List<Double> readings) {
        List<Double> sorted = readings.stream().sorted().toList();
        return sorted.get((sorted.size() - 1) / 2);
    }
}
