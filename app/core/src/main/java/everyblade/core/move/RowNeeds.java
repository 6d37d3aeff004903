package everyblade.core.move;

import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.RowCoverage;
import everyblade.core.entry.ZoneSet;
import everyblade.core.gap.Gaps;
import everyblade.core.turning.Engine;
import everyblade.spi.Row;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * What is left of a row, and from where it can be seen: airfoils of which the same is left are of one kind, and a set of
 * options covers a kind if all of them together show enough of it. Sets of options are bit masks over {@link #options}.
 */
final class RowNeeds {

    /** Above this many options the later ones of the model are left out. */
    private static final int MOST_OPTIONS = 12;

    private final RowCoverage coverage;
    private final List<ViewOption> options;
    private final List<Kind> kinds;
    /** Whether none was left out. */
    private final boolean allOptions;

    /**
     * What was or would be shown of an airfoil.
     *
     * @param parts patches, or zones where nothing is computed
     * @param beside patches of other zones beside these: where they are seen, no edge of sight runs
     * @param wholly patches along an edge of sight that are shown as a whole
     */
    record Shown(BitSet parts, BitSet beside, BitSet wholly) {

        Shown() {
            this(new BitSet(), new BitSet(), new BitSet());
        }

        /** This and that. */
        Shown or(Shown more) {
            return new Shown(union(parts, more.parts), union(beside, more.beside), union(wholly, more.wholly));
        }

        private Shown within(Wanted wanted) {
            parts.and(wanted.parts());
            beside.and(wanted.beside());
            wholly.and(wanted.parts());
            return this;
        }

        /** This without that. */
        Shown minus(Shown less) {
            return new Shown(
                    difference(parts, less.parts), difference(beside, less.beside), difference(wholly, less.wholly));
        }

        /** Everything that is in sight. */
        BitSet all() {
            return union(parts, beside);
        }

        /** Without what matters at an edge of sight alone. */
        Shown plain() {
            return new Shown(parts, new BitSet(), new BitSet());
        }

        private static BitSet union(BitSet a, BitSet b) {
            BitSet union = (BitSet) a.clone();
            union.or(b);
            return union;
        }

        private static BitSet difference(BitSet a, BitSet b) {
            BitSet difference = (BitSet) a.clone();
            difference.andNot(b);
            return difference;
        }
    }

    /** Parts of zones that are left, and parts of other zones beside them. */
    private record Wanted(BitSet parts, BitSet beside) {

        static Wanted of(ViewOption option, ZoneSet open) {
            BitSet parts = option.parts(open);
            return new Wanted(parts, option.beside(parts));
        }
    }

    /**
     * Airfoils of which the same is left.
     *
     * @param airfoils their numbers
     * @param open zones that are left
     * @param seen what was surely seen of the first of them
     * @param shown by option, what it would show of what is left
     * @param covered by mask, whether that was found out to be enough
     * @param plainly by mask, whether it was without what matters at an edge of sight alone
     */
    record Kind(
            BitSet airfoils,
            ZoneSet open,
            Shown seen,
            List<Shown> shown,
            Map<Integer, Boolean> covered,
            Map<Integer, Boolean> plainly) {

        int example() {
            return airfoils.nextSetBit(0);
        }
    }

    private RowNeeds(RowCoverage coverage, List<ViewOption> options, List<Kind> kinds, boolean allOptions) {
        this.coverage = coverage;
        this.options = options;
        this.kinds = kinds;
        this.allOptions = allOptions;
    }

    /**
     * What is left of a row for some options; what they cannot finish is left out.
     *
     * @param first clock angle of airfoil 1, degrees, where it is known
     * @param all of the row that may be used
     */
    static RowNeeds of(Coverage coverage, Row row, OptionalDouble first, List<ViewOption> all) {
        RowCoverage of = coverage.row(row.id());
        List<ViewOption> options = all.stream().limit(MOST_OPTIONS).toList();
        record Left(ZoneSet open, List<Shown> shown) {}
        record Open(ZoneSet zones, List<Shown> shown, Shown seen) {}
        Map<Open, ZoneSet> feasible = new HashMap<>();
        Map<Left, BitSet> alike = new HashMap<>();
        Map<ZoneSet, Wanted> wanted = new HashMap<>();
        for (int n = 1; n <= row.count(); n++) {
            ZoneSet open = Gaps.within(of, n);
            if (!open.isEmpty() && !options.isEmpty()) {
                Shown seen = seen(of, n);
                Wanted now = wanted.computeIfAbsent(open, zones -> Wanted.of(options.get(0), zones));
                List<Shown> shown = shown(of, options, n, now, seen, first);
                int airfoil = n;
                ZoneSet closable = feasible.computeIfAbsent(
                        new Open(open, shown, seen), alikeSeen -> feasible(of, airfoil, open, seen, shown));
                alike.computeIfAbsent(new Left(closable, shown), left -> new BitSet())
                        .set(n);
            }
        }
        List<Kind> kinds = alike.entrySet().stream()
                .filter(entry -> !entry.getKey().open().isEmpty())
                .map(entry -> new Kind(
                        entry.getValue(),
                        entry.getKey().open(),
                        seen(of, entry.getValue().nextSetBit(0)),
                        entry.getKey().shown(),
                        new HashMap<>(),
                        new HashMap<>()))
                .sorted(Comparator.comparing(Kind::example))
                .toList();
        return new RowNeeds(of, options, kinds, options.size() == all.size());
    }

    private static Shown seen(RowCoverage of, int n) {
        BitSet surely = of.surely(n);
        return new Shown(surely, surely, of.wholly(n));
    }

    /** What each option would show of airfoil n that is wanted and was not seen. */
    private static List<Shown> shown(
            RowCoverage of, List<ViewOption> options, int n, Wanted wanted, Shown seen, OptionalDouble first) {
        List<Shown> shown = new ArrayList<>();
        for (ViewOption option : options) {
            boolean fixed = !option.travels() && first.isPresent();
            double clock = first.orElse(0) + Engine.fromFirst(of.row(), n).degrees();
            BitSet shows = fixed ? option.showsAt(clock) : option.shows();
            BitSet wholly = fixed ? option.whollyAt(clock) : option.wholly();
            shown.add(new Shown(shows, shows, wholly).minus(seen).within(wanted));
        }
        return shown;
    }

    private static ZoneSet feasible(RowCoverage of, int n, ZoneSet open, Shown seen, List<Shown> shown) {
        Shown all = shown.stream().reduce(seen, Shown::or);
        long bits = IntStream.range(0, of.zoning().size())
                .filter(zone -> open.contains(zone) && doneBy(of, n, zone, all) && !doneBy(of, n, zone, seen))
                .mapToLong(zone -> 1L << zone)
                .sum();
        return new ZoneSet(bits);
    }

    private static boolean doneBy(RowCoverage of, int n, int zone, Shown shown) {
        return of.doneBy(n, zone, shown.all(), shown.wholly());
    }

    Row row() {
        return coverage.row();
    }

    List<ViewOption> options() {
        return options;
    }

    boolean allOptions() {
        return allOptions;
    }

    List<Kind> kinds() {
        return kinds;
    }

    boolean none() {
        return kinds.isEmpty();
    }

    /** Whether these options together show enough of a kind. */
    boolean covers(int mask, Kind kind) {
        return kind.covered().computeIfAbsent(mask, key -> enough(kind, shown(kind, key)));
    }

    /** What these options show of what is left of a kind. */
    Shown shown(Kind kind, int mask) {
        Shown all = new Shown();
        for (int option = 0; option < options.size(); option++) {
            if ((mask >> option & 1) != 0) {
                all.parts().or(kind.shown().get(option).parts());
                all.beside().or(kind.shown().get(option).beside());
                all.wholly().or(kind.shown().get(option).wholly());
            }
        }
        return all;
    }

    /** Whether a kind is done once this of it is seen too. */
    boolean enough(Kind kind, Shown more) {
        Shown all = kind.seen().or(more);
        return IntStream.range(0, coverage.zoning().size())
                .allMatch(zone -> !kind.open().contains(zone) || doneBy(coverage, kind.example(), zone, all));
    }

    /** Whether these options cover a kind only by what they show along edges of sight: patches as a whole, and those beside. */
    boolean onlyAtEdges(Kind kind, int mask) {
        return covers(mask, kind)
                && !kind.plainly()
                        .computeIfAbsent(
                                mask, key -> enough(kind, shown(kind, key).plain()));
    }

    /** The sets of options that cover a kind and from which none can be left out, among these. */
    List<Integer> leastCovers(Kind kind, int among) {
        List<Integer> covers = new ArrayList<>();
        for (int mask = among; mask > 0; mask = (mask - 1) & among) {
            int set = mask;
            if (covers(set, kind)
                    && IntStream.range(0, options.size())
                            .filter(option -> (set >> option & 1) != 0)
                            .noneMatch(option -> covers(set & ~(1 << option), kind))) {
                covers.add(set);
            }
        }
        // Where the edge of sight decides, more may show less surely: then all of them together.
        return covers.isEmpty() ? List.of(among) : covers;
    }
}
