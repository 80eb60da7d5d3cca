package counterpull.bench.fit;

/** What each reading should be if the parameters were so. */
@FunctionalInterface
public interface Model {
    /**
     * The predicted reading.
     *
     * @param parameters in the regression's order and units
     * @param reading index of the reading
     */
    double at(double[] parameters, int reading);

    /**
     * How fast the predicted reading rises with each parameter; says false where that is not known, and differences are then taken.
     *
     * @param parameters in the regression's order and units
     * @param reading index of the reading
     * @param into one slope for each parameter, filled in
     */
    default boolean slopes(double[] parameters, int reading, double[] into) {
        return false;
    }
}
