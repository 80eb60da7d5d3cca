package counterpull.engine.strength;

/**
 * Draws whole curves out of those that a person may have: log torque is that of the given curve plus Σ z_k ℓ_k(angle), z_k independent
 * and standard normal, ℓ the columns of a factor of the curve's covariance, {@link StrengthCurve#logCovariance}. One draw is one person:
 * it holds at every position and in every phase.
 *
 * <p>The factor is a pivoted Cholesky factor at angles 2.5° apart or less, with as many columns as the covariance needs: it ends where
 * the variance left at every angle is below 1e-8 of the largest one (Harbrecht, Peters and Schneider 2012, Appl Numer Math 62:428; from
 * memory). Between these angles straight lines.
 */
public final class CurveDraws {
    private static final double WIDEST_STEP = Math.toRadians(2.5);
    private static final double LEFT_OVER = 1e-8;

    private final StrengthCurve given;
    private final double[] angle;
    private final double[][] columns;

    private CurveDraws(StrengthCurve given) {
        this.given = given;
        angle = angles(given.angles());
        columns = factor(given, angle);
    }

    /** The draws of a curve. */
    public static CurveDraws of(StrengthCurve given) {
        return new CurveDraws(given);
    }

    private static double[] angles(AngleRange range) {
        int steps = Math.max(1, (int) Math.ceil((range.high() - range.low()) / WIDEST_STEP));
        double[] angles = new double[steps + 1];
        for (int i = 0; i <= steps; i++) {
            angles[i] = range.low() + (range.high() - range.low()) * i / steps;
        }
        return angles;
    }

    private static double[][] factor(StrengthCurve curve, double[] angle) {
        double[] left = new double[angle.length];
        for (int i = 0; i < left.length; i++) {
            left[i] = Math.max(0, curve.logCovariance(angle[i], angle[i]));
        }
        double enough = LEFT_OVER * left[largest(left)];
        double[][] columns = new double[angle.length][];
        int count = 0;
        for (int pivot = largest(left); left[pivot] > enough; pivot = largest(left)) {
            columns[count] = column(curve, angle, columns, count, pivot, left);
            count++;
        }
        return java.util.Arrays.copyOf(columns, count);
    }

    private static double[] column(
            StrengthCurve curve, double[] angle, double[][] before, int count, int pivot, double[] left) {
        double root = Math.sqrt(left[pivot]);
        double[] column = new double[angle.length];
        for (int i = 0; i < column.length; i++) {
            double rest = curve.logCovariance(angle[i], angle[pivot]);
            for (int k = 0; k < count; k++) {
                rest -= before[k][i] * before[k][pivot];
            }
            column[i] = rest / root;
        }
        for (int i = 0; i < column.length; i++) {
            left[i] = Math.max(0, left[i] - column[i] * column[i]);
        }
        left[pivot] = 0;
        return column;
    }

    private static int largest(double[] values) {
        int best = 0;
        for (int i = 1; i < values.length; i++) {
            best = values[i] > values[best] ? i : best;
        }
        return best;
    }

    /** The curve whose draws they are: the middle. */
    public StrengthCurve given() {
        return given;
    }

    /** How many independent standard normal numbers one draw takes; 0 where the curve is certain. */
    public int dimensions() {
        return columns.length;
    }

    /**
     * One curve.
     *
     * @param z standard normal numbers
     * @param from where this curve's own begin among them
     */
    public StrengthCurve draw(double[] z, int from) {
        double[] factor = new double[angle.length];
        for (int k = 0; k < columns.length; k++) {
            double[] column = columns[k];
            double size = z[from + k];
            for (int i = 0; i < factor.length; i++) {
                factor[i] += size * column[i];
            }
        }
        for (int i = 0; i < factor.length; i++) {
            factor[i] = Math.exp(factor[i]);
        }
        return new VariedCurve(given, factor);
    }

    /** ℓ_k at an angle (rad): what the k-th number does to log torque there. */
    public double column(int k, double at) {
        double[] column = columns[k];
        double place = (at - angle[0]) / (angle[angle.length - 1] - angle[0]) * (angle.length - 1);
        int before = Math.max(0, Math.min((int) place, angle.length - 2));
        double share = Math.max(0, Math.min(1, place - before));
        return column[before] + share * (column[before + 1] - column[before]);
    }
}
