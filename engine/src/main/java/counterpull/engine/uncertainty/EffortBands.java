package counterpull.engine.uncertainty;

import counterpull.engine.Fault;
import counterpull.engine.body.Action;
import counterpull.engine.body.Joint;
import counterpull.engine.motion.Phase;

/**
 * How sure the efforts of a profile are, from many draws of everything it rests on: a band at each joint, phase and position, the
 * largest effort's own band, and chances. All of it is about the draws that could be set up; those that could not are counted apart.
 * Read-only.
 *
 * <p>Monte Carlo propagation of distributions (JCGM 101:2008): inputs normal and independent, except that one strength curve is one draw
 * at all angles.
 */
public final class EffortBands {
    private final Tally tally;
    private final int draws;

    EffortBands(Tally tally, int draws) {
        this.tally = tally;
        this.draws = draws;
    }

    /** How many draws were made. */
    public int draws() {
        return draws;
    }

    /** How many of them could be set up. */
    public int setUp() {
        return tally.setUp();
    }

    /** How many could not be set up for this reason. */
    public int refused(Fault fault) {
        return tally.refusedCount(fault);
    }

    /** How many positions there are, bottom first. */
    public int positions() {
        return tally.positions();
    }

    /** What was looked at. */
    public Looked looked() {
        return tally.looked();
    }

    /** Effort of a joint at a place: the larger of the limbs' known ones in each draw. */
    public Band effort(Joint joint, Phase phase, int position) {
        return Band.of(tally.cells(), tally.cell(joint, phase, position), setUp());
    }

    /** The largest effort of the named joints over all phases and positions. */
    public Band peak() {
        return Band.of(tally.peak(), 0, setUp());
    }

    /** The value below which that largest effort lies in a share of the draws, 0 to 1. */
    public double peak(double share) {
        return tally.peak().quantile(0, share);
    }

    /** The chance that it passes the ceiling anywhere. */
    public Chance ceilingPassed() {
        return new Chance(tally.passed(), setUp());
    }

    /** The chance that foot and plate, or a pad, lose contact somewhere, or that a line goes slack which must not. */
    public Chance contactLost() {
        return new Chance(refused(Fault.CONTACT_LOST) + refused(Fault.SLACK_STACK), draws);
    }

    /** The chance that a joint passes the person's own limit of its angle somewhere. */
    public Chance limitPassed(Joint joint) {
        return new Chance(tally.beyond(tally.joints().indexOf(joint)), setUp());
    }

    /** The share of the draws in which the largest effort is asked in this action. */
    public Chance hardest(Action action) {
        return new Chance(tally.hardest(action), setUp());
    }
}
