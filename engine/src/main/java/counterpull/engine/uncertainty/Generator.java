package counterpull.engine.uncertainty;

/**
 * A seeded generator of random numbers in 32-bit arithmetic alone, so that it runs as fast and draws the same in a browser.
 *
 * <p>xoshiro128++ 1.0 (Blackman and Vigna 2018/2021, ACM Trans Math Softw 47:36; the public-domain reference code, from memory, held to a
 * golden sequence); its four words come from a counter through the finalizer of MurmurHash3 (Appleby, public domain; from memory). Normal
 * numbers by the polar method (Marsaglia and Bray 1964, SIAM Rev 6:260). Ours: seed and stream both enter the counter's start, so that
 * each numbered part of a computation has its own sequence.
 */
public final class Generator {
    private static final int GOLDEN = 0x9E3779B9;
    private static final double TWO_TO_26 = 67108864.0;
    private static final double TWO_TO_53 = 9007199254740992.0;

    private int s0;
    private int s1;
    private int s2;
    private int s3;
    private double spare = Double.NaN;

    /**
     * A sequence of its own.
     *
     * @param seed any number; the same gives the same
     * @param stream which of the seed's sequences, any number
     */
    public Generator(int seed, int stream) {
        int start = mixed(mixed(seed + GOLDEN) ^ (stream * 0x85EBCA6B + GOLDEN));
        s0 = mixed(start + GOLDEN);
        s1 = mixed(start + 2 * GOLDEN);
        s2 = mixed(start + 3 * GOLDEN);
        s3 = mixed(start + 4 * GOLDEN);
        // four zeros would stay zeros
        s0 = (s0 | s1 | s2 | s3) == 0 ? 1 : s0;
    }

    /** With these four words, not all 0, as its state. */
    Generator(int[] state) {
        s0 = state[0];
        s1 = state[1];
        s2 = state[2];
        s3 = state[3];
    }

    private static int mixed(int value) {
        int h = value;
        h = (h ^ (h >>> 16)) * 0x85EBCA6B;
        h = (h ^ (h >>> 13)) * 0xC2B2AE35;
        return h ^ (h >>> 16);
    }

    /** The next 32 bits. */
    public int next() {
        int result = Integer.rotateLeft(s0 + s3, 7) + s0;
        int t = s1 << 9;
        s2 ^= s0;
        s3 ^= s1;
        s1 ^= s2;
        s0 ^= s3;
        s2 ^= t;
        s3 = Integer.rotateLeft(s3, 11);
        return result;
    }

    /** A number from 0, included, to 1, not included, with 53 random bits. */
    public double uniform() {
        double high = next() >>> 5;
        double low = next() >>> 6;
        return (high * TWO_TO_26 + low) / TWO_TO_53;
    }

    /** A standard normal number: mean 0, variance 1. */
    public double normal() {
        if (!Double.isNaN(spare)) {
            double kept = spare;
            spare = Double.NaN;
            return kept;
        }
        double x;
        double y;
        double square;
        do {
            x = 2 * uniform() - 1;
            y = 2 * uniform() - 1;
            square = x * x + y * y;
        } while (square >= 1 || square == 0);
        double factor = Math.sqrt(-2 * Math.log(square) / square);
        spare = y * factor;
        return x * factor;
    }

    /** Fills an array with standard normal numbers. */
    public void normals(double[] into) {
        for (int i = 0; i < into.length; i++) {
            into[i] = normal();
        }
    }
}
