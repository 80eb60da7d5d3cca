package counterpull.engine.planar;

/**
 * Inverse dynamics of an open planar chain by the Newton–Euler recursion: outward for accelerations, inward for forces.
 *
 * <p>Formula, for segment i with distal neighbour i + 1: force by the proximal neighbour Fᵢ = mᵢ(aᵢ − g) − Lᵢ + Fᵢ₊₁;
 * torque τᵢ = Iᵢαᵢ + cᵢ × mᵢ(aᵢ − g) − Mᵢ + τᵢ₊₁ + ℓᵢ × Fᵢ₊₁, with cᵢ from the joint to the centre of mass, ℓᵢ from joint
 * to joint, Lᵢ and Mᵢ the external force and its moment about joint i. Torque in N·m, counter-clockwise on the distal
 * segment by the proximal one.
 *
 * <p>Source: Luh, Walker and Paul 1980, On-line computational scheme for mechanical manipulators (from memory), reduced
 * to a plane; Winter, Biomechanics and Motor Control of Human Movement, ch. 5, link-segment equations.
 *
 * <p>One instance serves one thread: it keeps the working arrays so that an evaluation allocates nothing.
 */
public final class NewtonEuler {
    private final Chain chain;
    private final int n;
    private final double[] inertiaForceX;
    private final double[] inertiaForceY;
    private double gravityX;
    private double gravityY;
    private double forceX;
    private double forceY;

    /** For one chain, without gravity until {@link #gravity} is called. */
    public NewtonEuler(Chain chain) {
        this.chain = chain;
        n = chain.size();
        inertiaForceX = new double[n];
        inertiaForceY = new double[n];
    }

    /** Acceleration of gravity in the plane's axes, m/s²; (0, 0) leaves weight out. */
    public NewtonEuler gravity(double x, double y) {
        gravityX = x;
        gravityY = y;
        return this;
    }

    /**
     * Joint torques for a motion and external loads.
     *
     * @param motion directions, rates and accelerations
     * @param loads external forces on the segments
     * @param torque receives the CCW torque of each joint, N·m
     */
    public void torques(ChainMotion motion, PointLoads loads, double[] torque) {
        outward(motion);
        inward(motion, loads, torque);
    }

    /** Force on the first segment by what holds it, x, N; of the latest evaluation. */
    public double baseForceX() {
        return forceX;
    }

    /** Force on the first segment by what holds it, y, N; of the latest evaluation. */
    public double baseForceY() {
        return forceY;
    }

    private void outward(ChainMotion m) {
        double ax = m.baseX - gravityX;
        double ay = m.baseY - gravityY;
        for (int i = 0; i < n; i++) {
            double c = m.cos[i];
            double s = m.sin[i];
            double w2 = m.rate[i] * m.rate[i];
            double alpha = m.acceleration[i];
            double cx = c * chain.comAlong[i] - s * chain.comAcross[i];
            double cy = s * chain.comAlong[i] + c * chain.comAcross[i];
            inertiaForceX[i] = chain.mass[i] * (ax - alpha * cy - w2 * cx);
            inertiaForceY[i] = chain.mass[i] * (ay + alpha * cx - w2 * cy);
            double lx = c * chain.length[i];
            double ly = s * chain.length[i];
            ax -= alpha * ly + w2 * lx;
            ay += alpha * lx - w2 * ly;
        }
    }

    private void inward(ChainMotion m, PointLoads loads, double[] torque) {
        double fx = 0;
        double fy = 0;
        double moment = 0;
        for (int i = n - 1; i >= 0; i--) {
            double c = m.cos[i];
            double s = m.sin[i];
            double cx = c * chain.comAlong[i] - s * chain.comAcross[i];
            double cy = s * chain.comAlong[i] + c * chain.comAcross[i];
            double length = chain.length[i];
            moment += chain.inertia[i] * m.acceleration[i]
                    + cx * inertiaForceY[i]
                    - cy * inertiaForceX[i]
                    - loads.moment[i]
                    + length * (c * fy - s * fx);
            torque[i] = moment;
            fx += inertiaForceX[i] - loads.x[i];
            fy += inertiaForceY[i] - loads.y[i];
        }
        forceX = fx;
        forceY = fy;
    }
}
