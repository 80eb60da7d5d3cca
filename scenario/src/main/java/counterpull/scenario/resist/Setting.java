package counterpull.scenario.resist;

import counterpull.scenario.content.Resisting;
import counterpull.scenario.movement.MovingBody;
import java.util.List;
import java.util.Optional;

/**
 * Where something resists.
 *
 * @param body the parts of the person that move
 * @param before what stands before it in the list, to which a line can be fixed; empty where some of it could not be read, so that
 *     no name can be checked
 */
public record Setting(MovingBody body, Optional<List<Resisting>> before) {
    public Setting {
        before = before.map(List::copyOf);
    }
}
