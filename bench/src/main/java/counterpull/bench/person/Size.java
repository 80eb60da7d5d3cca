package counterpull.bench.person;

import counterpull.bench.Kind;
import counterpull.bench.Remark;
import java.util.ArrayList;
import java.util.List;

/**
 * Stature and mass together.
 *
 * @param stature m
 * @param mass kg
 */
public record Size(double stature, double mass) {
    /** Mass over stature squared, kg/m²: people who train are hardly outside; ours. */
    private static final double LEAST = 13;

    private static final double MOST = 60;
    private static final double POUND = 0.45359237;

    /** What is odd about them. */
    public List<Remark> remarks() {
        List<Remark> remarks = new ArrayList<>();
        double ratio = mass / (stature * stature);
        boolean pounds = ratio > 40 && ratio * POUND > 17 && ratio * POUND < 32;
        if (ratio < LEAST || ratio > MOST || pounds) {
            remarks.add(Remark.doubts("size-odd", "a mass of ")
                    .then(mass, Kind.MASS)
                    .then(" at a stature of ")
                    .then(stature, Kind.LENGTH)
                    .then(
                            pounds
                                    ? " is rare: were pounds written as kilograms?"
                                    : " is hardly possible: check both and their units"));
        }
        return remarks;
    }
}
