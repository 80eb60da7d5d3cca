package counterpull.engine.load;

/**
 * One summand of a force: a coefficient at each phase and position, times an amount. N (or N·m for a couple) per unit of the
 * amount. Read-only by agreement: the array is handed over for speed.
 *
 * @param part what it comes from
 * @param label what it is, in words ("stack 20 kg")
 * @param amount what it is multiplied by
 * @param perUnit by phase × position, as {@code Course.cell} has it
 */
public record Share(Part part, String label, Amount amount, double[] perUnit) {}
