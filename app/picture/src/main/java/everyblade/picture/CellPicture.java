package everyblade.picture;

import everyblade.picture.scene.Cell;
import everyblade.picture.scene.Point;
import everyblade.picture.scene.Scene;
import everyblade.picture.scene.Shape.Patch;
import java.util.List;
import java.util.Optional;

/**
 * A picture of cells on a screen that can be asked what lies where: the answers come from the same geometry as its scene.
 */
public interface CellPicture {

    /** What is drawn, and is moved and enlarged by whoever looks at it. */
    Scene scene();

    /** What is drawn over it in the corners and stays there; on the same sheet. */
    Scene margin();

    /** Whether the margin hides a place on the sheet. */
    boolean covers(Point place);

    /** The cell that a place on the sheet lies in; empty where there is none. */
    Optional<Cell> cellAt(Point place);

    /** Where a cell is drawn, the largest drawing first; empty if it is not in this picture. */
    List<Patch> patches(Cell cell);

    /** The cell from which to start walking; empty if there is none. */
    Optional<Cell> first();

    /** The next cell on a walk; the same one where there is none that way. */
    Cell next(Cell from, Step step);
}
