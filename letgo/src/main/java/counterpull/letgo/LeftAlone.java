package counterpull.letgo;

/**
 * Something in an exercise that is not followed when it is let go, and why.
 *
 * @param words what it is, as a person says it
 * @param why why it is not followed
 */
public record LeftAlone(String words, Why why) {
    /** Why it is not followed. */
    public enum Why {
        /** A weight or a chain on the body: where it is not strapped on, it falls as anything falls. */
        FALLS_FREELY,
        /** Rubber on the body: it goes where it is fastened. */
        SNAPS_BACK,
        /** Known by readings of force alone: how much mass is in it was not measured. */
        MASS_NOT_MEASURED,
        /** A line ties it to the body or to another machine: what that does meanwhile is not known. */
        TIED_TO_SOMETHING_LOOSE,
        /** Nothing on it has a mass. */
        WITHOUT_MASS,
        /** It turns back inside the range. */
        TURNS_BACK,
        /** The engine has no answer somewhere on its way down. */
        NO_ANSWER_ON_THE_WAY
    }
}
