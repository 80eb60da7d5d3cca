package counterpull.report;

/**
 * One step before the working sets.
 *
 * @param plates what is on the horns
 * @param repetitions how many
 * @param share its largest force over the working set's
 */
public record WarmUp(Plates plates, int repetitions, double share) {}
