package everyblade.picture.sight;

import everyblade.core.angle.Turn;
import everyblade.core.sight.Lens;
import everyblade.core.surface.UnusableShape;
import everyblade.picture.sight.Body.Role;
import java.awt.image.BufferedImage;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;

/** The round field of a scope tip at one shaft angle, usually with as many picture elements across as the scope tip has. */
final class TipField {

    /** Each picture element is the mean of this many across and down. */
    private static final int FINENESS = 3;

    /** At this share of the farthest distance the light has fallen to half. */
    private static final double HALF_LIGHT = 0.8;

    private final Vantage vantage;
    private final FacetJudge judge;
    private final Lens lens;
    private final int size;
    private final int[] colours;
    private final Frontmost front;
    private final Map<Integer, Tone> tones = new HashMap<>();

    private TipField(Vantage vantage, FacetJudge judge, Lens lens, Frontmost front, int size) {
        this.vantage = vantage;
        this.lens = lens;
        this.judge = judge;
        this.front = front;
        this.size = size;
        this.colours = new int[size * size];
    }

    /**
     * The field.
     *
     * @param first clock angle at which airfoil 1 of the row stands
     */
    static TipField of(Vantage vantage, FacetJudge judge, Turn first) throws UnusableShape {
        return of(vantage, judge, first, vantage.pose().pixels());
    }

    /**
     * The same with another number of picture elements across.
     *
     * @param size how many
     */
    static TipField of(Vantage vantage, FacetJudge judge, Turn first, int size) throws UnusableShape {
        int fine = FINENESS * size;
        Lens lens = new Lens(vantage.pose(), fine);
        Frontmost front = new Frontmost(lens, fine);
        new Bodies(vantage, first).all().forEach(front::draw);
        TipField field = new TipField(vantage, judge, lens, front, size);
        field.shade();
        return field;
    }

    private void shade() {
        for (int line = 0; line < size; line++) {
            for (int column = 0; column < size; column++) {
                colours[line * size + column] = mean(column, line);
            }
        }
    }

    private int mean(int column, int line) {
        int red = 0;
        int green = 0;
        int blue = 0;
        int held = 0;
        for (int i = 0; i < FINENESS * FINENESS; i++) {
            int fineColumn = FINENESS * column + i % FINENESS;
            int fineLine = FINENESS * line + i / FINENESS;
            if (!lens.holds(fineColumn, fineLine)) {
                continue;
            }
            held++;
            int rgb = colour(fineColumn, fineLine);
            red += rgb >> 16;
            green += rgb >> 8 & 255;
            blue += rgb & 255;
        }
        return held == 0
                ? 0
                : 255 * held / (FINENESS * FINENESS) << 24 | red / held << 16 | green / held << 8 | blue / held;
    }

    private int colour(int column, int line) {
        int face = front.at(column, line);
        if (face == Frontmost.NOTHING) {
            return 0;
        }
        double[] to = lens.towards(column, line);
        double distance = front.depth(column, line) * Math.sqrt(to[0] * to[0] + to[1] * to[1] + 1);
        double faded = distance / (HALF_LIGHT * vantage.pose().far());
        double light = Math.abs(front.facing(column, line)) / (1 + faded * faded);
        return tones.computeIfAbsent(face, this::tone).at(light, (double) column / FINENESS, (double) line / FINENESS);
    }

    private Tone tone(int face) {
        Frontmost.Place place = front.place(face);
        return place.body().role() == Role.ROW
                ? judge.why(place.copy(), place.face(), place.body().clocks().get(place.copy()))
                        .map(Tone::of)
                        .orElse(Tone.IN_SIGHT)
                : Tone.of(place.body().role());
    }

    /** How many picture elements lie across it. */
    int size() {
        return size;
    }

    /** The tones that occur in it. */
    Set<Tone> tones() {
        return tones.isEmpty() ? EnumSet.noneOf(Tone.class) : EnumSet.copyOf(tones.values());
    }

    /** Which airfoil of the row shows in the middle of a picture element, counted from 0; −1 if none does. */
    int airfoil(int column, int line) {
        int fineColumn = FINENESS * column + FINENESS / 2;
        int fineLine = FINENESS * line + FINENESS / 2;
        int face = lens.holds(fineColumn, fineLine) ? front.at(fineColumn, fineLine) : Frontmost.NOTHING;
        if (face == Frontmost.NOTHING) {
            return -1;
        }
        Frontmost.Place place = front.place(face);
        return place.body().role() == Role.ROW ? place.copy() : -1;
    }

    /** As an image without anything written in it; transparent outside the cone. */
    BufferedImage image() {
        BufferedImage image = new BufferedImage(size, size, BufferedImage.TYPE_INT_ARGB);
        image.setRGB(0, 0, size, size, colours, 0, size);
        return image;
    }
}
