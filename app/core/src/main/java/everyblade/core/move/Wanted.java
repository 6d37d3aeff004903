package everyblade.core.move;

import everyblade.core.entry.ZoneSet;
import everyblade.spi.Row;

/**
 * Zones of one airfoil that are to be seen, and that the same views show.
 *
 * @param row of the airfoil
 * @param airfoil its number
 * @param zones at least one
 */
record Wanted(Row row, int airfoil, ZoneSet zones) {}
