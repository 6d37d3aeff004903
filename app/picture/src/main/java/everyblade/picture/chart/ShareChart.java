package everyblade.picture.chart;

import everyblade.fact.CalendarYears;
import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Theme;
import everyblade.words.Words;
import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.text.SimpleDateFormat;
import java.util.Date;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.function.ToIntFunction;
import org.jfree.chart.ChartFactory;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.DateAxis;
import org.jfree.chart.axis.DateTickUnit;
import org.jfree.chart.axis.DateTickUnitType;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.plot.PlotOrientation;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYStepRenderer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** The share of cells seen, of those seen as far as they can be, and of those maybe one of these, against time, as steps. */
public final class ShareChart {

    private static final TimeZone UTC = TimeZone.getTimeZone("UTC");
    private static final long MINUTE = 60_000;
    private static final int MOST_MARKS = 9;
    /** Steps between marks of the time axis, minutes; from days on, days. */
    private static final List<Integer> STEPS = List.of(1, 2, 5, 10, 15, 30, 60, 120, 180, 360, 720, 1440);

    private static final int DAY = 1440;

    private ShareChart() {}

    /** Paints the chart from (0, 0) to (width, height), in the colours of paper. */
    public static void paint(Timeline timeline, Words words, Graphics2D graphics, double width, double height) {
        paint(timeline, words, Theme.LIGHT, graphics, width, height);
    }

    /** The same in the colours of a theme. */
    public static void paint(
            Timeline timeline, Words words, Theme theme, Graphics2D graphics, double width, double height) {
        XYSeriesCollection data = new XYSeriesCollection();
        data.addSeries(series(words.say("chart.seen"), timeline, Timeline.Point::seen));
        data.addSeries(series(words.say("chart.done"), timeline, Timeline.Point::done));
        data.addSeries(series(words.say("chart.maybe"), timeline, Timeline.Point::atLeastMaybe));
        JFreeChart chart = ChartFactory.createXYStepChart(
                null,
                words.say("chart.time"),
                words.say("chart.share"),
                data,
                PlotOrientation.VERTICAL,
                true,
                false,
                false);
        ChartLook.set(chart, theme);
        XYPlot plot = chart.getXYPlot();
        plot.setDomainAxis(timeAxis(timeline, words));
        plot.setRangeAxis(shareAxis(words));
        ChartLook.set(chart, theme);
        plot.setRenderer(steps(theme));
        chart.draw(graphics, new Rectangle2D.Double(0, 0, width, height));
    }

    private static XYSeries series(String name, Timeline timeline, ToIntFunction<Timeline.Point> count) {
        XYSeries series = new XYSeries(name, false, true);
        timeline.points()
                .forEach(point ->
                        series.add(millis(point), (double) count.applyAsInt(point) / Math.max(1, point.cells())));
        return series;
    }

    private static XYStepRenderer steps(Theme theme) {
        XYStepRenderer steps = new XYStepRenderer();
        steps.setSeriesPaint(0, ChartLook.colour(theme, Ink.SEEN));
        steps.setSeriesStroke(0, new BasicStroke(1.6f));
        // Dashed each in its own way, so that they are told apart without colour.
        steps.setSeriesPaint(1, ChartLook.colour(theme, Ink.PART));
        steps.setSeriesStroke(1, dashed(8, 2));
        steps.setSeriesPaint(2, ChartLook.colour(theme, Ink.MAYBE));
        steps.setSeriesStroke(2, dashed(4, 2.5f));
        return steps;
    }

    private static BasicStroke dashed(float on, float off) {
        return new BasicStroke(1.2f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {on, off}, 0);
    }

    private static DateAxis timeAxis(Timeline timeline, Words words) {
        // Times may run back where a clock was wrong, and the axis holds them all.
        long first =
                timeline.points().stream().mapToLong(ShareChart::millis).min().orElseThrow();
        long last = Math.max(
                first + 1,
                timeline.points().stream().mapToLong(ShareChart::millis).max().orElseThrow());
        double minutes = (double) (last - first) / MINUTE;
        int step = STEPS.stream()
                .filter(each -> minutes / each <= MOST_MARKS)
                .findFirst()
                .orElse((int) Math.ceil(minutes / DAY / MOST_MARKS) * DAY);
        SimpleDateFormat format = new SimpleDateFormat(minutes > DAY ? "MM-dd HH:mm" : "HH:mm", Locale.ROOT);
        format.setTimeZone(UTC);
        DateAxis axis = new DateAxis(words.say("chart.time"), UTC, Locale.ROOT);
        axis.setTickUnit(
                step % DAY == 0
                        ? new DateTickUnit(DateTickUnitType.DAY, step / DAY, format)
                        : step % 60 == 0
                                ? new DateTickUnit(DateTickUnitType.HOUR, step / 60, format)
                                : new DateTickUnit(DateTickUnitType.MINUTE, step, format));
        axis.setRange(new Date(first), new Date(last));
        return axis;
    }

    private static long millis(Timeline.Point point) {
        return CalendarYears.within(point.at()).toEpochMilli();
    }

    private static NumberAxis shareAxis(Words words) {
        NumberAxis axis = new NumberAxis(words.say("chart.share"));
        axis.setRange(0, 1);
        axis.setTickUnit(new NumberTickUnit(0.2));
        axis.setNumberFormatOverride(new DecimalFormat("0 %", DecimalFormatSymbols.getInstance(Locale.ROOT)));
        return axis;
    }
}
