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
                .ifPresent(first -> lines.add("First measure the metal: scope tip "
                        + String.join(", ", first.scopeTips()) + " bears only so much."));
        int number = 1;
        for (Outline.Visit visit : Outline.of(plan).visits()) {
            lines.add(number++ + ". " + OneLine.of(told.port(prepared.model(), visit)) + ": "
                    + told.minutes(visit.minutes()));
            for (Outline.Stop stop : visit.stops()) {
                lines.add("   " + stop.view().id() + ", " + OneLine.of(told.stop(stop)) + "; "
                        + told.minutes(stop.minutes()));
            }
        }
        lines.add(
                plan.moves().isEmpty()
                        ? "No view of this engine model shows anything of what is asked for."
                        : told.effort(plan) + ".");
        plan.open()
                .forEach((why, cells) ->
                        lines.add(cells + " cells would still not be surely seen: " + why.words() + "."));
        prepared.outOfReach().forEach(out -> lines.add("Out of reach: " + OneLine.of(told.outOfReach(out)) + "."));
        return lines;
    }
}
