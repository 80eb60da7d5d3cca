package counterpull.engine.uncertainty;

import counterpull.engine.load.Carriage;
import counterpull.engine.load.StackLine;
import counterpull.engine.motion.FootRow;
import counterpull.engine.motion.Rail;
import counterpull.engine.motion.SeatSetting;
import counterpull.engine.motion.Stance;
import counterpull.engine.planar.Vec;
import counterpull.engine.profile.Loading;
import counterpull.engine.profile.PressTask;
import counterpull.engine.profile.Pushing;
import counterpull.engine.profile.Sled;
import java.util.ArrayList;
import java.util.List;

/** What about a sled, and how a person sits and pushes on it, is known only so far. */
final class SledDoubts {
    private final PressTask task;
    private final Stated stated;
    private final List<Doubt<PressTrial>> found = new ArrayList<>();

    private SledDoubts(PressTask task, Stated stated) {
        this.task = task;
        this.stated = stated;
    }

    static List<Doubt<PressTrial>> of(PressTrial trial, Stated stated) {
        SledDoubts doubts = new SledDoubts(trial.task(), stated);
        doubts.machine();
        doubts.seat();
        doubts.push();
        return doubts.found;
    }

    private void machine() {
        again(Input.RAIL_ANGLE, "the rail's angle", SledDoubts::rail);
        again(Input.CARRIAGE, "the carriage's mass", (before, by) -> carriage(before, heavier(before, by)));
        again(
                Input.FRICTION_CONSTANT,
                "the constant friction",
                (before, by) -> carriage(before, rubbing(before, by, 0)));
        again(
                Input.FRICTION_COEFFICIENT,
                "the friction coefficient",
                (before, by) -> carriage(before, rubbing(before, 0, by)));
        again(Input.PLATES, "the plates' mass", SledDoubts::plates);
        if (task.sled().stack().isPresent()) {
            again(
                    Input.MASSES,
                    "the stack's own mass",
                    (before, by) -> stack(before, line(before).stackTimes(1 + by)));
            again(
                    Input.LINE_FRICTION,
                    "the friction of the stack's line",
                    (before, by) -> stack(before, line(before).rubbing(by)));
        }
    }

    private void seat() {
        again(Input.HIP_TO_PLATE, "the distance from hip to plate at the mark", SledDoubts::hipToPlate);
        again(Input.TRUNK, "the trunk's direction", SledDoubts::trunk);
        again(Input.FOOT_ROW, "the heel's place on the plate", SledDoubts::row);
        each(Input.HIP_SHIFT, "how far the hip sinks along the rail", (before, by) -> hip(before, new Vec(by, 0)));
        each(Input.HIP_SHIFT, "how far the hip sinks across the rail", (before, by) -> hip(before, new Vec(0, by)));
    }

    private void push() {
        each(Input.PRESSURE_POINT, "where on the foot the pressure is", SledDoubts::pressure);
        // how far somebody strays is said most plainly by the interval over which the answer is looked at
        double usual = task.pushing().spread() / 2;
        double sd = stated.inputs().containsKey(Input.PUSH) ? stated.of(Input.PUSH) : usual;
        Stated.Known known = new Stated.Known(sd, stated.source(Input.PUSH));
        add(Input.PUSH, "which way the push goes", known, SledDoubts::push, new Again.EachTime());
    }

    private static PressTask push(PressTask task, double by) {
        Pushing pushing = task.pushing();
        return task.with(new Pushing(pushing.push().turned(by), pushing.spread()));
    }

    private interface Turned {
        PressTask of(PressTask task, double by);
    }

    /** An input that a second reading would settle better. */
    private void again(Input input, String name, Turned turned) {
        add(input, name, turned, Again.Reading.once("measure " + name + " once more"));
    }

    /** An input that is another one at each repetition. */
    private void each(Input input, String name, Turned turned) {
        add(input, name, turned, new Again.EachTime());
    }

    private void add(Input input, String name, Turned turned, Again again) {
        add(input, name, stated.known(input), turned, again);
    }

    private void add(Input input, String name, Stated.Known known, Turned turned, Again again) {
        Spread spread = new Spread(input.kind(), known.sd());
        found.add(
                Doubt.of(name, spread, known.source(), (trial, by) -> trial.with(turned.of(trial.task(), by)), again));
    }

    private static PressTask rail(PressTask task, double by) {
        Rail rail = task.sled().rail();
        return task.with(
                task.sled().with(new Rail(rail.angle() + by, rail.ride(), rail.plateTilt(), rail.tapeSense())));
    }

    private static Carriage heavier(PressTask task, double by) {
        Carriage carriage = task.sled().carriage();
        return carriage.ofMass(Math.max(0, carriage.mass() + by));
    }

    private static Carriage rubbing(PressTask task, double constant, double coefficient) {
        Carriage carriage = task.sled().carriage();
        return carriage.with(carriage.friction().changed(constant, coefficient));
    }

    private static PressTask carriage(PressTask task, Carriage carriage) {
        return task.with(task.sled().with(carriage));
    }

    private static StackLine line(PressTask task) {
        return task.sled().stack().orElseThrow();
    }

    private static PressTask stack(PressTask task, StackLine line) {
        Sled sled = task.sled().with(line);
        return task.with(sled);
    }

    private static PressTask plates(PressTask task, double by) {
        Loading loading = task.loading();
        return task.with(new Loading(Math.max(0, loading.plates() * (1 + by)), loading.lines()));
    }

    private static PressTask hipToPlate(PressTask task, double by) {
        SeatSetting seat = task.stance().seat();
        return seat(
                task,
                new SeatSetting(
                        seat.name(), seat.mark(), seat.hipToPlate() + by, seat.hipAcross(), seat.trunkDirection()));
    }

    private static PressTask trunk(PressTask task, double by) {
        SeatSetting seat = task.stance().seat();
        return seat(
                task,
                new SeatSetting(
                        seat.name(), seat.mark(), seat.hipToPlate(), seat.hipAcross(), seat.trunkDirection() + by));
    }

    private static PressTask seat(PressTask task, SeatSetting seat) {
        Stance stance = task.stance();
        return task.with(new Stance(seat, stance.row(), stance.pressurePoint(), stance.hipShift()));
    }

    private static PressTask row(PressTask task, double by) {
        Stance stance = task.stance();
        FootRow row = new FootRow(stance.row().name(), stance.row().heel() + by);
        return task.with(new Stance(stance.seat(), row, stance.pressurePoint(), stance.hipShift()));
    }

    private static PressTask hip(PressTask task, Vec by) {
        Stance stance = task.stance();
        return task.with(new Stance(
                stance.seat(),
                stance.row(),
                stance.pressurePoint(),
                stance.hipShift().plus(by)));
    }

    private static PressTask pressure(PressTask task, double by) {
        Stance stance = task.stance();
        double point = stance.pressurePoint() + by;
        return task.with(new Stance(stance.seat(), stance.row(), point, stance.hipShift()));
    }
}
