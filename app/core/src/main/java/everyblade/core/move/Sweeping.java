package everyblade.core.move;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleBinaryOperator;

/**
 * A way of passing what must be passed from one place of a row to another: watched stretches, and between them what is
 * not worth watching. Places are clock angles of airfoil 1 in degrees, unrolled, rising; it can be gone either way.
 *
 * @param stretches watched from and to, rising; from and to alike for a look at rest
 * @param below by how much further down the first one serves as well, if it is a look; degrees
 * @param above by how much further up the last one does, if it is a look and not the first
 */
record Sweeping(List<Stretch> stretches, double below, double above) {

    private static final double TURN = 360;
    private static final double ROUNDING = 1e-7;
    private static final int MOST_FIRSTS = 12;

    /** Watched without a break. */
    record Stretch(double from, double to) {}

    Sweeping {
        stretches = List.copyOf(stretches);
    }

    double from() {
        return stretches.get(0).from();
    }

    double to() {
        return stretches.get(stretches.size() - 1).to();
    }

    /** Where to begin for whoever comes from a place, going up or down; the nearest by these ways. */
    double begin(double here, boolean rising, DoubleBinaryOperator way) {
        boolean first = rising || stretches.size() == 1;
        double low = first ? from() - below : to();
        double high = first ? from() : to() + above;
        double ahead = here - low - TURN * Math.floor((here - low) / TURN);
        if (high > low && ahead <= high - low) {
            return low + ahead;
        }
        boolean lowNearer = Math.abs(way.applyAsDouble(here, low)) < Math.abs(way.applyAsDouble(here, high));
        return high == low ? (rising ? from() : to()) : lowNearer ? low : high;
    }

    /** How much further it goes for beginning there, degrees. */
    double longer(double begin, boolean rising) {
        return stretches.size() == 1 ? 0 : rising ? from() - begin : begin - to();
    }

    double length() {
        return to() - from();
    }

    double minutes(Prices prices) {
        double minutes = 0;
        for (int i = 0; i < stretches.size(); i++) {
            Stretch stretch = stretches.get(i);
            minutes += prices.watching(stretch.to() - stretch.from());
            minutes += i == 0
                    ? 0
                    : prices.turning(stretch.from() - stretches.get(i - 1).to());
        }
        return minutes;
    }

    /** The ways of passing all of these windows, one for each that may come first, the quickest first. */
    static List<Sweeping> of(List<VisibilityWindow> windows, Prices prices) {
        return firsts(windows).stream()
                .map(first -> from(first, windows, prices))
                .distinct()
                .sorted(Comparator.comparingDouble(sweeping -> sweeping.minutes(prices)))
                .toList();
    }

    /** The windows before which most is left out. */
    private static List<VisibilityWindow> firsts(List<VisibilityWindow> windows) {
        if (windows.size() <= MOST_FIRSTS) {
            return windows;
        }
        record After(VisibilityWindow window, double gap) {}
        List<VisibilityWindow> round = windows.stream()
                .map(window -> window.moved(-TURN * Math.floor(window.high() / TURN)))
                .sorted(Comparator.comparingDouble(VisibilityWindow::high))
                .toList();
        List<After> after = new ArrayList<>();
        for (int i = 0; i < round.size(); i++) {
            double before = i == 0
                    ? round.get(round.size() - 1).high() - TURN
                    : round.get(i - 1).high();
            after.add(new After(round.get(i), round.get(i).high() - before));
        }
        return after.stream()
                .sorted(Comparator.comparingDouble(After::gap).reversed())
                .limit(MOST_FIRSTS)
                .map(After::window)
                .toList();
    }

    private static Sweeping from(VisibilityWindow first, List<VisibilityWindow> windows, Prices prices) {
        double begin = first.high();
        List<VisibilityWindow> ahead = windows.stream()
                .map(window -> window.moved(TURN * Math.ceil((begin - window.high() - ROUNDING) / TURN)))
                .sorted(Comparator.comparingDouble(VisibilityWindow::high).thenComparingDouble(VisibilityWindow::low))
                .toList();
        return new Grouping(ahead, prices).sweeping();
    }

    /**
     * Which windows in a row are passed in one watched stretch: the cheapest way of parting them, found from the first to
     * the last (dynamic programming). How far it goes in all is the same for all ways.
     */
    private static final class Grouping {

        private final List<VisibilityWindow> windows;
        private final Prices prices;
        private final double end;

        Grouping(List<VisibilityWindow> windows, Prices prices) {
            this.windows = windows;
            this.prices = prices;
            this.end = Math.max(
                    windows.get(0).high(),
                    windows.stream().mapToDouble(VisibilityWindow::low).max().orElseThrow());
        }

        Sweeping sweeping() {
            int count = windows.size();
            double[] least = new double[count + 1];
            int[] start = new int[count + 1];
            for (int to = 1; to <= count; to++) {
                least[to] = Double.POSITIVE_INFINITY;
                double low = Double.NEGATIVE_INFINITY;
                for (int from = to - 1; from >= 0; from--) {
                    low = Math.max(low, windows.get(from).low());
                    boolean parted = to == count || high(to) >= Math.max(high(from), low) - ROUNDING;
                    double cost = least[from]
                            + (from == 0 ? prices.watching(0) : prices.watching(0) + prices.move())
                            + saved(Math.max(0, low - high(from)));
                    if (parted && cost < least[to]) {
                        least[to] = cost;
                        start[to] = from;
                    }
                }
            }
            return told(start);
        }

        private double high(int window) {
            return Math.min(windows.get(window).high(), end);
        }

        /** What it costs more to watch a stretch than to pass it unwatched. */
        private double saved(double degrees) {
            return prices.watching(degrees) - prices.turning(degrees) - (degrees == 0 ? prices.watching(0) : 0);
        }

        private Sweeping told(int[] start) {
            List<Stretch> stretches = new ArrayList<>();
            double below = 0;
            double above = 0;
            for (int to = windows.size(); to > 0; to = start[to]) {
                List<VisibilityWindow> group = windows.subList(start[to], to);
                double low =
                        group.stream().mapToDouble(VisibilityWindow::low).max().orElseThrow();
                double from = high(start[to]);
                Stretch stretch = new Stretch(from, Math.max(from, low));
                boolean look = stretch.from() == stretch.to();
                stretches.add(0, stretch);
                if (to == windows.size() && start[to] > 0 && look) {
                    above = group.get(0).high() - from;
                }
                if (start[to] == 0 && look) {
                    below = from - low;
                }
            }
            return new Sweeping(stretches, Math.max(0, below), Math.max(0, above));
        }
    }
}
