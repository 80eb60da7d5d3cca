package counterpull.engine.load;

import counterpull.engine.motion.BodyPoint;
import counterpull.engine.planar.Vec;
import java.util.List;
import java.util.Optional;

/**
 * What one thing that resists does to one limb along one line of action, over a whole range: a force on a point of the body, of
 * changing direction, whose size is a sum of {@link Share}s; or a couple on a segment. All of it is for the whole load: a limb bears
 * its share. Read-only.
 */
public final class Pull {
    private final String words;
    private final BodyPoint at;
    private final Optional<double[][]> direction;
    private final Holds holds;
    private final List<Share> shares;
    private final Optional<Carrier> carrier;

    /** Which sizes of a pull can be. */
    public enum Holds {
        /** Only zero or more: a line goes slack, a pad or a plate loses contact; below it the setup is refused. */
        ONE_WAY,
        /** Both ways: a weight in the hand, a cuff that is strapped on, a handle that is held. */
        BOTH_WAYS
    }

    private Pull(
            String words,
            BodyPoint at,
            Optional<double[][]> direction,
            Holds holds,
            List<Share> shares,
            Optional<Carrier> carrier) {
        this.words = words;
        this.at = at;
        this.direction = direction;
        this.holds = holds;
        this.shares = List.copyOf(shares);
        this.carrier = carrier;
    }

    /**
     * A force on a point of the body.
     *
     * @param words what pulls, as a person says it
     * @param at where
     * @param direction unit vector, by position × (x, y), of the force on the body where its size is positive
     * @param holds which sizes can be
     * @param shares what its size, N, is made of
     */
    public static Pull force(String words, BodyPoint at, double[][] direction, Holds holds, List<Share> shares) {
        return new Pull(words, at, Optional.of(direction), holds, shares, Optional.empty());
    }

    /**
     * A couple on the segment of a point, N·m counter-clockwise on the body.
     *
     * @param words what turns, as a person says it
     * @param at any point of the segment
     * @param holds which sizes can be
     * @param shares what its size, N·m, is made of
     */
    public static Pull couple(String words, BodyPoint at, Holds holds, List<Share> shares) {
        return new Pull(words, at, Optional.empty(), holds, shares, Optional.empty());
    }

    /** The same pull, said to reach the body through the one contact of a machine. */
    Pull through(Carrier machine) {
        return new Pull(words, at, direction, holds, shares, Optional.of(machine));
    }

    /** What pulls, as a person says it. */
    public String words() {
        return words;
    }

    /** Where it acts. */
    public BodyPoint at() {
        return at;
    }

    /** Whether it is a couple: its size is then N·m and it has no direction. */
    public boolean isCouple() {
        return direction.isEmpty();
    }

    /** Unit vector of the force on the body where its size is positive, at position i; refused for a couple. */
    public Vec direction(int i) {
        double[] way = direction.orElseThrow()[i];
        return new Vec(way[0], way[1]);
    }

    /** Which sizes can be. */
    public Holds holds() {
        return holds;
    }

    /**
     * The machine through whose one contact it reaches the body; empty where it acts on the body itself. All forces (not couples)
     * through the {@linkplain Carrier#isSame same} machine have the same place and direction, and only their sum must be {@linkplain Holds what it can be}.
     */
    public Optional<Carrier> carrier() {
        return carrier;
    }

    /** What its size is made of. */
    public List<Share> shares() {
        return shares;
    }

    /** Its size at one phase and position for so many kilograms of plates, N or N·m. */
    public double size(int cell, double plates) {
        double sum = 0;
        for (Share share : shares) {
            sum += share.perUnit()[cell] * (share.amount() == Amount.PLATES ? plates : 1);
        }
        return sum;
    }
}
