/**
 * What is wrong with an engine model that only its surfaces show.
 *
 * <p>Takes an {@link everyblade.spi.EngineModel} as its reader accepted it, and the contents of its mesh files. Gives
 * {@link everyblade.core.check.Flaw}s: blades that cut each other or a wall, stations in the metal, views that see nothing of
 * their row. {@link everyblade.core.check.ModelCheck} looks at surfaces alone, {@link everyblade.core.check.SightCheck}
 * computes sight. Lengths are mm, in the frame of the engine.
 */
package everyblade.core.check;
