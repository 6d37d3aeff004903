package everyblade.picture.report;

import everyblade.core.entry.Entry.LengthUnit;
import everyblade.core.entry.ZonePhrase;
import everyblade.core.finding.Finding;
import everyblade.core.finding.Findings;
import everyblade.core.finding.Length;
import everyblade.core.finding.Measured;
import everyblade.core.finding.growth.Growth;
import everyblade.core.finding.growth.Growth.Trend;
import everyblade.core.finding.growth.LeftAgain;
import everyblade.core.finding.growth.Matching;
import everyblade.core.finding.growth.Usage;
import everyblade.picture.chart.TrendChart;
import everyblade.picture.report.page.Block;
import everyblade.picture.report.page.Block.Cell;
import everyblade.picture.report.page.Block.Column;
import everyblade.picture.report.page.PageWords;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The chapter on what became of things since the same engine's last record. */
final class Since {

    private static final double WIDTH = 499;
    private static final double HEIGHT = 210;
    private static final int DECIMALS = 3;

    private Since() {}

    static List<Block> of(Reported job) {
        if (job.exhibits().last().isEmpty()) {
            return List.of();
        }
        LastRecord last = job.exhibits().last().get();
        Matching matching = Matching.of(Findings.of(last.fold()), Findings.of(job.fold()));
        Optional<Usage.Run> run = Usage.of(job.fold()).since(Usage.of(last.fold()));
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(1, job.say("since")));
        blocks.add(new Block.Paragraph(PageWords.of(job.say(
                "since.told",
                Telling.minute(last.at()),
                last.head(),
                run.map(known -> told(job, known)).orElse(job.say("since.noRun"))))));
        blocks.addAll(table(job, matching, run));
        blocks.addAll(chart(job, last, matching));
        blocks.addAll(others(job, "since.fresh", matching.fresh()));
        blocks.addAll(others(job, "since.missing", matching.missing()));
        blocks.addAll(leftAgain(job, last));
        return blocks;
    }

    private static String told(Reported job, Usage.Run run) {
        return job.say("since.run", job.words().plain(run.number().stripTrailingZeros()), interval(job, run));
    }

    /** What is counted, such as {@code hours}. */
    private static String interval(Reported job, Usage.Run run) {
        return job.say("since." + run.interval().name());
    }

    private static List<Block> table(Reported job, Matching matching, Optional<Usage.Run> run) {
        List<List<Cell>> rows = new ArrayList<>();
        for (Matching.Pair pair : matching.pairs()) {
            for (Growth growth : Growth.of(pair)) {
                rows.add(List.of(
                        Cell.of(pair.then().entry() + " → " + pair.now().entry()),
                        Cell.of(what(job, pair.now())),
                        Cell.of(job.say(growth.dimension())),
                        Cell.of(size(job, growth.then())),
                        Cell.of(size(job, growth.now())),
                        Cell.of(PageWords.of(signed(job, growth.amount())), trend(job, growth)),
                        Cell.of(run.map(known -> rate(job, growth, known)).orElse("–"))));
            }
        }
        if (rows.isEmpty()) {
            return List.of(new Block.Paragraph(PageWords.of(job.say("since.none"))));
        }
        String per =
                run.map(known -> job.say("since.per", interval(job, known))).orElse(job.say("since.rate"));
        return List.of(new Block.Table(
                List.of(
                        Column.of(job.say("since.entries"), 1.2),
                        Column.of(job.say("since.finding"), 3),
                        Column.of(job.say("findings.size"), 0.9),
                        Column.of(job.say("since.then"), 1.4),
                        Column.of(job.say("since.now"), 1.4),
                        Column.of(job.say("since.growth"), 2.1),
                        Column.of(per, 1.5)),
                rows));
    }

    private static String what(Reported job, Finding finding) {
        return job.say(finding.kind()) + ", " + finding.row().name() + ", "
                + job.map().airfoil(finding.row()) + " " + finding.airfoil() + ", "
                + job.words()
                        .say(ZonePhrase.of(
                                job.situation()
                                        .engine()
                                        .zonings()
                                        .get(finding.row().id()),
                                finding.zones()));
    }

    private static String size(Reported job, Measured size) {
        return number(job, size.value())
                + size.plusMinus()
                        .map(plusMinus -> " ± " + number(job, plusMinus))
                        .orElse("") + " mm";
    }

    private static String signed(Reported job, Measured amount) {
        return (amount.value().mm().signum() > 0 ? "+" : "") + size(job, amount);
    }

    private static String number(Reported job, Length length) {
        return job.words().plain(length.shown(LengthUnit.MM, DECIMALS).number());
    }

    private static PageWords trend(Reported job, Growth growth) {
        return growth.trend() == Trend.GROWN
                ? PageWords.alert(job.say(growth.trend()))
                : PageWords.faint(job.say(growth.trend()));
    }

    private static String rate(Reported job, Growth growth, Usage.Run run) {
        String rate = three(job, 100 * growth.rate(run));
        return growth.rateError(run).isEmpty()
                ? rate + " mm"
                : rate + " ± " + three(job, 100 * growth.rateError(run).getAsDouble()) + " mm";
    }

    private static String three(Reported job, double number) {
        return number == 0
                ? "0"
                : job.words()
                        .plain(BigDecimal.valueOf(number)
                                .round(new MathContext(3))
                                .stripTrailingZeros());
    }

    private static List<Block> chart(Reported job, LastRecord last, Matching matching) {
        Usage now = Usage.of(job.fold());
        Usage then = Usage.of(last.fold());
        boolean byCycles = now.cycles().isPresent() && then.cycles().isPresent();
        boolean byHours = now.hours().isPresent() && then.hours().isPresent();
        if (now.since(then).isEmpty()) {
            return List.of();
        }
        double from = (byCycles ? then.cycles() : then.hours()).orElseThrow().doubleValue();
        double to = (byCycles ? now.cycles() : now.hours()).orElseThrow().doubleValue();
        List<TrendChart.Line> lines = new ArrayList<>();
        for (Matching.Pair pair : matching.pairs()) {
            for (Growth growth : Growth.of(pair)) {
                lines.add(new TrendChart.Line(
                        pair.now().kind().word() + " " + pair.now().row().id() + " "
                                + pair.now().airfoil() + ", "
                                + job.say(growth.dimension()),
                        point(from, growth.then()),
                        point(to, growth.now())));
            }
        }
        if (lines.isEmpty() || !byCycles && !byHours) {
            return List.of();
        }
        String axis = job.say(byCycles ? "since.CYCLES" : "since.HOURS");
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(2, job.say("since.chart")));
        for (int first = 0; first < lines.size(); first += TrendChart.MOST) {
            List<TrendChart.Line> some = lines.subList(first, Math.min(lines.size(), first + TrendChart.MOST));
            blocks.add(new Block.Drawing(
                    WIDTH, HEIGHT, graphics -> TrendChart.paint(some, axis, job.words(), graphics, WIDTH, HEIGHT)));
        }
        return blocks;
    }

    private static TrendChart.Point point(double run, Measured size) {
        return new TrendChart.Point(
                run,
                size.value().millimetres(),
                size.plusMinus().map(Length::millimetres).orElse(0.0));
    }

    private static List<Block> others(Reported job, String key, List<Finding> findings) {
        if (findings.isEmpty()) {
            return List.of();
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(2, job.say(key)));
        findings.forEach(finding ->
                blocks.add(new Block.Item(PageWords.of(job.say(key + ".of", what(job, finding), finding.entry())))));
        return blocks;
    }

    private static List<Block> leftAgain(Reported job, LastRecord last) {
        List<String> twice = LeftAgain.first(job.gaps(), last.coverage()).stream()
                .filter(LeftAgain.Left::lastTimeToo)
                .map(left -> Telling.gap(job, left.gap()))
                .toList();
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(2, job.say("since.left")));
        if (twice.isEmpty()) {
            blocks.add(new Block.Paragraph(PageWords.of(job.say("since.leftNone"))));
        }
        twice.forEach(gap -> blocks.add(new Block.Item(PageWords.alert(gap))));
        return blocks;
    }
}
