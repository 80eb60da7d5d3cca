package counterpull.bench.sled;

import counterpull.bench.Answer;
import counterpull.bench.fit.Noise;
import java.util.List;

/**
 * What was read at a sled: the rail's angle, slow pulls up and down, and what first moves it.
 *
 * <p>Law: up U = (M + m) g sin θ + f₀ + μ (M + m) g cos θ, down D with − before the friction; M carriage, m plates. The angle comes from the
 * gauge, the plates from what is written on them, each with its uncertainty. f₀ and μ are not below 0; on an upright rail μ has nothing to act on
 * and is 0. Source: the law of the
 * carriage; friction after Coulomb; intervals by least squares (JCGM 100:2008).
 *
 * @param name what the floor calls it
 * @param gauge the rail's angle
 * @param riding what is known before the pulls
 * @param pulls in the order in which they were read
 * @param breakaways largest readings as it starts to move; may be empty
 * @param scale how far one pull may lie from the truth
 */
public record SledBench(
        String name, RailGauge gauge, Riding riding, List<Pull> pulls, List<Breakaway> breakaways, Noise scale) {
    /** rad; there a hundred kilograms press on the rail with 5 % of their weight, and that rubs with a newton or so; ours. */
    private static final double UPRIGHT = Math.toRadians(87);

    public SledBench {
        pulls = List.copyOf(pulls);
        breakaways = List.copyOf(breakaways);
    }

    /** What the readings say; a refusal for each that makes no sense. */
    public Answer<SledFound> answer() {
        return new SledEstimator(this).answer();
    }

    /** Whether the rail carries so little of the weight that pulls by hand do not show how friction grows with it. */
    boolean upright() {
        return gauge.mean() > UPRIGHT;
    }

    double[] forces() {
        return pulls.stream().mapToDouble(Pull::force).toArray();
    }

    /** Different loads among the pulls, kg, rising. */
    double[] loads() {
        return pulls.stream().mapToDouble(Pull::plates).distinct().sorted().toArray();
    }
}
