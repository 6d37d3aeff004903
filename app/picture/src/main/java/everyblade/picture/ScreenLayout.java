package everyblade.picture;

import everyblade.picture.scene.Cell;
import everyblade.picture.scene.Group;
import java.util.List;

/** How rows lie on a screen, and what stands beside them. */
interface ScreenLayout {

    /** The rows, each once. */
    List<? extends RowPlace> rows();

    /** What is drawn over them: always as many groups in the same order. */
    List<Group> words();

    /** The next cell on a walk; the same one where there is none that way. */
    Cell next(Cell from, MapStep step);

    /** What it shows, in a few words. */
    String title();

    /** What it says, in a sentence or two. */
    String summary();
}
