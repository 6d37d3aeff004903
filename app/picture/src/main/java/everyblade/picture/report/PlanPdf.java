package everyblade.picture.report;

import everyblade.core.gap.OutOfReach;
import everyblade.core.move.Outline;
import everyblade.core.move.Plan;
import everyblade.picture.report.page.Block;
import everyblade.picture.report.page.Block.Cell;
import everyblade.picture.report.page.Block.Column;
import everyblade.picture.report.page.Margins;
import everyblade.picture.report.page.PageWords;
import everyblade.picture.report.page.Pages;
import everyblade.spi.EngineModel;
import everyblade.words.Words;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * A plan before the first move as a card to take along: each port with what is done through it, and room to tick it off. One
 * page: of an engine with many views each port has but a few lines.
 */
public final class PlanPdf {

    private static final int MOST_OUT_OF_REACH = 4;
    /** Not more views than these have a line each. */
    private static final int MOST_LINES = 24;

    private PlanPdf() {}

    /**
     * Writes the card.
     *
     * @param model of the engine
     * @param outOfReach what no move reaches
     * @param at when it was planned
     * @param words in which it is told
     */
    public static byte[] write(EngineModel model, Plan plan, List<OutOfReach> outOfReach, Instant at, Words words) {
        OutlineWords told = new OutlineWords(words);
        return new Pages(
                        told.say("title", model.name()),
                        ReportPdf.language(words),
                        at,
                        model.id().hashCode(),
                        new Margins(
                                told.say("head", model.name(), model.id()),
                                "",
                                model.notice().orElse(""),
                                told.say("foot", Telling.minute(at), "next"),
                                words),
                        blocks(model, plan, outOfReach, told))
                .pdf();
    }

    private static List<Block> blocks(EngineModel model, Plan plan, List<OutOfReach> outOfReach, OutlineWords told) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Paragraph(PageWords.strong(told.effort(plan) + ".")));
        List<List<Cell>> rows = new ArrayList<>();
        List<Outline.Visit> visits = Outline.of(plan).visits();
        boolean each = visits.stream().mapToInt(visit -> visit.stops().size()).sum() <= MOST_LINES;
        for (Outline.Visit visit : visits) {
            List<PageWords> lines = new ArrayList<>(List.of(PageWords.strong(told.port(model, visit))));
            if (each) {
                visit.stops().forEach(stop -> lines.add(PageWords.of(stop.view().id() + " – " + told.stop(stop))));
            } else {
                lines.add(PageWords.of(told.views(visit)));
            }
            rows.add(List.of(
                    Cell.of("" + (rows.size() + 1)),
                    new Cell(lines),
                    Cell.of(told.minutes(visit.minutes())),
                    Cell.of("")));
        }
        blocks.add(new Block.Table(
                List.of(
                        Column.number(told.say("number"), 0.4),
                        Column.of(told.say("port"), 9.4),
                        Column.number(told.say("takes"), 0.8),
                        Column.of(told.say("done"), 0.6)),
                rows));
        if (!outOfReach.isEmpty() && outOfReach.size() <= MOST_OUT_OF_REACH) {
            outOfReach.forEach(out -> blocks.add(new Block.Item(PageWords.of(told.say("out", told.outOfReach(out))))));
        } else if (!outOfReach.isEmpty()) {
            blocks.add(new Block.Item(
                    PageWords.of(told.say("outByRow", OutlineWords.outOfReach(outOfReach), "everyblade plan"))));
        }
        return blocks;
    }
}
