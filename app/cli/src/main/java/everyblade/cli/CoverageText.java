package everyblade.cli;

import everyblade.core.coverage.Basis;
import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.Headline;
import everyblade.core.coverage.RowCoverage;
import everyblade.core.coverage.Tally;
import everyblade.core.entry.ZoneSet;
import everyblade.core.finding.Verdict;
import everyblade.core.turning.Miscount;
import everyblade.core.turning.TakenAsExact;
import everyblade.picture.MapWords;
import everyblade.picture.ShareFigures;
import everyblade.picture.Terms;
import everyblade.record.Beginning;
import everyblade.session.around.OneLine;
import everyblade.session.job.OpenedJob;
import everyblade.session.job.VerdictText;
import everyblade.spi.EngineModel;
import everyblade.spi.Row;
import everyblade.words.Words;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;

/** A coverage for people. Percentages are rounded down, so 100 % means all. */
final class CoverageText {

    /** A count error that would read as 0.0° is not worth a line; degrees. */
    private static final double LEAST_TOLD = 0.05;

    private final Words words;
    private final MapWords map;

    /** @param words of whoever reads it */
    CoverageText(Words words) {
        this.words = words;
        this.map = MapWords.of(words);
    }

    /**
     * The lines.
     *
     * @param rows those to list; totals are of all rows
     */
    List<String> of(OpenedJob job, Coverage coverage, List<RowCoverage> rows) {
        List<String> lines = new ArrayList<>(heading(job));
        lines.add("");
        lines.addAll(figures(coverage));
        lines.add("");
        lines.addAll(table(coverage, rows));
        lines.add("");
        lines.add(words.say("coverage.byPart", map.figures()));
        rows.forEach(row -> lines.add(parts(row)));
        lines.add("");
        lines.addAll(bases(coverage));
        lines.addAll(count(coverage));
        lines.add(words.say("findings.count", CoverageJson.findings(coverage)));
        lines.addAll(judged(job, coverage));
        return lines;
    }

    /** How many findings are within, beyond, or neither, and whose limits say so. */
    private List<String> judged(OpenedJob job, Coverage coverage) {
        if (job.limits().isEmpty()) {
            return List.of();
        }
        Map<Verdict, Integer> counts = new EnumMap<>(Verdict.class);
        job.judged(coverage).forEach(judgement -> counts.merge(judgement.verdict(), 1, Integer::sum));
        List<String> lines = new ArrayList<>();
        counts.forEach((verdict, count) -> lines.add("  " + count + " " + words.say(verdict)));
        lines.add(OneLine.of(VerdictText.source(job.limits(), words)));
        return lines;
    }

    private List<String> heading(OpenedJob job) {
        Beginning beginning = job.beginning();
        EngineModel model = job.engine().model();
        int entries = job.journal().lines().size();
        List<String> lines = new ArrayList<>();
        lines.add(words.say("coverage.engine", model.name(), model.id(), beginning.serial(), beginning.task()));
        model.notice().ifPresent(lines::add);
        lines.add(words.say(
                "coverage.record",
                entries,
                beginning.by(),
                beginning.at(),
                job.journal().head()));
        return lines.stream().map(OneLine::of).toList();
    }

    /** What the shares rest on. */
    private List<String> bases(Coverage coverage) {
        List<String> lines = new ArrayList<>();
        if (coverage.tally(Basis.COMPUTED).cells() > 0) {
            lines.add(words.say("coverage.computed"));
        }
        if (coverage.tally(Basis.DECLARED).cells() > 0) {
            lines.add(words.say("coverage.declared"));
        }
        coverage.rows().stream()
                .filter(row -> row.declaredCells() > 0)
                .forEach(row -> lines.add(words.say("coverage.apart", row.row().id(), row.declaredCells())));
        return lines;
    }

    /** The three figures of all rows, and what they are judged by. */
    List<String> figures(Coverage coverage) {
        List<String> lines = new ArrayList<>();
        for (Basis basis : Basis.values()) {
            if (coverage.tally(basis).cells() > 0) {
                lines.add(words.say("coverage.allRows", basis, new ShareFigures(coverage.headline(basis), map).line()));
            }
        }
        lines.add(Terms.of(coverage, map).line());
        return lines;
    }

    private List<String> table(Coverage coverage, List<RowCoverage> rows) {
        Table table = new Table().row(words.say("coverage.columns").split("\\|"));
        for (RowCoverage row : rows) {
            add(
                    table,
                    List.of(row.row().id(), OneLine.of(row.row().name()), words.say(row.basis())),
                    row.headline(),
                    row.tally(row.zoning().all()));
        }
        for (Basis basis : Basis.values()) {
            Tally tally = coverage.tally(basis);
            if (rows.size() > 1 && tally.cells() > 0) {
                add(table, List.of(words.say("coverage.all"), "", words.say(basis)), coverage.headline(basis), tally);
            }
        }
        return table.lines();
    }

    private void add(Table table, List<String> head, Headline headline, Tally tally) {
        ShareFigures figures = new ShareFigures(headline, map);
        List<String> cells = new ArrayList<>(head);
        cells.addAll(List.of(
                figures.left(),
                figures.seen(),
                figures.beyond(),
                "" + tally.cells(),
                "" + tally.seen(),
                "" + tally.part(),
                "" + tally.glimpsed(),
                "" + tally.maybe(),
                "" + tally.unseen(),
                "" + tally.noAccess(),
                "" + tally.coarse()));
        table.row(cells.toArray(String[]::new));
    }

    private String parts(RowCoverage row) {
        List<String> kinds = new ArrayList<>();
        kinds.addAll(bands(row, row.zoning().spans(), row.zoning()::span));
        kinds.addAll(bands(row, row.zoning().sides(), row.zoning()::side));
        kinds.addAll(bands(row, row.zoning().chords(), row.zoning()::chord));
        if (kinds.isEmpty()) {
            kinds.addAll(bands(row, row.zoning().names(), zone -> row.zoning().all()));
        }
        return row.row().id() + ": " + String.join("; ", kinds);
    }

    private List<String> bands(RowCoverage row, List<String> names, IntFunction<ZoneSet> zones) {
        List<String> bands = new ArrayList<>();
        for (int band = 0; band < names.size(); band++) {
            bands.add(names.get(band) + " " + new ShareFigures(row.headline(zones.apply(band)), map).brief());
        }
        return bands.isEmpty() ? bands : List.of(String.join(", ", bands));
    }

    private List<String> count(Coverage coverage) {
        List<String> lines = new ArrayList<>();
        coverage.situation().countErrors().stream()
                .filter(error -> error.outside() || Math.abs(error.degrees()) >= LEAST_TOLD)
                .map(error -> Miscount.of(error, coverage.row(error.row()).row()))
                .map(words::say)
                .forEach(lines::add);
        TakenAsExact.of(coverage.situation()).map(words::say).ifPresent(lines::add);
        List<String> uncounted = coverage.rows().stream()
                .map(RowCoverage::row)
                .filter(row -> !coverage.situation().counting(row))
                .map(Row::id)
                .toList();
        if (!uncounted.isEmpty()) {
            lines.add(words.say("coverage.uncounted", String.join(", ", uncounted)));
        }
        return lines;
    }
}
