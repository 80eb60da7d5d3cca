package counterpull.picture;

/**
 * The tape reading at each position of a range, m, beside the range's own coordinate. Read-only.
 */
final class Marks {
    private final double[] coordinate;
    private final double[] mark;

    Marks(double[] coordinate, double[] mark) {
        this.coordinate = coordinate;
        this.mark = mark;
    }

    double lowest() {
        return Math.min(mark[0], mark[mark.length - 1]);
    }

    double highest() {
        return Math.max(mark[0], mark[mark.length - 1]);
    }

    /** The range's coordinate at a tape reading between the two. */
    double coordinateAt(double reading) {
        double sense = mark[mark.length - 1] > mark[0] ? 1 : -1;
        int i = 1;
        while (i < mark.length - 1 && sense * mark[i] < sense * reading) {
            i++;
        }
        double part = (reading - mark[i - 1]) / (mark[i] - mark[i - 1]);
        return coordinate[i - 1] + part * (coordinate[i] - coordinate[i - 1]);
    }
}
