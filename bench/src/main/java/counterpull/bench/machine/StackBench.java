package counterpull.bench.machine;

import counterpull.bench.Answer;
import counterpull.bench.fit.Noise;
import java.util.List;

/**
 * A weight stack and its line: ratio, friction, what each pin really weighs.
 *
 * <p>Law: out U = (1 + φ) m g/R, back D = (1 − φ) m g/R, after what handle or carriage read alone is taken off; so φ = (U − D)/(U + D) and m =
 * R (U + D)/2g. R from measured ways (handle way / stack rise), or from weighed mass laid on the stack. Intervals of φ and R after
 * Fieller ({@link counterpull.bench.fit.Quotient}). Without R a pin's mass and R cannot be told apart: only the pull is known.
 *
 * @param name what the floor calls it
 * @param runs ways and rises; may be empty
 * @param tape how far one way or rise may lie from the truth, m
 * @param pulls in the order in which they were read
 * @param alone what is to be taken off; may be empty
 * @param moving what was weighed of what moves with the line, kg, each weighing; may be empty
 * @param scale how far one pull may lie from the truth, N
 */
public record StackBench(
        String name,
        List<LineRun> runs,
        Noise tape,
        List<StackPull> pulls,
        List<Alone> alone,
        List<Double> moving,
        Noise scale)
        implements MachineBench {
    public StackBench {
        runs = List.copyOf(runs);
        pulls = List.copyOf(pulls);
        alone = List.copyOf(alone);
        moving = List.copyOf(moving);
    }

    @Override
    public Answer<StackFound> answer() {
        return Asking.answer(
                new StackReadings(this).remarks(),
                () -> new StackEstimator(this).found(),
                found -> new StackChecks(found).remarks());
    }
}
