package everyblade.core.coverage;

import everyblade.core.entry.Settings;
import everyblade.core.sight.Criteria;
import everyblade.core.sight.Progress;
import everyblade.core.sight.SightStore;
import everyblade.core.sight.Sights;
import everyblade.core.sight.ViewScene;
import everyblade.core.turning.CountError;
import everyblade.core.turning.Engine;
import everyblade.core.turning.Remark;
import everyblade.core.turning.Situation;
import everyblade.spi.Row;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What was seen of every row, of one situation. Immutable; {@link #after} makes the coverage of a later situation,
 * going on from this one wherever nothing before has changed.
 */
public final class Coverage {

    private final Situation situation;
    private final Settings settings;
    private final Sights sights;
    private final Map<String, RowCoverage> rows;

    private Coverage(Situation situation, Settings settings, Sights sights, Map<String, RowCoverage> rows) {
        this.situation = situation;
        this.settings = settings;
        this.sights = sights;
        this.rows = rows;
    }

    /**
     * The coverage of a situation.
     *
     * @param settings of the job
     * @param sights of its engine, by the criteria of the same settings
     */
    public static Coverage of(Situation situation, Settings settings, Sights sights) {
        return of(situation, settings, sights, SightStore.NONE);
    }

    /**
     * The same.
     *
     * @param kept where cells may be kept, so that those of a row of which nothing further was said need not be computed
     *     again
     */
    public static Coverage of(Situation situation, Settings settings, Sights sights, SightStore kept) {
        Judging judging = Judging.of(settings);
        Sights knowing = sights.knowing(situation.places());
        List<RowCoverage> found = situation.engine().rows().values().stream()
                .parallel()
                .map(row -> RowCoverage.start(situation.engine(), row, knowing, judging)
                        .after(situation, knowing, new KnownCells(situation, settings, knowing, row, kept)))
                .toList();
        return new Coverage(situation, settings, knowing, byId(found));
    }

    private static Map<String, RowCoverage> byId(List<RowCoverage> rows) {
        Map<String, RowCoverage> byId = new LinkedHashMap<>();
        rows.forEach(row -> byId.put(row.row().id(), row));
        return byId;
    }

    /** The coverage of a situation of an engine without mesh files, nothing remembered of what stations show. */
    public static Coverage of(Situation situation, Settings settings) {
        Engine engine = situation.engine();
        return of(
                situation,
                settings,
                new Sights(
                        new ViewScene(engine.model(), Map.of(), Map.of()),
                        engine.model().id(),
                        Criteria.of(settings),
                        SightStore.NONE,
                        Progress.NONE));
    }

    /** The coverage of another situation of the same engine. */
    public Coverage after(Situation later) {
        Sights knowing = sights.knowing(later.places());
        List<RowCoverage> next = rows.values().stream()
                .parallel()
                .map(row -> row.after(later, knowing))
                .toList();
        return new Coverage(later, settings, knowing, byId(next));
    }

    /** The same, if of all rows only this one was watched since. */
    public Coverage afterWatching(Row row, Situation later) {
        Sights knowing = sights.knowing(later.places());
        if (knowing != sights) {
            return after(later);
        }
        Map<String, RowCoverage> next = new LinkedHashMap<>(rows);
        next.put(row.id(), rows.get(row.id()).after(later, knowing));
        return new Coverage(later, settings, knowing, next);
    }

    /**
     * The same engine and task as if these facets and no others had been seen, whatever entries say, and as if these remarks had
     * been made.
     *
     * @param facets of each airfoil from the first, by row, standing for the middles of facets as sight does; rows that are not
     *     computed stay as they are
     */
    public Coverage showing(Map<String, List<BitSet>> facets, List<Remark> remarks) {
        Situation other = situation.remarked(remarks);
        Map<String, RowCoverage> next = new LinkedHashMap<>();
        rows.forEach((id, row) -> next.put(id, facets.containsKey(id) ? row.showing(other, facets.get(id)) : row));
        return new Coverage(other, settings, sights, next);
    }

    public Situation situation() {
        return situation;
    }

    /** By which it is judged. */
    public Settings settings() {
        return settings;
    }

    /** What the stations of the engine show. */
    public Sights sights() {
        return sights;
    }

    /** Every row of the engine, in the model's order. */
    public List<RowCoverage> rows() {
        return List.copyOf(rows.values());
    }

    /** One row. */
    public RowCoverage row(String id) {
        return rows.get(id);
    }

    /** All rows whose states rest on the same, together. */
    public Tally tally(Basis basis) {
        return rows.values().stream()
                .filter(row -> row.basis() == basis)
                .map(row -> row.tally(row.zoning().all()))
                .reduce(Tally.NONE, Tally::plus);
    }

    /** The figures of all rows whose states rest on the same. */
    public Headline headline(Basis basis) {
        return Headline.of(
                rows.values().stream().filter(row -> row.basis() == basis).toList());
    }

    /** What leads where only one share can be told: what is computed, if anything is. */
    public Basis leading() {
        return rows.values().stream().anyMatch(row -> row.basis() == Basis.COMPUTED) ? Basis.COMPUTED : Basis.DECLARED;
    }

    /** All rows together. */
    public Tally tally() {
        return tally(Basis.COMPUTED).plus(tally(Basis.DECLARED));
    }

    /** Whether some identification found that the count was lost. */
    public boolean lostCount() {
        return situation.countErrors().stream().anyMatch(CountError::lost);
    }
}
