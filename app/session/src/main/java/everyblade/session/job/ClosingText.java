package everyblade.session.job;

import everyblade.core.finding.closing.Behind;
import everyblade.core.finding.closing.ClosingList;
import everyblade.core.finding.closing.ClosingList.Accepted;
import everyblade.core.finding.closing.OpenItem;
import everyblade.words.Words;
import java.util.Optional;

/** The closing list in words, the same wherever it is told. */
public final class ClosingText {

    private ClosingText() {}

    /** One thing in one line. */
    public static String line(OpenItem item, Words words) {
        return words.say("closing.line", item.kind(), item.line());
    }

    /** One thing in one line that is not open, and told all the same. */
    public static String told(OpenItem item, Words words) {
        return words.say("closing.line.told", item.kind(), item.line());
    }

    /** One open thing in one line, with what closes it. */
    public static String open(OpenItem item, Words words) {
        return words.say(
                "closing.line.open", item.kind(), item.line(), item.toDo().orElseThrow());
    }

    /** Cells that a person accepted as not seen, with the reason. */
    public static String accepted(Accepted accepted, Words words) {
        return words.say("closing.line", words.say("closing.accepted"), accepted.line());
    }

    /** How many things are open, and what stands behind it if nothing is. */
    public static String count(ClosingList list, Words words) {
        return words.say(
                "closing.count", list.items().size(), Optional.of(list.behind()).filter(Behind::any));
    }
}
