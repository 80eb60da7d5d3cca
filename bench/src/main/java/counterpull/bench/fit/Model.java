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
}
