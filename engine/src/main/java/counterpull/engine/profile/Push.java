package counterpull.engine.profile;

import counterpull.engine.Require;
import counterpull.engine.planar.Angles;

/** The way of pushing on the plate: force F·<b>u</b> + F·tan α·<b>n</b>, α positive toward head and toes, rad. */
public sealed interface Push {
    /** Farthest angle from the rail that is computed: 45°. */
    double FARTHEST = Angles.radians(45);

    /** The way in words. */
    String words();

    /** The same way turned by so much toward the head, rad: what a person does who means this way and misses it. */
    default Push turned(double by) {
        return new Turned(this, by);
    }

    /** Whether its direction follows the force, so that another load is pushed another way. */
    default boolean followsForce() {
        return false;
    }

    /**
     * At a stated angle to the rail; 0 is straight along it.
     *
     * @param angle α, rad, −45° to 45°
     */
    record Angled(double angle) implements Push {
        public Angled {
            Require.within(angle, new Require.Limits(-FARTHEST, FARTHEST), "push angle", "rad");
        }

        @Override
        public Push turned(double by) {
            return new Angled(angle + by);
        }

        @Override
        public String words() {
            return angle == 0
                    ? "straight along the rail"
                    : Math.round(Angles.degrees(angle) * 10) / 10.0 + "° to the rail (positive toward the head)";
        }
    }

    /**
     * Along the line from a point of the body to the centre of pressure.
     *
     * @param point the point
     */
    record Through(BodyPoint point) implements Push {
        @Override
        public String words() {
            return "through the " + point.words();
        }
    }

    /**
     * The angle within limits that makes Σ effort² over the joints with known effort least, at each position and phase.
     *
     * @param lowest rad, −45° or more
     * @param highest rad, 45° or less, not below {@code lowest}
     */
    record LeastEffort(double lowest, double highest) implements Push {
        public LeastEffort {
            Require.within(lowest, new Require.Limits(-FARTHEST, FARTHEST), "lowest push angle", "rad");
            Require.within(highest, new Require.Limits(lowest, FARTHEST), "highest push angle", "rad");
        }

        @Override
        public String words() {
            return "the way that takes least effort";
        }

        @Override
        public boolean followsForce() {
            return true;
        }
    }

    /**
     * Another way, missed by the same angle everywhere.
     *
     * @param meant the way that is meant
     * @param by how far it is missed toward the head, rad, −45° to 45°
     */
    record Turned(Push meant, double by) implements Push {
        public Turned {
            Require.within(by, new Require.Limits(-FARTHEST, FARTHEST), "angle by which the push is missed", "rad");
        }

        @Override
        public String words() {
            return meant.words() + ", missed by " + Math.round(Angles.degrees(by) * 10) / 10.0 + "°";
        }

        @Override
        public boolean followsForce() {
            return meant.followsForce();
        }
    }

    /** A point of the leg that a push may be aimed through. */
    enum BodyPoint {
        HIP("hip"),
        KNEE("knee");

        private final String words;

        BodyPoint(String words) {
            this.words = words;
        }

        /** The point's name as a person says it. */
        public String words() {
            return words;
        }
    }
}
