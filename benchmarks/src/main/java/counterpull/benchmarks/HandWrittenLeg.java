package counterpull.benchmarks;

import counterpull.engine.planar.Chain;

/** What one would write by hand for exactly three segments, a hip at rest and one load on the foot: no classes in between. */
final class HandWrittenLeg {
    private static final int N = Postures.SEGMENTS;
    private final double[] cos = new double[Postures.COUNT * N];
    private final double[] sin = new double[Postures.COUNT * N];
    private final double[] rate;
    private final double[] acceleration;
    private final double[] force;
    private final double[] length = new double[N];
    private final double[] mass = new double[N];
    private final double[] along = new double[N];
    private final double[] across = new double[N];
    private final double[] inertia = new double[N];
    private final double gx;
    private final double gy;
    private final double armX;
    private final double armY;

    HandWrittenLeg(Postures postures, double gravityX, double gravityY) {
        rate = postures.rate;
        acceleration = postures.acceleration;
        force = postures.force;
        gx = gravityX;
        gy = gravityY;
        armX = postures.armX;
        armY = postures.armY;
        for (int i = 0; i < cos.length; i++) {
            cos[i] = Math.cos(postures.direction[i]);
            sin[i] = Math.sin(postures.direction[i]);
        }
        Chain chain = postures.chain;
        for (int k = 0; k < N; k++) {
            length[k] = chain.length(k);
            mass[k] = chain.mass(k);
            along[k] = chain.comAlong(k);
            across[k] = chain.comAcross(k);
            inertia[k] = chain.inertia(k);
        }
    }

    double torques(int posture, double[] torque) {
        int at = posture * N;
        double ax = -gx;
        double ay = -gy;
        double hip = 0;
        double knee = 0;
        double ankle = 0;
        double jointX = 0;
        double jointY = 0;
        double kneeX = 0;
        double kneeY = 0;
        for (int k = 0; k < N; k++) {
            double c = cos[at + k];
            double s = sin[at + k];
            double w2 = rate[at + k] * rate[at + k];
            double alpha = acceleration[at + k];
            double cx = c * along[k] - s * across[k];
            double cy = s * along[k] + c * across[k];
            double fx = mass[k] * (ax - alpha * cy - w2 * cx);
            double fy = mass[k] * (ay + alpha * cx - w2 * cy);
            double turn = inertia[k] * alpha;
            double px = jointX + cx;
            double py = jointY + cy;
            hip += turn + px * fy - py * fx;
            if (k > 0) {
                knee += turn + (px - kneeX) * fy - (py - kneeY) * fx;
            }
            if (k == 2) {
                ankle = turn + cx * fy - cy * fx;
            } else {
                double lx = c * length[k];
                double ly = s * length[k];
                jointX += lx;
                jointY += ly;
                ax -= alpha * ly + w2 * lx;
                ay += alpha * lx - w2 * ly;
                if (k == 0) {
                    kneeX = jointX;
                    kneeY = jointY;
                }
            }
        }
        // the plate pushes the foot back along the rail: force (−F, 0)
        double f = force[posture];
        torque[0] = hip - (jointY + armY) * f;
        torque[1] = knee - (jointY - kneeY + armY) * f;
        torque[2] = ankle - armY * f;
        return torque[0] + torque[1] + torque[2];
    }
}
