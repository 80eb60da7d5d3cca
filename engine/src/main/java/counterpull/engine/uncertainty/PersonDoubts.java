package counterpull.engine.uncertainty;

import counterpull.engine.body.BodyLength;
import counterpull.engine.body.BodySide;
import counterpull.engine.body.Joint;
import counterpull.engine.profile.Limb;
import counterpull.engine.profile.Person;
import counterpull.engine.profile.Profile;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;

/**
 * What about a person is known only so far: lengths, masses, how fast they count, and strength. A length measured on each side misses on
 * each side by itself; one taken from stature misses on both sides by the same share. Masses stay where a length changes.
 */
final class PersonDoubts<T extends Trial<T>> {
    private static final double TAPE = 0.005;

    private final T trial;
    private final Stated stated;
    private final List<Doubt<T>> found = new ArrayList<>();

    private PersonDoubts(T trial, Stated stated) {
        this.trial = trial;
        this.stated = stated;
    }

    static <T extends Trial<T>> List<Doubt<T>> of(T trial, Stated stated) {
        PersonDoubts<T> doubts = new PersonDoubts<>(trial, stated);
        Profile profile = trial.profile();
        doubts.found.addAll(StrengthDoubts.of(trial, profile));
        for (BodyLength length : lengths(profile.joints())) {
            doubts.length(length);
        }
        doubts.masses();
        doubts.seconds();
        return doubts.found;
    }

    private static Set<BodyLength> lengths(List<Joint> joints) {
        Set<BodyLength> lengths = EnumSet.noneOf(BodyLength.class);
        for (Joint joint : joints) {
            lengths.addAll(moved(joint));
        }
        return lengths;
    }

    private static List<BodyLength> moved(Joint joint) {
        return switch (joint) {
            case HIP -> List.of(BodyLength.TRUNK, BodyLength.THIGH);
            case HIP_SIDEWAYS -> List.of(BodyLength.THIGH, BodyLength.SHANK);
            case KNEE -> List.of(BodyLength.THIGH, BodyLength.SHANK);
            case ANKLE -> List.of(BodyLength.FOOT, BodyLength.ANKLE_HEIGHT);
            case SHOULDER, SHOULDER_SIDEWAYS -> List.of(BodyLength.UPPER_ARM);
            case SHOULDER_TURNING, ELBOW -> List.of(BodyLength.FOREARM);
        };
    }

    private void length(BodyLength which) {
        List<Integer> fromStature = new ArrayList<>();
        for (int k = 0; k < trial.person().limbs().size(); k++) {
            Limb limb = trial.person().limbs().get(k);
            if (Double.isNaN(limb.body().length(which))) {
                continue;
            }
            if (stated.isMeasured(limb.side(), which)) {
                measured(which, k);
            } else {
                fromStature.add(k);
            }
        }
        if (!fromStature.isEmpty()) {
            fromStature(which, fromStature);
        }
    }

    private void measured(BodyLength which, int limb) {
        Stated.Known known = stated.known(Input.LENGTHS);
        String name = trial.person().limbs().get(limb).side().words() + " " + which.words();
        add(
                name,
                new Spread(Spread.Kind.LENGTH, known.sd()),
                known.source(),
                (before, by) -> body(before, limb, side -> side.with(which, side.length(which) + by)),
                Again.Reading.once("measure the " + name + " once more"));
    }

    private void fromStature(BodyLength which, List<Integer> limbs) {
        Stated.Known known = stated.known(Input.FROM_STATURE);
        double length = trial.person().limbs().get(limbs.get(0)).body().length(which);
        add(
                which.words() + ", from stature",
                new Spread(Spread.Kind.SHARE, known.sd()),
                known.source(),
                (before, by) -> {
                    T changed = before;
                    for (int limb : limbs) {
                        changed = body(changed, limb, side -> side.with(which, side.length(which) * (1 + by)));
                    }
                    return changed;
                },
                new Again.Reading(
                        "measure the " + which.words() + " with a tape", Math.min(1, TAPE / (known.sd() * length))));
    }

    private void masses() {
        Stated.Known all = stated.known(Input.BODY_MASS);
        add(
                "body mass",
                new Spread(Spread.Kind.SHARE, all.sd()),
                all.source(),
                (before, by) -> heavier(before, 1 + by),
                Again.Reading.once("weigh the person once more"));
        Stated.Known limbs = stated.known(Input.LIMB_MASSES);
        add(
                "the limbs' share of body mass",
                new Spread(Spread.Kind.SHARE, limbs.sd()),
                limbs.source(),
                (before, by) -> everyBody(before, before.person().mass(), side -> side.limbsHeavier(1 + by)),
                new Again.NoWay());
    }

    private void seconds() {
        Stated.Known known = stated.known(Input.SECONDS);
        add(
                "seconds of lowering and lifting",
                new Spread(Spread.Kind.SHARE, known.sd()),
                known.source(),
                (before, by) -> before.with(before.tempo().slower(1 + by)),
                new Again.EachTime());
    }

    private void add(String name, Spread spread, String source, Doubt.Turn<T> turn, Again again) {
        found.add(Doubt.of(name, spread, source, turn, again));
    }

    private static <T extends Trial<T>> T heavier(T before, double factor) {
        return everyBody(
                before,
                factor * before.person().mass(),
                side -> side.limbsHeavier(factor).trunkHeavier(factor));
    }

    private static <T extends Trial<T>> T everyBody(T before, double mass, UnaryOperator<BodySide> change) {
        List<Limb> limbs = new ArrayList<>();
        for (Limb limb : before.person().limbs()) {
            limbs.add(limb.with(change.apply(limb.body())));
        }
        return before.with(new Person(mass, limbs));
    }

    private static <T extends Trial<T>> T body(T before, int index, UnaryOperator<BodySide> change) {
        Limb limb = before.person().limbs().get(index);
        return limb(before, index, limb.with(change.apply(limb.body())));
    }

    /** The trial with one limb in another's place. */
    static <T extends Trial<T>> T limb(T before, int index, Limb limb) {
        List<Limb> limbs = new ArrayList<>(before.person().limbs());
        limbs.set(index, limb);
        return before.with(new Person(before.person().mass(), limbs));
    }
}
