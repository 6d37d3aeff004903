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
        String left = all.part() > 0
                ? words.say("nothingLeft.inPart", all.part(), all.glimpsed())
                : words.say(behind.any() ? "nothingLeft.toDo" : "nothingLeft.atAll");
        return behind.any() ? words.say("nothingLeft.behind", left, behind) : left;
    }
}
