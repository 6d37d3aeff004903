/**
 * How well somebody finds damage, as far as drills can tell.
 *
 * <p>Takes outcomes of damage that was well in sight. Gives a curve of finding over size with the size that is surely found nine
 * times of ten ({@link everyblade.practice.progress.HitMissCurve}), or where there is too little for a curve the share found with
 * its bound ({@link everyblade.practice.progress.ShareFound}), and how well damage is told from none
 * ({@link everyblade.practice.progress.Discrimination}). It says how one person did with invented damage on a screen; it
 * qualifies nobody.
 */
package everyblade.practice.progress;
