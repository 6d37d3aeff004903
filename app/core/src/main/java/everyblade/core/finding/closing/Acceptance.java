package everyblade.core.finding.closing;

import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.RowCoverage;
import everyblade.core.coverage.Why;
import everyblade.core.entry.ZoneSet;
import everyblade.core.sight.DeclaredWindow;
import everyblade.core.surface.Patches;
import everyblade.core.turning.Remark;
import everyblade.fact.Fact;
import everyblade.spi.View;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Cells that somebody accepts as not seen, held against what views of the engine model can show of them.
 *
 * @param cells how many
 * @param seen of these, those that were seen or seen as far as they can be
 * @param canBeSeen of these, those that views can show well enough, the seen ones included
 * @param coarse of the rest, those that views show only too coarsely
 * @param through ids of the views that show something of those that can be seen
 */
public record Acceptance(int cells, int seen, int canBeSeen, int coarse, List<String> through) {

    private static final int MOST_VIEWS = 3;

    public Acceptance {
        through = List.copyOf(through);
    }

    /** What a remark accepts. */
    public static Acceptance of(Coverage coverage, Remark remark) {
        RowCoverage row = coverage.row(remark.row());
        int cells = 0;
        int seen = 0;
        int canBeSeen = 0;
        int coarse = 0;
        long zones = 0;
        for (int n = 1; n <= row.row().count(); n++) {
            for (int zone = 0; zone < row.zoning().size(); zone++) {
                if (!row.isOf(remark, n, zone)) {
                    continue;
                }
                Optional<Why> why = row.why(n, zone);
                boolean shown = why.filter(Why::outOfReach).isEmpty();
                cells++;
                seen += why.isEmpty() ? 1 : 0;
                canBeSeen += shown ? 1 : 0;
                coarse += why.filter(Why.COARSE::equals).isPresent() ? 1 : 0;
                zones |= shown ? 1L << zone : 0;
            }
        }
        return new Acceptance(cells, seen, canBeSeen, coarse, views(coverage, row, new ZoneSet(zones)));
    }

    /** The views of a row that show something of these zones. */
    private static List<String> views(Coverage coverage, RowCoverage row, ZoneSet zones) {
        return coverage.situation().engine().model().views().stream()
                .filter(view -> view.row().equals(row.row().id()))
                .filter(view -> row.reach().isPresent()
                        ? shows(coverage, row, view, zones)
                        : DeclaredWindow.of(view, row.zoning())
                                .filter(window ->
                                        !window.zones().intersection(zones).isEmpty())
                                .isPresent())
                .map(View::id)
                .toList();
    }

    private static boolean shows(Coverage coverage, RowCoverage row, View view, ZoneSet zones) {
        Patches patches = coverage.sights().grain(row.row()).patches();
        return row.reach().orElseThrow().stations().stream()
                .filter(from -> from.view().equals(view.id()))
                .anyMatch(from -> IntStream.range(0, patches.count())
                        .anyMatch(patch -> zones.contains(patches.zone(patch))
                                && from.sight().reaches(patches.facet(patch))));
    }

    /** How many of them views can show and were not seen: what such an acceptance gives away. */
    public int givenAway() {
        return canBeSeen - seen;
    }

    /** Such as {@code 276 cells, 276 of these can be seen through p1-v, 12 were seen}. */
    public Fact told() {
        int named = Math.min(MOST_VIEWS, through.size());
        return new Told(
                cells, seen, canBeSeen, coarse, coarse == cells, through.subList(0, named), through.size() - named);
    }

    /**
     * The same to be said.
     *
     * @param allCoarse whether all are shown too coarsely
     * @param through the first of the views
     * @param more how many views there are besides
     */
    record Told(int cells, int seen, int canBeSeen, int coarse, boolean allCoarse, List<String> through, int more)
            implements Fact {}
}
