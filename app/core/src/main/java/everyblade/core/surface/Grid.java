package everyblade.core.surface;

import java.util.function.IntPredicate;

/**
 * A mesh whose faces come in rows of so many columns.
 *
 * @param edges which columns lie at the very edge of an airfoil, in the outermost facets at the leading or trailing edge
 */
record Grid(Mesh mesh, int columns, IntPredicate edges) {}
