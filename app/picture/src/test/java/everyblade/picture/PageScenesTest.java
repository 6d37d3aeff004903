package everyblade.picture;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.coverage.Coverage;
import everyblade.picture.scene.Cell;
import everyblade.picture.scene.Scene;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class PageScenesTest {

    private static long cells(Coverage coverage) {
        return coverage.rows().stream().mapToLong(row -> row.cells()).sum();
    }

    @Test
    void everyCellOfAnEngineWithManyRowsStandsOnOneWheelOnce() {
        Coverage coverage = Job.on("corncrake-12").coverage();
        List<Scene> scenes = PageScenes.wheels(coverage, Facing.AFT_LOOKING_FORWARD, MapWords.of(Locale.ENGLISH));
        List<Cell> cells = scenes.stream()
                .flatMap(Scene::items)
                .flatMap(item -> item.cell().stream())
                .toList();
        assertThat(scenes).hasSize(4);
        assertThat(cells).doesNotHaveDuplicates().hasSize((int) cells(coverage));
    }

    @Test
    void anEngineOfOneRotorHasOneWheel() {
        Coverage coverage = new Job(SmallEngines.rotor(7, everyblade.spi.Direction.CW, 0)).coverage();
        assertThat(PageScenes.wheels(coverage, Facing.AFT_LOOKING_FORWARD, MapWords.of(Locale.ENGLISH)))
                .extracting(Scene::title)
                .containsExactly("rows that turn");
    }

    @Test
    void theSignsOfARowAreAllExplained() {
        Coverage coverage = Jobs.larkspur().coverage();
        String words = String.join("\n", Scenes.words(PageScenes.row(coverage, "c1", MapWords.of(Locale.ENGLISH))));
        assertThat(words)
                .contains("finding, blade 7", "finding, blade 8", "look again, blade 12")
                .doesNotContain(" more");
    }
}
