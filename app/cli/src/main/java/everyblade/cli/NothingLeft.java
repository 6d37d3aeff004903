package everyblade.cli;

import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.Tally;
import everyblade.core.finding.closing.Behind;
import everyblade.core.turning.Fold;
import everyblade.words.Words;

/** What it means that nothing is left: seen in part is as far as any view shows, and no more. */
final class NothingLeft {

    private NothingLeft() {}

    static String told(Fold fold, Coverage coverage, Words words) {
        Tally all = coverage.tally();
        Behind behind = Behind.of(fold, coverage);
        String left = all.part() == 0
                ? behind.any() ? "nothing is left to do" : "nothing is left: all that the task asks for is seen"
                : "nothing is left to do, but not all is seen: " + all.part() + (all.part() == 1 ? " cell" : " cells")
                        + " only in part, as far as any view of this engine model shows, of these " + all.glimpsed()
                        + " less than half";
        return behind.any() ? left + "; behind that stand: " + words.say(behind) : left;
    }
}
