package counterpull.engine.choice;

import counterpull.engine.Require;
import counterpull.engine.elastic.Rubber;

/**
 * Equal pieces of rubber on hand.
 *
 * @param rubber what one piece is
 * @param count how many there are
 */
public record RubberStock(Rubber rubber, int count) {
    public RubberStock {
        Require.within(count, new Require.Limits(1, 50), "pieces of " + rubber.tag(), "");
    }
}
