package counterpull.picture;

import counterpull.engine.body.Joint;

/**
 * Where two exercises ask the same of a joint.
 *
 * @param first name of the one that asks more at larger angles than this
 * @param second name of the other one, which asks more at smaller angles
 * @param angle anatomical angle of the joint, rad
 * @param value what both ask there, SI
 */
public record Crossing(String first, String second, double angle, double value) {
    /** In words, for a joint: where they cross, and which asks more on which side. */
    public String words(Joint joint, Wording wording) {
        String at = joint.angleWords() + " " + wording.angle().say(angle);
        return "equal at " + at + "; above that angle \u201c" + first + "\u201d asks more, below it \u201c" + second
                + "\u201d";
    }
}
