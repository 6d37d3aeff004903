package everyblade.record;

import everyblade.fact.Fact;
import java.util.List;

/** Why a line of a journal or a review cannot be understood, or not be written. */
sealed interface LineFlaw extends Fact {

    /** What needs no particulars. */
    enum Whole implements LineFlaw {
        TOO_LONG,
        NO_OBJECT,
        NOT_AS_SAID,
        NOT_THE_NEXT,
        OF_ANOTHER_JOB
    }

    /** @param reader says where and why, in its own words */
    record NoJson(String reader) implements LineFlaw {}

    /** @param reader says where and why, in its own words */
    record NoUtf8(String reader) implements LineFlaw {}

    /** @param writer says why, in its own words */
    record NotWritable(String writer) implements LineFlaw {}

    record Missing(String member) implements LineFlaw {}

    record UnknownWord(String member, String word) implements LineFlaw {}

    record NoWord(String member) implements LineFlaw {}

    record UnknownKey(String member, List<String> known) implements LineFlaw {}

    /** A record does not take these values. */
    record Unsayable(String word) implements LineFlaw {}

    record OtherSort(String member, Sort wanted) implements LineFlaw {}

    record OtherText(String member, String wanted) implements LineFlaw {}

    /** What a value should be. */
    enum Sort implements Fact {
        TEXT,
        NUMBER,
        WHOLE_NUMBER,
        TRUTH,
        OBJECT,
        LIST,
        NUMBERS,
        HASHES,
        HASH,
        TIME,
        REMARK
    }
}
