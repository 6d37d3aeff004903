package everyblade.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import everyblade.core.finding.Finding;
import everyblade.core.finding.Findings;
import everyblade.core.finding.compared.ComparedRow;
import everyblade.core.finding.compared.ComparedRow.By;
import everyblade.core.finding.growth.Matching;
import everyblade.core.turning.Airfoils;
import everyblade.session.around.OneLine;
import everyblade.session.around.Surroundings;
import everyblade.session.job.Comparison;
import everyblade.session.job.OpenedJob;
import java.nio.file.Path;
import java.util.BitSet;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Function;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Holds two records against each other. */
@Command(name = "compare", description = "${bundle:help.compare}")
final class CompareCommand implements Callable<Integer> {

    private final Surroundings around;

    @Parameters(index = "0", paramLabel = "JOB", description = "${bundle:help.job}")
    private Path job;

    @Parameters(index = "1", paramLabel = "LATER", description = "${bundle:help.compare.later}")
    private Path later;

    @Option(names = "--json", description = "${bundle:help.json}")
    private boolean json;

    CompareCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() {
        OpenedJob first = OpenedJob.readWithDoubts(around, job);
        OpenedJob second = OpenedJob.readWithDoubts(around, later);
        Comparison compared = Comparison.of(first, first.coverage(), second, around.words());
        compared.leftOut().forEach(id -> around.err().println(around.words().say("compare.leftOut", id)));
        Matching matching = Matching.of(Findings.of(first.fold()), Findings.of(second.fold()));
        if (json) {
            around.out().println(JsonText.of(json(first, second, compared.rows(), matching)));
        } else {
            text(first, second, compared);
        }
        return Commands.FINE;
    }

    private void text(OpenedJob first, OpenedJob second, Comparison compared) {
        List<ComparedRow> rows = compared.rows();
        say(named(1, first));
        say(named(2, second));
        Table table = new Table().row(around.words().say("compare.columns").split("\\|"));
        for (ComparedRow row : rows) {
            add(table, row.row().id(), OneLine.of(row.row().name()), row::count);
        }
        if (rows.size() > 1) {
            add(
                    table,
                    around.words().say("compare.all"),
                    "",
                    by -> rows.stream().mapToInt(row -> row.count(by)).sum());
        }
        table.lines().forEach(around.out()::println);
        for (ComparedRow row : rows) {
            airfoils(row, By.FIRST);
            airfoils(row, By.SECOND);
            airfoils(row, By.NONE);
        }
        compared.growth().forEach(this::say);
    }

    private static void add(Table table, String id, String name, Function<By, Integer> count) {
        int cells = 0;
        for (By by : By.values()) {
            cells += count.apply(by);
        }
        table.row(
                id,
                name,
                "" + cells,
                "" + count.apply(By.BOTH),
                "" + count.apply(By.FIRST),
                "" + count.apply(By.SECOND),
                "" + count.apply(By.NONE));
    }

    private void airfoils(ComparedRow row, By by) {
        BitSet airfoils = row.airfoils().get(by);
        if (!airfoils.isEmpty()) {
            say(around.words()
                    .say("compare.only", row.row().id(), row.count(by), by, Airfoils.of(row.row(), airfoils)));
        }
    }

    private String named(int which, OpenedJob job) {
        return around.words()
                .say(
                        "compare.job",
                        which,
                        job.engine().model().name(),
                        job.beginning().serial(),
                        job.beginning().at(),
                        job.beginning().by(),
                        job.journal().lines().size(),
                        job.journal().head());
    }

    private void say(String line) {
        around.out().println(OneLine.of(line));
    }

    private static ObjectNode json(OpenedJob first, OpenedJob second, List<ComparedRow> rows, Matching matching) {
        ObjectNode json = JsonText.object();
        json.put("first", first.journal().head());
        json.put("second", second.journal().head());
        ArrayNode list = json.putArray("rows");
        for (ComparedRow row : rows) {
            list.addObject()
                    .put("row", row.row().id())
                    .put("both", row.count(By.BOTH))
                    .put("first", row.count(By.FIRST))
                    .put("second", row.count(By.SECOND))
                    .put("none", row.count(By.NONE));
        }
        ObjectNode findings = json.putObject("findings");
        ArrayNode pairs = findings.putArray("both");
        matching.pairs()
                .forEach(pair -> pairs.addObject()
                        .put("first", pair.then().entry())
                        .put("second", pair.now().entry()));
        entries(findings.putArray("first"), matching.missing());
        entries(findings.putArray("second"), matching.fresh());
        return json;
    }

    private static void entries(ArrayNode list, List<Finding> findings) {
        findings.forEach(finding -> list.add(finding.entry()));
    }
}
