package counterpull.engine.strength;

/** Straight lines between points whose angles (rad) rise; beyond the first and the last point their torque (N·m). */
final class Polyline {
    private final double[] angle;
    private final double[] torque;

    /** Takes the arrays as they are: two or more points. */
    Polyline(double[] angle, double[] torque) {
        this.angle = angle;
        this.torque = torque;
    }

    /** From degrees. */
    static Polyline degrees(double[] degrees, double... torque) {
        double[] angle = new double[degrees.length];
        for (int i = 0; i < angle.length; i++) {
            angle[i] = Math.toRadians(degrees[i]);
        }
        return new Polyline(angle, torque);
    }

    /** One torque between two angles in degrees. */
    static Polyline level(double lowDegrees, double highDegrees, double torque) {
        return degrees(new double[] {lowDegrees, highDegrees}, torque, torque);
    }

    Polyline times(double factor) {
        double[] scaled = torque.clone();
        for (int i = 0; i < scaled.length; i++) {
            scaled[i] *= factor;
        }
        return new Polyline(angle, scaled);
    }

    double at(double where) {
        int last = angle.length - 1;
        if (where <= angle[0]) {
            return torque[0];
        }
        if (where >= angle[last]) {
            return torque[last];
        }
        int next = 1;
        while (angle[next] < where) {
            next++;
        }
        double share = (where - angle[next - 1]) / (angle[next] - angle[next - 1]);
        return torque[next - 1] + share * (torque[next] - torque[next - 1]);
    }

    AngleRange angles() {
        return new AngleRange(angle[0], angle[angle.length - 1]);
    }

    double peak() {
        double largest = torque[0];
        for (double value : torque) {
            largest = Math.max(largest, value);
        }
        return largest;
    }
}
