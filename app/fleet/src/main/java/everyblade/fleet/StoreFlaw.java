package everyblade.fleet;

import everyblade.fact.Fact;

/** Why what a store has of a job is not what it was given. */
sealed interface StoreFlaw extends Fact {

    /** What needs no particulars. */
    enum Whole implements StoreFlaw {
        WAS_THERE,
        OTHER_NUMBER_OR_HASH,
        OTHER_BEGINNING
    }

    /** The store says that a job ends elsewhere than its lines do. */
    record OtherEnd(int entries, String head, int lines, String last) implements StoreFlaw {}

    /** What is to be done about it. */
    enum Remedy implements Fact {
        RESTORE,
        COMPARE
    }
}
