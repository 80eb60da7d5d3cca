package counterpull.bench.sled;

import counterpull.engine.Constants;
import counterpull.engine.load.Counterweight;

/**
 * The law of the carriage at rest: ((M + k m) − M_c) g sin θ ± (f₀ + μ (M + k m) g cos θ). Parameters in order M, f₀, θ, k and, where two
 * loads tell it apart, μ; k is what the plates really weigh over what is written.
 */
final class SledModel {
    static final int MASS = 0;
    static final int CONSTANT = 1;
    static final int ANGLE = 2;
    static final int PLATES = 3;
    static final int COEFFICIENT = 4;

    private final Counterweight counterweight;

    SledModel(Counterweight counterweight) {
        this.counterweight = counterweight;
    }

    double force(double[] p, int sense, double plates) {
        double g = Constants.STANDARD_GRAVITY;
        double riding = p[MASS] + p[PLATES] * plates;
        double sin = Math.sin(p[ANGLE]);
        double friction = p[CONSTANT];
        if (p.length > COEFFICIENT) {
            friction += p[COEFFICIENT] * riding * g * Math.cos(p[ANGLE]);
        }
        return riding * g * sin - balance(sin) + sense * friction;
    }

    /** What the counterweight takes off, N. */
    double balance(double sin) {
        boolean hanging = counterweight.run() == Counterweight.Run.HANGING;
        return counterweight.mass() * Constants.STANDARD_GRAVITY * (hanging ? 1 : sin);
    }
}
