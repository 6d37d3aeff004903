package everyblade.picture.scene;

import java.util.Optional;

/**
 * One shape on the sheet.
 *
 * @param shape where it lies
 * @param style how it is drawn
 * @param cell the cell that it stands for; a cell is stood for once in each view of its row
 */
public record Item(DrawnShape shape, Style style, Optional<Cell> cell) {

    /** A shape that stands for no cell. */
    public static Item of(DrawnShape shape, Style style) {
        return new Item(shape, style, Optional.empty());
    }

    /** Words in one ink. */
    public static Item of(DrawnShape.Text text, Ink ink) {
        return of(text, Style.filled(ink));
    }
}
