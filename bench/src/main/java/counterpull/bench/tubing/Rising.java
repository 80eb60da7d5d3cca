package counterpull.bench.tubing;

/** The nearest row of numbers, by squares, that does not fall: neighbours that fall are pooled (Ayer and others 1955, from memory). */
final class Rising {
    private Rising() {}

    static void make(double[] values) {
        int n = values.length;
        double[] mean = new double[n];
        int[] count = new int[n];
        int blocks = 0;
        for (double value : values) {
            mean[blocks] = value;
            count[blocks] = 1;
            blocks++;
            while (blocks > 1 && mean[blocks - 2] > mean[blocks - 1]) {
                int both = count[blocks - 2] + count[blocks - 1];
                mean[blocks - 2] = (mean[blocks - 2] * count[blocks - 2] + mean[blocks - 1] * count[blocks - 1]) / both;
                count[blocks - 2] = both;
                blocks--;
            }
        }
        int at = 0;
        for (int b = 0; b < blocks; b++) {
            for (int k = 0; k < count[b]; k++) {
                values[at++] = mean[b];
            }
        }
    }
}
