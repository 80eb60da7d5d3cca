package counterpull.report.table;

/** One column of a table: what it is called, what it means, and a cell for each row. */
public sealed interface Column permits NumberColumn, WordColumn {
    /** What the column is, apart from its cells. */
    Head head();

    /** How many rows it has. */
    int rows();

    /** Label of its unit in a set of units; empty for words and pure numbers. */
    String unit(UnitSet units);

    /** The cell for the eye: as many digits as are worth reading, a dash where not known. */
    String shown(int row, UnitSet units);

    /** The cell for a machine: every digit, empty where not known. */
    String exact(int row, UnitSet units);

    /** Whether cells are numbers, set to the right. */
    boolean numeric();

    /** Whether it holds numbers and every one of them is exactly zero. */
    boolean allZero();

    /** The same column with only these rows. */
    Column only(int[] rows);

    /**
     * What a column is.
     *
     * @param key name for machines: lower case, underscores, stable
     * @param title name for people, short
     * @param meaning one sentence without a full stop
     */
    record Head(String key, String title, String meaning) {}
}
