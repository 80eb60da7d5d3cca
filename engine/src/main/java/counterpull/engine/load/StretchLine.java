package counterpull.engine.load;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.Require;
import counterpull.engine.elastic.Rubber;
import counterpull.engine.elastic.Strand;
import counterpull.engine.motion.ChainPath;
import counterpull.engine.motion.Course;
import counterpull.engine.motion.Phase;
import java.util.ArrayList;
import java.util.List;

/**
 * Rubber between any two points, over fixed guides: pieces side by side, each hung singly or doubled, with webbing and links of a stated
 * length in series.
 *
 * <p>Formula: path P = Σ of the straight pieces from → guides → to, in three dimensions; rubber length L = P − w; pull = strands × T(L/L₀), 0
 * where L ≤ L₀; while the path shortens what the rubber gives back, also where the speed is zero; while it lengthens or is held the
 * loading curve. The rubber hangs on {@code from}: beyond guides the pull on {@code to} is × Π(1 ± loss), + while the line runs out over
 * them toward {@code to}, − while it runs back, held 1. N, m. Only the in-plane part of a pull acts.
 *
 * <p>Range: up to the tested length, past it a refusal, never a force; a line whose pulls to the side would not cancel is refused.
 * Source: geometry and balance of power; a fixed share for each guide stands for the rope-friction law e^(μ·wrap) at a wrap that hardly changes
 * (common practice, no source). Ours: friction is counted as if all rubber lay between {@code from} and the first guide; the rubber's
 * mass and the guides' radius are left out.
 *
 * @param name as a person says it
 * @param rubber what the pieces are
 * @param pieces how they hang
 * @param deadLength w, what does not stretch, of each strand's way, m, zero or more
 * @param from the end where the rubber hangs
 * @param to the other end; at least one of the two moves
 * @param guides what it runs over, in order from {@code from}; fixed
 */
public record StretchLine(
        String name,
        Rubber rubber,
        ElasticLine.Pieces pieces,
        double deadLength,
        LineEnd from,
        LineEnd to,
        List<Guide> guides)
        implements Resistance {
    private static final Require.Limits DEAD = new Require.Limits(0, 20);

    public StretchLine {
        guides = List.copyOf(guides);
        Require.within(deadLength, DEAD, "dead length of the " + name, "m");
        if (!from.moves() && !to.moves()) {
            throw new Refusal(
                    Fault.EMPTY_RANGE,
                    "moving ends of the " + name,
                    0,
                    1,
                    "",
                    "both ends of the " + name
                            + " are fixed, so it resists nothing: put one on the body or on a machine");
        }
        SideBalance.require(name, pieces, SideBalance.laterals(from, guides, to), from.twists() || to.twists());
    }

    /** Strands that pull side by side. */
    public int strands() {
        return pieces.count() * pieces.hang().strands();
    }

    /** One of them. */
    public Strand strand() {
        return pieces.hang() == Hang.DOUBLED ? rubber.doubled() : rubber.single();
    }

    /** Path, looseness and pull over a range; says so too where the tested length is passed, without refusing. */
    public StretchSeries over(ChainPath path) {
        return new StretchSeries(this, path);
    }

    @Override
    public String words() {
        return name;
    }

    @Override
    public List<Pull> on(ChainPath path, double gravity) {
        StretchSeries series = over(path).withinTestedLength();
        Course course = path.course();
        double[] rubberPull = new double[course.cells()];
        double[] rubbing = new double[course.cells()];
        for (Phase phase : Phase.values()) {
            for (int i = 0; i < path.positions(); i++) {
                int cell = course.cell(phase, i);
                rubberPull[cell] = strands() * series.tension(phase, i);
                rubbing[cell] = strands() * (series.tensionAtTo(phase, i) - series.tension(phase, i));
            }
        }
        Share elastic = new Share(Part.ELASTIC, name, Amount.ONE, rubberPull);
        List<Share> beyond = new ArrayList<>(List.of(elastic));
        if (rubs()) {
            beyond.add(new Share(Part.FRICTION, "guides of the " + name, Amount.ONE, rubbing));
        }
        List<Pull> pulls = new ArrayList<>(from.pulls(path, new Tug(name, series.fromEnd(), List.of(elastic))));
        pulls.addAll(to.pulls(path, new Tug(name, series.toEnd(), beyond)));
        return pulls;
    }

    private boolean rubs() {
        return guides.stream().anyMatch(guide -> guide.loss() > 0);
    }

    @Override
    public Ledger ledger(ChainPath path, double gravity, double plates) {
        StretchSeries series = over(path).withinTestedLength();
        Course course = path.course();
        Ledger ledger = Ledger.empty(course);
        for (int i = 0; i < path.positions(); i++) {
            double stored = strands() * strand().energy(series.rubberLength(i));
            for (Phase phase : Phase.values()) {
                int cell = course.cell(phase, i);
                ledger.stored()[cell] = stored;
                ledger.lost()[cell] = strands() * series.lost(phase, i);
            }
        }
        return ledger;
    }

    @Override
    public boolean takesPlates() {
        return false;
    }

    @Override
    public List<Knob> knobs() {
        return List.of(
                new Knob("pull of the " + name, Knob.Kind.RUBBER_PULL, factor -> with(rubber.times(factor))),
                new Knob(
                        "natural length of the " + name,
                        Knob.Kind.RUBBER_LENGTH,
                        added -> with(rubber.ofNaturalLength(rubber.naturalLength() + added))));
    }

    private StretchLine with(Rubber other) {
        return new StretchLine(name, other, pieces, deadLength, from, to, guides);
    }
}
