package everyblade.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import everyblade.core.coverage.Areas;
import everyblade.core.coverage.Basis;
import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.Headline;
import everyblade.core.coverage.RowCoverage;
import everyblade.core.coverage.Tally;
import everyblade.core.entry.Settings;
import everyblade.core.entry.ZoneSet;
import everyblade.core.turning.Remark;
import everyblade.session.job.OpenedJob;
import everyblade.words.Words;
import java.util.List;
import java.util.Locale;
import java.util.function.IntFunction;

/** A coverage as JSON. Shares have four decimals and are 1 only where nothing is missing. */
final class CoverageJson {

    private CoverageJson() {}

    /**
     * The JSON of a job's coverage.
     *
     * @param rows those to list; totals are of all rows
     */
    static ObjectNode of(OpenedJob job, Coverage coverage, List<RowCoverage> rows, Words words) {
        Basis headline = coverage.leading();
        Tally all = coverage.tally(headline);
        ObjectNode json = JsonText.object();
        json.put("model", job.beginning().model());
        json.put("serial", job.beginning().serial());
        json.put("entries", job.journal().lines().size());
        json.put("head", job.journal().head());
        ArrayNode list = json.putArray("rows");
        rows.forEach(row -> list.add(row(row)));
        json.put("basis", headline.word());
        for (Basis basis : Basis.values()) {
            Tally total = coverage.tally(basis);
            if (total.cells() > 0) {
                json.set(basis.word(), total(total, coverage.headline(basis)));
            } else {
                json.putNull(basis.word());
            }
        }
        json.put("seenShare", JsonText.share(all.seen(), all.cells()));
        json.put("doneShare", JsonText.share(all.seen() + all.part(), all.cells()));
        json.set("headline", headline(coverage.headline(headline)));
        json.set("judgedBy", terms(coverage.settings()));
        json.put("findings", findings(coverage));
        if (job.limits().isPresent()) {
            ObjectNode judged = FindingsCommand.json(job, coverage, words);
            json.set("limits", judged.get("limits"));
            json.set("judged", judged.get("findings"));
        }
        json.put("lostCount", coverage.lostCount());
        return json;
    }

    /** How many findings were entered and not struck. */
    static long findings(Coverage coverage) {
        return coverage.situation().ledger().remarks().stream()
                .filter(remark -> remark.what() == Remark.What.FOUND)
                .count();
    }

    private static ObjectNode row(RowCoverage row) {
        Tally all = row.tally(row.zoning().all());
        ObjectNode json = JsonText.object();
        json.put("row", row.row().id());
        json.put("kind", row.row().kind().name().toLowerCase(Locale.ROOT));
        json.put("basis", row.basis().word());
        json.put("airfoils", row.row().count());
        states(json, all);
        json.put("glimpsed", all.glimpsed());
        json.put("noAccess", all.noAccess());
        json.put("coarse", all.coarse());
        json.put("fast", all.fast());
        json.put("stated", all.stated());
        json.put("damaged", all.damaged());
        json.put("declaredCells", row.declaredCells());
        json.put("seenShare", JsonText.share(all.seen(), all.cells()));
        json.put("doneShare", JsonText.share(all.seen() + all.part(), all.cells()));
        json.set("headline", headline(row.headline()));
        json.set("area", area(row.areas(row.zoning().all())));
        json.set("bySpan", bands(row, row.zoning().spans(), row.zoning()::span));
        json.set("bySide", bands(row, row.zoning().sides(), row.zoning()::side));
        json.set("byChord", bands(row, row.zoning().chords(), row.zoning()::chord));
        ArrayNode airfoils = json.putArray("airfoil");
        for (int n = 1; n <= row.row().count(); n++) {
            Tally one = row.tally(n, row.zoning().all());
            airfoils.addObject()
                    .put("n", n)
                    .put("seen", one.seen())
                    .put("part", one.part())
                    .put("maybe", one.maybe())
                    .put("unseen", one.unseen());
        }
        return json;
    }

    private static void states(ObjectNode json, Tally tally) {
        json.put("cells", tally.cells());
        json.put("seen", tally.seen());
        json.put("part", tally.part());
        json.put("maybe", tally.maybe());
        json.put("unseen", tally.unseen());
    }

    /** The three figures, in their order: what is left of what views can show, surface seen, surface that no view shows. */
    private static ObjectNode headline(Headline figures) {
        ObjectNode json = JsonText.object();
        json.put("left", JsonText.rest(figures.leftShare()));
        json.put("seen", JsonText.share(figures.seen()));
        json.put("beyond", JsonText.rest(figures.beyond()));
        json.put("leftCells", figures.left());
        json.put("withinCells", figures.within());
        return json;
    }

    /** The settings that say what counts; what is not judged is null. */
    private static ObjectNode terms(Settings settings) {
        ObjectNode json = JsonText.object();
        Settings.ALL.forEach(
                setting -> json.put(setting.name(), settings.values().get(setting.name())));
        json.putNull("light");
        json.putNull("depthOfField");
        return json;
    }

    private static ObjectNode total(Tally all, Headline figures) {
        ObjectNode json = JsonText.object();
        states(json, all);
        json.put("glimpsed", all.glimpsed());
        json.put("noAccess", all.noAccess());
        json.put("coarse", all.coarse());
        json.set("headline", headline(figures));
        json.put("seenShare", JsonText.share(all.seen(), all.cells()));
        json.put("doneShare", JsonText.share(all.seen() + all.part(), all.cells()));
        return json;
    }

    private static ObjectNode area(Areas areas) {
        ObjectNode json = JsonText.object();
        json.put("reach", JsonText.share(areas.reach()));
        json.put("seen", JsonText.share(areas.seen()));
        json.put("maybe", JsonText.share(areas.maybe()));
        json.put("seenOfReach", JsonText.share(areas.seenOfReach()));
        return json;
    }

    private static ObjectNode bands(RowCoverage row, List<String> names, IntFunction<ZoneSet> zones) {
        ObjectNode json = JsonText.object();
        for (int band = 0; band < names.size(); band++) {
            Tally tally = row.tally(zones.apply(band));
            json.put(names.get(band), JsonText.share(tally.seen() + tally.part(), tally.cells()));
        }
        return json;
    }
}
