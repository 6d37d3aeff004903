package everyblade.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import everyblade.core.coverage.Coverage;
import everyblade.core.entry.ZonePhrase;
import everyblade.core.entry.Zoning;
import everyblade.core.finding.Figure;
import everyblade.core.finding.Finding;
import everyblade.core.finding.Findings;
import everyblade.core.finding.Judgement;
import everyblade.core.finding.Limits;
import everyblade.core.finding.Ruling;
import everyblade.core.finding.closing.Where;
import everyblade.core.turning.Logged;
import everyblade.session.around.OneLine;
import everyblade.session.around.Surroundings;
import everyblade.session.job.GrowthText;
import everyblade.session.job.OpenedJob;
import everyblade.session.job.VerdictText;
import everyblade.spi.Row;
import everyblade.words.Words;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says what was found, and what the entered limits say of it. */
@Command(name = "findings", description = "${bundle:help.findings}")
final class FindingsCommand implements Callable<Integer> {

    private final Surroundings around;

    @Parameters(index = "0", paramLabel = "JOB", description = "${bundle:help.job}")
    private Path job;

    @Option(names = "--json", description = "${bundle:help.json}")
    private boolean json;

    @Option(names = "--csv", description = "${bundle:help.findings.csv}")
    private boolean csv;

    FindingsCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() {
        OpenedJob opened = OpenedJob.read(around, job);
        Coverage coverage = opened.coverage();
        Csv.requireOnly(json && csv);
        if (csv) {
            around.out().print(CellTables.findings(opened, coverage));
        } else if (json) {
            around.out().println(JsonText.of(json(opened, coverage, around.words())));
        } else {
            text(opened, coverage);
        }
        return Commands.FINE;
    }

    /** The findings, and the limits where there are any, as JSON. */
    static ObjectNode json(OpenedJob opened, Coverage coverage, Words words) {
        ObjectNode json = JsonText.object();
        Optional<Limits> limits = opened.limits();
        limits.ifPresentOrElse(known -> json.set("limits", json(known)), () -> json.putNull("limits"));
        Map<Integer, Judgement> judged = judged(opened, coverage);
        ArrayNode list = json.putArray("findings");
        for (Finding finding : Findings.of(opened.fold())) {
            ObjectNode one = list.addObject();
            Zoning zoning = opened.engine().zonings().get(finding.row().id());
            one.put("entry", finding.entry());
            one.put("kind", finding.kind().word());
            one.put("row", finding.row().id());
            one.put("airfoil", finding.airfoil());
            ArrayNode zones = one.putArray("zones");
            for (int zone = 0; zone < zoning.size(); zone++) {
                if (finding.zones().contains(zone)) {
                    zones.add(zoning.names().get(zone));
                }
            }
            new TreeMap<>(finding.sizes())
                    .forEach((dimension, size) ->
                            one.put(dimension.word(), size.value().mm()));
            finding.sizes().values().stream()
                    .findFirst()
                    .flatMap(size -> size.plusMinus())
                    .ifPresent(plusMinus -> one.put("plusMinus", plusMinus.mm()));
            Optional.ofNullable(judged.get(finding.entry())).ifPresent(judgement -> add(one, judgement, words));
            settled(opened, finding).ifPresent(settle -> one.put("settledBy", settle.number()));
        }
        return json;
    }

    private static ObjectNode json(Limits limits) {
        ObjectNode json = JsonText.object();
        json.put("name", limits.name());
        limits.notice().ifPresent(notice -> json.put("notice", notice));
        limits.manual().ifPresent(manual -> json.put("manual", manual));
        limits.revision().ifPresent(revision -> json.put("revision", revision));
        return json;
    }

    private static void add(ObjectNode one, Judgement judgement, Words words) {
        one.put("verdict", JsonText.token(judgement.verdict()));
        ArrayNode rulings = one.putArray("rulings");
        for (Ruling ruling : judgement.rulings()) {
            ObjectNode each = rulings.addObject();
            each.put("rule", ruling.rule().id());
            each.put("verdict", JsonText.token(ruling.verdict()));
            each.put("outcome", words.say(ruling.outcome()));
            ruling.again().ifPresent(again -> each.put("again", again.text()));
            ArrayNode figures = each.putArray("figures");
            for (Figure figure : ruling.figures()) {
                figures.addObject()
                        .put("what", words.say(figure.what()))
                        .put("value", words.say(figure.value()))
                        .put("limit", words.say(figure.limit()))
                        .put("margin", figure.margin().map(words::say).orElse(""))
                        .put("verdict", JsonText.token(figure.verdict()));
            }
        }
    }

    private static Map<Integer, Judgement> judged(OpenedJob opened, Coverage coverage) {
        Map<Integer, Judgement> judged = new TreeMap<>();
        opened.judged(coverage)
                .forEach(judgement -> judged.put(judgement.finding().entry(), judgement));
        return judged;
    }

    private static Optional<Logged> settled(OpenedJob opened, Finding finding) {
        return Optional.ofNullable(opened.fold().situation().ledger().outcomes().get(finding.entry()))
                .map(number -> opened.fold().entries().get(number - 1));
    }

    private void text(OpenedJob opened, Coverage coverage) {
        Optional<Limits> limits = opened.limits();
        List<Finding> findings = Findings.of(opened.fold());
        say(VerdictText.source(limits, around.words()));
        Map<Integer, Judgement> judged = judged(opened, coverage);
        for (Finding finding : findings) {
            Optional<Judgement> judgement = Optional.ofNullable(judged.get(finding.entry()));
            say(around.words()
                    .say(
                            "findings.entry",
                            finding.entry(),
                            finding.kind(),
                            where(opened, finding),
                            judgement.map(Judgement::verdict)));
            judgement.ifPresent(
                    known -> VerdictText.rulings(known, around.words()).forEach(line -> say("  " + line)));
            settled(opened, finding)
                    .ifPresent(settle -> say("  "
                            + around.words().say("findings.settled", settle.number(), settle.by(), settle.text())));
        }
        opened.previous()
                .ifPresent(then -> GrowthText.of(opened, then, around.words()).forEach(this::say));
        say(around.words().say("findings.count", findings.size()));
    }

    private void say(String line) {
        around.out().println(OneLine.of(line));
    }

    private String where(OpenedJob opened, Finding finding) {
        Row row = finding.row();
        return around.words()
                .say(new Where.OnAirfoil(
                        row.name(),
                        row.id(),
                        row.kind(),
                        finding.airfoil(),
                        ZonePhrase.of(opened.engine().zonings().get(row.id()), finding.zones())));
    }
}
