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

    private static final double POINTS_PER_MM = 72 / 25.4;
    private static final double CHART_WIDTH = 499;
    private static final double SHARE_HEIGHT = 210;
    private static final double AIRFOIL_HEIGHT = 112;
    private static final double LEGEND_HEIGHT = 26;

    private Maps() {}

    static List<Block> maps(Reported job) {
        ScenePainter painter = ScenePainter.of(Theme.LIGHT);
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(1, job.say("maps")));
        for (Scene scene : PageScenes.wheels(job.coverage(), Facing.AFT_LOOKING_FORWARD)) {
            blocks.add(new Block.Heading(2, capital(scene.title())));
            blocks.add(new Block.Paragraph(PageWords.of(job.say("maps.told"))));
            blocks.add(drawing(painter, scene));
            blocks.add(new Block.NewPage());
        }
        for (RowCoverage row : watched(job)) {
            blocks.add(new Block.Heading(2, Telling.row(row.row())));
            blocks.add(new Block.Paragraph(PageWords.of(summary(job, row))));
            blocks.add(drawing(painter, PageScenes.row(job.coverage(), row.row().id(), Facing.AFT_LOOKING_FORWARD)));
            blocks.add(new Block.NewPage());
        }
        return blocks;
    }

    private static Block drawing(ScenePainter painter, Scene scene) {
        Block.Painter paints = graphics -> {
            graphics.scale(POINTS_PER_MM, POINTS_PER_MM);
            painter.paint(scene, graphics);
        };
        return new Block.Drawing(
                scene.width() * POINTS_PER_MM, scene.height() * POINTS_PER_MM, paints, Optional.of(scene));
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
