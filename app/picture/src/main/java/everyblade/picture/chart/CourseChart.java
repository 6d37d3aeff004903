package everyblade.picture.chart;

import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Theme;
import everyblade.words.Words;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.time.Instant;
import java.util.Date;
import java.util.List;
import java.util.TimeZone;
import java.util.function.ToDoubleFunction;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.DateAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** What was left unseen of an engine, and how many findings it had, inspection by inspection. */
public final class CourseChart {

    private static final double MARK = 6;

    private CourseChart() {}

    /**
     * An inspection.
     *
     * @param left share of what views show that was left, from 0 to 1
     * @param findings how many there were
     */
    public record Point(Instant at, double left, int findings) {}

    /** Paints the chart from (0, 0) to (width, height): the share to the left-hand scale, findings to the other. */
    public static void paint(
            List<Point> points, Words words, Theme theme, Graphics2D graphics, double width, double height) {
        DateAxis time = new DateAxis(null, TimeZone.getTimeZone("UTC"), words.locale());
        time.setRange(
                Date.from(points.get(0).at().minusSeconds(86_400)),
                Date.from(points.get(points.size() - 1).at().plusSeconds(86_400)));
        XYPlot plot = new XYPlot(
                series(words.say("chart.left"), points, point -> 100 * point.left()),
                time,
                scale(words.say("chart.left")),
                marks(ChartLook.colour(theme, Ink.ALERT), null));
        plot.setRangeAxis(1, scale(words.say("chart.findings")));
        plot.setDataset(1, series(words.say("chart.findings"), points, Point::findings));
        plot.setRenderer(1, marks(ChartLook.colour(theme, Ink.LINE), new float[] {5, 3}));
        plot.mapDatasetToRangeAxis(1, 1);
        JFreeChart chart = new JFreeChart(plot);
        ChartLook.set(chart, theme);
        chart.draw(graphics, new Rectangle2D.Double(0, 0, width, height));
    }

    private static NumberAxis scale(String label) {
        NumberAxis axis = new NumberAxis(label);
        axis.setAutoRangeIncludesZero(true);
        axis.setAutoRangeMinimumSize(1);
        axis.setStandardTickUnits(NumberAxis.createIntegerTickUnits());
        return axis;
    }

    private static XYSeriesCollection series(String name, List<Point> points, ToDoubleFunction<Point> value) {
        XYSeries series = new XYSeries(name);
        points.forEach(point -> series.add(point.at().toEpochMilli(), value.applyAsDouble(point)));
        return new XYSeriesCollection(series);
    }

    /** The two are told apart by how they are dashed as well, without colour. */
    private static XYLineAndShapeRenderer marks(Color colour, float[] dash) {
        XYLineAndShapeRenderer marks = new XYLineAndShapeRenderer();
        marks.setSeriesPaint(0, colour);
        marks.setSeriesShape(0, new Ellipse2D.Double(-MARK / 2, -MARK / 2, MARK, MARK));
        marks.setSeriesStroke(0, new BasicStroke(1.5f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, dash, 0));
        return marks;
    }
}
