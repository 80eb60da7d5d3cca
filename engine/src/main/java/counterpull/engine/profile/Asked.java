package counterpull.engine.profile;

import counterpull.engine.body.Joint;

/**
 * What one loading asks: the contact force and every joint torque, over phases and positions. Read-only once made.
 */
final class Asked {
    private static final int JOINTS = Joint.LEG.size();
    final double[] force;
    final double[][] torque;
    final double[][] tangent;

    private Asked(double[] force, int limbs) {
        this.force = force;
        torque = new double[limbs][];
        tangent = new double[limbs][];
    }

    /**
     * What a contact force asks of the limbs.
     *
     * @param ground movement, terms and strength
     * @param force contact force along the rail, N, by phase × position
     * @param direction which way each limb pushes
     */
    static Asked of(Groundwork ground, double[] force, PushDirection direction) {
        Terms terms = ground.terms();
        Asked asked = new Asked(force, terms.limbs());
        for (int k = 0; k < terms.limbs(); k++) {
            double[] torque = straight(terms, k, force);
            double[] tangent = direction.tangents(k, torque, force);
            turn(terms, k, new Pushed(force, tangent), torque);
            asked.torque[k] = torque;
            asked.tangent[k] = tangent;
        }
        return asked;
    }

    private record Pushed(double[] force, double[] tangent) {}

    private static double[] straight(Terms terms, int limb, double[] force) {
        double[] torque = terms.own(limb);
        add(torque, force, terms.armsAlong(limb));
        return torque;
    }

    private static void turn(Terms terms, int limb, Pushed pushed, double[] torque) {
        double[] across = new double[pushed.force.length];
        boolean any = false;
        for (int cell = 0; cell < across.length; cell++) {
            across[cell] = pushed.force[cell] * pushed.tangent[cell];
            any |= across[cell] != 0;
        }
        if (any) {
            add(torque, across, terms.armsAcross(limb));
        }
    }

    private static void add(double[] torque, double[] force, double[] arms) {
        int arm = 0;
        for (int cell = 0; cell < force.length; cell++) {
            // the arms of a position are the same in every phase
            arm = arm == arms.length ? 0 : arm;
            for (int j = 0; j < JOINTS; j++) {
                torque[cell * JOINTS + j] += force[cell] * arms[arm + j];
            }
            arm += JOINTS;
        }
    }
}
