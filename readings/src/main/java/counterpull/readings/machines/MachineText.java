package counterpull.readings.machines;

import counterpull.bench.Estimate;
import counterpull.bench.Kind;
import counterpull.bench.machine.CamFound;
import counterpull.bench.machine.LeverFound;
import counterpull.bench.machine.MachineFound;
import counterpull.bench.machine.PinFound;
import counterpull.bench.machine.ProfileFound;
import counterpull.bench.machine.StackFound;
import counterpull.engine.Constants;
import counterpull.engine.load.CamRadius;
import counterpull.engine.load.MeasuredProfile;
import counterpull.scenario.units.Unit;
import java.util.ArrayList;
import java.util.List;

/** A measured machine as an entry of a scenario's {@code resists}; what nobody measured stands as a comment. */
final class MachineText {
    private static final String PIVOT = "# pivot: {forward: 0 cm, up: 0 cm}   # from the joint: fill this in";
    private static final String PAD = "# pad: {on: shank, on lever: 32 cm}   # where it touches: fill this in";
    private static final double SPARE = 3;

    private final List<String> lines = new ArrayList<>();

    private MachineText() {}

    static String of(String name, MachineFound found) {
        MachineText text = new MachineText();
        text.line(0, "# " + name + ": an entry of the exercise's list");
        text.line(0, "resists:");
        if (found instanceof ProfileFound profile) {
            text.profile(name, profile);
        } else if (found instanceof StackFound stack) {
            text.stack(name, stack);
        } else if (found instanceof LeverFound lever) {
            text.lever(name, lever);
        } else if (found instanceof CamFound cam) {
            text.cam(name, cam);
        }
        return String.join("\n", text.lines) + "\n";
    }

    private void line(int depth, String text) {
        lines.add("  ".repeat(depth) + text);
    }

    private void profile(String name, ProfileFound found) {
        boolean travel = found.bench().quantity().position() == Kind.LENGTH;
        boolean torque = found.bench().quantity().size() == Kind.TORQUE;
        Unit at = travel ? Unit.CENTIMETRE : Unit.DEGREE;
        Unit size = torque ? Unit.NEWTON_METRE : Unit.NEWTON;
        line(1, "- measured profile:");
        line(3, "name: " + Sure.quoted(name));
        if (!torque) {
            line(3, "# at: {on: forearm, along: 26 cm}   # where it meets the body: fill this in");
        }
        line(3, found.bench().quantity().words() + ":");
        double step = (found.last() - found.first()) / 1000;
        for (MeasuredProfile.Reading reading : found.readings()) {
            // one digit more than a reader needs
            double sd = SPARE * found.mean(reading.position()).standardError();
            line(
                    4,
                    "- {" + (travel ? "travel" : "angle") + ": " + Sure.known(reading.position(), step, at) + ", up: "
                            + Sure.known(reading.up(), sd, size) + ", down: " + Sure.known(reading.down(), sd, size)
                            + "}");
        }
        line(0, "uncertainty:");
        line(1, "readings of a machine: " + Sure.unsure(share(found), Unit.PERCENT));
    }

    /** The largest standard error of what is held, as a share of it. */
    private static Estimate share(ProfileFound found) {
        double most = 0;
        for (MeasuredProfile.Reading reading : found.readings()) {
            Estimate mean = found.mean(reading.position());
            most = Math.max(most, mean.standardError() / Math.max(1e-9, Math.abs(mean.value())));
        }
        return Estimate.normal(1, Math.min(0.5, most));
    }

    private void stack(String name, StackFound found) {
        line(1, "- cable:");
        line(3, "name: " + Sure.quoted(name));
        line(3, "# at: {on: forearm, along: 26 cm}   # where it is hooked on: fill this in");
        line(3, "# pulley: {forward: 0 cm, up: 100 cm}   # where the line leaves the last pulley: fill this in");
        if (found.ratio().isPresent()) {
            line(3, "ratio: " + Sure.value(found.ratio().get(), Unit.ONE));
        } else {
            line(3, "# ratio: 1   # not measured: fill this in");
        }
        line(3, "friction: " + Sure.value(found.friction(), Unit.PERCENT));
        for (PinFound pin : found.pins()) {
            pin.mass()
                    .ifPresent(mass -> line(
                            3,
                            (pin == found.pins().get(0) ? "mass: " : "# mass: ")
                                    + Sure.value(mass, Unit.KILOGRAM) + "   # the pin printed "
                                    + Sure.known(pin.printed(), 0, Unit.KILOGRAM)));
        }
        found.moving().ifPresent(moving -> line(3, "moving mass: " + Sure.value(moving, Unit.KILOGRAM)));
        line(0, "uncertainty:");
        found.pins().stream()
                .findFirst()
                .flatMap(PinFound::mass)
                .ifPresent(mass -> line(
                        1,
                        "masses that resist: "
                                + Sure.unsure(Estimate.normal(1, Math.min(0.5, mass.relative())), Unit.PERCENT)));
        line(1, "friction of lines: " + Sure.unsure(found.friction(), Unit.ONE));
    }

    private void lever(String name, LeverFound found) {
        double product = found.moment().value() / Constants.STANDARD_GRAVITY;
        line(1, "- lever:");
        line(3, "name: " + Sure.quoted(name));
        line(3, PIVOT);
        line(3, PAD);
        line(
                3,
                "# mass x radius is "
                        + Sure.known(product, found.moment().standardError() / Constants.STANDARD_GRAVITY, Unit.ONE)
                        + " kg m; the mass alone was not weighed: held, any pair with that product pulls the same");
        double radius = Math.min(1, Math.max(0.05, product / 5));
        double mass = product / radius;
        line(
                3,
                "itself: {mass: " + Sure.known(mass, mass / 1000, Unit.KILOGRAM) + ", radius: "
                        + Sure.known(radius, radius / 1000, Unit.CENTIMETRE) + ", offset: "
                        + Sure.value(found.offset(), Unit.DEGREE) + ", inertia: "
                        + Sure.known(mass * radius * radius, mass * radius * radius / 1000, Unit.KILOGRAM_SQUARE_METRE)
                        + "}");
        found.horn().ifPresent(horn -> {
            line(3, "horns:");
            line(
                    4,
                    "- {name: plate horn, radius: " + Sure.value(horn.radius(), Unit.CENTIMETRE) + ", offset: "
                            + Sure.value(horn.offset(), Unit.DEGREE) + ", chosen: 10 kg}   # or what is put on");
        });
        line(3, "friction: " + Sure.value(found.friction(), Unit.NEWTON_METRE));
    }

    private void cam(String name, CamFound found) {
        line(1, "- cam stack:");
        line(3, "name: " + Sure.quoted(name));
        line(3, PIVOT);
        line(3, PAD);
        line(3, "# ratio: 1   # of the line after the cam: fill this in, as what follows");
        line(3, "# friction: 6 %");
        line(3, "# mass: 5 kg");
        line(3, "# inertia: 0.3 kg·m2");
        line(3, "cam:");
        double step = (found.last() - found.first()) / 1000;
        for (CamRadius.Reading reading : found.cam().readings()) {
            double sd = found.radius(reading.angle()).standardError();
            line(
                    4,
                    "- {angle: " + Sure.known(reading.angle(), step, Unit.DEGREE) + ", radius: "
                            + Sure.known(reading.radius(), sd, Unit.CENTIMETRE) + "}");
        }
    }
}
