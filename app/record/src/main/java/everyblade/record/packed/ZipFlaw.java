package everyblade.record.packed;

import everyblade.fact.Fact;

/** Why a zip is not unpacked. */
sealed interface ZipFlaw extends Fact {

    /** What needs no particulars. */
    enum Whole implements ZipFlaw {
        NO_JOURNAL,
        NO_ZIP,
        TOO_LARGE,
        OVERLAPPING,
        ENCRYPTED,
        NAME_NOT_UTF8,
        DAMAGED
    }

    /** What is wrong with one that is in it. */
    enum Kind {
        TWICE,
        NOT_OF_A_JOB,
        LINK,
        DEVICE,
        UNKNOWN_METHOD
    }

    record Within(String name, Kind kind) implements ZipFlaw {}

    record Swells(String name, long megabytes) implements ZipFlaw {}
}
