package everyblade.core.coverage;

import everyblade.core.angle.IndexRun;
import everyblade.core.entry.ZoneSet;
import everyblade.core.entry.Zoning;
import everyblade.core.sight.Hindrance;
import everyblade.core.sight.Reach;
import everyblade.core.sight.Sights;
import everyblade.core.sight.StationSight;
import everyblade.core.turning.Engine;
import everyblade.core.turning.Leg;
import everyblade.core.turning.Remark;
import everyblade.core.turning.Situation;
import everyblade.spi.Row;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.IntStream;

/**
 * What was seen of one row: every cell is in exactly one state. Immutable.
 *
 * <p>What rests on windows is declared, not computed; it is told apart wherever a share is given. A row that is seen both
 * ways is computed, and what its windows declare changes no state.
 */
public final class RowCoverage {

    /** Less than half of a surface, but for rounding, is but a glimpse of it. */
    private static final double GLIMPSED = 0.5 - 1e-9;

    private final Row row;
    private final Zoning zoning;
    private final Sights sights;
    private final Judging judging;
    private final RowTally declared;
    private final Optional<SightTally> computed;
    private final Optional<Grounds> grounds;
    private final Cells cells;
    private final ZoneSet asked;
    private final List<Remark> remarks;
    /** Of all zones, once somebody has asked: a picture asks with every change, mostly of rows that have not changed. */
    private volatile Tally tallyOfAll;

    private volatile Areas areasOfAll;

    private RowCoverage(
            Row row,
            Zoning zoning,
            Sights sights,
            Judging judging,
            RowTally declared,
            Optional<SightTally> computed,
            Optional<Grounds> grounds,
            Cells cells,
            ZoneSet asked,
            List<Remark> remarks) {
        this.row = row;
        this.zoning = zoning;
        this.sights = sights;
        this.judging = judging;
        this.declared = declared;
        this.computed = computed;
        this.grounds = grounds;
        this.cells = cells;
        this.asked = asked;
        this.remarks = remarks;
    }

    /** Where cells come from that rest on these grounds, if not from computing them. */
    @FunctionalInterface
    interface CellsFrom {
        Cells cells(Grounds on, Supplier<ComputedCells> computing);
    }

    /** Nothing seen yet. */
    static RowCoverage start(Engine engine, Row row, Sights sights, Judging judging) {
        Zoning zoning = engine.zonings().get(row.id());
        RowTally declared =
                RowTally.start(row, zoning.size(), RowTally.windows(engine, row, sights), judging.leastView());
        Optional<SightTally> computed = sights.computes(row)
                ? Optional.of(SightTally.start(row, sights, judging.leastView()))
                : Optional.empty();
        return new RowCoverage(
                row,
                zoning,
                sights,
                judging,
                declared,
                computed,
                Optional.empty(),
                new DeclaredCells(declared.shown(), declared.seen),
                zoning.all(),
                List.of());
    }

    /** With everything that was watched and said up to this situation, and with what stations show in it. */
    RowCoverage after(Situation situation, Sights knowing) {
        return after(situation, knowing, (on, computing) -> computing.get());
    }

    /** The same; cells that have to be computed are had from there. */
    RowCoverage after(Situation situation, Sights knowing, CellsFrom from) {
        RowTally windows = declared.after(situation);
        Optional<SightTally> stations = computed.map(tally -> tally.after(situation, knowing));
        Optional<Grounds> on = stations.map(tally -> Grounds.of(situation, row, knowing));
        return new RowCoverage(
                row,
                zoning,
                knowing,
                judging,
                windows,
                stations,
                on,
                stations.map(tally -> computed.get() == tally && on.equals(grounds)
                                ? cells
                                : from.cells(on.get(), () -> cells(on.get(), tally, knowing)))
                        .orElseGet(() -> new DeclaredCells(windows.shown(), windows.seen)),
                situation.ledger().asked().getOrDefault(row.id(), zoning.all()),
                remarks(situation, row));
    }

    /** As if these facets of each airfoil and no others had been seen; the same where nothing is computed. */
    RowCoverage showing(Situation situation, List<BitSet> facets) {
        if (computed.isEmpty()) {
            return this;
        }
        Grounds on = Grounds.of(situation, row, sights);
        FacetsSeen seen =
                FacetsSeen.none(row.count(), sights.scene(row).facets().count());
        for (int index = 0; index < facets.size(); index++) {
            IndexRun airfoil = new IndexRun(index, 1);
            facets.get(index).stream().forEach(facet -> {
                seen.sure().add(airfoil, facet, 0, 1);
                seen.whole().add(airfoil, facet, 0, 1);
                seen.maybe().add(airfoil, facet);
            });
        }
        return new RowCoverage(
                row,
                zoning,
                sights,
                judging,
                declared,
                computed,
                Optional.of(on),
                cells(on, cells.reach().orElseThrow(), seen, sights),
                asked,
                remarks(situation, row));
    }

    private static List<Remark> remarks(Situation situation, Row row) {
        return situation.ledger().remarks().stream()
                .filter(remark -> remark.row().equals(row.id()))
                .toList();
    }

    private ComputedCells cells(Grounds on, SightTally tally, Sights knowing) {
        Reach reach = Reach.of(knowing, row, on.vanes(), on.proof(), tally.stances());
        return cells(on, reach, tally.seen(), knowing);
    }

    private ComputedCells cells(Grounds on, Reach reach, FacetsSeen seen, Sights knowing) {
        return new ComputedCells(row, zoning, knowing.grain(row).patches(), on.first(), reach, seen, judging);
    }

    /** The cells as one pass by itself leaves them. */
    Cells only(Situation situation, Pass pass) {
        return only(situation, declared.only(situation, pass), computed.map(tally -> tally.only(situation, pass)));
    }

    /** The cells as one leg by itself leaves those that were not being watched. */
    Cells unwatched(Situation situation, Leg leg) {
        return only(
                situation, declared.unwatched(situation, leg), computed.map(tally -> tally.unwatched(situation, leg)));
    }

    private Cells only(Situation situation, RowTally.Seen windows, Optional<FacetsSeen> facets) {
        return facets.<Cells>map(seen ->
                        cells(Grounds.of(situation, row, sights), cells.reach().orElseThrow(), seen, sights))
                .orElseGet(() -> new DeclaredCells(declared.shown(), windows));
    }

    public Row row() {
        return row;
    }

    public Zoning zoning() {
        return zoning;
    }

    /** What the states rest on. */
    public Basis basis() {
        return cells.basis();
    }

    /** Zones that the task asks for. */
    public ZoneSet asked() {
        return asked;
    }

    /** How many cells the row has. */
    public int cells() {
        return row.count() * zoning.size();
    }

    /** How many cells of a computed row were surely in sight by what windows declare; they count in no state. */
    public int declaredCells() {
        if (basis() == Basis.DECLARED) {
            return 0;
        }
        return (int) IntStream.rangeClosed(1, row.count())
                .mapToLong(n -> IntStream.range(0, zoning.size())
                        .filter(zone -> declared.seen.sure().contains(n, zone))
                        .count())
                .sum();
    }

    /** The state of a zone of airfoil n, from 1. */
    public State state(int n, int zone) {
        return cells.state(n, zone);
    }

    /** Why a cell is not seen; empty if it is. */
    public Optional<Why> why(int n, int zone) {
        return cells.why(n, zone);
    }

    /** The parts of airfoil n that were surely seen: patches where sight is computed, else zones. */
    public BitSet surely(int n) {
        return cells.surely(n);
    }

    /** Of these, patches along an edge of sight that were surely seen as a whole; none where nothing is computed. */
    public BitSet wholly(int n) {
        return cells.wholly(n);
    }

    /**
     * Whether a cell would be seen, or seen in part, if these parts and no others were surely seen.
     *
     * @param parts patches of the airfoil where sight is computed, else zones
     * @param whole of these, patches along an edge of sight that would be seen as a whole
     */
    public boolean doneBy(int n, int zone, BitSet parts, BitSet whole) {
        return cells.doneBy(n, zone, parts, whole);
    }

    /** What mostly keeps a cell out of sight that no view shows, where it is computed. */
    public Optional<Hindrance> hindrance(int n, int zone) {
        return why(n, zone).filter(Why.NO_ACCESS::equals).isPresent() ? cells.hindrance(n, zone) : Optional.empty();
    }

    /** How much of a facet of airfoil n was surely seen, mm²; nothing where nothing is computed. */
    public double seen(int n, int facet) {
        return computed.map(tally -> tally.seen(n, facet)).orElse(0.0);
    }

    /** How much of a facet of airfoil n a station shows that was not surely seen, mm²; nothing where nothing is computed. */
    public double unseen(StationSight station, int n, int facet) {
        return computed.map(tally -> tally.unseen(station, n, facet)).orElse(0.0);
    }

    /** Whether enough of a cell was seen, but not of its outermost strip at the leading or trailing edge. */
    boolean lacksEdgeAlone(int n, int zone) {
        return cells.lacksEdgeAlone(n, zone);
    }

    /** What stations can show of the row; empty where nothing is computed. */
    public Optional<Reach> reach() {
        return cells.reach();
    }

    /** Whether a cell is seen as far as it can be, and views show less than half of its surface. */
    public boolean glimpsed(int n, int zone) {
        return state(n, zone) == State.PART && areas(n, zone).reach() < GLIMPSED;
    }

    /** Surface of these zones of all airfoils, mm²; where none is known, how many cells they are. */
    double surface(ZoneSet zones) {
        return cells.surface(zones) * row.count();
    }

    /** The figures of the whole row. */
    public Headline headline() {
        return headline(zoning.all());
    }

    /** The figures of these zones of all airfoils. */
    public Headline headline(ZoneSet zones) {
        return Headline.of(tally(zones), areas(zones));
    }

    /** What was seen of the surface of a cell. */
    public Areas areas(int n, int zone) {
        return cells.areas(n, new ZoneSet(1L << zone));
    }

    /** What was seen of the surface of these zones of all airfoils. */
    public Areas areas(ZoneSet zones) {
        if (!zones.equals(zoning.all())) {
            return summed(zones);
        }
        if (areasOfAll == null) {
            areasOfAll = summed(zones);
        }
        return areasOfAll;
    }

    private Areas summed(ZoneSet zones) {
        double reach = 0;
        double seen = 0;
        double maybe = 0;
        for (int n = 1; n <= row.count(); n++) {
            Areas of = cells.areas(n, zones);
            reach += of.reach();
            seen += of.seen();
            maybe += of.maybe();
        }
        return new Areas(reach / row.count(), seen / row.count(), maybe / row.count());
    }

    /** Whether a remark of this kind was made of a cell. */
    public boolean remarked(Remark.What what, int n, int zone) {
        return remarks.stream().anyMatch(remark -> remark.what().says(what) && isOf(remark, n, zone));
    }

    /** Whether a remark on this row is made of a cell. */
    public boolean isOf(Remark remark, int n, int zone) {
        return remark.airfoils().get(n - 1)
                && remark.zones().contains(zone)
                && (remark.what() != Remark.What.ACCEPTED_UNSHOWN
                        || why(n, zone).filter(Why.NO_ACCESS::equals).isPresent());
    }

    /** The states of these zones, counted over all airfoils. */
    public Tally tally(ZoneSet zones) {
        if (!zones.equals(zoning.all())) {
            return counted(zones);
        }
        if (tallyOfAll == null) {
            tallyOfAll = counted(zones);
        }
        return tallyOfAll;
    }

    private Tally counted(ZoneSet zones) {
        return IntStream.rangeClosed(1, row.count())
                .mapToObj(n -> tally(n, zones))
                .reduce(Tally.NONE, Tally::plus);
    }

    /** The states of these zones of one airfoil, counted. */
    public Tally tally(int n, ZoneSet zones) {
        Tally sum = Tally.NONE;
        for (int zone = 0; zone < zoning.size(); zone++) {
            if (zones.contains(zone)) {
                sum = sum.plus(Tally.of(
                        state(n, zone),
                        why(n, zone),
                        remarked(Remark.What.STATED, n, zone),
                        remarked(Remark.What.FOUND, n, zone),
                        glimpsed(n, zone)));
            }
        }
        return sum;
    }
}
