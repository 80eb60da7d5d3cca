package counterpull.benchmarks;

import counterpull.engine.body.DempsterWinter;
import counterpull.engine.body.DrillisContini1966;
import counterpull.engine.body.Segment;
import counterpull.engine.body.Sex;
import counterpull.engine.motion.QuinticStroke;
import counterpull.engine.planar.Chain;
import counterpull.engine.planar.Vec;

/**
 * Postures of a person who stands up from a squat and raises both arms, from the ankle to the hand: shanks, thighs, trunk with
 * head, upper arms, forearms, hands. A bar on the shoulders, a vest on the trunk, a cable at the elbows and a weight in the hands.
 */
final class StandingPostures {
    static final int COUNT = 101;
    static final int SEGMENTS = 6;
    private static final double MASS = 80;
    private static final double STATURE = 1.75;
    private static final double SECONDS = 2;
    private static final double[] BENT = {70, 150, 55, -80, -70, -60};
    private static final double[] RAISED = {88, 95, 85, 30, 60, 70};

    final Chain chain;
    final double[] direction = new double[COUNT * SEGMENTS];
    final double[] rate = new double[COUNT * SEGMENTS];
    final double[] acceleration = new double[COUNT * SEGMENTS];
    final Load[] loads;

    /** A force of constant direction (N) at a place along and across a segment (m). */
    record Load(int segment, double along, double across, double forceX, double forceY) {}

    StandingPostures() {
        Chain.Builder builder = Chain.build();
        add(builder, upward(part("Leg", DrillisContini1966.SHANK)));
        add(builder, upward(part("Thigh", DrillisContini1966.THIGH)));
        // both limbs' worth of everything but the trunk
        Segment trunk = row("Trunk head neck", DrillisContini1966.HIP_TO_SHOULDER, MASS);
        add(builder, trunk);
        add(builder, part("Upper arm", DrillisContini1966.UPPER_ARM));
        add(builder, part("Forearm", DrillisContini1966.FOREARM));
        add(builder, part("Hand", DrillisContini1966.HAND));
        chain = builder.done();
        loads = new Load[] {
            new Load(2, trunk.length(), 0.04, 0, -600),
            new Load(2, 0.6 * trunk.length(), 0, 0, -100),
            new Load(3, chain.length(3), 0, -150, 80),
            new Load(5, 0.5 * chain.length(5), 0, 0, -200)
        };
        for (int k = 0; k < SEGMENTS; k++) {
            turn(k);
        }
    }

    private void turn(int k) {
        QuinticStroke stroke = new QuinticStroke(1, SECONDS, 0, 0);
        double from = Math.toRadians(BENT[k]);
        double way = Math.toRadians(RAISED[k]) - from;
        for (int i = 0; i < COUNT; i++) {
            double time = (double) i / (COUNT - 1);
            direction[i * SEGMENTS + k] = from + way * stroke.position(time);
            rate[i * SEGMENTS + k] = way * stroke.speed(time);
            acceleration[i * SEGMENTS + k] = way * stroke.acceleration(time);
        }
    }

    private static Segment part(String name, DrillisContini1966 length) {
        return row(name, length, 2 * MASS);
    }

    private static Segment row(String name, DrillisContini1966 length, double mass) {
        return new DempsterWinter()
                .rows(Sex.MALE).stream()
                        .filter(row -> row.segment().equals(name))
                        .findFirst()
                        .orElseThrow()
                        .segment(length.of(STATURE), mass);
    }

    /** The same segment from its far end. */
    private static Segment upward(Segment part) {
        return new Segment(part.length(), part.mass(), part.length() - part.comAlong(), 0, part.inertia());
    }

    private static void add(Chain.Builder builder, Segment part) {
        builder.segment(part.length(), part.mass(), new Vec(part.comAlong(), part.comAcross()), part.inertia());
    }
}
