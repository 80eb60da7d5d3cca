package counterpull.engine.uncertainty;

import counterpull.engine.planar.Angles;

/**
 * What an answer rests on beside strength, each with the standard uncertainty that is assumed where nobody states one, and where that
 * comes from. Standard uncertainty: one standard deviation (Guide to the expression of uncertainty in measurement, JCGM 100:2008, 2.3.1).
 */
public enum Input {
    RAIL_ANGLE("rail angle", Spread.Kind.ANGLE, Angles.radians(0.5), "inclinometer on steel, our assumption"),
    CARRIAGE("carriage", Spread.Kind.MASS, 1, "weighed by pulling, our assumption"),
    FRICTION_CONSTANT("constant friction", Spread.Kind.FORCE, 3, "slow pulls up and down, our assumption"),
    FRICTION_COEFFICIENT("friction coefficient", Spread.Kind.NUMBER, 0.005, "slow pulls, our assumption"),
    HIP_TO_PLATE("hip to plate", Spread.Kind.LENGTH, 0.01, "hip found by touch, our assumption"),
    FOOT_ROW("foot row", Spread.Kind.LENGTH, 0.01, "where the heel is put, our assumption"),
    HIP_SHIFT("hip shift", Spread.Kind.LENGTH, 0.005, "soft seat, our assumption"),
    PRESSURE_POINT("pressure point", Spread.Kind.NUMBER, 0.05, "share of the foot's length, our assumption"),
    PUSH("push", Spread.Kind.ANGLE, Angles.radians(5), "half of the usual ±10° interval, our assumption"),
    TRUNK("trunk", Spread.Kind.ANGLE, Angles.radians(3), "inclinometer on a back pad, our assumption"),
    LENGTHS("lengths", Spread.Kind.LENGTH, 0.005, "tape, 2 to 5 mm on a limb (Ulijaszek and Kerr 1999, from memory)"),
    FROM_STATURE("lengths from stature", Spread.Kind.SHARE, 0.05, "4 to 6 % where not measured, from memory"),
    BODY_MASS("body mass", Spread.Kind.SHARE, 0.01, "scale and clothes, our assumption"),
    LIMB_MASSES("limb masses", Spread.Kind.SHARE, 0.12, "±20 % between published tables, as a flat spread"),
    RUBBER_PULL("force of rubber", Spread.Kind.SHARE, 0.05, "retest and warming up, our assumption"),
    RUBBER_LENGTH("natural length of rubber", Spread.Kind.LENGTH, 0.003, "tape on a slack piece, our assumption"),
    DEAD_LENGTH("dead length", Spread.Kind.LENGTH, 0.005, "tape, our assumption"),
    ANCHORS("anchors", Spread.Kind.LENGTH, 0.01, "tape along and across the rail, our assumption"),
    PLATES("plates", Spread.Kind.SHARE, 0.02, "plates that nobody weighed, common practice, no source"),
    SECONDS("seconds", Spread.Kind.SHARE, 0.1, "counting aloud, our assumption"),
    MASSES("masses that resist", Spread.Kind.SHARE, 0.03, "weighed or read off, our assumption"),
    READINGS("readings of a machine", Spread.Kind.SHARE, 0.05, "luggage scale by hand, our assumption"),
    LINE_FRICTION("friction of lines", Spread.Kind.NUMBER, 0.03, "2 to 10 % for each pulley in rigging practice");

    private final String key;
    private final Spread.Kind kind;
    private final double usual;
    private final String source;

    Input(String key, Spread.Kind kind, double usual, String source) {
        this.key = key;
        this.kind = kind;
        this.usual = usual;
        this.source = source;
    }

    /** Its name in a file and in a table. */
    public String key() {
        return key;
    }

    /** What its uncertainty is counted in. */
    public Spread.Kind kind() {
        return kind;
    }

    /** The standard uncertainty assumed where none is stated, SI or a share. */
    public double usual() {
        return usual;
    }

    /** Where that comes from. */
    public String source() {
        return source;
    }
}
