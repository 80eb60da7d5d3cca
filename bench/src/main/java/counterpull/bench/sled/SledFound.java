package counterpull.bench.sled;

import counterpull.bench.Estimate;
import counterpull.engine.load.Carriage;
import counterpull.engine.load.Friction;
import java.util.Optional;

/**
 * What a sled's bench found.
 *
 * @param bench the readings
 * @param angle how steep the rail is, rad, by the gauge alone
 * @param mass carriage, kg, without plates
 * @param friction its friction
 * @param breakaway what first moves it up, beyond its weight's share, N; empty where it was not read
 * @param loads whether pulls, plates and gauge agree; empty at one load
 * @param lines what the fit says each pull should be
 */
public record SledFound(
        SledBench bench,
        Estimate angle,
        Estimate mass,
        SledFriction friction,
        Optional<Estimate> breakaway,
        Optional<LoadCheck> loads,
        SledLines lines) {

    /** The rail's angle with the engine's sign, rad. */
    public double railAngle() {
        return bench.riding().plateEnd().sign() * angle.value();
    }

    /** As the engine takes it; at one load all friction is called constant. */
    public Carriage carriage() {
        return new Carriage(mass.value(), bench.riding().counterweight(), engineFriction(), Double.POSITIVE_INFINITY);
    }

    private Friction engineFriction() {
        double first = breakaway.map(Estimate::value).orElse(0.0);
        if (friction instanceof SledFriction.Apart apart) {
            return new Friction(apart.constant().value(), apart.coefficient().value(), Math.max(0, first));
        }
        SledFriction.Together together = (SledFriction.Together) friction;
        return new Friction(together.force().value(), 0, Math.max(0, first));
    }
}
