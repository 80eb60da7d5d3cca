package counterpull.engine.profile;

import counterpull.engine.Fault;
import counterpull.engine.Refusal;
import counterpull.engine.load.Carrier;
import counterpull.engine.load.Pull;
import counterpull.engine.motion.Phase;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Whether everything that can act one way only does so: a line that would push is slack, a pad that would pull has left the limb. What
 * reaches the body through the same contact of a machine counts together.
 */
final class Contacts {
    private static final double TOUCH = 1e-9;
    private final ExerciseLimb limb;
    private final int positions;

    Contacts(ExerciseLimb limb, int positions) {
        this.limb = limb;
        this.positions = positions;
    }

    /** Refuses the first place at which one of them would be lost; {@code where} says a position in words. */
    void hold(java.util.function.IntFunction<String> where) {
        List<Carrier> seen = new ArrayList<>();
        for (int p = 0; p < limb.pulls().size(); p++) {
            Pull pull = limb.pulls().get(p);
            Optional<Carrier> carrier = pull.carrier();
            boolean looked =
                    carrier.filter(one -> seen.stream().anyMatch(one::isSame)).isPresent();
            if (pull.holds() == Pull.Holds.ONE_WAY && !looked) {
                carrier.ifPresent(seen::add);
                hold(p, where);
            }
        }
    }

    private void hold(int pull, java.util.function.IntFunction<String> where) {
        List<Integer> contact = sameContact(pull);
        for (Phase phase : Phase.values()) {
            for (int i = 0; i < positions; i++) {
                double size = 0;
                for (int p : contact) {
                    size += limb.size(p, phase, i);
                }
                if (size < -TOUCH) {
                    throw lost(limb.pulls().get(pull), size, where.apply(i) + " while " + phase.words());
                }
            }
        }
    }

    /** The pull itself and all forces that reach the body through the same contact. */
    private List<Integer> sameContact(int pull) {
        Optional<Carrier> carrier = limb.pulls().get(pull).carrier();
        List<Integer> found = new ArrayList<>();
        for (int p = 0; p < limb.pulls().size(); p++) {
            Pull other = limb.pulls().get(p);
            boolean shares = carrier.isPresent()
                    && !other.isCouple()
                    && other.carrier().filter(carrier.get()::isSame).isPresent();
            if (p == pull || shares) {
                found.add(p);
            }
        }
        return found;
    }

    private static Refusal lost(Pull pull, double size, String where) {
        boolean pad = pull.carrier().isPresent();
        String what = pull.words() + (pad ? " would leave the body " : " would go slack ") + where;
        String todo = pad
                ? ": less of what helps, more load, or a slower tempo"
                : ": a slower tempo, more load or a shorter range";
        return new Refusal(
                pad ? Fault.CONTACT_LOST : Fault.SLACK_STACK,
                "pull of " + pull.words() + " " + where,
                size,
                0,
                pull.isCouple() ? "N·m" : "N",
                what + todo);
    }
}
