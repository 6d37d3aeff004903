package everyblade.picture.chart;

import everyblade.core.coverage.RowCoverage;
import everyblade.core.coverage.Tally;
import everyblade.picture.scene.Ink;
import everyblade.spi.Row;
import everyblade.words.Words;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jfree.chart.ChartFactory;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.plot.PlotOrientation;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.StackedXYBarRenderer;
import org.jfree.chart.renderer.xy.StandardXYBarPainter;
import org.jfree.data.xy.DefaultTableXYDataset;
import org.jfree.data.xy.XYSeries;

/** How many cells of each airfoil of a row are seen, seen in part, maybe, not seen: one bar an airfoil. */
public final class AirfoilChart {

    private static final double BAR_MARGIN = 0.12;
    private static final int MOST_MARKS = 24;
    private static final int MOST_COUNTS = 3;

    private record Part(String key, Color fill, ToIntFunction<Tally> count) {}

    /** From dark to light, so that grey print tells them apart. */
    private static final List<Part> PARTS = List.of(
            new Part("seen", ChartLook.colour(Ink.SEEN), Tally::seen),
            new Part("part", ChartLook.colour(Ink.PART), tally -> tally.part() - tally.glimpsed()),
            new Part("glimpsed", ChartLook.between(Ink.PART, Ink.PART_WASH), Tally::glimpsed),
            new Part("maybe", ChartLook.between(Ink.MAYBE, Ink.MAYBE_WASH), Tally::maybe),
            new Part("unseen", ChartLook.colour(Ink.PAPER), Tally::unseen));

    private AirfoilChart() {}

    /**
     * Paints the chart from (0, 0) to (width, height).
     *
     * @param legend whether it says what the fills mean
     * @param words in which it says so
     */
    public static void paint(
            RowCoverage coverage, boolean legend, Words words, Graphics2D graphics, double width, double height) {
        Row row = coverage.row();
        DefaultTableXYDataset data = new DefaultTableXYDataset();
        for (Part part : PARTS) {
            XYSeries series = new XYSeries(words.say("chart.part." + part.key()), false, false);
            for (int n = 1; n <= row.count(); n++) {
                series.add(
                        n,
                        part.count()
                                .applyAsInt(coverage.tally(n, coverage.zoning().all())));
            }
            data.addSeries(series);
        }
        JFreeChart chart = ChartFactory.createXYBarChart(
                row.name() + " (" + row.id() + ")",
                words.airfoil(row),
                false,
                words.say("chart.cells"),
                data,
                PlotOrientation.VERTICAL,
                legend,
                false,
                false);
        XYPlot plot = chart.getXYPlot();
        plot.setDomainAxis(axis(words.airfoil(row), 0.5, row.count() + 0.5, markEvery(row.count())));
        plot.setRangeAxis(axis(
                words.say("chart.cells"),
                0,
                coverage.zoning().size(),
                countEvery(coverage.zoning().size())));
        plot.setRenderer(bars());
        ChartLook.set(chart);
        chart.draw(graphics, new Rectangle2D.Double(0, 0, width, height));
    }

    private static int markEvery(int count) {
        return Stream.of(1, 2, 5, 10, 20, 50)
                .filter(step -> count / step <= MOST_MARKS)
                .findFirst()
                .orElse(100);
    }

    /** So that the uppermost mark is the whole. */
    private static int countEvery(int zones) {
        return IntStream.rangeClosed(1, zones)
                .filter(step -> zones % step == 0 && zones / step <= MOST_COUNTS)
                .findFirst()
                .orElse(zones);
    }

    private static NumberAxis axis(String label, double from, double to, int step) {
        NumberAxis axis = new NumberAxis(label);
        axis.setRange(from, to);
        axis.setTickUnit(new NumberTickUnit(step));
        axis.setNumberFormatOverride(
                new java.text.DecimalFormat("0", java.text.DecimalFormatSymbols.getInstance(java.util.Locale.ROOT)));
        return axis;
    }

    private static StackedXYBarRenderer bars() {
        StackedXYBarRenderer bars = new StackedXYBarRenderer(BAR_MARGIN);
        bars.setBarPainter(new StandardXYBarPainter());
        bars.setShadowVisible(false);
        bars.setDrawBarOutline(true);
        for (int i = 0; i < PARTS.size(); i++) {
            bars.setSeriesPaint(i, PARTS.get(i).fill());
            bars.setSeriesOutlinePaint(i, new Color(0x40, 0x48, 0x50));
            bars.setSeriesOutlineStroke(i, new BasicStroke(0.35f));
        }
        return bars;
    }
}
