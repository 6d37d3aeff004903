/**
 * What a view can show of a row.
 *
 * <p>Takes views of an engine model. Gives the clock positions at which which zones of an airfoil are in sight; for now
 * as the model declares it, with a window round the view's reference.
 */
package everyblade.core.sight;
