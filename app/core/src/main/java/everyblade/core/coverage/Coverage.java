package everyblade.core.coverage;

import everyblade.core.entry.ZoneSet;
import everyblade.core.sight.DeclaredWindow;
import everyblade.core.turning.CountError;
import everyblade.core.turning.Engine;
import everyblade.core.turning.Remark;
import everyblade.core.turning.Situation;
import everyblade.spi.Row;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * What was seen of every row, of one situation. Immutable; {@link #after} makes the coverage of a later situation,
 * going on from this one wherever nothing before has changed.
 */
public final class Coverage {

    private final Situation situation;
    private final Map<String, RowTally> tallies;

    private Coverage(Situation situation, Map<String, RowTally> tallies) {
        this.situation = situation;
        this.tallies = tallies;
    }

    /**
     * The coverage of a situation.
     *
     * @param leastView seconds for which a cell must be in view to count, where the job asks for it
     */
    public static Coverage of(Situation situation, OptionalDouble leastView) {
        Engine engine = situation.engine();
        Map<String, RowTally> tallies = new LinkedHashMap<>();
        for (Row row : engine.rows().values()) {
            tallies.put(
                    row.id(),
                    RowTally.start(row, engine.zonings().get(row.id()).size(), RowTally.windows(engine, row), leastView)
                            .after(situation));
        }
        return new Coverage(situation, tallies);
    }

    /** The coverage of another situation of the same engine. */
    public Coverage after(Situation later) {
        Map<String, RowTally> next = new LinkedHashMap<>();
        tallies.forEach((id, tally) -> next.put(id, tally.after(later)));
        return new Coverage(later, next);
    }

    public Situation situation() {
        return situation;
    }

    /** Every row of the engine, in the model's order. */
    public List<RowCoverage> rows() {
        return tallies.keySet().stream().map(this::row).toList();
    }

    /** One row. */
    public RowCoverage row(String id) {
        Engine engine = situation.engine();
        RowTally tally = tallies.get(id);
        ZoneSet shown = RowTally.windows(engine, tally.row()).values().stream()
                .map(DeclaredWindow::zones)
                .reduce(ZoneSet.NONE, ZoneSet::union);
        List<Remark> remarks = situation.ledger().remarks().stream()
                .filter(remark -> remark.row().equals(id))
                .toList();
        return new RowCoverage(
                tally.row(),
                engine.zonings().get(id),
                shown,
                situation
                        .ledger()
                        .asked()
                        .getOrDefault(id, engine.zonings().get(id).all()),
                tally.seen,
                remarks);
    }

    /** All rows together. */
    public Tally tally() {
        return rows().stream().map(row -> row.tally(row.zoning().all())).reduce(Tally.NONE, Tally::plus);
    }

    /** Whether some identification found that the count was lost. */
    public boolean lostCount() {
        return situation.countErrors().stream().anyMatch(CountError::lost);
    }
}
