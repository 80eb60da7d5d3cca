package counterpull.bench.sled;

import counterpull.bench.Estimate;

/**
 * Whether the pulls, the plates and the angle gauge agree: what each added kilogram adds to the mean of up and down.
 *
 * @param found as the pulls say, N/kg
 * @param expected g sin θ by the gauge and the plates as they are written, N/kg
 * @param disagreement difference over its 95 % half width: above 1 they do not agree
 */
public record LoadCheck(Estimate found, Estimate expected, double disagreement) {}
