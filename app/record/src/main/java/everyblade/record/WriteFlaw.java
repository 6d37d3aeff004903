package everyblade.record;

import everyblade.fact.Fact;

/** Why something that was said is not kept. */
sealed interface WriteFlaw extends Fact {

    /** What needs no particulars. */
    enum Whole implements WriteFlaw {
        JOB_CLOSED,
        REVIEW_CLOSED,
        FILE_CHANGED
    }

    /** @param cutBack whether nothing of what is not kept is left in the file */
    record NotForced(Fact why, boolean cutBack) implements WriteFlaw {}

    /** Lines that came from elsewhere are not the next ones. */
    record CameUnsound(Fact why) implements WriteFlaw {}

    /** @param kept how many entries were kept before */
    record Stopped(Fact why, int kept) implements WriteFlaw {}

    /** An entry that would read back as another. */
    record NotReadBack(String entry) implements WriteFlaw {}
}
