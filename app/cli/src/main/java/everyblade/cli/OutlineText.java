package everyblade.cli;

import everyblade.core.move.Outline;
import everyblade.core.move.Plan;
import everyblade.picture.report.OutlineWords;
import everyblade.session.around.OneLine;
import everyblade.session.job.Prepared;
import everyblade.words.Words;
import java.util.ArrayList;
import java.util.List;

/** A plan before the first move for people. */
final class OutlineText {

    private OutlineText() {}

    static List<String> of(Prepared prepared, Words words) {
        OutlineWords told = new OutlineWords(words);
        Plan plan = prepared.plan();
        List<String> lines = new ArrayList<>();
        HeatFirst.of(plan, prepared.before().situation())
                .ifPresent(first -> lines.add(words.say("outline.heat", first.scopeTips())));
        int number = 1;
        for (Outline.Visit visit : Outline.of(plan).visits()) {
            lines.add(number++ + ". " + OneLine.of(told.port(prepared.model(), visit)) + ": "
                    + told.minutes(visit.minutes()));
            for (Outline.Stop stop : visit.stops()) {
                lines.add("   " + stop.view().id() + ", " + OneLine.of(told.stop(stop)) + "; "
                        + told.minutes(stop.minutes()));
            }
        }
        String least = told.least(plan.least()).map(turns -> "; " + turns).orElse("");
        lines.add(plan.moves().isEmpty() ? words.say("outline.nothing") : told.effort(plan) + least + ".");
        plan.open().forEach((why, cells) -> lines.add(words.say("outline.open", cells, why)));
        prepared.outOfReach()
                .forEach(out -> lines.add(words.say("outline.outOfReach", OneLine.of(told.outOfReach(out)))));
        return lines;
    }
}
