package counterpull.bench.tubing;

/**
 * When a piece is due. No standard was found: all of these are our choice; the maker's and local rules come first.
 *
 * @param days after which it is tested again
 * @param cycles after which it is tested again
 * @param warning share of its first force that may be lost before it is watched
 * @param bin share of its first force lost at which it goes into the bin
 * @param set share by which it may stay longer before it goes into the bin
 */
public record WearLimits(int days, int cycles, double warning, double bin, double set) {
    /** Three months, 500 cycles, 10 % watched, 20 % binned, 10 % longer binned: our choice, no source. */
    public static final WearLimits USUAL = new WearLimits(91, 500, 0.10, 0.20, 0.10);
}
