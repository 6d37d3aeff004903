package everyblade.picture;

import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.RowCoverage;
import everyblade.picture.scene.Group;
import everyblade.picture.scene.Point;
import everyblade.picture.scene.Polar;
import everyblade.picture.scene.Scene;
import everyblade.spi.RowKind;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** The map cut up for A4 pages with words around it: one wheel a scene, each 176 mm wide, with no more
 * rings than can be read at that size. */
public final class PageScenes {

    static final double WIDTH = 176;
    private static final double RADIUS = 79;
    private static final int LEGEND_COLUMNS = 3;
    private static final int MOST_ROWS = 9;

    private PageScenes() {}

    /**
     * The rows that turn, then the rows that stand still, each scene with the legend; together every row once. Many
     * rows are shared out evenly among several scenes, in the model's order.
     */
    public static List<Scene> wheels(Coverage coverage, Facing facing, MapWords words) {
        List<Scene> scenes = new ArrayList<>();
        addWheel(scenes, words, "rows.turn", row -> row.row().kind() == RowKind.ROTOR, coverage, facing);
        addWheel(scenes, words, "rows.stand", row -> row.row().kind() != RowKind.ROTOR, coverage, facing);
        return scenes;
    }

    private static void addWheel(
            List<Scene> scenes,
            MapWords words,
            String key,
            Predicate<RowCoverage> belongs,
            Coverage coverage,
            Facing facing) {
        String name = words.say(key);
        List<RowCoverage> rows = coverage.rows().stream().filter(belongs).toList();
        int parts = (rows.size() + MOST_ROWS - 1) / MOST_ROWS;
        for (int part = 0; part < parts; part++) {
            List<RowCoverage> some = rows.subList(part * rows.size() / parts, (part + 1) * rows.size() / parts);
            String title = parts == 1
                    ? name
                    : words.say(
                            "rows.some",
                            name,
                            some.get(0).row().id(),
                            some.get(some.size() - 1).row().id());
            scenes.add(wheel(name, title, some, coverage, facing, words));
        }
    }

    private static Scene wheel(
            String name, String title, List<RowCoverage> rows, Coverage coverage, Facing facing, MapWords words) {
        List<Group> groups = new ArrayList<>(wheel(name, RADIUS, facing, words).rings(coverage, rows));
        double below = height(RADIUS) + 3;
        groups.add(Legend.at(new Point(2, below), LEGEND_COLUMNS, WIDTH / LEGEND_COLUMNS, words));
        int legendRows = (Look.values().length + LEGEND_COLUMNS) / LEGEND_COLUMNS;
        return new Scene(WIDTH, below + legendRows * Legend.ENTRY, title, title, groups);
    }

    /** One row unrolled zone by zone, and what the signs of its findings mean; no legend. */
    public static Scene row(Coverage coverage, String id, MapWords words) {
        return RowPage.of(coverage, coverage.row(id), words);
    }

    private static Wheel wheel(String name, double radius, Facing facing, MapWords words) {
        Point centre = new Point(WIDTH / 2, radius + Wheel.MARGIN);
        return new Wheel(name, new Polar(centre, facing.mirrors()), radius, facing, words);
    }

    private static double height(double radius) {
        return 2 * (radius + Wheel.MARGIN);
    }
}
