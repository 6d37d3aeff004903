package everyblade.picture.scene;

/**
 * Which cell of the engine something on the sheet stands for.
 *
 * @param row id of the row
 * @param airfoil its number, from 1
 * @param zone index of its zone
 */
public record Cell(String row, int airfoil, int zone) {}
