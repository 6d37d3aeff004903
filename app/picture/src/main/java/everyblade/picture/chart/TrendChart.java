package everyblade.picture.chart;

import everyblade.picture.scene.Ink;
import everyblade.words.Words;
import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYErrorRenderer;
import org.jfree.data.xy.XYIntervalSeries;
import org.jfree.data.xy.XYIntervalSeriesCollection;

/** Sizes of findings in two records, each with its uncertainty as a bar, joined by a line. */
public final class TrendChart {

    private static final double MARK = 5;
    /** Lines are told apart by how they are dashed, without colour. */
    private static final float[][] DASHES = {null, {5, 3}, {1.5f, 2}, {6, 2, 1.5f, 2}, {9, 3}, {3, 1.5f}};

    private TrendChart() {}

    /**
     * A size in one record.
     *
     * @param run cycles, hours or whatever the chart goes by
     * @param size mm
     * @param plusMinus expanded uncertainty, mm; 0 if not known
     */
    public record Point(double run, double size, double plusMinus) {}

    /**
     * A size that was measured in both records.
     *
     * @param name for the legend
     * @param then in the last record
     * @param now in this one
     */
    public record Line(String name, Point then, Point now) {}

    /** Most lines that one chart can hold and be read. */
    public static final int MOST = DASHES.length;

    /** Paints the chart from (0, 0) to (width, height); at most {@link #MOST} lines. */
    public static void paint(
            List<Line> lines, String axis, Words words, Graphics2D graphics, double width, double height) {
        XYIntervalSeriesCollection data = new XYIntervalSeriesCollection();
        for (Line line : lines.subList(0, Math.min(MOST, lines.size()))) {
            XYIntervalSeries series = new XYIntervalSeries(line.name());
            add(series, line.then());
            add(series, line.now());
            data.addSeries(series);
        }
        NumberAxis sizes = new NumberAxis(words.say("chart.size"));
        sizes.setAutoRangeIncludesZero(true);
        NumberAxis run = new NumberAxis(axis);
        run.setAutoRangeIncludesZero(false);
        JFreeChart chart = new JFreeChart(new XYPlot(data, run, sizes, renderer(data.getSeriesCount())));
        ChartLook.set(chart);
        chart.draw(graphics, new Rectangle2D.Double(0, 0, width, height));
    }

    private static void add(XYIntervalSeries series, Point point) {
        series.add(
                point.run(),
                point.run(),
                point.run(),
                point.size(),
                Math.max(0, point.size() - point.plusMinus()),
                point.size() + point.plusMinus());
    }

    private static XYErrorRenderer renderer(int count) {
        XYErrorRenderer renderer = new XYErrorRenderer();
        renderer.setDrawXError(false);
        renderer.setDefaultLinesVisible(true);
        renderer.setErrorPaint(ChartLook.colour(Ink.LINE));
        renderer.setErrorStroke(new BasicStroke(0.7f));
        for (int i = 0; i < count; i++) {
            renderer.setSeriesPaint(i, ChartLook.colour(i % 2 == 0 ? Ink.SEEN : Ink.LINE));
            renderer.setSeriesShape(i, new Ellipse2D.Double(-MARK / 2, -MARK / 2, MARK, MARK));
            renderer.setSeriesStroke(
                    i,
                    DASHES[i] == null
                            ? new BasicStroke(1.4f)
                            : new BasicStroke(1.4f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, DASHES[i], 0));
        }
        return renderer;
    }
}
