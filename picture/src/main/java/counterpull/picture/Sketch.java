package counterpull.picture;

import counterpull.engine.planar.Vec;
import java.util.List;

/** How one thing that resists looks, besides the force that it puts on the limb. */
interface Sketch {
    /** Points that the picture has to hold, with the limb at a position, m. */
    List<Vec> extent(Limbwork work, int position);

    /** Draws it behind the limb. */
    void behind(Scene scene);

    /** Draws it in front of the limb, and asks for its words. */
    void front(Scene scene);
}
