package everyblade.record;

import everyblade.fact.Fact;

/** Why a journal, or the review beside it, is not the one that was written, or not one for this program. */
sealed interface JournalFlaw extends Fact {

    /** What needs no particulars. */
    enum Whole implements JournalFlaw {
        NO_FIRST_LINE,
        OTHER_HASH,
        NO_NEWLINE,
        OTHER_JOURNAL_BESIDE,
        A_JOB,
        A_DRILL
    }

    record ForeignVersion(String version) implements JournalFlaw {}

    /** Newer than what this program can call sound. */
    record NotAllKnown(String version) implements JournalFlaw {}

    /** Newer than what this program writes. */
    record NotWritten(String version) implements JournalFlaw {}

    record TooManyEntries(int most) implements JournalFlaw {}

    /** No line has a hash that was noted, and nobody knows of which entry it was. */
    record HashGone(String hash) implements JournalFlaw {}

    /** It was that of entry {@code k}, which is beyond the last. */
    record CutShort(String hash, int k, int entries) implements JournalFlaw {}

    /** It was that of entry {@code k}, whose line has another now. */
    record Rewritten(String hash, int k) implements JournalFlaw {}

    /** A remark was made of a line that is beyond the last. */
    record RemarkCutShort(int remark, String hash) implements JournalFlaw {}

    /** A remark was made of a line that has another hash now. */
    record RemarkRewritten(int remark, String hash) implements JournalFlaw {}

    /** A line's text says something else than what counts of it. */
    record OtherMeaning(String text, String means) implements JournalFlaw {}

    /** @param refusal why the line's text is no entry */
    record NoEntry(String text, Fact refusal, String means) implements JournalFlaw {}

    /** What may be done about a line that says two things. */
    record VoidIt(int k) implements JournalFlaw {}
}
