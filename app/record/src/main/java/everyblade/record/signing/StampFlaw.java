package everyblade.record.signing;

import everyblade.fact.Fact;

/** Why something is no time stamp of a file. */
enum StampFlaw implements Fact {
    OTHER_HASH,
    OF_ANOTHER_FILE,
    NO_CERTIFICATE,
    DOES_NOT_FIT,
    REFUSED,
    NO_STAMP
}
