package everyblade.core.finding.review;

import java.time.Instant;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Something that a reviewer said of a record.
 *
 * @param number from 1, in the order in which all reviewers of the record spoke
 * @param at when, UTC
 * @param by who; not the technician who made the entries
 * @param head of the journal that lay before the reviewer, 64 hexadecimal digits
 * @param entries how many entries that journal had
 * @param what sort of remark it is
 * @param text in words
 * @param place where on the engine; empty if it is about the whole record
 * @param of the number of the remark that this one takes back; only of such
 */
public record ReviewRemark(
        int number,
        Instant at,
        String by,
        String head,
        int entries,
        What what,
        String text,
        Optional<ReviewedPlace> place,
        OptionalInt of) {

    /** Sorts of remarks. */
    public enum What {
        /** What the reviewer would still want to see, before knowing what the technician says. */
        WANTED("wanted"),
        /** From here on the reviewer knows what the technician says. */
        SHOWN("shown"),
        /** Sent back; the technician is to answer it. */
        QUESTION("question"),
        /** To be read with the record; nobody need answer. */
        REMARK("remark"),
        /** Takes a question back. */
        WITHDRAWN("withdrawn");

        private final String word;

        What(String word) {
            this.word = word;
        }

        /** For people and files. */
        public String word() {
            return word;
        }
    }
}
