package everyblade.core.gap;

import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.RowCoverage;
import everyblade.core.coverage.State;
import everyblade.core.coverage.Why;
import everyblade.core.entry.ZoneSet;
import everyblade.core.turning.Remark;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.stream.IntStream;

/** Finds the gaps of a coverage: what the task asks for, is not seen, and nobody has accepted as not seen. */
public final class Gaps {

    private static final List<State> OPEN =
            Arrays.stream(State.values()).filter(state -> !state.isDone()).toList();

    private Gaps() {}

    /** All gaps, row by row in the model's order, each row's by first airfoil. */
    public static List<Gap> of(Coverage coverage) {
        List<Gap> gaps = new ArrayList<>();
        for (RowCoverage row : coverage.rows()) {
            List<Gap> own = new ArrayList<>();
            for (State state : OPEN) {
                for (Why why : Why.values()) {
                    own.addAll(ofKind(coverage, row, state, why));
                }
            }
            own.sort(Comparator.comparing((Gap gap) -> gap.airfoils().get(0))
                    .thenComparing(Gap::state, Comparator.reverseOrder())
                    .thenComparing(Gap::why));
            gaps.addAll(own);
        }
        return gaps;
    }

    /** Whether there is any in a row; takes less than to find them, for how to close them is not asked. */
    public static boolean in(RowCoverage row) {
        return IntStream.rangeClosed(1, row.row().count())
                .anyMatch(
                        n -> !left(row, n, (state, why) -> OPEN.contains(state)).isEmpty());
    }

    private static List<Gap> ofKind(Coverage coverage, RowCoverage row, State state, Why why) {
        int count = row.row().count();
        ZoneSet[] open = new ZoneSet[count];
        for (int n = 1; n <= count; n++) {
            open[n - 1] = open(row, n, state, why);
        }
        int start = IntStream.range(0, count)
                .filter(i -> !open[i].equals(open[Math.floorMod(i - 1, count)]))
                .findFirst()
                .orElse(0);
        boolean allAlike = Arrays.stream(open).allMatch(open[0]::equals);
        List<Gap> gaps = new ArrayList<>();
        int at = 0;
        while (at < count) {
            ZoneSet zones = open[(start + at) % count];
            int length = 1;
            while (at + length < count && open[(start + at + length) % count].equals(zones)) {
                length++;
            }
            if (!zones.isEmpty()) {
                int first = allAlike ? 0 : start + at;
                List<Integer> airfoils = IntStream.range(first, first + length)
                        .mapToObj(i -> i % count + 1)
                        .toList();
                gaps.add(new Gap(
                        row.row(),
                        airfoils,
                        zones,
                        state,
                        why,
                        why.outOfReach() ? Optional.empty() : Reaching.of(coverage, row, airfoils, zones),
                        why.outOfReach() ? Optional.empty() : Reaching.first(coverage, row, zones)));
            }
            at += length;
        }
        return gaps;
    }

    /** The zones of an airfoil that are left and that some view can be brought to show. */
    public static ZoneSet within(RowCoverage row, int n) {
        return left(row, n, (state, why) -> !why.outOfReach());
    }

    /** The zones of an airfoil that are left and that no view shows, or none finely enough. */
    public static ZoneSet beyond(RowCoverage row, int n) {
        return left(row, n, (state, why) -> why.outOfReach());
    }

    private static ZoneSet open(RowCoverage row, int n, State state, Why why) {
        return left(row, n, (is, because) -> is == state && because == why);
    }

    private static ZoneSet left(RowCoverage row, int n, BiPredicate<State, Why> wanted) {
        long bits = 0;
        for (int zone = 0; zone < row.zoning().size(); zone++) {
            Optional<Why> why = row.asked().contains(zone) ? row.why(n, zone) : Optional.empty();
            boolean is = why.isPresent()
                    && wanted.test(row.state(n, zone), why.get())
                    && !row.remarked(Remark.What.ACCEPTED, n, zone);
            bits |= is ? 1L << zone : 0;
        }
        return new ZoneSet(bits);
    }
}
