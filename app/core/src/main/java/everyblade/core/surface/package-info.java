/**
 * The surfaces that a scope tip looks at, as meshes.
 *
 * <p>Takes the shapes and walls of an engine model. Gives one airfoil of a row standing at clock 0 as facets, each of
 * which lies in one zone and faces out of the metal; walls as full turns; and meshes read from and written as files'
 * contents. Frame: x aft along the axis, z up at 12 o'clock, clock angles clockwise as seen from aft looking forward,
 * so that a point at radius r and clock φ is (x, r sin φ, r cos φ). Lengths are mm. Sines and the like are those of
 * {@link StrictMath}, so that a mesh is the same to the last bit on every machine.
 */
package everyblade.core.surface;
