/**
 * An engine model drawn: what its author wrote, so that a wrong figure is seen.
 *
 * <p>Takes an {@link everyblade.spi.EngineModel} and the contents of its mesh files. Gives one sheet as a
 * {@link everyblade.picture.scene.Scene}: the side section of the annulus with rows, ports and stations, one row from aft,
 * and its blades cut and unrolled. What the model does not say is not drawn; a model of blade counts alone gives its rows
 * in order.
 */
package everyblade.picture.section;
