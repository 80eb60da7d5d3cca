package counterpull.engine.uncertainty;

/**
 * One thing that an answer rests on and that is known only so far.
 *
 * @param name as a person says it
 * @param spread its standard uncertainty
 * @param source where that comes from
 * @param dimensions how many independent standard normal numbers it takes, 1 or more
 * @param change what it does
 * @param again what a further reading would do
 * @param <T> what is computed
 */
public record Doubt<T>(String name, Spread spread, String source, int dimensions, Change<T> change, Again again) {
    /**
     * What a doubt makes of a trial.
     *
     * @param <T> what is computed
     */
    public interface Change<T> {
        /**
         * The trial as it is if the doubt fell out so.
         *
         * @param trial before
         * @param z standard normal numbers
         * @param from where this doubt's own begin among them
         */
        T of(T trial, double[] z, int from);
    }

    /**
     * A change by one number.
     *
     * @param <T> what is computed
     */
    interface Turn<T> {
        /** The trial with the input changed by {@code by}, in the input's own unit. */
        T of(T trial, double by);
    }

    /** A doubt of one number that moves by its standard uncertainty times z. */
    static <T> Doubt<T> of(String name, Spread spread, String source, Turn<T> turn, Again again) {
        double sd = spread.value();
        return new Doubt<>(name, spread, source, 1, (trial, z, from) -> turn.of(trial, sd * z[from]), again);
    }

    /** Whether it leaves everything as it is. */
    boolean isCertain() {
        return spread.value() == 0;
    }
}
