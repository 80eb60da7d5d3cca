package counterpull.picture;

/**
 * How a picture is looked at.
 *
 * @param size px
 * @param palette colours
 * @param wording the reader's units
 */
public record View(Size size, Palette palette, Wording wording) {
    /** On light paper in metric units. */
    public static View light(Size size) {
        return new View(size, Palette.LIGHT, Wording.metric());
    }

    /** The same view with other colours. */
    public View with(Palette other) {
        return new View(size, other, wording);
    }

    /** The same view in another size. */
    public View with(Size other) {
        return new View(other, palette, wording);
    }

    /** The same view in other units. */
    public View with(Wording other) {
        return new View(size, palette, other);
    }
}
