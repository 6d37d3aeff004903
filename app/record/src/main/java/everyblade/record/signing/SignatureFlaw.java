package everyblade.record.signing;

import everyblade.fact.Fact;

/** Why a signature, or its time stamp, counts for nothing. */
sealed interface SignatureFlaw extends Fact {

    /** What needs no particulars. */
    enum Whole implements SignatureFlaw {
        CUT_SHORT,
        NO_JSON_OBJECT,
        OTHER_VERSION,
        DOES_NOT_FIT,
        UNKNOWN_MEANING,
        NO_ED25519_KEY,
        NO_TIME,
        OF_ANOTHER_JOB,
        OTHER_BEFORE
    }

    record UnknownKey(String member) implements SignatureFlaw {}

    record Unfit(String member) implements SignatureFlaw {}

    /** Of more entries than the journal has. */
    record OfMoreEntries(int entries, int there) implements SignatureFlaw {}

    record Rewritten(int entry) implements SignatureFlaw {}

    record BeforeMissing(int number) implements SignatureFlaw {}

    /** @param other number of the signature that its key made in the other role */
    record OtherRole(int other, SignedAs as) implements SignatureFlaw {}

    record BadStamp(Fact why) implements SignatureFlaw {}
}
