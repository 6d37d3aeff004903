package everyblade.session.job;

import everyblade.core.finding.closing.ClosingList;
import everyblade.core.finding.closing.ClosingList.Accepted;
import everyblade.core.finding.closing.OpenItem;

/** The closing list in words, the same wherever it is told. */
public final class ClosingText {

    private ClosingText() {}

    /** One thing in one line that is not open, and told all the same. */
    public static String told(OpenItem item) {
        return item.kind().word() + ", not open: " + item.line();
    }

    /** One open thing in one line, with what closes it. */
    public static String open(OpenItem item) {
        return item.kind().word() + ": " + item.line() + "; to close it: " + item.toDo();
    }

    /** Cells that a person accepted as not seen, with the reason. */
    public static String accepted(Accepted accepted) {
        return "accepted as not seen: " + accepted.line();
    }

    /** How many things are open, and what stands behind it if nothing is. */
    public static String count(ClosingList list) {
        int items = list.items().size();
        return items > 0
                ? items + (items == 1 ? " thing" : " things") + " open"
                : list.behind().any()
                        ? "nothing is open; behind that stand: " + list.behind().told()
                        : "nothing is open";
    }
}
