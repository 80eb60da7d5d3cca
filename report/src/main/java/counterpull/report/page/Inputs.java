package counterpull.report.page;

import counterpull.engine.body.Action;
import counterpull.engine.body.Joint;
import counterpull.engine.choice.Goal;
import counterpull.engine.choice.PlateKind;
import counterpull.engine.elastic.Rubber;
import counterpull.engine.jointload.BrechterPowers2002;
import counterpull.engine.load.Anchor;
import counterpull.engine.load.Carriage;
import counterpull.engine.motion.Ride;
import counterpull.engine.profile.Limb;
import counterpull.report.Exact;
import counterpull.report.table.Decimals;
import counterpull.report.table.Measure;
import counterpull.scenario.PressScenario;
import counterpull.scenario.content.Client;
import counterpull.scenario.content.Machine;
import counterpull.scenario.units.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What went in, as used, and where it comes from. */
final class Inputs implements Section {
    private static final String GIVEN = "given";
    private static final List<String> HEADS = List.of("what", "as used", "source");

    @Override
    public void write(Desk desk) {
        PressScenario scenario = desk.findings().scenario();
        desk.html().open("section").put("h2", "What went in");
        person(desk, scenario.client());
        for (Limb limb : scenario.person().limbs()) {
            limb(desk, limb, scenario.client());
        }
        machine(desk, scenario);
        goal(desk, scenario.goal());
        kit(desk, scenario);
        desk.html().close().line();
    }

    private static void person(Desk desk, Client client) {
        Client.Build build = client.physique();
        Grid grid = Grid.open(desk.html(), "The person", HEADS);
        grid.row(
                "sex, age", build.sex().name().toLowerCase(Locale.ROOT) + ", " + number(build.age()) + " years", GIVEN);
        grid.row("stature", length(desk, build.stature()), GIVEN);
        grid.row("mass", Exact.words(build.mass(), Dimension.MASS, desk.units()), GIVEN);
        grid.row("body segments", client.table().name(), client.table().source());
        grid.row("kneecap joint", "published curves", new BrechterPowers2002().source());
        grid.close();
    }

    private static void limb(Desk desk, Limb limb, Client client) {
        Grid grid = Grid.open(desk.html(), "The " + limb.side().words() + " leg", HEADS);
        boolean tape = client.limbs().stream()
                .anyMatch(own ->
                        own.side() == limb.side() && !own.measured().lengths().isEmpty());
        String lengths = tape ? "measured where given, else from stature" : "from stature and the segment table";
        grid.row("thigh", rounded(desk, limb.leg().thigh().length()), lengths);
        grid.row("shank", rounded(desk, limb.leg().shank().length()), lengths);
        grid.row("foot", rounded(desk, limb.leg().foot().length()), lengths);
        grid.row("share of the load", Exact.words(limb.share(), Dimension.RATIO, desk.units()), GIVEN);
        grid.row(
                "working range, knee bend",
                angle(desk, limb.range().bottom()) + " to "
                        + angle(desk, limb.range().top()) + ", pain-free to "
                        + angle(desk, limb.range().painFree()),
                GIVEN);
        for (Joint joint : Joint.LEG) {
            limits(desk, grid, limb, joint);
        }
        for (Action action : Action.LEG) {
            grid.row(
                    "strength, " + action.words(),
                    limb.strength()
                            .of(action)
                            .map(curve -> "curve with 90 % band")
                            .orElse("not known"),
                    limb.strength().of(action).map(curve -> curve.source()).orElse("–"));
        }
        grid.close();
    }

    private static void limits(Desk desk, Grid grid, Limb limb, Joint joint) {
        double low = limb.ranges().of(joint).low();
        double high = limb.ranges().of(joint).high();
        if (Double.isInfinite(low) && Double.isInfinite(high)) {
            return;
        }
        String from = Double.isInfinite(low) ? "" : "from " + angle(desk, low) + " ";
        String to = Double.isInfinite(high) ? "" : "to " + angle(desk, high);
        grid.row(joint.words() + " limit", (from + to).strip(), GIVEN);
    }

    private static void machine(Desk desk, PressScenario scenario) {
        Machine machine = scenario.machine();
        Carriage carriage = machine.carriage();
        Grid grid = Grid.open(desk.html(), "The machine", HEADS);
        grid.row("name", machine.name(), GIVEN);
        grid.row("rail from the horizontal", angle(desk, machine.rail().angle()), GIVEN);
        grid.row("rides", machine.rail().ride() == Ride.PLATE ? "plate" : "seat", GIVEN);
        grid.row("carriage", mass(desk, carriage.mass()), GIVEN);
        grid.row("counterweight", mass(desk, carriage.counterweight().mass()), GIVEN);
        machine.stack()
                .ifPresent(stack -> grid.row(
                        "weight stack",
                        "line runs " + number(stack.ratio()) + " times as far as the stack, "
                                + mass(desk, stack.stack().own())
                                + " always there, friction "
                                + Exact.words(stack.friction(), Dimension.RATIO, desk.units()) + " each way, "
                                + mass(desk, stack.moving()) + " moves with the line",
                        GIVEN));
        grid.row(
                "friction",
                Exact.words(carriage.friction().constant(), Dimension.FORCE, desk.units()) + " and "
                        + number(carriage.friction().coefficient()) + " of the weight square to the rail",
                GIVEN);
        grid.row("stops at marks", marks(desk, machine.places().stops()), GIVEN);
        grid.row("racks at marks", marks(desk, machine.places().racking()), GIVEN);
        grid.close();
    }

    private static void goal(Desk desk, Goal goal) {
        Grid grid = Grid.open(desk.html(), "What was wanted", HEADS);
        List<String> points = new ArrayList<>();
        for (int i = 0; i < goal.target().angles().length; i++) {
            String effort = Exact.words(goal.target().efforts()[i], Dimension.RATIO, desk.units());
            points.add(effort + " at " + angle(desk, goal.target().angles()[i]));
        }
        boolean flat = points.size() == 1;
        grid.row(
                "target effort",
                flat
                        ? Exact.words(goal.target().efforts()[0], Dimension.RATIO, desk.units())
                        : String.join(", ", points),
                GIVEN);
        grid.row("effort ceiling", Exact.words(goal.ceiling(), Dimension.RATIO, desk.units()), GIVEN);
        grid.row("least push", Exact.words(goal.floor(), Dimension.FORCE, desk.units()), GIVEN);
        grid.row(
                "joints looked at",
                String.join(", ", goal.joints().stream().map(Joint::words).toList()),
                GIVEN);
        for (Action action : Action.values()) {
            if (goal.caps().torque(action) < Double.POSITIVE_INFINITY) {
                grid.row(
                        "most " + action.words(),
                        Exact.words(goal.caps().torque(action), Dimension.TORQUE, desk.units()),
                        GIVEN);
            }
        }
        cap(desk, grid, "most kneecap stress", goal.caps().kneecapStress(), Dimension.STRESS);
        cap(desk, grid, "most inertia at the turn", goal.caps().turnForce(), Dimension.FORCE);
        grid.close();
    }

    private static void cap(Desk desk, Grid grid, String what, double most, Dimension dimension) {
        if (most < Double.POSITIVE_INFINITY) {
            grid.row(what, Exact.words(most, dimension, desk.units()), GIVEN);
        }
    }

    private static void kit(Desk desk, PressScenario scenario) {
        Grid grid = Grid.open(desk.html(), "What is in the room", HEADS);
        for (PlateKind kind : scenario.room().plates()) {
            grid.row("plates " + kind.name(), kind.count() + " of " + mass(desk, kind.mass()), GIVEN);
        }
        scenario.room().pieces().forEach(piece -> rubber(desk, grid, piece.rubber(), piece.count()));
        for (Anchor anchor : scenario.room().hooks().anchors()) {
            String rating = anchor.rating() < Double.POSITIVE_INFINITY
                    ? "rated " + Exact.words(anchor.rating(), Dimension.FORCE, desk.units())
                    : "rating not stated";
            grid.row("anchor " + anchor.name(), rating, GIVEN);
        }
        grid.close();
    }

    private static void rubber(Desk desk, Grid grid, Rubber rubber, int count) {
        grid.row(
                "rubber " + rubber.tag(),
                count + " of natural length " + length(desk, rubber.naturalLength()) + ", tested to "
                        + length(desk, rubber.testedMaxLength()),
                GIVEN);
    }

    private static String marks(Desk desk, List<Double> marks) {
        return marks.isEmpty()
                ? "none"
                : String.join(
                        ", ",
                        marks.stream()
                                .map(mark -> Exact.mark(mark, desk.units()))
                                .toList());
    }

    private static String mass(Desk desk, double kilograms) {
        return Exact.words(kilograms, Dimension.MASS, desk.units());
    }

    private static String length(Desk desk, double metres) {
        return Exact.words(metres, Dimension.LENGTH, desk.units());
    }

    private static String rounded(Desk desk, double metres) {
        return desk.say(Measure.LENGTH, metres);
    }

    private static String angle(Desk desk, double radians) {
        return Exact.words(radians, Dimension.ANGLE, desk.units());
    }

    private static String number(double value) {
        return Decimals.exact(value);
    }
}
