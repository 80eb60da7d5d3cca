package counterpull.report.result;

import counterpull.engine.body.Side;
import counterpull.engine.motion.Phase;
import counterpull.report.table.UnitSet;
import java.util.EnumSet;
import java.util.Set;

/**
 * What a terminal shows of a profile.
 *
 * @param units in which units
 * @param width characters in a line, 40 or more
 * @param positions how many positions of the range, evenly spread, 2 or more; the profile's own number shows all
 * @param groups what is shown
 * @param whose of which limbs, in which phases
 */
public record TextChoice(UnitSet units, int width, int positions, Set<Group> groups, Whose whose) {
    private static final int USUAL_WIDTH = 100;
    private static final int USUAL_POSITIONS = 9;

    public TextChoice {
        groups = groups.isEmpty() ? Set.of() : Set.copyOf(groups);
        if (width < 40 || positions < 2) {
            throw new IllegalArgumentException("a text needs at least 40 characters in a line and 2 positions, not "
                    + width + " and " + positions);
        }
    }

    /**
     * Of which limbs, in which phases.
     *
     * @param sides limbs
     * @param phases phases
     */
    public record Whose(Set<Side> sides, Set<Phase> phases) {
        public Whose {
            sides = Set.copyOf(sides);
            phases = Set.copyOf(phases);
        }

        /** All of them. */
        public static Whose all() {
            return new Whose(EnumSet.allOf(Side.class), EnumSet.allOf(Phase.class));
        }
    }

    /** Nine positions; everything but the parts of the torques. */
    public static TextChoice usual(UnitSet units) {
        return new TextChoice(
                units,
                USUAL_WIDTH,
                USUAL_POSITIONS,
                EnumSet.complementOf(EnumSet.of(Group.PARTS, Group.PUSH)),
                Whose.all());
    }

    /** The same for a line of another width. */
    public TextChoice withWidth(int other) {
        return new TextChoice(units, other, positions, groups, whose);
    }

    /** The same with another number of positions. */
    public TextChoice withPositions(int other) {
        return new TextChoice(units, width, other, groups, whose);
    }

    /** The same with other groups. */
    public TextChoice withGroups(Set<Group> other) {
        return new TextChoice(units, width, positions, other, whose);
    }

    /** The same of other limbs or phases. */
    public TextChoice of(Whose other) {
        return new TextChoice(units, width, positions, groups, other);
    }
}
