package everyblade.fleet;

import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.RowCoverage;
import everyblade.core.coverage.State;
import everyblade.core.coverage.Why;
import everyblade.core.entry.FindingEntry;
import everyblade.core.finding.Dimension;
import everyblade.core.finding.Finding;
import everyblade.core.finding.Findings;
import everyblade.core.finding.closing.ClosingList;
import everyblade.core.finding.closing.OpenItem;
import everyblade.core.finding.growth.Usage;
import everyblade.core.gap.Gap;
import everyblade.core.gap.Gaps;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Leg;
import everyblade.core.turning.Logged;
import everyblade.core.turning.Remark;
import everyblade.fact.Fact;
import everyblade.spi.Row;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * What a shop asks of a job, computed of its record alone. Masks hold a zone as bit i, where i is its place in the names of
 * the row's zones.
 *
 * @param head of the journal that was folded
 * @param usage what the engine had run
 */
public record JobFacts(
        String head,
        Usage usage,
        List<BladeRow> rows,
        List<Airfoil> airfoils,
        List<Found> findings,
        List<Left> gaps,
        List<Used> views,
        List<Open> open,
        List<Due> due) {

    /** A row of the engine. */
    public record BladeRow(String id, String basis, int airfoils, List<String> zones) {}

    /**
     * The zones of an airfoil by their state.
     *
     * @param noView those that no view shows, or none finely enough; they are among the unseen, too
     * @param accepted those that somebody accepted as not seen
     */
    public record Airfoil(
            String row, int n, long seen, long part, long maybe, long unseen, long noView, long accepted) {}

    /** A finding; sizes in mm. */
    public record Found(
            int entry,
            String kind,
            String row,
            int airfoil,
            long zones,
            Optional<BigDecimal> length,
            Optional<BigDecimal> depth,
            Optional<BigDecimal> width) {}

    /** A gap; the view is the one that closes it, if any does. */
    public record Left(String row, int airfoils, long zones, String why, Optional<String> view) {}

    /** How many stretches of a row were watched through a view. */
    public record Used(String row, String view, int legs) {}

    /** Something that is open. */
    public record Open(String kind, Optional<Integer> entry, String what, String place, Optional<Instant> since) {}

    /** A repeat inspection that was asked for. */
    public record Due(int entry, BigDecimal number, String unit, Instant since) {}

    /**
     * Of a job.
     *
     * @param head hash of the last line that was folded
     * @param words in which what is open is kept for people of the whole shop
     */
    public static JobFacts of(
            String head, Fold fold, Coverage coverage, ClosingList closing, Function<Fact, String> words) {
        List<BladeRow> rows = new ArrayList<>();
        List<Airfoil> airfoils = new ArrayList<>();
        List<Used> views = new ArrayList<>();
        for (RowCoverage row : coverage.rows()) {
            rows.add(new BladeRow(
                    row.row().id(),
                    row.basis().name().toLowerCase(Locale.ROOT),
                    row.row().count(),
                    row.zoning().names()));
            for (int n = 1; n <= row.row().count(); n++) {
                airfoils.add(airfoil(row, n));
            }
            views.addAll(views(fold, row.row()));
        }
        return new JobFacts(
                head,
                Usage.of(fold),
                rows,
                airfoils,
                Findings.of(fold).stream().map(JobFacts::found).toList(),
                Gaps.of(coverage).stream().map(JobFacts::left).toList(),
                views,
                closing.items().stream()
                        .filter(item -> item.kind() != OpenItem.Kind.GAP)
                        .map(item -> open(item, words))
                        .toList(),
                closing.items().stream().flatMap(item -> due(item).stream()).toList());
    }

    private static Airfoil airfoil(RowCoverage row, int n) {
        long seen = 0;
        long[] grades = new long[State.Grade.values().length];
        long noView = 0;
        long accepted = 0;
        for (int zone = 0; zone < row.zoning().size(); zone++) {
            long bit = 1L << zone;
            State state = row.state(n, zone);
            seen |= state == State.SEEN ? bit : 0;
            grades[state.grade().ordinal()] |= bit;
            noView |= row.why(n, zone).filter(Why::outOfReach).isPresent() ? bit : 0;
            accepted |= row.remarked(Remark.What.ACCEPTED, n, zone) ? bit : 0;
        }
        return new Airfoil(
                row.row().id(),
                n,
                seen,
                grades[State.Grade.DONE.ordinal()] & ~seen,
                grades[State.Grade.DOUBTFUL.ordinal()],
                grades[State.Grade.LEFT.ordinal()],
                noView,
                accepted);
    }

    private static List<Used> views(Fold fold, Row row) {
        Map<String, Integer> legs = new TreeMap<>();
        for (Leg leg : fold.situation().legsOf(row)) {
            legs.merge(leg.view(), 1, Integer::sum);
        }
        return legs.entrySet().stream()
                .map(view -> new Used(row.id(), view.getKey(), view.getValue()))
                .toList();
    }

    private static Found found(Finding finding) {
        return new Found(
                finding.entry(),
                finding.kind().name().toLowerCase(Locale.ROOT),
                finding.row().id(),
                finding.airfoil(),
                finding.zones().bits(),
                size(finding, Dimension.LENGTH),
                size(finding, Dimension.DEPTH),
                size(finding, Dimension.WIDTH));
    }

    private static Optional<BigDecimal> size(Finding finding, Dimension dimension) {
        return Optional.ofNullable(finding.sizes().get(dimension))
                .map(measured -> measured.value().mm());
    }

    private static Left left(Gap gap) {
        return new Left(
                gap.row().id(),
                gap.airfoils().size(),
                gap.zones().bits(),
                gap.why().word(),
                gap.view());
    }

    private static Open open(OpenItem item, Function<Fact, String> words) {
        return new Open(
                item.kind().word(),
                item.opened().map(Logged::number),
                words.apply(item.what()),
                item.where().map(words).orElse(""),
                item.opened().map(Logged::at));
    }

    private static Optional<Due> due(OpenItem item) {
        return item.opened()
                .filter(logged -> logged.entry() instanceof FindingEntry.Again)
                .map(logged -> {
                    FindingEntry.Again again = (FindingEntry.Again) logged.entry();
                    return new Due(
                            logged.number(),
                            again.number().value(),
                            again.interval().name().toLowerCase(Locale.ROOT),
                            logged.at());
                });
    }
}
