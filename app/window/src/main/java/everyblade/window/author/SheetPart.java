package everyblade.window.author;

import everyblade.picture.section.ModelSheet;
import java.awt.geom.Rectangle2D;
import java.util.Locale;

/** The parts of a {@link ModelSheet} that are looked at one by one; the parts do not meet. */
public enum SheetPart {
    /** The side section. */
    SIDE(6, 21, 285, 88),
    /** One row from aft. */
    ROW(6, 109, 94, 89),
    /** That row's airfoils cut and unrolled. */
    CUTS(106, 109, 185, 89);

    private final double x;
    private final double y;
    private final double width;
    private final double height;

    SheetPart(double x, double y, double width, double height) {
        this.x = x;
        this.y = y;
        this.width = width;
        this.height = height;
    }

    /** Where it lies on the sheet, mm. */
    public Rectangle2D place() {
        return new Rectangle2D.Double(x, y, width, height);
    }

    /** The key of the text that names it. */
    public String words() {
        return "author.page." + name().toLowerCase(Locale.ROOT);
    }
}
