package everyblade.session;

import everyblade.fact.Fact;
import java.util.List;

/** What came of an entry. */
public sealed interface Answer {

    /**
     * It stands.
     *
     * @param number K of the entry
     * @param text as it was said
     * @param safe whether it is on disk; if not, it is in memory only
     * @param warnings what there is to tell of it
     */
    record Kept(int number, String text, boolean safe, List<Fact> warnings) implements Answer {

        public Kept {
            warnings = List.copyOf(warnings);
        }
    }

    /**
     * Nothing was changed: it is doubtful, and kept only if it is meant.
     *
     * @param text as it was said
     * @param doubts a sentence each
     */
    record Asked(String text, List<String> doubts) implements Answer {

        public Asked {
            doubts = List.copyOf(doubts);
        }
    }

    /**
     * Nothing was changed.
     *
     * @param text as it was said
     * @param column where in the text, from 1
     * @param why what is wrong and what to say instead
     */
    record Refused(String text, int column, Fact why) implements Answer {}
}
