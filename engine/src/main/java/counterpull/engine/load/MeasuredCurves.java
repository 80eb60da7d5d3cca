package counterpull.engine.load;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.elastic.MonotoneCubic;
import java.util.List;

/** Mean and half difference of a machine's readings up and down, between the first and the last reading. */
final class MeasuredCurves {
    /** An angle is a sum of directions: one that misses the last reading by rounding alone still belongs to it. */
    private static final double TOUCH = 1e-9;

    private final String name;
    private final double first;
    private final double last;
    private final MonotoneCubic mean;
    private final MonotoneCubic half;

    MeasuredCurves(String name, List<MeasuredProfile.Reading> readings) {
        this.name = name;
        double[] position = new double[readings.size()];
        double[] means = new double[position.length];
        double[] halves = new double[position.length];
        for (int i = 0; i < position.length; i++) {
            MeasuredProfile.Reading reading = readings.get(i);
            position[i] = reading.position();
            means[i] = (reading.up() + reading.down()) / 2;
            halves[i] = (reading.up() - reading.down()) / 2;
        }
        first = position[0];
        last = position[position.length - 1];
        mean = new MonotoneCubic(position, means);
        half = new MonotoneCubic(position, halves);
    }

    /** The position itself where the readings reach; refused beyond them. */
    double inside(double position, String unit) {
        if (position < first - TOUCH || position > last + TOUCH) {
            throw new Refusal(
                    Fault.OUTSIDE_LIMITS,
                    "position on " + name,
                    position,
                    position < first ? first : last,
                    unit,
                    name
                            + " was not measured there: the readings end before the range does. Measure it over the whole range, or "
                            + "shorten the range");
        }
        return Math.min(last, Math.max(first, position));
    }

    double mean(double position) {
        return mean.value(position);
    }

    double meanSlope(double position) {
        return mean.slope(position);
    }

    /** Half the difference; never more than the mean: what is read on the way down is zero or more, also between readings. */
    double half(double position) {
        return Math.min(half.value(position), mean.value(position));
    }
}
