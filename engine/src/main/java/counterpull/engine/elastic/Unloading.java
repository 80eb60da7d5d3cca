package counterpull.engine.elastic;

/**
 * What a rubber gives back while it shortens, always at most what its law says while it lengthens or is held.
 *
 * <p>Forces in N of one strand, energies in J per metre of natural length; stretch is a pure number.
 */
public sealed interface Unloading permits LossFraction, UnloadingCurve {
    /** Force of one strand while it shortens, N; 0 for stretch ≤ 1. */
    double tension(ElasticLaw law, double stretch);

    /** Energy given back on the way from this stretch to natural length, J per metre of natural length. */
    double energyReturned(ElasticLaw law, double stretch);

    /** This unloading for a rubber of that law tested to that stretch; refuses where it would give more than was put in. */
    Unloading fittedTo(ElasticLaw law, double largestStretch);

    /** What a rubber that pulls so many times as hard gives back: that many times as much; factor above zero. */
    Unloading times(double factor);

    /** What is lost, in one line, for a person who asks why. */
    String formula();
}
