package everyblade.cli;

import everyblade.core.gap.Gaps;
import everyblade.core.move.Outline;
import everyblade.core.move.Plan;
import everyblade.core.move.Ticked;
import everyblade.core.turning.Situation;
import everyblade.picture.report.OutlineWords;
import everyblade.session.around.OneLine;
import everyblade.session.job.JobList;
import everyblade.session.job.Prepared;
import everyblade.spi.EngineModel;
import everyblade.words.Words;
import java.util.ArrayList;
import java.util.List;

/** A plan before the first move, or the list of a job, for people. */
final class OutlineText {

    private static final String DONE = "[x] ";
    private static final String LEFT = "[ ] ";

    private final Words words;
    private final OutlineWords told;
    private final List<String> lines = new ArrayList<>();

    private OutlineText(Words words) {
        this.words = words;
        this.told = new OutlineWords(words);
    }

    /** A plan before the job. */
    static List<String> of(Prepared prepared, Words words) {
        OutlineText text = new OutlineText(words);
        text.heat(prepared.plan(), prepared.before().situation());
        int number = 1;
        for (Outline.Visit visit : Outline.of(prepared.plan()).visits()) {
            text.lines.add(text.port(prepared.model(), number++, visit));
            visit.stops().forEach(stop -> text.lines.add("   " + text.view(stop)));
        }
        text.rest(prepared);
        return text.lines;
    }

    /** The same ticked off, with what is left by it. */
    static List<String> of(JobList list, Words words) {
        OutlineText text = new OutlineText(words);
        Ticked ticked = list.ticked();
        if (ticked.views() > 0) {
            text.heat(list.begun().plan(), list.now().situation());
        }
        int number = 1;
        for (Ticked.Visit visit : ticked.visits()) {
            text.lines.add(mark(visit.how())
                    + text.port(list.begun().model(), number++, visit.planned())
                    + "; "
                    + text.told.how(visit));
            visit.stops()
                    .forEach(stop -> text.lines.add(
                            "    " + mark(stop.how()) + text.view(stop.planned()) + "; " + text.told.how(stop)));
        }
        text.rest(list.begun());
        text.left(list);
        return text.lines;
    }

    private static String mark(Ticked.How how) {
        return how == Ticked.How.DONE ? DONE : LEFT;
    }

    private void heat(Plan plan, Situation now) {
        HeatFirst.of(plan, now).ifPresent(first -> lines.add(words.say("outline.heat", first.scopeTips())));
    }

    private String port(EngineModel model, int number, Outline.Visit visit) {
        return number + ". " + OneLine.of(told.port(model, visit)) + ": " + told.minutes(visit.minutes());
    }

    private String view(Outline.Stop stop) {
        return stop.view().id() + ", " + OneLine.of(told.stop(stop)) + "; " + told.minutes(stop.minutes());
    }

    /** What it takes, and what it leaves open. */
    private void rest(Prepared prepared) {
        Plan plan = prepared.plan();
        String least = told.least(plan.least()).map(turns -> "; " + turns).orElse("");
        lines.add(plan.moves().isEmpty() ? words.say("outline.nothing") : told.effort(plan) + least + ".");
        plan.open().forEach((why, cells) -> lines.add(words.say("outline.open", cells, why)));
        prepared.outOfReach()
                .forEach(out -> lines.add(words.say("outline.outOfReach", OneLine.of(told.outOfReach(out)))));
    }

    /** A list that is done is not all: what stands behind that is told as wherever nothing is left. */
    private void left(JobList list) {
        Ticked ticked = list.ticked();
        if (ticked.beside() > 0) {
            lines.add(words.say("outline.beside", ticked.beside()));
        }
        if (list.now().rows().stream().noneMatch(Gaps::in)) {
            lines.add(OneLine.of(NothingLeft.told(list.job().fold(), list.now(), words)));
        }
        lines.add(told.left(ticked));
    }
}
