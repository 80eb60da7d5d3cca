package counterpull.engine.profile;

import counterpull.engine.body.Joint;
import counterpull.engine.load.Part;
import counterpull.engine.load.Pull;
import counterpull.engine.load.Share;
import counterpull.engine.motion.ChainPath;
import counterpull.engine.motion.Ground;
import counterpull.engine.motion.Phase;
import counterpull.engine.planar.Vec;
import java.util.List;
import java.util.Optional;

/** One limb of an exercise: what any limb of a profile tells, and what pulls at it. Read-only. */
public final class ExerciseLimb extends LimbProfile {
    private final ChainTerms terms;
    private final double share;
    private final double plates;
    private final double[] torque;
    private final Grid grid;
    private final Optional<Ground> ground;

    ExerciseLimb(Limb limb, Capacity capacity, int index, Load load) {
        super(limb, capacity, index);
        terms = load.terms();
        share = load.share();
        plates = load.plates();
        grid = capacity.grid();
        torque = terms.torques(share, plates);
        ground = load.stand().map(stand -> stand.under(this));
    }

    /**
     * What loads a limb.
     *
     * @param terms its terms
     * @param share fraction of every pull that it bears
     * @param plates chosen plates, kg
     * @param stand the foot on the ground; empty where the limb does not stand
     */
    record Load(ChainTerms terms, double share, double plates, Optional<StandOnGround> stand) {}

    @Override
    public ChainPath path() {
        return terms.path();
    }

    @Override
    public double torque(Joint joint, Phase phase, int position) {
        return torque[grid.jointCell(joint, phase, position)];
    }

    @Override
    double[] torques() {
        return torque;
    }

    /** What the ground does to its foot; empty where it does not stand. */
    public Optional<Ground> ground() {
        return ground;
    }

    /** What pulls at it, for the whole load. */
    public List<Pull> pulls() {
        return terms.pulls();
    }

    /** Fraction of every pull that this limb bears. */
    public double share() {
        return share;
    }

    /** Size of a pull, N (N·m for a couple), for the whole load. */
    public double size(int pull, Phase phase, int position) {
        return pulls().get(pull).size(grid.cell(phase, position), plates);
    }

    /** Torque per unit of a pull's whole size at a joint, this limb's share left out, m (a pure number for a couple). */
    public double arm(int pull, Joint joint, int position) {
        return terms.arm(pull, joint, position);
    }

    /** What one part adds to a joint's torque, N·m, in the sense of its named action. */
    public double torque(Part part, Joint joint, Phase phase, int position) {
        double sum = own(part, joint, phase, position);
        for (int p = 0; p < pulls().size(); p++) {
            for (Share summand : pulls().get(p).shares()) {
                if (summand.part() == part) {
                    sum += share
                            * amount(summand)
                            * summand.perUnit()[grid.cell(phase, position)]
                            * arm(p, joint, position);
                }
            }
        }
        return sum;
    }

    private double own(Part part, Joint joint, Phase phase, int position) {
        return switch (part) {
            case LIMB_WEIGHT -> terms.weight(joint, phase, position);
            case LIMB_INERTIA -> terms.inertia(joint, phase, position);
            default -> 0;
        };
    }

    /** How much of a summand there is: 1, or kg of plates. */
    double amount(Share summand) {
        return summand.amount() == counterpull.engine.load.Amount.PLATES ? plates : 1;
    }

    /** What weighs or pulls at it with a force, each named once, in the order of the exercise. */
    public List<String> loads() {
        return pulls().stream()
                .filter(pull -> !pull.isCouple())
                .map(Pull::words)
                .distinct()
                .toList();
    }

    /** What turns it with a torque of its own, each named once; not what a machine's contact does besides its force. */
    public List<String> turns() {
        return pulls().stream()
                .filter(pull -> pull.isCouple() && pull.carrier().isEmpty())
                .map(Pull::words)
                .distinct()
                .toList();
    }

    /** Size of everything of that name that turns it, N·m, for the whole load. */
    public double turn(String words, Phase phase, int position) {
        double sum = 0;
        for (int p = 0; p < pulls().size(); p++) {
            if (pulls().get(p).isCouple() && pulls().get(p).words().equals(words)) {
                sum += size(p, phase, position);
            }
        }
        return sum;
    }

    /** Force of everything of that name on the body, N, for the whole load; without what acts as a couple. */
    public Vec force(String words, Phase phase, int position) {
        Vec sum = new Vec(0, 0);
        for (int p = 0; p < pulls().size(); p++) {
            Pull pull = pulls().get(p);
            if (pull.words().equals(words) && !pull.isCouple()) {
                sum = sum.plus(pull.direction(position).times(size(p, phase, position)));
            }
        }
        return sum;
    }
}
