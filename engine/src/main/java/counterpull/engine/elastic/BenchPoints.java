package counterpull.engine.elastic;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.Require;
import java.util.ArrayList;
import java.util.List;

/** Turns a bench's readings into a curve over stretch that starts at natural length with no force. */
final class BenchPoints {
    private BenchPoints() {}

    /** The curve through (1, 0) and every reading; refuses, by its place in the list, a reading that does not rise. */
    static MonotoneCubic curve(double naturalLength, List<BenchReading> readings) {
        Require.positive(naturalLength, "natural length", "m");
        List<BenchReading> past = pastNatural(naturalLength, readings);
        double[] stretches = new double[past.size() + 1];
        double[] forces = new double[past.size() + 1];
        stretches[0] = 1;
        for (int i = 0; i < past.size(); i++) {
            stretches[i + 1] = past.get(i).length() / naturalLength;
            forces[i + 1] = past.get(i).force();
        }
        return new MonotoneCubic(stretches, forces);
    }

    private static List<BenchReading> pastNatural(double naturalLength, List<BenchReading> readings) {
        BenchReading before = new BenchReading(naturalLength, 0);
        int first = !readings.isEmpty() && readings.get(0).equals(before) ? 1 : 0;
        List<BenchReading> past = readings.subList(first, readings.size());
        for (int i = 0; i < past.size(); i++) {
            requireRise(before, past.get(i), "bench reading " + (first + i + 1));
            before = past.get(i);
        }
        if (before.force() <= 0) {
            throw new Refusal(
                    Fault.MUST_BE_POSITIVE,
                    "force in the last bench reading",
                    before.force(),
                    0,
                    "N",
                    "the bench readings must end with a force above zero");
        }
        return past;
    }

    private static void requireRise(BenchReading before, BenchReading reading, String name) {
        if (reading.length() <= before.length()) {
            throw new Refusal(
                    Fault.OUTSIDE_LIMITS,
                    "length in " + name,
                    reading.length(),
                    before.length(),
                    "m",
                    name + " is " + reading.length() + " m long; it must be longer than the " + before.length()
                            + " m before it");
        }
        if (reading.force() < before.force()) {
            throw new Refusal(
                    Fault.OUTSIDE_LIMITS,
                    "force in " + name,
                    reading.force(),
                    before.force(),
                    "N",
                    name + " shows " + reading.force() + " N at " + reading.length()
                            + " m; it must not be less than the " + before.force() + " N before it");
        }
    }

    /** The same readings with so many times the force. */
    static List<BenchReading> times(double factor, List<BenchReading> readings) {
        List<BenchReading> scaled = new ArrayList<>();
        for (BenchReading reading : readings) {
            scaled.add(new BenchReading(reading.length(), factor * reading.force()));
        }
        return scaled;
    }
}
