package everyblade.picture.report;

import everyblade.core.gap.OutOfReach;
import everyblade.core.move.Outline;
import everyblade.core.move.Plan;
import everyblade.core.move.Ticked;
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
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A plan before the first move as a card to take along: each port with what is done through it, and room to tick it off; or the
 * list of a job, with what is done by now. One page: of an engine with many views each port has but a few lines.
 */
public final class PlanPdf {

    private static final int MOST_OUT_OF_REACH = 4;
    /** Not more views than these have a line each. */
    private static final int MOST_LINES = 24;
    /** Widths of the last column, of 11.2 of the table. */
    private static final double ROOM_TO_TICK = 0.6;

    private static final double ROOM_TO_TELL = 1.4;

    private PlanPdf() {}

    /**
     * How far a job is.
     *
     * @param serial number of its engine
     * @param entries of its record, so many
     * @param doubts what must not stay unsaid where it is shown
     * @param ticked its list
     */
    public record Standing(String serial, int entries, List<String> doubts, Ticked ticked) {

        public Standing {
            doubts = List.copyOf(doubts);
        }
    }

    /**
     * Writes the card of a plan before the job.
     *
     * @param model of the engine
     * @param outOfReach what no move reaches
     * @param at when it was planned
     * @param words in which it is told
     */
    public static byte[] write(EngineModel model, Plan plan, List<OutOfReach> outOfReach, Instant at, Words words) {
        OutlineWords told = new OutlineWords(words);
        Margins margins = new Margins(
                told.say("head", model.name(), model.id()),
                "",
                model.notice().orElse(""),
                told.say("foot", Telling.minute(at), "next"),
                words);
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Paragraph(PageWords.strong(told.effort(plan) + ".")));
        List<Outline.Visit> visits = Outline.of(plan).visits();
        boolean each = visits.stream().mapToInt(visit -> visit.stops().size()).sum() <= MOST_LINES;
        List<List<Cell>> rows = new ArrayList<>();
        for (Outline.Visit visit : visits) {
            List<String> lines =
                    each ? visit.stops().stream().map(stop -> line(stop, told)).toList() : List.of(told.views(visit));
            rows.add(row(rows.size() + 1, model, visit, lines, "", told));
        }
        blocks.add(table(ROOM_TO_TICK, rows, told));
        blocks.addAll(out(outOfReach, told));
        return pdf(model, at, margins, blocks, told);
    }

    /**
     * Writes the list of a job.
     *
     * @param model of its engine
     * @param plan of the job from nothing seen
     * @param outOfReach what no move reaches
     * @param standing how far it is
     * @param at when that was
     * @param words in which it is told
     */
    public static byte[] write(
            EngineModel model, Plan plan, List<OutOfReach> outOfReach, Standing standing, Instant at, Words words) {
        OutlineWords told = new OutlineWords(words);
        Margins margins = new Margins(
                told.say("list.head", model.name(), model.id(), standing.serial()),
                "",
                Stream.concat(standing.doubts().stream(), model.notice().stream())
                        .collect(Collectors.joining(" ")),
                told.say("list.foot", Telling.minute(at), standing.entries(), "next"),
                words);
        Ticked ticked = standing.ticked();
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Paragraph(PageWords.of(told.effort(plan) + ".")));
        blocks.add(new Block.Paragraph(PageWords.strong(told.left(ticked))));
        boolean each =
                ticked.visits().stream().mapToInt(visit -> visit.stops().size()).sum() <= MOST_LINES;
        List<List<Cell>> rows = new ArrayList<>();
        for (Ticked.Visit visit : ticked.visits()) {
            List<String> lines = each
                    ? visit.stops().stream()
                            .map(stop -> line(stop.planned(), told) + " – " + told.how(stop))
                            .toList()
                    : List.of(told.views(visit));
            String how = visit.how() == Ticked.How.OPEN ? "" : told.how(visit);
            rows.add(row(rows.size() + 1, model, visit.planned(), lines, how, told));
        }
        blocks.add(table(ROOM_TO_TELL, rows, told));
        blocks.addAll(out(outOfReach, told));
        return pdf(model, at, margins, blocks, told);
    }

    private static byte[] pdf(EngineModel model, Instant at, Margins margins, List<Block> blocks, OutlineWords told) {
        return new Pages(
                        told.say("title", model.name()),
                        ReportPdf.language(told.words()),
                        at,
                        model.id().hashCode(),
                        margins,
                        blocks)
                .pdf();
    }

    private static String line(Outline.Stop stop, OutlineWords told) {
        return stop.view().id() + " – " + told.stop(stop);
    }

    private static List<Cell> row(
            int number, EngineModel model, Outline.Visit visit, List<String> lines, String how, OutlineWords told) {
        return List.of(
                Cell.of("" + number),
                new Cell(Stream.concat(
                                Stream.of(PageWords.strong(told.port(model, visit))),
                                lines.stream().map(PageWords::of))
                        .toList()),
                Cell.of(told.minutes(visit.minutes())),
                Cell.of(how));
    }

    private static Block table(double done, List<List<Cell>> rows, OutlineWords told) {
        return new Block.Table(
                List.of(
                        Column.number(told.say("number"), 0.55),
                        Column.of(told.say("port"), 9.85 - done),
                        Column.number(told.say("takes"), 0.8),
                        Column.of(told.say("done"), done)),
                rows);
    }

    private static List<Block> out(List<OutOfReach> outOfReach, OutlineWords told) {
        List<Block> blocks = new ArrayList<>();
        if (!outOfReach.isEmpty() && outOfReach.size() <= MOST_OUT_OF_REACH) {
            outOfReach.forEach(out -> blocks.add(new Block.Item(PageWords.of(told.say("out", told.outOfReach(out))))));
        } else if (!outOfReach.isEmpty()) {
            blocks.add(new Block.Item(
                    PageWords.of(told.say("outByRow", OutlineWords.outOfReach(outOfReach), "everyblade plan"))));
        }
        return blocks;
    }
}
