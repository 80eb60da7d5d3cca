package counterpull.bench.sled;

import counterpull.bench.Way;
import counterpull.bench.fit.Noise;
import counterpull.engine.load.Counterweight;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** A sled whose truth is known, read with noise. */
record SimulatedSled(double angle, double mass, double constant, double coefficient, double breakaway) {
    static final SimulatedSled USUAL = new SimulatedSled(Math.toRadians(41), 38, 25, 0.04, 40);

    double weight(double plates) {
        return (mass + plates) * 9.80665 * Math.sin(angle);
    }

    double pull(Way way, double plates) {
        return weight(plates) + way.sense() * (constant + coefficient * (mass + plates) * 9.80665 * Math.cos(angle));
    }

    /** How it is read: each pull so many times at each load, the angle so many times. */
    record Reading(double[] loads, int times, int angles, boolean turned, double noise, boolean stated) {}

    SledBench read(Reading how, Random random) {
        double share = 0.02;
        double plates = 1 + share * random.nextGaussian();
        List<Pull> pulls = new ArrayList<>();
        for (double load : how.loads()) {
            for (Way way : Way.values()) {
                for (int i = 0; i < how.times(); i++) {
                    double force = pull(way, load * plates) + how.noise() * random.nextGaussian();
                    pulls.add(new Pull(way, load, force));
                }
            }
        }
        List<Breakaway> breakaways = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            breakaways.add(new Breakaway(0, weight(0) + breakaway + 2 * how.noise() * random.nextGaussian()));
        }
        Noise scale = how.stated() ? new Noise.Stated(how.noise()) : new Noise.FromScatter();
        return new SledBench(
                "sled",
                gauge(how, random),
                new Riding(share, Counterweight.none(), Riding.PlateEnd.UPPER),
                pulls,
                breakaways,
                scale);
    }

    private RailGauge gauge(Reading how, Random random) {
        double degree = Math.toRadians(1);
        double zero = 0.7 * degree * random.nextGaussian();
        double other = 0.15 * degree * random.nextGaussian();
        // what is stated of the gauge counts its unsteadiness where it is read once alone
        double unsteady = how.angles() > 1 ? 0.3 * degree : 0;
        List<Inclination> readings = new ArrayList<>();
        for (int i = 0; i < how.angles(); i++) {
            double one = angle + zero + other + unsteady * random.nextGaussian();
            double two = angle - zero + other + unsteady * random.nextGaussian();
            readings.add(how.turned() ? Inclination.turned(one, two) : Inclination.once(one));
        }
        return new RailGauge(readings, 0.7 * degree, 0.15 * degree);
    }
}
