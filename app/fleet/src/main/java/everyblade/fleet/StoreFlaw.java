package everyblade.fleet;

import everyblade.fact.Fact;

/** Why what a store has of a job is not what it was given, or cannot be had. */
sealed interface StoreFlaw extends Fact {

    /** What needs no particulars. */
    enum Whole implements StoreFlaw {
        WAS_THERE,
        OTHER_NUMBER_OR_HASH,
        OTHER_BEGINNING
    }

    /** The store says that a job ends elsewhere than its lines do. */
    record OtherEnd(int entries, String head, int lines, String last) implements StoreFlaw {}

    /** A file of a job names a content that is not there. */
    record NoContent(String hash) implements StoreFlaw {}

    /** A line of a file is none of noted heads. */
    record NoHead(String line) implements StoreFlaw {}

    /** Others add to the same job again and again while it is looked at. */
    record Crowded() implements StoreFlaw {}

    /** What a superuser of the server does alone. */
    record NoSuperuser(String user) implements StoreFlaw {}

    /** What is to be done about it. */
    enum Remedy implements Fact {
        RESTORE,
        COMPARE
    }
}
