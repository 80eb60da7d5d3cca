package counterpull.letgo;

import counterpull.engine.load.Amount;
import counterpull.engine.load.GuidedMass;
import counterpull.engine.load.Ledger;
import counterpull.engine.load.Part;
import counterpull.engine.load.Pull;
import counterpull.engine.load.Resistance;
import counterpull.engine.load.Share;
import counterpull.engine.load.StretchLine;
import counterpull.engine.load.StretchSeries;
import counterpull.engine.motion.ChainPath;
import counterpull.engine.motion.Course;
import counterpull.engine.motion.Flowing;
import counterpull.engine.motion.Phase;

/**
 * What a part of a machine is at one place u: read off the engine's own forces and energies there, in three states of motion of one course:
 * still, speeding up from rest, and moving. A force that goes with u is Σ size · direction · d(point)/du. Read-only once made.
 *
 * <p>Inertia comes from the kinetic energy, its slope from the inertial force of a moving part, friction from the force at rest in the
 * sense of the movement, and what rubs of the inertia from how friction grows with acceleration.
 */
final class Moment {
    /** One unit of u in 4 s either way: speeds and accelerations below 1, in which no stack's line goes slack. */
    private static final Course COURSE = Course.even(1, 3, new Flowing(4, 4, Flowing.Turn.BOTTOM));

    private static final int SPEEDING_UP = 0;
    private static final int MOVING = 1;
    private static final int STILL = 2;

    private final ChainPath rod;
    private final double plates;
    private final double[] rubbing = new double[3];
    private final double[] inertial = new double[3];
    private double kinetic;
    double weight;
    double weightEnergy;
    double storing;
    double up;
    double down;
    double rubberEnergy;
    double breakaway;
    double testedRoom = Double.POSITIVE_INFINITY;

    Moment(ChainPath rod, double plates) {
        this.rod = rod;
        this.plates = plates;
    }

    /** The course over which a rod is asked. */
    static Course course() {
        return COURSE;
    }

    /** Takes in one thing on the part. */
    void add(Resistance resistance, double gravity) {
        Ledger ledger = resistance.ledger(rod, gravity, plates);
        double stored = ledger.stored()[COURSE.cell(Phase.HELD, STILL)];
        if (resistance instanceof StretchLine line) {
            StretchSeries series = line.over(rod);
            rubberEnergy += stored;
            testedRoom = Math.min(testedRoom, series.strand().maxLength() - series.rubberLength(STILL));
        } else {
            weightEnergy += stored;
            kinetic += ledger.kinetic()[COURSE.cell(Phase.LIFTING, MOVING)];
        }
        if (resistance instanceof GuidedMass mass) {
            breakaway += mass.carriage().friction().breakaway();
        }
        for (Pull pull : resistance.on(rod, gravity)) {
            add(pull, resistance instanceof StretchLine);
        }
    }

    private void add(Pull pull, boolean rubber) {
        double along = along(pull);
        for (Share share : pull.shares()) {
            double factor = along * (share.amount() == Amount.PLATES ? plates : 1);
            if (rubber) {
                storing += factor * at(share, Phase.HELD, STILL);
                up += factor * at(share, Phase.LIFTING, STILL);
                down += factor * at(share, Phase.LOWERING, STILL);
            } else {
                addWeight(share, factor);
            }
        }
    }

    private void addWeight(Share share, double factor) {
        weight += factor * at(share, Phase.HELD, STILL);
        for (int state = 0; state < rubbing.length; state++) {
            double value = factor * at(share, Phase.LIFTING, state);
            rubbing[state] -= share.part() == Part.FRICTION ? value : 0;
            inertial[state] += share.part() == Part.INERTIA ? value : 0;
        }
    }

    private static double at(Share share, Phase phase, int state) {
        return share.perUnit()[COURSE.cell(phase, state)];
    }

    /** What one unit of the pull's size is along u. */
    private double along(Pull pull) {
        return pull.isCouple()
                ? rod.slope(pull.at().segment(), STILL)
                : pull.direction(STILL).dot(rod.track(pull.at()).slope(STILL));
    }

    double inertia() {
        double v = COURSE.speed(Phase.LIFTING, MOVING);
        return 2 * kinetic / (v * v);
    }

    /** From Q = −M ẍ − ½ M′ ẋ². */
    double inertiaSlope() {
        return slope(-inertial[MOVING], inertia());
    }

    double friction() {
        return rubbing[STILL];
    }

    double rubbedInertia() {
        return (rubbing[SPEEDING_UP] - rubbing[STILL]) / COURSE.acceleration(Phase.LIFTING, SPEEDING_UP);
    }

    double rubbedSlope() {
        return slope(rubbing[MOVING] - rubbing[STILL], rubbedInertia());
    }

    private static double slope(double force, double inertia) {
        double v = COURSE.speed(Phase.LIFTING, MOVING);
        return 2 * (force - inertia * COURSE.acceleration(Phase.LIFTING, MOVING)) / (v * v);
    }
}
