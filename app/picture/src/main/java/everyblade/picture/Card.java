package everyblade.picture;

import everyblade.picture.scene.Item;
import everyblade.picture.scene.Point;
import java.util.List;
import java.util.function.Function;

/**
 * Something to read, of known size, to be laid anywhere on a sheet.
 *
 * @param width mm
 * @param height mm
 * @param items draws it with its upper left corner at a place
 */
record Card(double width, double height, Function<Point, List<Item>> items) {}
