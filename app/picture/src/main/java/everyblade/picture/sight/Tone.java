package everyblade.picture.sight;

import everyblade.core.sight.Hindrance;
import everyblade.fact.Fact;
import everyblade.picture.Pattern;
import everyblade.picture.scene.Colour;
import everyblade.picture.scene.Theme;

/**
 * How what the scope tip sees is toned: light metal is properly in sight, the rest of the row is darker under the pattern of
 * the reason, everything else is dim and plain.
 */
enum Tone implements Fact {
    IN_SIGHT(0xf4efe4, Pattern.EMPTY, 0),
    GRAZING(WhyLook.GRAZING),
    OUT_OF_RANGE(WhyLook.OUT_OF_RANGE),
    TOO_COARSE(WhyLook.TOO_COARSE),
    HIDDEN(WhyLook.HIDDEN),
    OUTSIDE_CONE(0x848b95, Pattern.EMPTY, 0),
    MATE(0xa9b7cb, Pattern.EMPTY, 0),
    STANDING(0xa9b7cb, Pattern.EMPTY, 0),
    WALL(0x56606d, Pattern.EMPTY, 0),
    SWEPT(0x5b4a63, Pattern.EMPTY, 0),
    BACKGROUND(0x3f4650, Pattern.EMPTY, 0);

    private static final int PERIOD = 8;
    private static final double LEAST_LIGHT = 0.16;

    /** Patterns are to be seen where it is dark, too. */
    private static final double LEAST_MARKED = 0.75;

    private final int metal;
    private final Pattern pattern;
    private final int mark;

    Tone(int metal, Pattern pattern, int mark) {
        this.metal = metal;
        this.pattern = pattern;
        this.mark = mark;
    }

    /** The field is dark whatever the theme, so its marks are those of the dark one. */
    Tone(WhyLook look) {
        this(0x7d828a, look.pattern(), rgb(Theme.DARK.colour(look.mark())));
    }

    private static int rgb(Colour colour) {
        return colour.red() << 16 | colour.green() << 8 | colour.blue();
    }

    static Tone of(Hindrance why) {
        return switch (why) {
            case OUTSIDE_CONE -> OUTSIDE_CONE;
            case OUT_OF_RANGE -> OUT_OF_RANGE;
            case GRAZING -> GRAZING;
            case TOO_COARSE -> TOO_COARSE;
            case HIDDEN -> HIDDEN;
        };
    }

    /** The tone of what is not of the row. */
    static Tone of(Body.Role role) {
        return switch (role) {
            case ROW -> IN_SIGHT;
            case MATE -> MATE;
            case WALL -> WALL;
            case FIXED -> STANDING;
            case SWEPT -> SWEPT;
            case BACKGROUND -> BACKGROUND;
        };
    }

    /**
     * The colour as red, green and blue.
     *
     * @param light on it, 0 to 1
     * @param x places across, which the pattern goes by
     * @param y places down
     */
    int at(double light, double x, double y) {
        return isMarked(x, y)
                ? lit(mark, LEAST_MARKED + (1 - LEAST_MARKED) * light)
                : lit(metal, LEAST_LIGHT + (1 - LEAST_LIGHT) * light);
    }

    private static int lit(int rgb, double light) {
        return (int) ((rgb >> 16) * light) << 16 | (int) ((rgb >> 8 & 255) * light) << 8 | (int) ((rgb & 255) * light);
    }

    private boolean isMarked(double x, double y) {
        return switch (pattern) {
            case HATCH -> rest(x + y) < 1.8;
            case CROSS -> rest(x + y) < 1.6 || rest(x - y) < 1.6;
            case BARS -> rest(y) < 2;
            case SLITS -> rest(x) < 2;
            case DOTS -> square(rest(x) - PERIOD / 2.0) + square(rest(y) - PERIOD / 2.0) < square(2.1);
            case EMPTY, SOLID, FILLED_UP -> false;
        };
    }

    private static double square(double value) {
        return value * value;
    }

    private static double rest(double along) {
        return along - PERIOD * Math.floor(along / PERIOD);
    }
}
