package everyblade.window.map;

/**
 * A cell that a person points at.
 *
 * @param row id of the row
 * @param airfoil its number, from 1
 * @param zone index in the row's zoning
 */
public record CellAt(String row, int airfoil, int zone) {}
