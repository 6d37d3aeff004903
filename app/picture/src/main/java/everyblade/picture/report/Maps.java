package everyblade.picture.report;

import everyblade.core.coverage.Basis;
import everyblade.core.coverage.RowCoverage;
import everyblade.core.coverage.Tally;
import everyblade.picture.Facing;
import everyblade.picture.MapWords;
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
        blocks.add(new Block.Heading(1, "Maps"));
        String what = "A ring is a row, cut into its parts"
                + " and each part into its zones, the root innermost. Parts stand where they stood after the last"
                + " entry; of a row without a datum, part 1 stands at 12 o'clock.";
        for (Scene scene : PageScenes.wheels(job.coverage(), Facing.AFT_LOOKING_FORWARD)) {
            blocks.add(new Block.Heading(
                    2,
                    scene.title().substring(0, 1).toUpperCase(java.util.Locale.ROOT)
                            + scene.title().substring(1)));
            blocks.add(new Block.Paragraph(PageWords.of(what)));
            blocks.add(drawing(painter, scene));
            blocks.add(new Block.NewPage());
        }
        for (RowCoverage row : watched(job)) {
            blocks.add(new Block.Heading(2, Telling.row(row.row())));
            blocks.add(new Block.Paragraph(PageWords.of(summary(row))));
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

    private static String summary(RowCoverage row) {
        Tally tally = tally(row);
        return Telling.count(row.row().count(), row.row().kind().airfoil()) + ": "
                + new ShareFigures(row.headline(), MapWords.ENGLISH).line() + ". Of " + tally.cells() + " cells "
                + tally.seen() + " seen, " + tally.part() + " in part, of these " + tally.glimpsed()
                + " only a glimpse, "
                + tally.maybe() + " maybe, " + tally.unseen() + " not seen, of these " + tally.noAccess()
                + " shown by no view and " + tally.coarse() + " only too coarsely. "
                + (row.basis() == Basis.COMPUTED ? "Computed." : "Declared.");
    }

    /** Rows of which anything was seen, or maybe. */
    private static List<RowCoverage> watched(Reported job) {
        return job.coverage().rows().stream()
                .filter(row -> tally(row).unseen() < tally(row).cells())
                .toList();
    }

    static List<Block> charts(Reported job) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(1, "Charts"));
        blocks.add(new Block.Heading(2, "Share seen, against time"));
        Timeline timeline = Timeline.of(job.fold(), job.coverage());
        if (timeline.takesTime()) {
            blocks.add(
                    new Block.Paragraph(PageWords.of("Of all cells, as the record stood after each entry, void entries"
                            + " left out; of the rows that are "
                            + job.coverage().leading().word()
                            + ". It can fall where a later entry shows that the count was lost.")));
            blocks.add(new Block.Drawing(
                    CHART_WIDTH,
                    SHARE_HEIGHT,
                    graphics -> ShareChart.paint(timeline, graphics, CHART_WIDTH, SHARE_HEIGHT)));
        } else {
            blocks.add(new Block.Paragraph(PageWords.of("All entries bear the same time, so there is no chart.")));
        }
        blocks.add(new Block.Heading(2, "Cells of each part"));
        List<RowCoverage> watched = watched(job);
        Set<String> drawn = watched.stream().map(row -> row.row().id()).collect(Collectors.toSet());
        String unwatched = job.coverage().rows().stream()
                .map(row -> row.row().id())
                .filter(id -> !drawn.contains(id))
                .collect(Collectors.joining(", "));
        blocks.add(new Block.Paragraph(PageWords.of("One bar for each part; the whole height is all its cells."
                + (unwatched.isEmpty() ? "" : " Not drawn, for nothing of them was seen: " + unwatched + "."))));
        for (RowCoverage row : watched) {
            boolean legend = row.equals(watched.get(0));
            double height = legend ? AIRFOIL_HEIGHT + LEGEND_HEIGHT : AIRFOIL_HEIGHT;
            blocks.add(new Block.Drawing(
                    CHART_WIDTH, height, graphics -> AirfoilChart.paint(row, legend, graphics, CHART_WIDTH, height)));
        }
        return blocks;
    }
}
