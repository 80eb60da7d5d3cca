package counterpull.bench.machine;

import counterpull.bench.Estimate;
import java.util.Optional;

/**
 * What one pin really is.
 *
 * @param printed what is printed there, kg
 * @param pull half way between out and back at the handle, N
 * @param mass what hangs on the pin, kg; empty where the ratio is not known
 * @param error mass less what is printed, kg
 * @param felt mass that starting and stopping feels at the handle, kg
 */
public record PinFound(
        double printed, Estimate pull, Optional<Estimate> mass, Optional<Estimate> error, Optional<Estimate> felt) {}
