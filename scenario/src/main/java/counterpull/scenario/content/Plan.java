package counterpull.scenario.content;

/**
 * How much is done.
 *
 * @param sets how many sets
 * @param repetitions in each set
 * @param repetitionsLeft how many to leave at the end of a set
 * @param rest between sets, s
 */
public record Plan(int sets, int repetitions, int repetitionsLeft, double rest) {}
