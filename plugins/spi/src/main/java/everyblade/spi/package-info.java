/**
 * What an engine model is, and the one interface that hands it over.
 *
 * <p>Takes nothing, depends on nothing. Gives plain records that say how many airfoils each row has, how the shaft is
 * turned, where a scope gets in and what it looks at. The records hold what a model author wrote, defaults filled in;
 * whether it makes sense together is judged by those who read it.
 *
 * <p>Frame: x aft along the axis in mm, r the radius in mm, clock angles in degrees clockwise from 12 o'clock as seen
 * from aft looking forward. Positive turning is clockwise in that view.
 */
package everyblade.spi;
