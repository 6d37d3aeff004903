package everyblade.picture.report;

import everyblade.core.coverage.Basis;
import everyblade.core.coverage.RowCoverage;
import everyblade.core.coverage.Tally;
import everyblade.picture.Facing;
import everyblade.picture.PageScenes;
import everyblade.picture.ShareFigures;
import everyblade.picture.chart.AirfoilChart;
import everyblade.picture.chart.ShareChart;
import everyblade.picture.chart.Timeline;
import everyblade.picture.paint.ScenePainter;
import everyblade.picture.report.page.Block;
import everyblade.picture.report.page.PageWords;
import everyblade.picture.scene.Scene;
import everyblade.picture.scene.Theme;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** The chapters of maps and of charts. */
final class Maps {

    static final double POINTS_PER_MM = 72 / 25.4;
    /** A wheel is rather drawn so much smaller than on a page of its own. */
    private static final double SHRUNK = 0.7;
    /** What stands over a row unrolled, points. */
    private static final double SUMMARY = 46;
    /** A row unrolled with its heading, points. */
    private static final double ROW_ROOM = 180;

    private static final double CHART_WIDTH = 499;
    private static final double SHARE_HEIGHT = 210;
    private static final double AIRFOIL_HEIGHT = 112;
    private static final double LEGEND_HEIGHT = 26;

    private Maps() {}

    static List<Block> maps(Reported job) {
        List<Block> blocks = new ArrayList<>();
        List<Scene> wheels = PageScenes.wheels(job.coverage(), Facing.AFT_LOOKING_FORWARD, job.map());
        blocks.add(new Block.Heading(1, job.say("maps"), height(wheels.get(0)) * SHRUNK + SUMMARY));
        blocks.add(new Block.Paragraph(PageWords.of(job.say("maps.told"))));
        for (Scene scene : wheels) {
            blocks.add(new Block.Heading(2, capital(scene.title()), height(scene) * SHRUNK));
            blocks.add(drawing(scene));
        }
        return blocks;
    }

    /** Every row of which anything was seen, unrolled. */
    static List<Block> rows(Reported job) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(1, job.say("maps.rows"), ROW_ROOM));
        for (RowCoverage row : watched(job)) {
            Scene scene = PageScenes.row(job.coverage(), row.row().id(), job.map());
            blocks.add(new Block.Heading(2, Telling.row(row.row()), height(scene) + SUMMARY));
            blocks.add(new Block.Paragraph(PageWords.of(summary(job, row))));
            blocks.add(drawing(scene));
        }
        return blocks;
    }

    /** How high a scene is on the page, points. */
    static double height(Scene scene) {
        return scene.height() * POINTS_PER_MM;
    }

    static Block drawing(Scene scene) {
        Block.Painter paints = graphics -> {
            graphics.scale(POINTS_PER_MM, POINTS_PER_MM);
            ScenePainter.of(Theme.LIGHT).paint(scene, graphics);
        };
        return new Block.Drawing(scene.width() * POINTS_PER_MM, height(scene), paints, Optional.of(scene));
    }

    private static Tally tally(RowCoverage row) {
        return row.tally(row.zoning().all());
    }

    private static String capital(String title) {
        return title.substring(0, 1).toUpperCase(Locale.ROOT) + title.substring(1);
    }

    private static String summary(Reported job, RowCoverage row) {
        Tally tally = tally(row);
        return job.say(
                "maps.row",
                row.row().count(),
                job.map().some(row.row(), row.row().count()),
                new ShareFigures(row.headline(), job.map()).line(),
                tally.cells(),
                tally.seen(),
                tally.part(),
                tally.glimpsed(),
                tally.maybe(),
                tally.unseen(),
                tally.noAccess(),
                tally.coarse(),
                row.basis() == Basis.COMPUTED);
    }

    /** Rows of which anything was seen, or maybe. */
    private static List<RowCoverage> watched(Reported job) {
        return job.coverage().rows().stream()
                .filter(row -> tally(row).unseen() < tally(row).cells())
                .toList();
    }

    static List<Block> charts(Reported job) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(1, job.say("charts")));
        blocks.add(new Block.Heading(2, job.say("charts.time")));
        Timeline timeline = Timeline.of(job.fold(), job.coverage());
        if (timeline.takesTime()) {
            blocks.add(new Block.Paragraph(PageWords.of(
                    job.say("charts.time.told", job.map().basis(job.coverage().leading())))));
            blocks.add(new Block.Drawing(
                    CHART_WIDTH,
                    SHARE_HEIGHT,
                    graphics -> ShareChart.paint(timeline, job.words(), graphics, CHART_WIDTH, SHARE_HEIGHT)));
        } else {
            blocks.add(new Block.Paragraph(PageWords.of(job.say("charts.time.none"))));
        }
        blocks.add(new Block.Heading(2, job.say("charts.cells")));
        List<RowCoverage> watched = watched(job);
        Set<String> drawn = watched.stream().map(row -> row.row().id()).collect(Collectors.toSet());
        String unwatched = job.coverage().rows().stream()
                .map(row -> row.row().id())
                .filter(id -> !drawn.contains(id))
                .collect(Collectors.joining(", "));
        blocks.add(new Block.Paragraph(PageWords.of(
                unwatched.isEmpty() ? job.say("charts.cells.told") : job.say("charts.cells.some", unwatched))));
        for (RowCoverage row : watched) {
            boolean legend = row.equals(watched.get(0));
            double height = legend ? AIRFOIL_HEIGHT + LEGEND_HEIGHT : AIRFOIL_HEIGHT;
            blocks.add(new Block.Drawing(
                    CHART_WIDTH,
                    height,
                    graphics -> AirfoilChart.paint(row, legend, job.words(), graphics, CHART_WIDTH, height)));
        }
        return blocks;
    }
}
