package counterpull.bench.tubing;

import counterpull.bench.Kind;
import counterpull.bench.Remark;
import java.util.ArrayList;
import java.util.List;

/**
 * Forces that do not belong to their neighbours: each reading's force over its stretch beyond natural length is laid beside that of the
 * others; the farthest off is taken out until the rest agree, so that one slip does not put its neighbours in doubt.
 */
final class ForcesCheck {
    private static final double INSIDE = Math.log(1.8);
    private static final double AT_END = Math.log(2.7);
    private static final int FEWEST = 2;

    private final TubingBench bench;
    private final double natural;
    private final double least;
    private final List<Remark> remarks = new ArrayList<>();
    private final List<NamedPull> sound = new ArrayList<>();

    private ForcesCheck(TubingBench bench) {
        this.bench = bench;
        natural = bench.natural().mean();
        least = 5 * bench.natural().standardError(bench.instruments().tape());
    }

    static List<Remark> of(TubingBench bench) {
        ForcesCheck check = new ForcesCheck(bench);
        check.stretching();
        if (check.remarks.isEmpty()) {
            check.beside(NamedPull.lettingGo(bench.pulls()));
            check.beside(NamedPull.firstStretch(bench.pulls()));
        }
        check.falls();
        check.atNatural();
        return check.remarks;
    }

    private void stretching() {
        List<NamedPull> up = NamedPull.rising(NamedPull.stretching(bench.pulls()));
        if (up.stream().allMatch(pull -> pull.force() == 0)) {
            remarks.add(Remark.refuses(
                    "no-force",
                    "the scale showed nothing at all, from " + up.get(0).name() + " to "
                            + up.get(up.size() - 1).name() + ": does the hook take the pull?"));
            return;
        }
        sound.addAll(up);
        List<NamedPull> out = new ArrayList<>();
        while (sound.size() > FEWEST && discord() > 0) {
            NamedPull worst = worst();
            out.add(worst);
            sound.remove(worst);
        }
        for (NamedPull pull : NamedPull.stretching(bench.pulls())) {
            if (out.contains(pull) && Math.abs(Math.log(off(pull))) > INSIDE) {
                say(pull, off(pull));
            }
        }
    }

    /** The one without which the others agree best. */
    private NamedPull worst() {
        NamedPull worst = null;
        double least = Double.POSITIVE_INFINITY;
        for (NamedPull pull : List.copyOf(sound)) {
            int at = sound.indexOf(pull);
            sound.remove(at);
            double left = discord();
            // where several would do, the one that is itself farthest off
            double tie = 1e-3 / (1 + Math.abs(Math.log(off(pull))));
            sound.add(at, pull);
            if (left + tie < least) {
                least = left + tie;
                worst = pull;
            }
        }
        return worst;
    }

    private double discord() {
        double sum = 0;
        for (NamedPull pull : sound) {
            sum += Math.max(0, Math.abs(Math.log(off(pull))) - allowed(pull));
        }
        return sum;
    }

    private double allowed(NamedPull pull) {
        boolean end = pull.equals(sound.get(0)) || pull.equals(sound.get(sound.size() - 1));
        return end ? AT_END : INSIDE;
    }

    /** Force over what the others foretell; 1 where nothing can be said. */
    private double off(NamedPull pull) {
        double over = pull.length() - natural;
        if (over < least || !(pull.force() > 0)) {
            return 1;
        }
        double expected = stiffness(pull) * over;
        return expected > 0 ? pull.force() / expected : 1;
    }

    /** Force over stretch beyond natural length, from the others, straight between neighbours. */
    private double stiffness(NamedPull pull) {
        NamedPull below = null;
        NamedPull above = null;
        for (NamedPull other : sound) {
            if (other.equals(pull) || other.length() - natural < least) {
                continue;
            }
            if (other.length() <= pull.length()) {
                below = other;
            } else if (above == null) {
                above = other;
            }
        }
        if (below == null || above == null) {
            NamedPull only = below == null ? above : below;
            return only == null ? Double.NaN : secant(only);
        }
        double along = (pull.length() - below.length()) / (above.length() - below.length());
        return secant(below) + along * (secant(above) - secant(below));
    }

    private double secant(NamedPull pull) {
        return pull.force() / (pull.length() - natural);
    }

    private void beside(List<NamedPull> pulls) {
        for (NamedPull pull : pulls) {
            double off = off(pull);
            if (off > Math.exp(AT_END) || off < 0.2) {
                say(pull, off);
            }
        }
    }

    private void say(NamedPull pull, double off) {
        Slip slip = Slip.of(off);
        remarks.add(Remark.refuses(slip.code(), pull.name() + " (")
                .then(pull.length(), Kind.LENGTH)
                .then(", ")
                .then(pull.force(), Kind.FORCE)
                .then(") is ")
                .then(off, Kind.NUMBER)
                .then(" times what its neighbours say: " + slip.guess()));
    }

    private void falls() {
        List<NamedPull> rising = NamedPull.rising(sound);
        double scale = bench.instruments().scale().orElse(Double.NaN);
        NamedPull highest = null;
        for (NamedPull pull : rising) {
            if (highest != null && pull.length() > highest.length() + 1e-9) {
                double drop = highest.force() - pull.force();
                double clear = Double.isNaN(scale) ? 0.1 * highest.force() : 4.5 * scale;
                if (drop > Math.max(clear, 0.02 * highest.force())) {
                    remarks.add(fall(highest, pull));
                }
            }
            highest = highest == null || pull.force() > highest.force() ? pull : highest;
        }
    }

    private void atNatural() {
        double most = sound.stream().mapToDouble(NamedPull::force).max().orElse(0);
        double clear = Math.max(0.1 * most, 5 * bench.instruments().scale().orElse(0));
        for (NamedPull pull : sound) {
            if (pull.length() - natural < least && pull.force() > clear) {
                remarks.add(Remark.refuses("force-at-natural", pull.name() + " at ")
                        .then(pull.length(), Kind.LENGTH)
                        .then(" shows ")
                        .then(pull.force(), Kind.FORCE)
                        .then(", and at the natural length of ")
                        .then(natural, Kind.LENGTH)
                        .then(" nothing pulls: set the scale to zero, and measure the natural length again"));
            }
        }
    }

    private static Remark fall(NamedPull before, NamedPull pull) {
        return Remark.refuses("force-falls", pull.name() + " at ")
                .then(pull.length(), Kind.LENGTH)
                .then(" shows ")
                .then(pull.force(), Kind.FORCE)
                .then(", less than the ")
                .then(before.force(), Kind.FORCE)
                .then(" of " + before.name() + " at ")
                .then(before.length(), Kind.LENGTH)
                .then(": rubber pulls harder the longer it is; take it again");
    }
}
