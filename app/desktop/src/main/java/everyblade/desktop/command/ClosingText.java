package everyblade.desktop.command;

import everyblade.core.finding.closing.ClosingList.Accepted;
import everyblade.core.finding.closing.OpenItem;

/** The closing list in words, the same wherever it is told. */
public final class ClosingText {

    /** What a list says in which nothing is open. */
    public static final String NOTHING = "nothing is open";

    private ClosingText() {}

    /** One open thing in one line, with what closes it. */
    public static String open(OpenItem item) {
        return item.kind().word() + ": " + item.line() + "; to close it: " + item.toDo();
    }

    /** Cells that a person accepted as not seen, with the reason. */
    public static String accepted(Accepted accepted) {
        return "accepted as not seen: " + accepted.what() + ", because " + accepted.reason() + ", entry "
                + accepted.entry() + " by " + accepted.by();
    }

    /** How many things are open. */
    public static String count(int items) {
        return items == 0 ? NOTHING : items + (items == 1 ? " thing" : " things") + " open";
    }
}
