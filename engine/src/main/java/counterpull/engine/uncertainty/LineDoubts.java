package counterpull.engine.uncertainty;

import counterpull.engine.elastic.Rubber;
import counterpull.engine.load.Anchor;
import counterpull.engine.load.Attachment;
import counterpull.engine.load.ElasticLine;
import counterpull.engine.planar.Vec;
import counterpull.engine.profile.Loading;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;

/** What about the rubber on a sled is known only so far: each piece by its tag, each dead length, each anchor and attachment by its name. */
final class LineDoubts {
    // a luggage scale against a known weight; ours
    private static final double SCALE = 0.02;

    private final List<ElasticLine> lines;
    private final Stated stated;
    private final List<Doubt<PressTrial>> found = new ArrayList<>();

    private LineDoubts(List<ElasticLine> lines, Stated stated) {
        this.lines = lines;
        this.stated = stated;
    }

    static List<Doubt<PressTrial>> of(PressTrial trial, Stated stated) {
        LineDoubts doubts = new LineDoubts(trial.task().loading().lines(), stated);
        doubts.pieces();
        doubts.deadLengths();
        doubts.ends();
        return doubts.found;
    }

    private void pieces() {
        Set<String> tags = new LinkedHashSet<>();
        for (ElasticLine line : lines) {
            tags.add(line.rubber().tag());
        }
        for (String tag : tags) {
            Predicate<ElasticLine> its = line -> line.rubber().tag().equals(tag);
            Stated.Known pull = stated.pull(tag);
            add(
                    "pull of " + tag,
                    Spread.Kind.SHARE,
                    pull,
                    atItsLongest(tag, pull.sd()),
                    its,
                    (line, by) -> rubber(line, rubber -> rubber.times(Math.max(0.01, 1 + by))));
            Again tape = Again.Reading.once("measure the natural length of " + tag + " once more");
            add(
                    "natural length of " + tag,
                    Spread.Kind.LENGTH,
                    stated.naturalLength(tag),
                    tape,
                    its,
                    (line, by) -> rubber(line, rubber -> rubber.ofNaturalLength(rubber.naturalLength() + by)));
        }
    }

    private static Again atItsLongest(String tag, double sd) {
        return pullAgain("read the pull of " + tag + " once more at the length where it pulls hardest", sd);
    }

    /** What a reading with a scale leaves of a pull's standard uncertainty. */
    static Again pullAgain(String words, double sd) {
        return new Again.Reading(words, SCALE / Math.sqrt(SCALE * SCALE + sd * sd));
    }

    private void deadLengths() {
        for (int k = 0; k < lines.size(); k++) {
            ElasticLine its = lines.get(k);
            if (its.deadLength() > 0) {
                int index = k;
                String name = "dead length of the line with " + its.rubber().tag();
                found.add(Doubt.of(
                        name,
                        new Spread(Spread.Kind.LENGTH, stated.of(Input.DEAD_LENGTH)),
                        stated.source(Input.DEAD_LENGTH),
                        (trial, by) -> line(trial, index, by),
                        Again.Reading.once("measure the " + name + " once more")));
            }
        }
    }

    private static PressTrial line(PressTrial trial, int index, double by) {
        List<ElasticLine> changed = new ArrayList<>(trial.task().loading().lines());
        ElasticLine line = changed.get(index);
        changed.set(index, line.withDeadLength(Math.max(0, line.deadLength() + by)));
        return with(trial, changed);
    }

    private void ends() {
        Set<String> anchors = new LinkedHashSet<>();
        Set<String> attachments = new LinkedHashSet<>();
        for (ElasticLine line : lines) {
            anchors.add(line.ends().anchor().name());
            attachments.add(line.ends().attachment().name());
        }
        for (String name : anchors) {
            end(
                    "place of the anchor " + name,
                    line -> line.ends().anchor().name().equals(name),
                    LineDoubts::anchor);
        }
        for (String name : attachments) {
            end(
                    "place of the attachment " + name,
                    line -> line.ends().attachment().name().equals(name),
                    LineDoubts::attachment);
        }
    }

    private interface Moved {
        ElasticLine of(ElasticLine line, Vec by);
    }

    private void end(String name, Predicate<ElasticLine> its, Moved moved) {
        Stated.Known known = stated.known(Input.ANCHORS);
        double sd = known.sd();
        found.add(new Doubt<>(
                name,
                new Spread(Spread.Kind.LENGTH, sd),
                known.source(),
                2,
                (trial, z, from) -> {
                    Vec by = new Vec(sd * z[from], sd * z[from + 1]);
                    return every(trial, its, line -> moved.of(line, by));
                },
                Again.Reading.once("measure the " + name + " once more")));
    }

    private static ElasticLine anchor(ElasticLine line, Vec by) {
        Anchor anchor = line.ends().anchor();
        Anchor moved = new Anchor(anchor.name(), anchor.at().plus(by), anchor.lateral(), anchor.rating());
        return line.with(new ElasticLine.Ends(moved, line.ends().attachment()));
    }

    private static ElasticLine attachment(ElasticLine line, Vec by) {
        Attachment at = line.ends().attachment();
        Attachment moved = new Attachment(at.name(), at.at().plus(by), at.lateral());
        return line.with(new ElasticLine.Ends(line.ends().anchor(), moved));
    }

    private interface Changed {
        ElasticLine of(ElasticLine line, double by);
    }

    private void add(
            String name,
            Spread.Kind kind,
            Stated.Known known,
            Again again,
            Predicate<ElasticLine> its,
            Changed changed) {
        found.add(Doubt.of(
                name,
                new Spread(kind, known.sd()),
                known.source(),
                (trial, by) -> every(trial, its, line -> changed.of(line, by)),
                again));
    }

    private static ElasticLine rubber(ElasticLine line, UnaryOperator<Rubber> change) {
        return line.with(change.apply(line.rubber()));
    }

    private static PressTrial every(PressTrial trial, Predicate<ElasticLine> its, UnaryOperator<ElasticLine> change) {
        List<ElasticLine> changed = new ArrayList<>();
        for (ElasticLine line : trial.task().loading().lines()) {
            changed.add(its.test(line) ? change.apply(line) : line);
        }
        return with(trial, changed);
    }

    private static PressTrial with(PressTrial trial, List<ElasticLine> lines) {
        return trial.with(trial.task().with(new Loading(trial.task().loading().plates(), lines)));
    }
}
