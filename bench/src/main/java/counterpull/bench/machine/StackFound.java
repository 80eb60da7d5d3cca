package counterpull.bench.machine;

import counterpull.bench.Estimate;
import counterpull.engine.load.Loaded;
import counterpull.engine.load.StackLine;
import java.util.List;
import java.util.Optional;

/**
 * What a stack's bench found.
 *
 * @param bench the readings
 * @param ratio R, handle way / stack rise; empty where neither ways nor weighed masses say it
 * @param ratioByMass R from weighed mass laid on the stack, beside one from ways
 * @param friction φ, share of the pull each way
 * @param pins by what is printed, rising
 * @param moving what moves with the line, kg
 * @param constant what friction would be at no load, N, where three pins or more tell; 0 where friction is a share
 * @param noise one standard deviation of one pull, N
 */
public record StackFound(
        StackBench bench,
        Optional<Estimate> ratio,
        Optional<Estimate> ratioByMass,
        Estimate friction,
        List<PinFound> pins,
        Optional<Estimate> moving,
        Optional<Estimate> constant,
        double noise)
        implements MachineFound {
    public StackFound {
        pins = List.copyOf(pins);
    }

    /** As the engine takes it, with the pin of this place in the list; empty where the ratio is not known. */
    public Optional<StackLine> line(int pin) {
        return ratio.flatMap(found -> pins.get(pin)
                .mass()
                .map(mass -> new StackLine(
                        found.value(),
                        friction.value(),
                        Loaded.always(mass.value()),
                        moving.map(Estimate::value).orElse(0.0))));
    }
}
