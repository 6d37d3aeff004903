/**
 * What a view can show of a row.
 *
 * <p>Takes views of an engine model and the surfaces of its rows. Gives the clock positions at which an airfoil's facets are
 * properly in sight: computed from a pose of the scope tip ({@link everyblade.core.sight.SightArcs}), or as the model declares
 * it, with a window round the view's reference ({@link everyblade.core.sight.DeclaredWindow}).
 *
 * <p>The computation runs {@code CriteriaCut} (cone, distance, incidence, footprint), {@code Revolved} (walls), {@code RingShade},
 * {@code Hierarchy} and {@code RayBundle} (airfoils); {@code FacetSight} puts them in a row. Reference for the curve pieces: G. Farin, Curves
 * and Surfaces for CAGD, rational Bézier curves (from memory).
 */
package everyblade.core.sight;
