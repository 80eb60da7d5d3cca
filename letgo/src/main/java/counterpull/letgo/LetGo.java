package counterpull.letgo;

import counterpull.engine.Require;
import java.util.Optional;
import org.hipparchus.ode.ODEState;

/**
 * Follows a machine from the moment at which somebody lets go: it moves where weight and rubber drive it past what friction
 * holds, goes on to an end or to its next turn, and there it rests or swings back.
 *
 * <p>The result carries its own account of energy: kinetic and stored energies come from the formulas of the machine, losses from the
 * integration, so that they agree only where both are right.
 */
public final class LetGo {
    /** How long a machine is followed, s: what still swings then is said to swing. */
    public static final double LONGEST = 20;

    private static final int MOST_TURNS = 1000;
    // below this share of the forces at play a drive is rounding, and moves nothing
    private static final double ROUNDING = 1e-9;
    private static final double AHEAD = 1e-7;

    private final LoneMachine machine;
    private final Release release;
    private ODEState state;
    private double fastest;
    private double liveliest;
    private double highest;
    private int turns;

    private LetGo(LoneMachine machine, Release release) {
        this.machine = machine;
        this.release = release;
        state = new ODEState(0, new double[] {release.place(), release.speed(), 0, 0});
        highest = release.place();
    }

    /**
     * What a machine does when it is let go.
     *
     * @param machine the machine
     * @param release where and how fast; the place must lie between the machine's ends
     */
    public static Outcome of(LoneMachine machine, Release release) {
        Ends ends = machine.ends();
        Require.within(release.place(), new Require.Limits(ends.low(), ends.high()), "place of letting go", "m or rad");
        return new LetGo(machine, release).follow();
    }

    private Outcome follow() {
        remember();
        Optional<Sense> first = way();
        Optional<Sense> next = first;
        Ending ending = liesOnItsStop() ? Ending.ON_THE_STOP : Ending.AT_REST;
        while (next.isPresent() && turns < MOST_TURNS) {
            Optional<Ending> over = stretch(next.get());
            if (over.isPresent()) {
                return outcome(over.get(), first);
            }
            turns++;
            next = way();
            ending = next.isPresent() ? Ending.STILL_SWINGING : Ending.AT_REST;
        }
        return outcome(ending, first);
    }

    /** One stretch in one way; how it all ends if it ends there, empty at a turn. */
    private Optional<Ending> stretch(Sense sense) {
        if (machine.ends().reached(place(), sense)) {
            return Optional.of(machine.ends().ending(sense));
        }
        if (machine.testedRoom(place()) <= 0 && machine.testedRoom(place() + sense.sign() * AHEAD) < 0) {
            return Optional.of(Ending.RUBBER_AT_TESTED_LENGTH);
        }
        Leg leg = new Leg(machine, sense);
        state = leg.follow(state, LONGEST);
        fastest = Math.max(fastest, leg.fastest());
        liveliest = Math.max(liveliest, leg.liveliest());
        remember();
        if (leg.atEnd()) {
            return Optional.of(machine.ends().ending(sense));
        }
        if (leg.atTestedLength()) {
            return Optional.of(Ending.RUBBER_AT_TESTED_LENGTH);
        }
        if (!leg.turned()) {
            return Optional.of(Ending.STILL_SWINGING);
        }
        standStill();
        return Optional.empty();
    }

    /** Whether it would stay on its stop without any friction too. */
    private boolean liesOnItsStop() {
        Ends ends = machine.ends();
        boolean onStop = ends.bottom() == Ends.Bottom.STOP && ends.reached(place(), Sense.DOWN);
        return onStop && machine.drive(place(), Sense.UP) <= 0;
    }

    private void remember() {
        highest = Math.max(highest, place());
        fastest = Math.max(fastest, Math.abs(speed()));
    }

    /** The detected turn is one to rounding: from here on it is one. */
    private void standStill() {
        double[] y = state.getPrimaryState();
        y[MotionEquation.SPEED] = 0;
        state = new ODEState(state.getTime(), y);
    }

    /** Which way it goes on from here; empty where friction holds it. */
    private Optional<Sense> way() {
        if (speed() != 0) {
            return Optional.of(speed() > 0 ? Sense.UP : Sense.DOWN);
        }
        double up = machine.drive(place(), Sense.UP);
        double down = machine.drive(place(), Sense.DOWN);
        double held = machine.holding(place()) + ROUNDING * atPlay();
        if (up > held) {
            return Optional.of(Sense.UP);
        }
        return down < -held ? Optional.of(Sense.DOWN) : Optional.empty();
    }

    private double atPlay() {
        return Math.abs(machine.weight(place())) + Math.abs(machine.storing(place()));
    }

    private double place() {
        return state.getPrimaryState()[MotionEquation.PLACE];
    }

    private double speed() {
        return state.getPrimaryState()[MotionEquation.SPEED];
    }

    private double kinetic(double place, double speed) {
        return machine.inertia(place) * speed * speed / 2;
    }

    private Outcome outcome(Ending ending, Optional<Sense> first) {
        double kinetic = kinetic(place(), speed());
        double[] y = state.getPrimaryState();
        EnergyAccount energy = new EnergyAccount(
                kinetic - kinetic(release.place(), release.speed()),
                machine.weightEnergy(place()) - machine.weightEnergy(release.place()),
                machine.rubberEnergy(place()) - machine.rubberEnergy(release.place()),
                y[MotionEquation.TO_FRICTION],
                y[MotionEquation.TO_RUBBER],
                liveliest);
        return new Outcome(
                release,
                ending,
                first,
                new Outcome.End(state.getTime(), place(), speed(), kinetic),
                new Outcome.Way(highest, fastest, turns),
                energy);
    }
}
