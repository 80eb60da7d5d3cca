package counterpull.report.table;

/** A column of numbers, held in SI; NaN and infinities are "not known". Read-only once made. */
public final class NumberColumn implements Column {
    private static final String NOT_KNOWN = "–";
    private final Head head;
    private final Measure measure;
    private final double[] values;

    /** A column of these SI values; they are copied. */
    public NumberColumn(Head head, Measure measure, double... values) {
        this.head = head;
        this.measure = measure;
        this.values = values.clone();
    }

    @Override
    public Head head() {
        return head;
    }

    /** What kind of number it holds. */
    public Measure measure() {
        return measure;
    }

    /** The value of a row, SI. */
    public double value(int row) {
        return values[row];
    }

    @Override
    public int rows() {
        return values.length;
    }

    @Override
    public String unit(UnitSet units) {
        return measure.in(units).unit();
    }

    @Override
    public String shown(int row, UnitSet units) {
        return known(row) ? measure.in(units).fixed(values[row]) : NOT_KNOWN;
    }

    @Override
    public String exact(int row, UnitSet units) {
        return known(row) ? Decimals.exact(measure.in(units).from(values[row])) : "";
    }

    private boolean known(int row) {
        return Math.abs(values[row]) <= Double.MAX_VALUE;
    }

    @Override
    public boolean numeric() {
        return true;
    }

    @Override
    public boolean allZero() {
        for (double value : values) {
            if (value != 0) {
                return false;
            }
        }
        return true;
    }

    @Override
    public Column only(int[] rows) {
        double[] chosen = new double[rows.length];
        for (int i = 0; i < rows.length; i++) {
            chosen[i] = values[rows[i]];
        }
        return new NumberColumn(head, measure, chosen);
    }
}
