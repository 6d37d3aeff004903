package everyblade.picture.report;

import everyblade.core.entry.Entry.LengthUnit;
import everyblade.core.finding.Finding;
import everyblade.core.finding.Findings;
import everyblade.core.finding.Length;
import everyblade.core.finding.Measured;
import everyblade.core.finding.growth.Growth;
import everyblade.core.finding.growth.Growth.Trend;
import everyblade.core.finding.growth.LeftAgain;
import everyblade.core.finding.growth.Matching;
import everyblade.core.finding.growth.Usage;
import everyblade.core.gap.GapText;
import everyblade.picture.chart.TrendChart;
import everyblade.picture.report.page.Block;
import everyblade.picture.report.page.Block.Cell;
import everyblade.picture.report.page.Block.Column;
import everyblade.picture.report.page.PageWords;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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
        blocks.add(new Block.Heading(1, "Since the last record"));
        blocks.add(new Block.Paragraph(PageWords.of("Compared with the record that was started "
                + Telling.minute(last.at()) + " UTC, whose last line has the hash " + last.head() + ". "
                + run.map(known -> "Run since: " + told(known) + ".")
                        .orElse("What was run since is not stated in both records, so growth is told without a rate.")
                + " A finding is taken for the same if its row, part, kind and zone agree. Growth bears the uncertainty"
                + " of both sizes.")));
        blocks.addAll(table(job, matching, run));
        blocks.addAll(chart(job, last, matching));
        blocks.addAll(others(job, "Not in the last record", "entry", matching.fresh()));
        blocks.addAll(others(job, "In the last record, and not entered now", "entry then", matching.missing()));
        blocks.addAll(leftAgain(job, last));
        return blocks;
    }

    private static String told(Usage.Run run) {
        return run.number().stripTrailingZeros().toPlainString() + " "
                + run.interval().name().toLowerCase(Locale.ROOT);
    }

    private static List<Block> table(Reported job, Matching matching, Optional<Usage.Run> run) {
        List<List<Cell>> rows = new ArrayList<>();
        for (Matching.Pair pair : matching.pairs()) {
            for (Growth growth : Growth.of(pair)) {
                rows.add(List.of(
                        Cell.of(pair.then().entry() + " → " + pair.now().entry()),
                        Cell.of(what(job, pair.now())),
                        Cell.of(growth.dimension().word()),
                        Cell.of(size(growth.then())),
                        Cell.of(size(growth.now())),
                        Cell.of(PageWords.of(signed(growth.amount())), trend(growth)),
                        Cell.of(run.map(known -> rate(growth, known)).orElse("–"))));
            }
        }
        if (rows.isEmpty()) {
            return List.of(new Block.Paragraph(PageWords.of("No finding with a size is in both records.")));
        }
        String per = run.map(known -> "per 100 " + known.interval().name().toLowerCase(Locale.ROOT))
                .orElse("rate");
        return List.of(new Block.Table(
                List.of(
                        Column.of("entry then → now", 1.2),
                        Column.of("finding", 3),
                        Column.of("size", 0.9),
                        Column.of("then", 1.4),
                        Column.of("now", 1.4),
                        Column.of("growth", 2.1),
                        Column.of(per, 1.5)),
                rows));
    }

    private static String what(Reported job, Finding finding) {
        return finding.kind().word() + ", " + finding.row().name() + ", "
                + finding.row().kind().airfoil() + " " + finding.airfoil() + ", "
                + GapText.zones(
                        job.situation().engine().zonings().get(finding.row().id()), finding.zones());
    }

    private static String size(Measured size) {
        return number(size.value())
                + size.plusMinus().map(plusMinus -> " ± " + number(plusMinus)).orElse("") + " mm";
    }

    private static String signed(Measured amount) {
        return (amount.value().mm().signum() > 0 ? "+" : "") + size(amount);
    }

    private static String number(Length length) {
        return length.text(LengthUnit.MM, DECIMALS).replace(" mm", "");
    }

    private static PageWords trend(Growth growth) {
        return growth.trend() == Trend.GROWN
                ? PageWords.alert(growth.trend().words())
                : PageWords.faint(growth.trend().words());
    }

    private static String rate(Growth growth, Usage.Run run) {
        String rate = three(100 * growth.rate(run));
        return growth.rateError(run).isEmpty()
                ? rate + " mm"
                : rate + " ± " + three(100 * growth.rateError(run).getAsDouble()) + " mm";
    }

    private static String three(double number) {
        return number == 0
                ? "0"
                : BigDecimal.valueOf(number)
                        .round(new MathContext(3))
                        .stripTrailingZeros()
                        .toPlainString();
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
                                + growth.dimension().word(),
                        point(from, growth.then()),
                        point(to, growth.now())));
            }
        }
        if (lines.isEmpty() || !byCycles && !byHours) {
            return List.of();
        }
        String axis = byCycles ? "cycles" : "hours";
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(2, "Growth"));
        for (int first = 0; first < lines.size(); first += TrendChart.MOST) {
            List<TrendChart.Line> some = lines.subList(first, Math.min(lines.size(), first + TrendChart.MOST));
            blocks.add(new Block.Drawing(
                    WIDTH, HEIGHT, graphics -> TrendChart.paint(some, axis, graphics, WIDTH, HEIGHT)));
        }
        return blocks;
    }

    private static TrendChart.Point point(double run, Measured size) {
        return new TrendChart.Point(
                run,
                size.value().millimetres(),
                size.plusMinus().map(Length::millimetres).orElse(0.0));
    }

    private static List<Block> others(Reported job, String heading, String entry, List<Finding> findings) {
        if (findings.isEmpty()) {
            return List.of();
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(2, heading));
        findings.forEach(finding -> blocks.add(
                new Block.Item(PageWords.of(what(job, finding) + " (" + entry + " " + finding.entry() + ")"))));
        return blocks;
    }

    private static List<Block> leftAgain(Reported job, LastRecord last) {
        List<String> twice = LeftAgain.first(job.gaps(), last.coverage()).stream()
                .filter(LeftAgain.Left::lastTimeToo)
                .map(left -> GapText.of(left.gap()))
                .toList();
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(2, "Not seen last time either"));
        if (twice.isEmpty()) {
            blocks.add(new Block.Paragraph(PageWords.of("Nothing that is left now was left last time.")));
        }
        twice.forEach(gap -> blocks.add(new Block.Item(PageWords.alert(gap))));
        return blocks;
    }
}
