package everyblade.window.view;

import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.State;
import everyblade.core.coverage.Why;
import everyblade.core.gap.Gap;
import everyblade.core.gap.Gaps;
import everyblade.core.gap.ToldGap;
import everyblade.core.turning.Seat;
import everyblade.core.turning.Situation;
import everyblade.spi.Row;
import everyblade.spi.Station;
import everyblade.window.map.CellAt;
import everyblade.words.Words;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * One thing that is left to see.
 *
 * @param gap what is left
 * @param what where it is and what, in words
 * @param why why it is not seen
 * @param how how to reach it, or why it cannot be reached
 * @param entries what to enter on the way there, in order; empty if it cannot be reached from here
 */
public record Left(Gap gap, String what, String why, String how, List<String> entries) {

    public Left {
        entries = List.copyOf(entries);
    }

    /** Who reads the list, which decides its order. */
    public enum Order {
        /** What is in view first, then the nearest turn; what no view shows last. */
        AT_WORK,
        /** What was skipped first, then what is doubtful. */
        REVIEW
    }

    /** Everything that is left, in this order. */
    static List<Left> of(Coverage coverage, Order order, Words words) {
        Comparator<Gap> useful = order == Order.AT_WORK ? atWork(coverage.situation()) : review();
        return Gaps.of(coverage).stream()
                .sorted(useful)
                .map(gap -> told(coverage.situation(), gap, words))
                .toList();
    }

    /** The first cell of it, for the map. */
    public CellAt cell() {
        return first(gap);
    }

    /** The first cell of a gap. */
    static CellAt first(Gap gap) {
        return new CellAt(
                gap.row().id(),
                gap.airfoils().get(0),
                Long.numberOfTrailingZeros(gap.zones().bits()));
    }

    private static Comparator<Gap> atWork(Situation now) {
        Comparator<Gap> reachable = Comparator.comparing(gap -> gap.reach().isEmpty());
        return reachable
                .thenComparing(gap -> !gap.reach()
                        .filter(reach -> now.seat()
                                .filter(seat -> seat.view().id().equals(reach.view()))
                                .isPresent())
                        .isPresent())
                .thenComparing(gap -> !now.seat()
                        .filter(seat -> seat.row().id().equals(gap.row().id()))
                        .isPresent())
                .thenComparingDouble(gap ->
                        gap.reach().map(reach -> turn(now, gap.row(), reach)).orElse(0.0))
                .thenComparing(gap -> gap.why().outOfReach());
    }

    /** Degrees from here to where the gap begins, the shorter way. */
    private static double turn(Situation now, Row row, Gap.Reach reach) {
        double away = Math.abs(reach.from() - now.reading(row).degrees()) % 360;
        return Math.min(away, 360 - away);
    }

    private static Comparator<Gap> review() {
        return Comparator.comparing((Gap gap) -> gap.why() != Why.SKIPPED && gap.why() != Why.NOT_WATCHED)
                .thenComparing(gap -> gap.state() != State.MAYBE)
                .thenComparing(gap -> gap.why().outOfReach());
    }

    private static Left told(Situation now, Gap gap, Words words) {
        ToldGap told = ToldGap.of(gap);
        String what = words.say("left.what", told.row(), told.airfoils(), told.zones());
        String how = told.way()
                .map(words::say)
                .orElseGet(() -> words.say(gap.why() == Why.COARSE ? "left.coarse" : "left.noAccess"));
        return new Left(gap, what, words.say(told.unseen()), how, entries(now, gap));
    }

    private static List<String> entries(Situation now, Gap gap) {
        Optional<Gap.Reach> reach = gap.reach();
        if (reach.isEmpty()) {
            return List.of();
        }
        List<String> entries = new ArrayList<>();
        Optional<Seat> seat =
                now.seat().filter(inUse -> inUse.view().id().equals(reach.get().view()));
        if (seat.isEmpty()) {
            entries.add("view " + reach.get().view());
        }
        reach.get()
                .station()
                .filter(station -> !standsAt(now, seat, reach.get().view(), station))
                .ifPresent(station -> entries.add("at " + station));
        boolean drawn = reach.get().drawn();
        entries.add((drawn ? "feed to " : "skip to ") + plain(reach.get().from()));
        entries.add(
                reach.get().sweep() == 0
                        ? "look"
                        : (drawn ? "draw " : "turn ") + plain(reach.get().sweep()));
        return entries;
    }

    /** Whether the scope tip stands at a station already, or will once the view is taken. */
    private static boolean standsAt(Situation now, Optional<Seat> seat, String view, String station) {
        Optional<Station> stands = seat.isPresent()
                ? seat.get().station()
                : now.engine().model().views().stream()
                        .filter(one -> one.id().equals(view))
                        .findFirst()
                        .flatMap(one -> one.stations().stream().findFirst());
        return stands.filter(at -> at.id().equals(station)).isPresent();
    }

    private static String plain(double degrees) {
        return BigDecimal.valueOf(degrees)
                .setScale(1, RoundingMode.HALF_EVEN)
                .stripTrailingZeros()
                .toPlainString();
    }
}
