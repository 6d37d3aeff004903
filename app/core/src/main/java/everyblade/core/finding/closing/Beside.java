package everyblade.core.finding.closing;

import everyblade.core.finding.photo.Taken;
import everyblade.core.finding.review.ReviewRemark;
import everyblade.core.turning.Fold;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a record holds beside its entries and bears on what is open.
 *
 * @param pictures that entries name, each with when it was taken
 * @param last the journal of the last record of the same engine, if this one is compared with it
 * @param review what reviewers said of it so far
 */
public record Beside(List<Taken.Named> pictures, Optional<Fold> last, List<ReviewRemark> review) {

    /** Nothing but entries. */
    public static final Beside NOTHING = new Beside(List.of(), Optional.empty(), List.of());

    public Beside {
        pictures = List.copyOf(pictures);
        review = List.copyOf(review);
    }

    /** The same after reviewers went on. */
    public Beside reviewed(List<ReviewRemark> newReview) {
        return new Beside(pictures, last, newReview);
    }

    /** The same with further pictures. */
    public Beside pictured(List<Taken.Named> further) {
        return new Beside(Stream.concat(pictures.stream(), further.stream()).toList(), last, review);
    }
}
