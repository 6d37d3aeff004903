package everyblade.picture.sight;

import everyblade.core.angle.Turn;
import everyblade.core.surface.Facets;
import everyblade.core.surface.UnusableShape;
import everyblade.picture.paint.SceneFont;
import everyblade.picture.paint.ScenePainter;
import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Theme;
import everyblade.words.Words;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.List;
import javax.imageio.ImageIO;

/**
 * What a scope tip sees at one shaft angle: its round field, shaded as by a light at the scope tip, airfoils numbered, facets
 * properly in sight apart from those that are only visible. The same bytes each time; needs no display.
 *
 * <p>The distance of a picture element from the middle of the field is proportional to the tangent of the angle from the
 * optical axis. The field has as many picture elements across as the scope tip has pixels.
 */
public final class TipPicture {

    /** Picture elements to a millimetre of the sheet. */
    private static final int FINENESS = 8;

    private final Vantage vantage;
    private final Turn first;
    private final TipField field;
    private final List<TipNumbers.Number> numbers;
    private final double[] inSight;
    private final TipSheet sheet;

    private TipPicture(Vantage vantage, Turn first, Words words) throws UnusableShape {
        this.vantage = vantage;
        this.first = first;
        FacetJudge judge = new FacetJudge(vantage);
        this.field = TipField.of(vantage, judge, first);
        this.numbers = TipNumbers.of(field, vantage.row().count());
        this.inSight = new double[vantage.row().count()];
        Arrays.setAll(inSight, airfoil -> inSight(judge, airfoil));
        this.sheet = new TipSheet(vantage, first, field.tones(), (double) field.size() / FINENESS, words, inSight);
    }

    /**
     * The picture from a vantage.
     *
     * @param first clock angle at which airfoil 1 of the row stands
     * @param words in which it is told
     * @throws UnusableShape if a shape of the engine gives no surface
     */
    public static TipPicture of(Vantage vantage, Turn first, Words words) throws UnusableShape {
        return new TipPicture(vantage, first, words);
    }

    private double inSight(FacetJudge judge, int airfoil) {
        Facets facets = vantage.scene().facets();
        Turn clock = vantage.clock(airfoil, first);
        double area = 0;
        for (int facet = 0; facet < facets.count(); facet++) {
            area += judge.why(airfoil, facet, clock).isEmpty() ? facets.area(facet) : 0;
        }
        return area / facets.area();
    }

    /** The numbers from 1 of the airfoils that are numbered in the picture. */
    public List<Integer> airfoils() {
        return numbers.stream().map(number -> number.airfoil() + 1).toList();
    }

    /** The field with what it shows told beside it, as a PNG picture. */
    public byte[] png(Theme theme) {
        var scene = sheet.scene();
        BufferedImage image = new BufferedImage(
                (int) Math.ceil(scene.width() * FINENESS),
                (int) Math.ceil(scene.height() * FINENESS),
                BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        try {
            Graphics2D millimetres = (Graphics2D) g.create();
            millimetres.scale(FINENESS, FINENESS);
            ScenePainter.of(theme).paint(scene, millimetres);
            millimetres.dispose();
            g.translate(sheet.corner().x() * FINENESS, sheet.corner().y() * FINENESS);
            g.drawImage(field.image(), 0, 0, null);
            number(g, numbers);
        } finally {
            g.dispose();
        }
        sheet.samples().forEach(sample -> sample.onto(image, FINENESS));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, "png", out);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return out.toByteArray();
    }

    /**
     * The round field alone, airfoils numbered, dark about it; coarser than the scope tip's own, to be had sooner.
     *
     * @param first clock angle at which airfoil 1 of the row stands
     * @param across picture elements
     * @throws UnusableShape if a shape of the engine gives no surface
     */
    public static BufferedImage field(Vantage vantage, Turn first, int across) throws UnusableShape {
        TipField field = TipField.of(vantage, new FacetJudge(vantage), first, across);
        BufferedImage image = new BufferedImage(across, across, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.drawImage(field.image(), 0, 0, null);
        number(g, TipNumbers.of(field, vantage.row().count()));
        g.dispose();
        return image;
    }

    private static void number(Graphics2D g, List<TipNumbers.Number> numbers) {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        Font font = SceneFont.font().deriveFont(15f);
        g.setFont(font);
        double radius = TipNumbers.RADIUS;
        for (TipNumbers.Number number : numbers) {
            Ellipse2D disc = new Ellipse2D.Double(number.x() - radius, number.y() - radius, 2 * radius, 2 * radius);
            g.setColor(colour(Ink.PAPER));
            g.fill(disc);
            g.setColor(colour(Ink.LINE));
            g.draw(disc);
            String words = Integer.toString(number.airfoil() + 1);
            double width = font.getStringBounds(words, g.getFontRenderContext()).getWidth();
            g.drawString(words, (float) (number.x() - width / 2), (float) number.y() + 5.3f);
        }
    }

    /** The field is dark whatever the theme. */
    private static Color colour(Ink ink) {
        var colour = Theme.DARK.colour(ink);
        return new Color(colour.red(), colour.green(), colour.blue());
    }
}
