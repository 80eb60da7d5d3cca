package counterpull.bench.tubing;

import counterpull.bench.fit.Noise;

/** Readings of one strand ready to be fitted: in order of rising length, natural length with its uncertainty, and the noise. */
final class Sample {
    final double[] lengths;
    final double[] forces;
    final double[] spreads;
    final double natural;
    final double naturalSd;
    final Noise noise;

    Sample(double[][] readings, double natural, double naturalSd, Noise noise) {
        lengths = readings[0];
        forces = readings[1];
        spreads = readings[2];
        this.natural = natural;
        this.naturalSd = naturalSd;
        this.noise = noise;
    }

    /** Basis functions of stretch. */
    interface Basis {
        void at(double stretch, double[] into);
    }

    int size() {
        return lengths.length;
    }

    double last() {
        return lengths[lengths.length - 1];
    }

    boolean stated() {
        return noise instanceof Noise.Stated;
    }

    /** The same readings with the noise taken as known. */
    Sample as(Noise known) {
        return new Sample(new double[][] {lengths, forces, spreads}, natural, naturalSd, known);
    }

    Sample without(int reading) {
        return new Sample(
                new double[][] {left(lengths, reading), left(forces, reading), left(spreads, reading)},
                natural,
                naturalSd,
                noise);
    }

    private static double[] left(double[] all, int reading) {
        double[] rest = new double[all.length - 1];
        System.arraycopy(all, 0, rest, 0, reading);
        System.arraycopy(all, reading + 1, rest, reading, rest.length - reading);
        return rest;
    }

    /** Least squares of functions that the force is straight in, at the natural length as measured. */
    double[] straightIn(int count, Basis basis) {
        double[][] rows = new double[size()][count];
        for (int i = 0; i < size(); i++) {
            basis.at(lengths[i] / natural, rows[i]);
        }
        double[][] square = new double[count][count];
        double[] right = new double[count];
        for (int i = 0; i < size(); i++) {
            double weight = 1 / (spreads[i] * spreads[i]);
            for (int j = 0; j < count; j++) {
                right[j] += weight * rows[i][j] * forces[i];
                for (int k = 0; k < count; k++) {
                    square[j][k] += weight * rows[i][j] * rows[i][k];
                }
            }
        }
        return Small.solved(square, right);
    }
}
