package everyblade.core.coverage;

import java.util.Optional;

/**
 * Cells counted by state; seen, part, maybe and unseen add up to all.
 *
 * @param seen seen
 * @param part done otherwise: seen as far as they can be
 * @param maybe maybe seen
 * @param unseen not seen
 * @param noAccess of the unseen, those that no view shows
 * @param coarse of the unseen, those that only views too coarse for the detail asked show
 * @param fast of the unseen, those in sight too briefly
 * @param stated of the unseen, those stated with a picture
 * @param damaged of all, those with a finding
 * @param glimpsed of those seen as far as they can be, those of which views show less than half
 */
public record Tally(
        int seen,
        int part,
        int maybe,
        int unseen,
        int noAccess,
        int coarse,
        int fast,
        int stated,
        int damaged,
        int glimpsed) {

    /** No cells. */
    public static final Tally NONE = new Tally(0, 0, 0, 0, 0, 0, 0, 0, 0, 0);

    static Tally of(State state, Optional<Why> why, boolean isStated, boolean isDamaged, boolean isGlimpsed) {
        boolean isUnseen = state.grade() == State.Grade.LEFT;
        return new Tally(
                one(state == State.SEEN),
                one(state.isDone() && state != State.SEEN),
                one(state.grade() == State.Grade.DOUBTFUL),
                one(isUnseen),
                one(isUnseen && why.filter(Why.NO_ACCESS::equals).isPresent()),
                one(isUnseen && why.filter(Why.COARSE::equals).isPresent()),
                one(isUnseen && why.filter(Why.FAST::equals).isPresent()),
                one(isUnseen && isStated),
                one(isDamaged),
                one(isGlimpsed));
    }

    private static int one(boolean is) {
        return is ? 1 : 0;
    }

    /** Both together. */
    public Tally plus(Tally other) {
        return new Tally(
                seen + other.seen,
                part + other.part,
                maybe + other.maybe,
                unseen + other.unseen,
                noAccess + other.noAccess,
                coarse + other.coarse,
                fast + other.fast,
                stated + other.stated,
                damaged + other.damaged,
                glimpsed + other.glimpsed);
    }

    /** All cells. */
    public int cells() {
        return seen + part + maybe + unseen;
    }

    /** Cells that views can show well enough. */
    public int within() {
        return cells() - noAccess - coarse;
    }

    /** Of these, those that are neither seen nor seen as far as they can be. */
    public int left() {
        return within() - seen - part;
    }

    /** Seen, of all cells; 0 of none. */
    public double seenShare() {
        return share(seen);
    }

    /** This many of all cells; 0 of none. */
    public double share(int count) {
        return cells() == 0 ? 0 : (double) count / cells();
    }
}
