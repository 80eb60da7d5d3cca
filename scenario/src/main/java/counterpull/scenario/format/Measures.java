package counterpull.scenario.format;

import counterpull.scenario.fields.Measure;
import counterpull.scenario.fields.Span;
import counterpull.scenario.units.Dimension;

/**
 * Between which limits a file's values are believed. They catch slips of the unit or of a digit, and are ours; what the
 * engine can compute is checked by the engine besides.
 */
public final class Measures {
    public static final Measure AGE = Measure.between(Dimension.AGE, "1 years", "110 years");
    public static final Measure STATURE = Measure.between(Dimension.LENGTH, "0.5 m", "2.7 m");
    public static final Measure BODY_MASS = Measure.between(Dimension.MASS, "5 kg", "500 kg");
    public static final Measure LIMB_LENGTH = Measure.between(Dimension.LENGTH, "5 cm", "1 m");
    public static final Measure FOOT_PART = Measure.between(Dimension.LENGTH, "1 cm", "30 cm");
    public static final Measure KNEE = Measure.between(Dimension.ANGLE, "0 deg", "171 deg");
    public static final Measure ANGLE = Measure.between(Dimension.ANGLE, "-180 deg", "180 deg");
    public static final Measure SPREAD = Measure.between(Dimension.RATIO, "0.1 %", "100 %");
    public static final Measure TORQUE = Measure.between(Dimension.TORQUE, "0.1 N·m", "2000 N·m");
    public static final Measure SIGNED_TORQUE = Measure.between(Dimension.TORQUE, "-200 N·m", "200 N·m");
    public static final Measure SCALE_FORCE = Measure.between(Dimension.FORCE, "0.1 N", "10 kN");
    public static final Measure LEVER = Measure.between(Dimension.LENGTH, "1 cm", "1.5 m");

    public static final Measure ON_BODY = Measure.between(Dimension.LENGTH, "-1 m", "2 m");
    public static final Measure LOAD = Measure.between(Dimension.MASS, "0 kg", "1000 kg");
    public static final Measure PULLEY_RATIO = Measure.between(Dimension.RATIO, "0.05", "20");
    public static final Measure MOVING_MASS = Measure.between(Dimension.MASS, "0 kg", "200 kg");
    public static final Measure RADIUS = Measure.between(Dimension.LENGTH, "0 cm", "3 m");
    public static final Measure INERTIA = Measure.between(Dimension.INERTIA, "0 kg·m2", "1000 kg·m2");
    public static final Measure PIVOT_FRICTION = Measure.between(Dimension.TORQUE, "0 N·m", "1000 N·m");
    public static final Measure CAM_ANGLE = Measure.between(Dimension.ANGLE, "-360 deg", "360 deg");
    public static final Measure CAM_RADIUS = Measure.between(Dimension.LENGTH, "-1 m", "1 m");
    public static final Measure MASS_OF_A_METRE = Measure.between(Dimension.MASS, "10 g", "200 kg");
    public static final Measure CHAIN_LENGTH = Measure.between(Dimension.LENGTH, "1 cm", "10 m");
    public static final Measure MACHINE_TORQUE = Measure.between(Dimension.TORQUE, "0 N·m", "2000 N·m");
    public static final Span GUIDES = new Span(0, 10);
    public static final Measure ANKLE_RATIO = Measure.between(Dimension.RATIO, "0", "1");
    public static final Measure KNEE_RATIO = Measure.between(Dimension.RATIO, "0", "2");
    public static final Measure BORNE = Measure.between(Dimension.RATIO, "1 %", "100 %");

    public static final Measure RAIL_ANGLE = Measure.between(Dimension.ANGLE, "-90 deg", "90 deg");
    public static final Measure TILT = Measure.between(Dimension.ANGLE, "-45 deg", "45 deg");
    public static final Measure PLACE = Measure.between(Dimension.LENGTH, "-10 m", "10 m");
    public static final Measure HIP_TO_PLATE = Measure.between(Dimension.LENGTH, "5 cm", "5 m");
    public static final Measure HEEL = Measure.between(Dimension.LENGTH, "-2 m", "2 m");
    public static final Measure CARRIAGE = Measure.between(Dimension.MASS, "0 kg", "2000 kg");
    public static final Measure COUNTERWEIGHT = Measure.between(Dimension.MASS, "0 kg", "1000 kg");
    public static final Measure FRICTION = Measure.between(Dimension.FORCE, "0 N", "5 kN");
    public static final Measure FRACTION = Measure.between(Dimension.RATIO, "0 %", "100 %");
    public static final Measure PLATES = Measure.between(Dimension.MASS, "0 kg", "2000 kg");

    public static final Measure SHARE = Measure.between(Dimension.RATIO, "1 %", "99 %");
    public static final Measure PRESSURE_POINT = Measure.between(Dimension.RATIO, "10 %", "90 %");
    public static final Measure HIP_SHIFT = Measure.between(Dimension.LENGTH, "-20 cm", "20 cm");
    public static final Measure PUSH_ANGLE = Measure.between(Dimension.ANGLE, "-45 deg", "45 deg");
    public static final Measure PUSH_INTERVAL = Measure.between(Dimension.ANGLE, "0 deg", "25 deg");

    public static final Measure STROKE_TIME = Measure.between(Dimension.TIME, "0.1 s", "2 min");
    public static final Measure PAUSE = Measure.between(Dimension.TIME, "0 s", "1 min");
    public static final Measure TURN_TIME = Measure.between(Dimension.TIME, "0.01 s", "5 s");
    public static final Measure STROKE_SPEED = Measure.between(Dimension.SPEED, "0.01 m/s", "5 m/s");

    public static final Measure EFFORT = Measure.between(Dimension.RATIO, "0 %", "200 %");
    public static final Measure CEILING = Measure.between(Dimension.RATIO, "1 %", "200 %");
    public static final Measure LEAST_FORCE = Measure.between(Dimension.FORCE, "0 N", "100 kN");
    public static final Measure REST = Measure.between(Dimension.TIME, "0 s", "60 min");
    public static final Measure STRESS = Measure.between(Dimension.STRESS, "1 kPa", "1000 MPa");
    public static final Measure TURN_FORCE = Measure.between(Dimension.FORCE, "1 N", "100 kN");

    public static final Measure UNEVEN = Measure.between(Dimension.MASS, "0.1 kg", "500 kg");

    public static final Measure PLATE = Measure.between(Dimension.MASS, "100 g", "100 kg");
    public static final Measure THICKNESS = Measure.between(Dimension.LENGTH, "0.1 mm", "20 cm");
    public static final Measure BORE = Measure.between(Dimension.LENGTH, "0 mm", "20 cm");
    public static final Measure RUBBER_LENGTH = Measure.between(Dimension.LENGTH, "1 cm", "20 m");
    public static final Measure HARDWARE = Measure.between(Dimension.LENGTH, "0 cm", "1 m");
    public static final Measure RUBBER_MASS = Measure.between(Dimension.MASS, "0 kg", "50 kg");
    public static final Measure STIFFNESS = Measure.between(Dimension.STIFFNESS, "0.1 N/m", "1000 N/cm");
    public static final Measure MODULUS = Measure.between(Dimension.STRESS, "0 Pa", "1000 MPa");
    public static final Measure SIGNED_MODULUS = Measure.between(Dimension.STRESS, "-1000 MPa", "1000 MPa");
    public static final Measure EXPONENT = Measure.between(Dimension.RATIO, "-50", "50");
    public static final Measure LOSS = Measure.between(Dimension.RATIO, "0 %", "90 %");
    public static final Measure READING_FORCE = Measure.between(Dimension.FORCE, "0 N", "10 kN");
    public static final Measure RATING = Measure.between(Dimension.FORCE, "1 N", "1000 kN");
    public static final Measure DEAD_LENGTH = Measure.between(Dimension.LENGTH, "0 cm", "20 m");

    public static final Measure UNSURE_ANGLE = Measure.between(Dimension.ANGLE, "0 deg", "30 deg");
    public static final Measure UNSURE_LENGTH = Measure.between(Dimension.LENGTH, "0 mm", "20 cm");
    public static final Measure UNSURE_MASS = Measure.between(Dimension.MASS, "0 kg", "50 kg");
    public static final Measure UNSURE_FORCE = Measure.between(Dimension.FORCE, "0 N", "500 N");
    public static final Measure UNSURE_SHARE = Measure.between(Dimension.RATIO, "0 %", "50 %");

    public static final Span UP_TO_A_HUNDRED = new Span(0, 100);
    public static final Span AT_LEAST_ONE = new Span(1, 100);
    public static final Span AT_LEAST_TWO = new Span(2, 100);
    public static final Span COUNT = new Span(0, 200);
    public static final Span PIECES = new Span(1, 50);
    public static final Span STRANDS = new Span(0, 12);
    public static final Span LINES = new Span(0, 3);
    public static final Span FURTHER_STOPS = new Span(0, 50);
    public static final Span SETS = new Span(1, 50);
    public static final Span REPETITIONS = new Span(1, 200);

    private Measures() {}
}
