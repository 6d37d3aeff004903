package everyblade.testkit;

import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.RowCoverage;
import everyblade.core.entry.EntryParser;
import everyblade.core.entry.Refusal;
import everyblade.core.entry.Settings;
import everyblade.core.sight.Criteria;
import everyblade.core.sight.Progress;
import everyblade.core.sight.SightStore;
import everyblade.core.sight.Sights;
import everyblade.core.sight.ViewScene;
import everyblade.core.turning.Engine;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Logged;
import everyblade.core.turning.Situation;
import everyblade.spi.EngineModel;
import everyblade.spi.Row;
import everyblade.spi.View;
import everyblade.words.Words;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * An inspection of a model in thought: what a technician would enter at each of its views, and what its views could show
 * at best.
 *
 * @param files contents of its mesh files, by name
 */
record RuleTrial(EngineModel model, Map<String, byte[]> files) {

    /** As much of a zone must be within reach as makes it accessible at all. */
    private static final double LEAST_REACH = 0.05;

    /** Entries that cannot be made, and why. */
    List<String> refusals() {
        List<String> refused = new ArrayList<>();
        for (View view : model.views()) {
            List<String> entries = entries(view);
            try {
                Fold fold = Fold.start(Engine.of(model));
                for (int i = 0; i < entries.size(); i++) {
                    String entry = entries.get(i);
                    fold = fold.with(new Logged(i + 1, Instant.EPOCH, "trial", false, entry, EntryParser.parse(entry)));
                }
            } catch (Refusal refusal) {
                refused.add("view " + view.id() + ": " + String.join("; ", entries) + ": "
                        + Words.of(Locale.ENGLISH).say(refusal.why()));
            }
        }
        return refused;
    }

    /** In the rotor's normal direction if its first pad allows that. */
    private List<String> entries(View view) {
        Row row = model.row(view.row()).orElseThrow();
        String watched = row.spool()
                .flatMap(model::spool)
                .map(spool ->
                        spool.pads().get(0).directions().contains(spool.normal()) ? "turn on 1 rev" : "turn back 1 rev")
                .orElse("look");
        List<String> entries =
                new ArrayList<>(List.of("heat 20 C", "view " + view.id(), "datum " + row.id() + " 1", watched));
        view.stations().stream().skip(1).forEach(station -> entries.addAll(List.of("at " + station.id(), watched)));
        return entries;
    }

    /** Zones that no view of their row can show, of rows that have a view. */
    List<String> beyondReach(Progress progress) {
        ViewScene scene = new ViewScene(model, files, Map.of());
        Sights sights = new Sights(scene, model.id(), Criteria.USUAL, SightStore.NONE, progress);
        Coverage coverage = Coverage.of(Situation.start(Engine.of(model)), Settings.USUAL, sights);
        List<String> beyond = new ArrayList<>();
        for (RowCoverage row : coverage.rows()) {
            if (model.views().stream()
                    .noneMatch(view -> view.row().equals(row.row().id()))) {
                continue;
            }
            List<String> zones = row.zoning().names();
            for (int zone = 0; zone < zones.size(); zone++) {
                if (row.areas(1, zone).reach() < LEAST_REACH) {
                    beyond.add("row " + row.row().id() + ": no view shows " + zones.get(zone));
                }
            }
        }
        return beyond;
    }
}
