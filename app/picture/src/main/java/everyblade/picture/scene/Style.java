package everyblade.picture.scene;

import java.util.Optional;

/**
 * How a shape is drawn: filled, outlined, or both.
 *
 * @param fill ink inside it
 * @param line ink of its outline
 * @param width of its outline, mm
 */
public record Style(Optional<Ink> fill, Optional<Ink> line, double width) {

    /** Neither filled nor outlined: there, but not to be seen. */
    public static final Style NONE = new Style(Optional.empty(), Optional.empty(), 0);

    /** Filled, without an outline. */
    public static Style filled(Ink ink) {
        return new Style(Optional.of(ink), Optional.empty(), 0);
    }

    /** Outlined, not filled. */
    public static Style lined(Ink ink, double width) {
        return new Style(Optional.empty(), Optional.of(ink), width);
    }

    /** Filled and outlined. */
    public static Style both(Ink fill, Ink line, double width) {
        return new Style(Optional.of(fill), Optional.of(line), width);
    }
}
