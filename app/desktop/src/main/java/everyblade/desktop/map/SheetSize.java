package everyblade.desktop.map;

/**
 * A sheet that fills a component.
 *
 * @param width mm
 * @param height mm
 * @param fine mm below which a cell is too small for a pattern to be told
 */
record SheetSize(double width, double height, double fine) {}
