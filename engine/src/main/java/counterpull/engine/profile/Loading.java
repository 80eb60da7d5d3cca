package counterpull.engine.profile;

import counterpull.engine.Require;
import counterpull.engine.load.ElasticLine;
import java.util.List;

/**
 * What is on the sled in one setup.
 *
 * @param plates all plates together, kg, zero or more
 * @param lines the elastic lines
 */
public record Loading(double plates, List<ElasticLine> lines) {
    public Loading {
        Require.within(plates, new Require.Limits(0, 2000), "plates", "kg");
        lines = List.copyOf(lines);
    }

    /** Plates only. */
    public static Loading plates(double kilograms) {
        return new Loading(kilograms, List.of());
    }
}
