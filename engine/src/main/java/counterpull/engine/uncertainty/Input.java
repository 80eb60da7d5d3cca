package counterpull.engine.uncertainty;

import counterpull.engine.planar.Angles;

/**
 * What an answer rests on beside strength, each with the standard uncertainty that is assumed where nobody states one, and where that
 * comes from. Standard uncertainty: one standard deviation (Guide to the expression of uncertainty in measurement, JCGM 100:2008, 2.3.1).
 */
public enum Input {
    RAIL_ANGLE("rail angle", Spread.Kind.ANGLE, Angles.radians(0.5), "our assumption: inclinometer on steel"),
    CARRIAGE("carriage", Spread.Kind.MASS, 1, "our assumption: weighed by pulling"),
    FRICTION_CONSTANT("constant friction", Spread.Kind.FORCE, 3, "our assumption: slow pulls up and down"),
    FRICTION_COEFFICIENT("friction coefficient", Spread.Kind.NUMBER, 0.005, "our assumption: slow pulls"),
    HIP_TO_PLATE("hip to plate", Spread.Kind.LENGTH, 0.01, "our assumption: hip found by touch"),
    FOOT_ROW("foot row", Spread.Kind.LENGTH, 0.01, "our assumption: where the heel is put"),
    HIP_SHIFT("hip shift", Spread.Kind.LENGTH, 0.005, "our assumption: soft seat"),
    PRESSURE_POINT("pressure point", Spread.Kind.NUMBER, 0.05, "our assumption: share of the foot's length"),
    PUSH("push", Spread.Kind.ANGLE, Angles.radians(5), "our assumption: half of the interval around the push"),
    TRUNK("trunk", Spread.Kind.ANGLE, Angles.radians(3), "our assumption: inclinometer on a back pad"),
    LENGTHS("lengths", Spread.Kind.LENGTH, 0.005, "tape: 2 to 5 mm on a limb (Ulijaszek and Kerr 1999, from memory)"),
    FROM_STATURE("lengths from stature", Spread.Kind.SHARE, 0.05, "from memory: 4 to 6 % where nobody measured"),
    BODY_MASS("body mass", Spread.Kind.SHARE, 0.01, "our assumption: scale and clothes"),
    LIMB_MASSES(
            "limb masses",
            Spread.Kind.SHARE,
            0.12,
            "two published tables differ by 20 % or more, taken as a flat spread"),
    RUBBER_PULL("force of rubber", Spread.Kind.SHARE, 0.05, "our assumption: retest and warming up"),
    RUBBER_LENGTH("natural length of rubber", Spread.Kind.LENGTH, 0.003, "our assumption: tape on a slack piece"),
    DEAD_LENGTH("dead length", Spread.Kind.LENGTH, 0.005, "our assumption: tape"),
    ANCHORS("anchors", Spread.Kind.LENGTH, 0.01, "our assumption: tape along and across the rail"),
    PLATES("plates", Spread.Kind.SHARE, 0.02, "common practice, no source: plates that nobody weighed"),
    SECONDS("seconds", Spread.Kind.SHARE, 0.1, "our assumption: counting aloud"),
    MASSES("masses that resist", Spread.Kind.SHARE, 0.03, "our assumption: weighed or read off"),
    READINGS("readings of a machine", Spread.Kind.SHARE, 0.05, "our assumption: luggage scale by hand"),
    LINE_FRICTION("friction of lines", Spread.Kind.NUMBER, 0.03, "rigging practice: 2 to 10 % for each pulley");

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
