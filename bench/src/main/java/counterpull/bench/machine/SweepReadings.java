package counterpull.bench.machine;

import counterpull.bench.Kind;
import counterpull.bench.Remark;
import counterpull.bench.Slip;
import counterpull.bench.Way;
import counterpull.bench.fit.Noise;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is wrong with readings up and down along positions, each problem naming its reading. */
final class SweepReadings {
    private static final double TURN = 2 * Math.PI;
    private static final double LONGEST = 10;
    private static final double WIDE = 0.45;
    /** Natural logarithm: friction sets up and down apart by no more than three to one. */
    private static final double ALIKE = Math.log(3);

    private static final double TOLERANCE = 0.01;
    private static final double GAP = 0.45;
    private static final int FEWEST = 3;

    /** Standard deviation over median absolute deviation of a normal distribution. */
    private static final double NORMAL = 1.4826;

    private final Quantity quantity;
    private final List<Seen> readings;
    private final Noise scale;
    private final List<Remark> remarks = new ArrayList<>();

    SweepReadings(Quantity quantity, List<Seen> readings, Noise scale) {
        this.quantity = quantity;
        this.readings = readings;
        this.scale = scale;
    }

    List<Remark> remarks() {
        for (int i = 0; i < readings.size(); i++) {
            reading(i);
        }
        if (remarks.isEmpty()) {
            enough();
        }
        if (remarks.stream().noneMatch(Remark::refuses)) {
            for (int i = 0; i < readings.size(); i++) {
                slip(i);
            }
            upsAndDowns();
            order();
            gaps();
        }
        return remarks;
    }

    private void reading(int i) {
        Seen seen = readings.get(i);
        if (!Double.isFinite(seen.size()) || !Double.isFinite(seen.position())) {
            remarks.add(Remark.refuses("not-a-number", "reading " + (i + 1) + " has something that is not a number"));
            return;
        }
        if (seen.size() < 0) {
            remarks.add(named("below-zero", i)
                    .then(": a scale reads above zero; where the machine does not come back by itself, write 0"));
        }
        double most = quantity.position() == Kind.ANGLE ? TURN : LONGEST;
        if (Math.abs(seen.position()) > most) {
            remarks.add(named("position-impossible", i)
                    .then(": its position is beyond ")
                    .then(most, quantity.position())
                    .then(", check its unit"));
        }
    }

    /** "reading 3, up at 40 cm, reads 200 N". */
    private Remark named(String code, int i) {
        return named(Remark.refuses(code, ""), i);
    }

    private Remark named(Remark begun, int i) {
        Seen seen = readings.get(i);
        return begun.then("reading " + (i + 1) + ", " + seen.way().words() + " at ")
                .then(seen.position(), quantity.position())
                .then(", is ")
                .then(seen.size(), quantity.size());
    }

    private double[] positions() {
        return readings.stream().mapToDouble(Seen::position).distinct().sorted().toArray();
    }

    private void enough() {
        if (positions().length < FEWEST) {
            remarks.add(Remark.refuses("positions-few", "reading ")
                    .then(readings.size(), Kind.COUNT)
                    .then(" is the last, at ")
                    .then(positions().length, Kind.COUNT)
                    .then(
                            positions().length == 1
                                    ? " position alone: a curve needs "
                                    : " different positions: a curve needs ")
                    .then(FEWEST, Kind.COUNT)
                    .then(", from the bottom of the range to its top"));
        }
        for (Way way : Way.values()) {
            if (readings.stream().noneMatch(seen -> seen.way() == way)) {
                remarks.add(Remark.refuses(
                        "one-way-only",
                        "there is no reading on the way " + way.words()
                                + ": friction shows in the difference of both ways alone"));
            }
        }
        if (readings.stream().allMatch(seen -> seen.size() == 0)) {
            remarks.add(Remark.refuses("all-zero", "all readings from reading 1 on are 0: the scale did not pull"));
        }
    }

    /** The other readings of the same way, nearest three positions, in their median. */
    private Optional<Double> expected(int i) {
        Seen seen = readings.get(i);
        double[] near = java.util.stream.IntStream.range(0, readings.size())
                .filter(k -> k != i && readings.get(k).way() == seen.way())
                .boxed()
                .sorted(java.util.Comparator.comparingDouble(
                        k -> Math.abs(readings.get(k).position() - seen.position())))
                .limit(3)
                .mapToDouble(k -> readings.get(k).size())
                .sorted()
                .toArray();
        return near.length < 2
                ? Optional.empty()
                : Optional.of((near[(near.length - 1) / 2] + near[near.length / 2]) / 2);
    }

    /** Another reading at the same position of about that size: a force may fall to a tenth toward an end. */
    private boolean borneOut(int i) {
        Seen seen = readings.get(i);
        for (int k = 0; k < readings.size(); k++) {
            Seen other = readings.get(k);
            boolean here = k != i && other.position() == seen.position();
            if (here && Math.abs(Math.log(other.size() / seen.size())) < ALIKE) {
                return true;
            }
        }
        return false;
    }

    private void slip(int i) {
        double read = readings.get(i).size();
        expected(i)
                .filter(expected -> expected > 0 && read > 0 && !borneOut(i))
                .flatMap(expected -> Slip.ofTen(read, expected, WIDE))
                .ifPresent(slip -> remarks.add(named("slip", i)
                        .then(", about " + slip.times() + " the ")
                        .then(expected(i).orElseThrow(), quantity.size())
                        .then(" that its neighbours say: " + slip.words())));
    }

    private double tolerance() {
        if (scale instanceof Noise.Stated stated) {
            return stated.sd();
        }
        double squares = 0;
        int left = 0;
        for (double position : positions()) {
            for (Way way : Way.values()) {
                double[] here = SweepCurves.at(readings, way, position);
                squares += SweepCurves.squares(here, SweepCurves.mean(here));
                left += Math.max(0, here.length - 1);
            }
        }
        double about =
                TOLERANCE * readings.stream().mapToDouble(Seen::size).average().orElse(0);
        return Math.max(about, left > 0 ? Math.sqrt(squares / left) : scatterOfDifferences());
    }

    /** Without repeats: how up less down scatters from position to position, from the median so that one slip does not hide itself. */
    private double scatterOfDifferences() {
        double[] differences = java.util.Arrays.stream(positions())
                .filter(this::bothWays)
                .map(at -> SweepCurves.mean(SweepCurves.at(readings, Way.UP, at))
                        - SweepCurves.mean(SweepCurves.at(readings, Way.DOWN, at)))
                .sorted()
                .toArray();
        if (differences.length == 0) {
            return 0;
        }
        double middle = differences[differences.length / 2];
        double[] off = java.util.Arrays.stream(differences)
                .map(each -> Math.abs(each - middle))
                .sorted()
                .toArray();
        return NORMAL * off[off.length / 2] / Math.sqrt(2);
    }

    private boolean bothWays(double position) {
        return SweepCurves.at(readings, Way.UP, position).length > 0
                && SweepCurves.at(readings, Way.DOWN, position).length > 0;
    }

    private void upsAndDowns() {
        for (double position : positions()) {
            double[] up = SweepCurves.at(readings, Way.UP, position);
            double[] down = SweepCurves.at(readings, Way.DOWN, position);
            double allowed = 4 * tolerance() * Math.sqrt(1.0 / Math.max(1, up.length) + 1.0 / Math.max(1, down.length));
            if (up.length > 0 && down.length > 0 && SweepCurves.mean(down) - SweepCurves.mean(up) > allowed) {
                remarks.add(named("down-above-up", largestDown(position))
                        .then(", above the ")
                        .then(SweepCurves.mean(up), quantity.size())
                        .then(" on the way up there: friction would be below zero; up and down may be exchanged"));
            }
        }
    }

    private int largestDown(double position) {
        int largest = -1;
        for (int i = 0; i < readings.size(); i++) {
            Seen seen = readings.get(i);
            if (seen.way() == Way.DOWN
                    && seen.position() == position
                    && (largest < 0 || seen.size() > readings.get(largest).size())) {
                largest = i;
            }
        }
        return largest;
    }

    /** On the way up positions go one way; travel rises. */
    private void order() {
        int rising = 0;
        int falling = 0;
        int lastFall = -1;
        int lastRise = -1;
        int before = -1;
        for (int i = 0; i < readings.size(); i++) {
            if (readings.get(i).way() == Way.UP) {
                double step = before < 0
                        ? 0
                        : readings.get(i).position() - readings.get(before).position();
                rising += step > 0 ? 1 : 0;
                falling += step < 0 ? 1 : 0;
                lastRise = step > 0 ? i : lastRise;
                lastFall = step < 0 ? i : lastFall;
                before = i;
            }
        }
        boolean travel = quantity.position() == Kind.LENGTH;
        if (travel && falling >= 2 && rising == 0) {
            remarks.add(Remark.doubts(
                            "tape-reversed", "on the way up the positions fall, to reading " + (lastFall + 1) + " at ")
                    .then(readings.get(lastFall).position(), quantity.position())
                    .then(": travel is read rising toward the top; turn the tape, or take each from its far end"));
        } else if (Math.min(rising, falling) == 1 && Math.max(rising, falling) >= 3) {
            int odd = rising == 1 ? lastRise : lastFall;
            if (readings.stream().noneMatch(seen -> repeats(seen, odd))) {
                remarks.add(
                        named(Remark.doubts("positions-not-in-order", ""), odd)
                                .then(
                                        ": its position turns back against the others on the way up; read the tape or the gauge there again"));
            }
        }
    }

    private boolean repeats(Seen seen, int odd) {
        Seen other = readings.get(odd);
        return seen != other && seen.way() == other.way() && seen.position() == other.position();
    }

    private void gaps() {
        double[] at = positions();
        double range = at[at.length - 1] - at[0];
        for (int i = 1; i < at.length && at.length > FEWEST; i++) {
            if (at[i] - at[i - 1] > GAP * range) {
                remarks.add(Remark.doubts("gap", "between the readings at ")
                        .then(at[i - 1], quantity.position())
                        .then(" and ")
                        .then(at[i], quantity.position())
                        .then(" lies nearly half the range: the band is wide there, read once between them"));
            }
        }
    }
}
