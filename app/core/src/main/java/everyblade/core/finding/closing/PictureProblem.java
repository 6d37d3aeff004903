package everyblade.core.finding.closing;

import everyblade.core.finding.photo.Likely;
import everyblade.core.finding.photo.Stated;
import everyblade.fact.Fact;

/** What a picture's own time speaks against; times are ISO 8601, UTC. */
sealed interface PictureProblem extends Fact {

    /**
     * @param before whether it was before the record began, and not after the entry
     * @param other when the record began, or the entry was made
     */
    record OtherDay(String file, String at, boolean before, String other) implements PictureProblem {}

    record OtherAirfoil(String file, Stated stated, String at, Likely likely) implements PictureProblem {}
}
