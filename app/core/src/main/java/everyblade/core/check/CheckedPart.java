package everyblade.core.check;

/** A part of an engine model, by its indices in the model's lists, from 0. */
public sealed interface CheckedPart {

    /** The shape of a row. */
    record ShapeOf(int row) implements CheckedPart {}

    /** One of the positions of a row. */
    record PositionOf(int row, String position) implements CheckedPart {}

    /** A view as a whole. */
    record ViewAt(int view) implements CheckedPart {}

    /** What a view states as its aim. */
    record AimOf(int view) implements CheckedPart {}

    /** A station of a view. */
    record StationAt(int view, int station) implements CheckedPart {}
}
