package everyblade.core.finding.closing;

import everyblade.core.finding.review.ReviewedPlace;
import everyblade.core.gap.Gap;
import everyblade.core.turning.Logged;
import everyblade.fact.Fact;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * One thing that is open.
 *
 * @param kind of thing
 * @param opened the entry that opened it; empty of what nobody entered, such as a gap
 * @param what is open
 * @param where it is; empty if it is nowhere
 * @param toDo what closes it; empty if it is closed and only told
 * @param entry how the entry begins that closes it; empty if no entry alone does
 * @param gap that it is, if it is one
 * @param place where it is, if a reviewer said so
 */
public record OpenItem(
        Kind kind,
        Optional<Logged> opened,
        Fact what,
        Optional<Where> where,
        Optional<ToDo> toDo,
        String entry,
        Optional<Gap> gap,
        Optional<ReviewedPlace> place) {

    OpenItem(Kind kind, Optional<Logged> opened, Fact what, Optional<Where> where, ToDo toDo, String entry) {
        this(kind, opened, what, where, Optional.of(toDo), entry, Optional.empty(), Optional.empty());
    }

    /** A thing that is not open, or no longer, and that must be told all the same. */
    static OpenItem told(Kind kind, Optional<Logged> about, Fact what, Optional<Where> where) {
        return new OpenItem(kind, about, what, where, Optional.empty(), "", Optional.empty(), Optional.empty());
    }

    /** Whether anything is to be done about it. */
    public boolean open() {
        return toDo.isPresent();
    }

    /** Kinds of open things, in the order of the list: what can do most harm first. */
    public enum Kind implements Fact {
        TIP("tool"),
        TOOL("tool"),
        LOST("lost"),
        OPENING("opening"),
        PORT("port"),
        FINDING("finding"),
        COUNT("count"),
        SENT_BACK("question"),
        GAP("gap"),
        RECHECK("recheck"),
        QUESTION("question"),
        INTERVAL("interval"),
        REPEAT("interval"),
        HANDOVER("handover"),
        FACT("fact"),
        VOIDED("voided"),
        NARROWED("narrowed"),
        ACCEPTED("accepted"),
        TIME("time"),
        PHOTO("photo");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** Whether it is of what was taken away, accepted or only said, of which a reviewer has to judge. */
        public boolean onlySaid() {
            return compareTo(VOIDED) >= 0;
        }

        /** In files; kinds that are one to them share it. */
        public String word() {
            return word;
        }
    }

    /** In one line, with the entry and who made it. */
    public Fact line() {
        return new Line(
                what,
                where,
                opened.map(entry -> OptionalInt.of(entry.number())).orElse(OptionalInt.empty()),
                opened.map(Logged::by).orElse(""));
    }

    /** @param by who made the entry, if there is one */
    record Line(Fact what, Optional<Where> where, OptionalInt entry, String by) implements Fact {}
}
