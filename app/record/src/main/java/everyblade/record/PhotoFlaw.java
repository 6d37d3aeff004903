package everyblade.record;

import everyblade.fact.Fact;

/** Why a picture of a job is not kept, or not the one that was. */
sealed interface PhotoFlaw extends Fact {

    /** What needs no particulars. */
    enum Whole implements PhotoFlaw {
        ANOTHER_OF_THAT_NAME,
        DAMAGED,
        NO_USABLE_NAME
    }

    record HasNoUsableName(String file) implements PhotoFlaw {}

    record NotTheOneKept(String file) implements PhotoFlaw {}

    record NotRead(String file, Fact why) implements PhotoFlaw {}
}
