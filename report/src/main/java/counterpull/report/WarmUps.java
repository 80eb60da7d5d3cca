package counterpull.report;

import counterpull.engine.motion.Phase;
import counterpull.engine.profile.Loading;
import counterpull.engine.profile.PressProfile;
import java.util.ArrayList;
import java.util.List;

/**
 * Warm-up steps from the plates that the working set uses anyway, without rubber: for each wanted share of the working set's
 * largest force, the heaviest part of those plates that stays at or under it. Shares and repetitions: common practice, no
 * source.
 */
public final class WarmUps {
    private static final double[] SHARES = {0.4, 0.6, 0.8};
    private static final int[] REPETITIONS = {8, 5, 3};

    private WarmUps() {}

    /** Up to three steps, lighter first; none where even the bare carriage asks too much. */
    public static List<WarmUp> of(Setup setup) {
        PressProfile working = setup.profile();
        double peak = extreme(working, 1);
        List<WarmUp> steps = new ArrayList<>();
        List<WarmUp> parts = parts(working, setup.plates(), peak);
        for (int k = 0; k < SHARES.length; k++) {
            WarmUp best = null;
            for (WarmUp part : parts) {
                boolean fits = part.share() <= SHARES[k];
                best = fits && (best == null || part.share() > best.share()) ? part : best;
            }
            if (best != null
                    && (steps.isEmpty()
                            || best.share() > steps.get(steps.size() - 1).share())) {
                steps.add(new WarmUp(best.plates(), REPETITIONS[k], best.share()));
            }
        }
        return List.copyOf(steps);
    }

    private static List<WarmUp> parts(PressProfile working, Plates plates, double peak) {
        List<List<PlateStack>> sets = new ArrayList<>();
        sets.add(List.of());
        for (PlateStack stack : plates.stacks()) {
            List<List<PlateStack>> longer = new ArrayList<>(sets);
            for (int count = 1; count <= stack.count(); count++) {
                for (List<PlateStack> set : sets) {
                    List<PlateStack> more = new ArrayList<>(set);
                    more.add(stack.of(count));
                    longer.add(more);
                }
            }
            sets = longer;
        }
        List<WarmUp> parts = new ArrayList<>();
        for (List<PlateStack> set : sets) {
            Plates part = new Plates(set);
            PressProfile bare = PressProfile.onGround(working.ground().with(List.of()), Loading.plates(part.total()));
            if (extreme(bare, -1) >= 0) {
                parts.add(new WarmUp(part, 0, extreme(bare, 1) / peak));
            }
        }
        return parts;
    }

    /** The largest force of all phases and positions (sense 1), or the least (sense −1), N. */
    private static double extreme(PressProfile profile, int sense) {
        double most = Double.NEGATIVE_INFINITY;
        for (Phase phase : Phase.values()) {
            for (int i = 0; i < profile.positions(); i++) {
                most = Math.max(most, sense * profile.force(phase, i));
            }
        }
        return sense * most;
    }
}
