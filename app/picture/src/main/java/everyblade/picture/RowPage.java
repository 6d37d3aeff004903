package everyblade.picture;

import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.RowCoverage;
import everyblade.picture.scene.Group;
import everyblade.picture.scene.Point;
import everyblade.picture.scene.Scene;
import java.util.ArrayList;
import java.util.List;

/** One row for part of an A4 page with words around it: unrolled zone by zone, then what was found of it, a line each. */
final class RowPage {

    private static final double STRIP = 36;
    private static final double LIST_MOST = 26;
    private static final double SPARE = 1;

    private RowPage() {}

    static Scene of(Coverage coverage, RowCoverage of, MapWords words) {
        double width = PageScenes.WIDTH;
        RowStrip strip = RowStrip.onPaper(of, new Point(0, 0), width, STRIP, words);
        List<Group> groups = new ArrayList<>(strip.groups());
        double y = strip.foot();
        List<String> told = Signs.of(coverage, of.row().id()).told(of, words);
        if (!told.isEmpty()) {
            double height = Math.min(LIST_MOST, WordList.height(told.size()) + SPARE);
            groups.add(WordList.at(new Point(0, y), width, height, words.say("list.signs"), told, words));
            y += height;
        }
        return new Scene(width, y, of.row().name(), of.row().name(), groups);
    }
}
