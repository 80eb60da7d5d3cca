package counterpull.bench.machine;

import counterpull.bench.Estimate;
import counterpull.bench.Kind;
import counterpull.bench.Remark;
import java.util.ArrayList;
import java.util.List;

/** What is wrong with a cam's travel readings before anything is fitted, and with the radii after. */
final class CamReadings {
    private static final double TURN = 2 * Math.PI;
    private static final double LONGEST = 5;
    private static final double MOST_RADIUS = 1;
    private static final int FEWEST = 4;

    private final CamTravelBench bench;
    private final List<Remark> remarks = new ArrayList<>();

    CamReadings(CamTravelBench bench) {
        this.bench = bench;
    }

    List<Remark> remarks() {
        for (int i = 0; i < bench.travels().size(); i++) {
            travel(i);
        }
        if (remarks.isEmpty()) {
            enough();
        }
        if (remarks.isEmpty()) {
            reversed();
        }
        return remarks;
    }

    private void travel(int i) {
        CamTravel travel = bench.travels().get(i);
        String name = "reading " + (i + 1);
        if (!Double.isFinite(travel.angle()) || !Double.isFinite(travel.line())) {
            remarks.add(Remark.refuses("not-a-number", name + " has something that is not a number"));
        } else if (Math.abs(travel.angle()) > TURN) {
            remarks.add(Remark.refuses("angle-impossible", name + " is at ")
                    .then(travel.angle(), Kind.ANGLE)
                    .then(": an angle is within a whole turn; check its unit"));
        } else if (Math.abs(travel.line()) > LONGEST) {
            remarks.add(Remark.refuses("way-too-long", name + " has ")
                    .then(travel.line(), Kind.LENGTH)
                    .then(" of line: no more than ")
                    .then(LONGEST, Kind.LENGTH)
                    .then(" can be, check its unit"));
        }
    }

    private double[] angles() {
        return bench.travels().stream()
                .mapToDouble(CamTravel::angle)
                .distinct()
                .sorted()
                .toArray();
    }

    private void enough() {
        double[] angles = angles();
        if (angles.length < FEWEST) {
            remarks.add(Remark.refuses("angles-few", "reading ")
                    .then(bench.travels().size(), Kind.COUNT)
                    .then(" is the last, at ")
                    .then(angles.length, Kind.COUNT)
                    .then(
                            angles.length == 1
                                    ? " angle alone: a cam's radius needs "
                                    : " different angles: a cam's radius needs ")
                    .then(FEWEST, Kind.COUNT));
        } else if (angles[angles.length - 1] - angles[0] >= TURN) {
            remarks.add(Remark.refuses("angle-impossible", "the readings span ")
                    .then(angles[angles.length - 1] - angles[0], Kind.ANGLE)
                    .then(": a cam is read over less than a whole turn"));
        }
    }

    /** One reading that steps back where all others go on. */
    private void reversed() {
        List<CamTravel> sorted = new ArrayList<>(bench.travels());
        sorted.sort(java.util.Comparator.comparingDouble(CamTravel::angle));
        int rising = 0;
        int falling = 0;
        CamTravel fall = null;
        CamTravel rise = null;
        for (int i = 1; i < sorted.size(); i++) {
            double step = sorted.get(i).line() - sorted.get(i - 1).line();
            boolean turns = sorted.get(i).angle() > sorted.get(i - 1).angle();
            if (turns && step > 0) {
                rising++;
                rise = sorted.get(i);
            } else if (turns && step < 0) {
                falling++;
                fall = sorted.get(i);
            }
        }
        if (Math.min(rising, falling) == 1 && Math.max(rising, falling) >= 3) {
            CamTravel odd = rising == 1 ? rise : fall;
            remarks.add(Remark.doubts(
                            "line-steps-back", "reading " + (bench.travels().indexOf(odd) + 1) + " at ")
                    .then(odd.angle(), Kind.ANGLE)
                    .then(" has ")
                    .then(odd.line(), Kind.LENGTH)
                    .then(" of line and steps back where the others go on: it or the one before it was misread"));
        }
    }

    static List<Remark> radii(CamFound found, String from) {
        List<Remark> remarks = new ArrayList<>();
        double angle = found.first();
        Estimate radius = found.radius(angle);
        for (int i = 1; i <= 10; i++) {
            double at = found.first() + (found.last() - found.first()) * i / 10;
            if (Math.abs(found.radius(at).value()) > Math.abs(radius.value())) {
                angle = at;
                radius = found.radius(at);
            }
        }
        if (Math.abs(radius.value()) > MOST_RADIUS) {
            remarks.add(Remark.refuses("radius-too-large", "from " + from + " on, the cam's radius would be ")
                    .then(radius.value(), Kind.LENGTH)
                    .then(" at ")
                    .then(angle, Kind.ANGLE)
                    .then(": no more than ")
                    .then(MOST_RADIUS, Kind.LENGTH)
                    .then(" can be; check the unit of the line, or of torque and mass"));
        }
        return remarks;
    }
}
