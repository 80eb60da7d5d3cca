package counterpull.engine.motion;

import counterpull.engine.Require;
import counterpull.engine.body.Joint;
import counterpull.engine.body.PossibleAngles;
import counterpull.engine.planar.Angles;
import counterpull.engine.planar.Chain;
import counterpull.engine.planar.ChainMotion;
import counterpull.engine.planar.Vec;
import java.util.List;

/**
 * One limb as a chain of segments from a joint that does not move, at every position of a range: the direction of each segment
 * (rad from the plane's x) with its first and second derivative by the coordinate x of the stroke, and in each phase how fast it
 * turns: θ̇ = θ′ẋ, θ̈ = θ′ẍ + θ″ẋ². The origin is the fixed joint. Read-only once made.
 */
public final class ChainPath implements LimbPath {
    private final Chain chain;
    private final Course course;
    private final List<JointSense> senses;
    private final List<Joint> joints;
    private final double[] middles;
    private final double[] direction;
    private final double[] slope;
    private final double[] curve;

    /**
     * @param chain the segments, the one at the fixed joint first
     * @param course the stroke
     * @param senses the joint at the start of each segment
     * @param bends the directions of the segments
     */
    public ChainPath(Chain chain, Course course, List<JointSense> senses, Bends bends) {
        this.chain = chain;
        this.course = course;
        this.senses = List.copyOf(senses);
        joints = senses.stream().map(JointSense::joint).sorted().toList();
        middles = senses.stream()
                .mapToDouble(sense -> PossibleAngles.middle(sense.joint()))
                .toArray();
        direction = bends.direction.clone();
        slope = bends.slope.clone();
        curve = bends.curve.clone();
    }

    /**
     * Directions of a chain's segments over a range, by position × segment: a mutable working value for whoever solves the posture.
     */
    public static final class Bends {
        private final int segments;
        private final double[] direction;
        private final double[] slope;
        private final double[] curve;

        /** Nothing said yet. */
        public Bends(int positions, int segments) {
            this.segments = segments;
            direction = new double[positions * segments];
            slope = new double[positions * segments];
            curve = new double[positions * segments];
        }

        /**
         * Says where a segment points.
         *
         * @param i position
         * @param segment which segment
         * @param angle its direction, rad
         * @param first d(direction)/dx
         * @param second d²(direction)/dx²
         */
        public void set(int i, int segment, double angle, double first, double second) {
            int at = i * segments + segment;
            direction[at] = angle;
            slope[at] = first;
            curve[at] = second;
        }
    }

    /** Masses and lengths of the segments. */
    public Chain chain() {
        return chain;
    }

    /** The stroke. */
    public Course course() {
        return course;
    }

    /** How the joint at the start of each segment is named, and in which sense. */
    public List<JointSense> senses() {
        return senses;
    }

    /** In the order in which ties go, proximal first: not always the order along the chain, which {@link #senses} has. */
    @Override
    public List<Joint> joints() {
        return joints;
    }

    @Override
    public int positions() {
        return course.positions();
    }

    /** How many segments (and joints) there are. */
    public int segments() {
        return chain.size();
    }

    /** Direction of a segment at position i, rad. */
    public double direction(int segment, int i) {
        return direction[i * chain.size() + segment];
    }

    /** d(direction)/dx. */
    public double slope(int segment, int i) {
        return slope[i * chain.size() + segment];
    }

    /** d²(direction)/dx². */
    public double curve(int segment, int i) {
        return curve[i * chain.size() + segment];
    }

    @Override
    public double angle(Joint joint, int i) {
        int k = index(joint);
        JointSense sense = senses.get(k);
        double before = k == 0 ? 0 : direction(k - 1, i);
        double middle = middles[k];
        return middle + Angles.wrap(sense.angleSign() * (direction(k, i) - before) + sense.offset() - middle);
    }

    @Override
    public double actionSpeed(Joint joint, Phase phase, int i) {
        int k = index(joint);
        double turning = slope(k, i) - (k == 0 ? 0 : slope(k - 1, i));
        return joint.angleSenseOfAction() * senses.get(k).angleSign() * turning * course.speed(phase, i);
    }

    /** Which segment starts at a joint; refused for a joint that is not in the chain. */
    public int index(Joint joint) {
        for (int k = 0; k < senses.size(); k++) {
            if (senses.get(k).joint() == joint) {
                return k;
            }
        }
        throw new IllegalArgumentException("the " + joint.words() + " is not part of this movement");
    }

    /** Points a chain as it is at position i and says how it turns in a phase. */
    public void put(ChainMotion motion, Phase phase, int i) {
        double v = course.speed(phase, i);
        double a = course.acceleration(phase, i);
        for (int k = 0; k < chain.size(); k++) {
            motion.direction(k, direction(k, i));
            motion.turning(k, slope(k, i) * v, slope(k, i) * a + curve(k, i) * v * v);
        }
    }

    /** Where the joint at the start of a segment is, m; segment = number of segments gives the chain's far end. */
    public Vec joint(int segment, int i) {
        Vec at = new Vec(0, 0);
        for (int k = 0; k < segment; k++) {
            at = at.plus(Vec.unit(direction(k, i)).times(chain.length(k)));
        }
        return at;
    }

    /** The track of a point of the body; refused for a point on a segment that the chain does not have. */
    public PointTrack track(BodyPoint point) {
        Require.Limits inChain = new Require.Limits(0, segments() - 1.0);
        Require.within(point.segment(), inChain, "segment of " + point.name(), "");
        PointTrack track = new PointTrack(positions());
        for (int i = 0; i < positions(); i++) {
            Walk walk = new Walk();
            for (int k = 0; k < point.segment(); k++) {
                walk.step(k, i, new Vec(chain.length(k), 0));
            }
            walk.step(point.segment(), i, point.at());
            track.set(i, walk.at, walk.slope, walk.curve);
        }
        return track;
    }

    /** From the fixed joint outward, with derivatives: e(θ)′ = θ′ n, e(θ)″ = θ″ n − θ′² e. */
    private final class Walk {
        private Vec at = new Vec(0, 0);
        private Vec slope = new Vec(0, 0);
        private Vec curve = new Vec(0, 0);

        void step(int k, int i, Vec along) {
            Vec e = Vec.unit(direction(k, i));
            Vec arm = e.times(along.x()).plus(e.left().times(along.y()));
            double first = ChainPath.this.slope(k, i);
            at = at.plus(arm);
            slope = slope.plus(arm.left().times(first));
            curve = curve.plus(arm.left().times(ChainPath.this.curve(k, i))).minus(arm.times(first * first));
        }
    }
}
