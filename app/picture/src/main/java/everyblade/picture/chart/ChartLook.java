package everyblade.picture.chart;

import everyblade.picture.paint.SceneFont;
import everyblade.picture.scene.Colour;
import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Theme;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleInsets;

/** How all charts look: the inks of the map on paper, one font, thin lines. */
final class ChartLook {

    private static final float TITLE = 9.5f;
    private static final float LABEL = 8.5f;
    private static final float TICK = 7.5f;
    private static final float THIN = 0.5f;

    private ChartLook() {}

    static Color colour(Ink ink) {
        return colour(Theme.LIGHT, ink);
    }

    static Color colour(Theme theme, Ink ink) {
        Colour colour = theme.colour(ink);
        return new Color(colour.red(), colour.green(), colour.blue());
    }

    /** Half way from one ink to another. */
    static Color between(Ink one, Ink other) {
        Color a = colour(one);
        Color b = colour(other);
        return new Color(
                (a.getRed() + b.getRed()) / 2, (a.getGreen() + b.getGreen()) / 2, (a.getBlue() + b.getBlue()) / 2);
    }

    /** Sets everything that does not depend on what the chart shows. */
    static void set(JFreeChart chart) {
        set(chart, Theme.LIGHT);
    }

    /** The same in the colours of a theme. */
    static void set(JFreeChart chart, Theme theme) {
        Font font = SceneFont.font();
        chart.setBackgroundPaint(colour(theme, Ink.PAPER));
        chart.setPadding(new RectangleInsets(2, 0, 2, 4));
        if (chart.getTitle() != null) {
            chart.getTitle().setFont(font.deriveFont(TITLE));
            chart.getTitle().setPaint(colour(theme, Ink.LINE));
        }
        if (chart.getLegend() != null) {
            chart.getLegend().setItemFont(font.deriveFont(LABEL));
            chart.getLegend().setItemPaint(colour(theme, Ink.LINE));
            chart.getLegend().setBackgroundPaint(colour(theme, Ink.PAPER));
            chart.getLegend().setFrame(org.jfree.chart.block.BlockBorder.NONE);
        }
        XYPlot plot = chart.getXYPlot();
        plot.setBackgroundPaint(colour(theme, Ink.PAPER));
        plot.setOutlinePaint(colour(theme, Ink.LINE));
        plot.setOutlineStroke(new BasicStroke(THIN));
        plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
        plot.setDomainGridlinesVisible(false);
        plot.setRangeGridlinePaint(theme == Theme.LIGHT ? new Color(0xc8, 0xce, 0xd4) : new Color(0x3a, 0x44, 0x4e));
        plot.setRangeGridlineStroke(new BasicStroke(THIN));
        set(plot.getDomainAxis(), font, theme);
        set(plot.getRangeAxis(), font, theme);
    }

    private static void set(ValueAxis axis, Font font, Theme theme) {
        axis.setLabelFont(font.deriveFont(LABEL));
        axis.setTickLabelFont(font.deriveFont(TICK));
        axis.setLabelPaint(colour(theme, Ink.LINE));
        axis.setTickLabelPaint(colour(theme, Ink.LINE));
        axis.setAxisLinePaint(colour(theme, Ink.LINE));
        axis.setTickMarkPaint(colour(theme, Ink.LINE));
        axis.setAxisLineStroke(new BasicStroke(THIN));
        axis.setTickMarkStroke(new BasicStroke(THIN));
    }
}
