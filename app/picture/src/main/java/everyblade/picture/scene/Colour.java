package everyblade.picture.scene;

/**
 * A colour of the sRGB space.
 *
 * @param red 0 to 255
 * @param green 0 to 255
 * @param blue 0 to 255
 */
public record Colour(int red, int green, int blue) {

    public Colour {
        if ((red | green | blue) >>> 8 != 0) {
            throw new IllegalArgumentException("a part of a colour lies outside 0 to 255");
        }
    }

    /** From six hexadecimal digits, two a part, as in {@code 0x0f3ec1}. */
    static Colour of(int rgb) {
        return new Colour(rgb >> 16 & 255, rgb >> 8 & 255, rgb & 255);
    }

    /** As SVG writes it, such as {@code #0f3ec1}. */
    public String hex() {
        return "#"
                + Integer.toHexString(1 << 24 | red << 16 | green << 8 | blue).substring(1);
    }
}
