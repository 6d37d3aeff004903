/**
 * What a scope tip sees, fast enough to be watched.
 *
 * <p>Takes a stage, which is surfaces standing in the engine with what is on them, and a pose. Gives a frame (which face of
 * which surface is nearest at each picture element) and, lit from the scope tip, a picture. Frame and units are those of
 * {@code core.surface}; no files, no clock, no screen. The same stage and pose give the same frame everywhere.
 */
package everyblade.practice.eye;
