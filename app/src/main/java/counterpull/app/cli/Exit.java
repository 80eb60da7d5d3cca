package counterpull.app.cli;

/** What the program's exit codes mean. */
final class Exit {
    static final int GOOD = 0;
    static final int BAD_INPUT = 2;
    static final int NOTHING_FEASIBLE = 3;
    static final int OWN_FAULT = 70;

    private Exit() {}
}
