package everyblade.desktop.command;

import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.Tally;

/** What it means that nothing is left: seen in part is as far as any view shows, and no more. */
final class NothingLeft {

    private NothingLeft() {}

    static String told(Coverage coverage) {
        Tally all = coverage.tally();
        if (all.part() == 0) {
            return "nothing is left: all that the task asks for is seen, or accepted as not seen";
        }
        return "nothing is left to do, but not all is seen: " + all.part() + (all.part() == 1 ? " cell" : " cells")
                + " only in part, as far as any view of this engine model shows, of these " + all.glimpsed()
                + " less than half";
    }
}
