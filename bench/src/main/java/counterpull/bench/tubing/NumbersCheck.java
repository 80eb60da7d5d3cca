package counterpull.bench.tubing;

import counterpull.bench.Kind;
import counterpull.bench.Remark;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** What is wrong with single numbers, whatever the others say: everything here refuses. */
final class NumbersCheck {
    private static final int MOST_STRANDS = 12;

    private final TubingBench bench;
    private final List<Remark> remarks = new ArrayList<>();

    private NumbersCheck(TubingBench bench) {
        this.bench = bench;
    }

    static List<Remark> of(TubingBench bench) {
        NumbersCheck check = new NumbersCheck(bench);
        check.piece();
        check.tape(bench.natural(), "natural length");
        bench.after().ifPresent(after -> check.tape(after, "natural length after"));
        check.instruments();
        check.pulls();
        return check.remarks;
    }

    private void piece() {
        if (bench.piece().tag().isBlank()) {
            refuse("tag-missing", "the piece has no tag: write a number on it, so that its record can be found again");
        }
        double strands = bench.piece().strands();
        if (!(strands >= 1) || strands != Math.rint(strands) || strands > MOST_STRANDS) {
            remarks.add(Remark.refuses("strands-not-whole", "strands pulled together: ")
                    .then(strands, Kind.NUMBER)
                    .then(", and it must be a whole number from 1 to " + MOST_STRANDS));
        }
        bench.piece().section().ifPresent(this::section);
    }

    private void section(CrossSection section) {
        if (section instanceof CrossSection.Tube tube) {
            notBelow(tube.bore(), "bore");
            positive(tube.wall(), "wall");
        } else if (section instanceof CrossSection.Strip strip) {
            positive(strip.width(), "width");
            positive(strip.thickness(), "thickness");
        }
    }

    private void tape(TapeReadings tape, String what) {
        if (tape.readings().isEmpty()) {
            refuse(what.equals("natural length") ? "natural-missing" : "after-missing", what + " was not measured");
        }
        for (int i = 0; i < tape.readings().size(); i++) {
            String name = tape.readings().size() == 1 ? what : "reading " + (i + 1) + " of the " + what;
            positive(tape.readings().get(i), name);
        }
        tape.uncertainty().ifPresent(sd -> positive(sd, "standard uncertainty of the " + what));
    }

    private void instruments() {
        stated(bench.instruments().scale(), "standard uncertainty of the scale", Kind.FORCE);
        stated(bench.instruments().tape(), "standard uncertainty of the tape", Kind.LENGTH);
    }

    private void stated(OptionalDouble value, String name, Kind kind) {
        if (value.isPresent() && !(value.getAsDouble() > 0 && value.getAsDouble() <= Double.MAX_VALUE)) {
            say("uncertainty-not-positive", name, value.getAsDouble(), kind, ", and no reading is free of error");
        }
    }

    private void pulls() {
        Pulls pulls = bench.pulls();
        if (pulls.stretching().isEmpty() && !pulls.lettingGo().isEmpty()) {
            refuse("only-letting-go", "only letting go was read: the law is that of stretching, read the way up too");
        } else if (pulls.stretching().isEmpty()) {
            refuse("no-readings", "there is no reading of length and force");
        } else if (pulls.stretching().size() == 1) {
            NamedPull only = NamedPull.stretching(pulls).get(0);
            remarks.add(Remark.refuses("one-reading", only.name() + " at ")
                    .then(only.length(), Kind.LENGTH)
                    .then(" is the only one while stretching: take at least three lengths"));
        }
        for (NamedPull pull : NamedPull.all(pulls)) {
            pull(pull);
        }
    }

    private void pull(NamedPull pull) {
        if (!finite(pull.length())) {
            say("not-a-number", "length of " + pull.name(), pull.length(), Kind.LENGTH, "");
        } else if (!(pull.length() > 0)) {
            say(
                    "length-not-positive",
                    "length of " + pull.name(),
                    pull.length(),
                    Kind.LENGTH,
                    ", and it must be above 0");
        }
        if (!finite(pull.force())) {
            say("not-a-number", "force of " + pull.name(), pull.force(), Kind.FORCE, "");
        } else if (pull.force() < 0) {
            say(
                    "force-negative",
                    "force of " + pull.name(),
                    pull.force(),
                    Kind.FORCE,
                    ", and rubber cannot push: was the scale set to zero with the piece on it?");
        }
    }

    private void positive(double value, String name) {
        if (!finite(value)) {
            say("not-a-number", name, value, Kind.LENGTH, "");
        } else if (!(value > 0)) {
            say("length-not-positive", name, value, Kind.LENGTH, ", and it must be above 0");
        }
    }

    private void notBelow(double value, String name) {
        if (!(value >= 0 && finite(value))) {
            say("length-not-positive", name, value, Kind.LENGTH, ", and it must not be below 0");
        }
    }

    private static boolean finite(double value) {
        return Math.abs(value) <= Double.MAX_VALUE;
    }

    private void say(String code, String name, double value, Kind kind, String limit) {
        String rest = limit.isEmpty() ? ", which is no number" : limit;
        remarks.add(Remark.refuses(code, name + " is ").then(value, kind).then(rest));
    }

    private void refuse(String code, String words) {
        remarks.add(Remark.refuses(code, words));
    }
}
