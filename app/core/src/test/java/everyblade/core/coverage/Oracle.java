package everyblade.core.coverage;

import java.math.BigInteger;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.hipparchus.fraction.BigFraction;

/**
 * What was seen, worked out the slow way: for every watched move every airfoil is asked whether its unrolled path meets
 * the window at any turn. Angles are exact degrees; they meet the grid of a thousandth of an arc second by flooring.
 */
final class Oracle {

    private static final BigFraction TURN = new BigFraction(360);
    private static final BigFraction TICKS = new BigFraction(3_600_000);

    /** One zone, by name, of one airfoil. */
    record Cell(String row, int airfoil, String zone) implements Comparable<Cell> {

        @Override
        public int compareTo(Cell other) {
            return Comparator.comparing(Cell::row)
                    .thenComparing(Cell::airfoil)
                    .thenComparing(Cell::zone)
                    .compare(this, other);
        }
    }

    /** A row as the oracle knows it; {@code turns} is false for one that stands still. */
    record OracleRow(String id, int count, int sense, boolean turns, List<List<String>> kinds) {

        boolean divides(String word) {
            return kinds.stream().anyMatch(kind -> kind.contains(word));
        }

        List<List<String>> zones() {
            List<List<String>> zones = List.of(List.of());
            for (List<String> kind : kinds) {
                zones = zones.stream()
                        .flatMap(head -> kind.stream().map(word -> {
                            List<String> longer = new java.util.ArrayList<>(head);
                            longer.add(word);
                            return List.copyOf(longer);
                        }))
                        .toList();
            }
            return zones;
        }
    }

    /** A view as the oracle knows it. */
    record OracleView(String id, OracleRow row, BigFraction reference, BigFraction halfWidth, List<String> shows) {}

    private record Anchor(int airfoil, BigFraction clock, BigFraction angle) {}

    private final Map<String, Anchor> anchors = new HashMap<>();
    private final Map<String, BigFraction> travels = new HashMap<>();
    private final Set<Cell> seen = new TreeSet<>();
    private BigFraction shaft = BigFraction.ZERO;
    private BigFraction reading = BigFraction.ZERO;
    private OracleView view;
    private List<String> watching = List.of("all");
    private boolean consistent = true;
    private boolean among;

    Set<Cell> seen() {
        return seen;
    }

    /** Whether every identification agreed with the count. */
    boolean consistent() {
        return consistent;
    }

    /** Whether the scope tip is among the blades. */
    boolean among() {
        return among;
    }

    void among(boolean is) {
        among = is;
    }

    OracleView view() {
        return view;
    }

    boolean counting() {
        return view != null && anchors.containsKey(view.row().id());
    }

    void seat(OracleView newView) {
        view = newView;
        watching = List.of("all");
        travels.put(view.row().id(), BigFraction.ZERO);
    }

    void watch(List<String> parts) {
        watching = parts;
    }

    /** Angle of the shaft, or of a row that stands still as it looks from the scope tip. */
    private BigFraction angle(OracleRow row) {
        return row.turns()
                ? shaft
                : travels.getOrDefault(row.id(), BigFraction.ZERO).negate();
    }

    void turn(BigFraction amount, boolean watched) {
        BigFraction from = shaft;
        shaft = shaft.add(amount);
        reading = reading.add(amount);
        if (watched) {
            sweep(from, shaft);
        }
    }

    void draw(BigFraction amount, boolean watched) {
        BigFraction from = angle(view.row());
        travels.merge(view.row().id(), amount, BigFraction::add);
        if (watched) {
            sweep(from, angle(view.row()));
        }
    }

    void look() {
        sweep(angle(view.row()), angle(view.row()));
    }

    BigFraction readingNow() {
        return wrapped(reading);
    }

    /** Clock angle of the view's middle, the scope tip drawn round included. */
    BigFraction referenceNow() {
        return wrapped(view.reference().add(travels.getOrDefault(view.row().id(), BigFraction.ZERO)));
    }

    void label(BigFraction angle) {
        reading = angle;
    }

    void identify(int airfoil) {
        OracleRow row = view.row();
        if (anchors.containsKey(row.id())
                && !wrapped(clock(row, airfoil, angle(row)).subtract(view.reference()))
                        .equals(BigFraction.ZERO)) {
            consistent = false;
        }
        anchors.put(row.id(), new Anchor(airfoil, view.reference(), angle(row)));
    }

    /** The shaft slips to where this airfoil stands at the reference. */
    void slipTo(int airfoil) {
        BigFraction by = view.reference().subtract(clock(view.row(), airfoil, shaft));
        shaft = shaft.add(by);
        reading = reading.add(by);
    }

    /** How far the shaft would have to slip, degrees. */
    BigFraction slip(int airfoil) {
        return view.reference().subtract(clock(view.row(), airfoil, shaft));
    }

    /** The airfoil that stands exactly at the reference, 0 if none does. */
    int atReference() {
        for (int n = 1; n <= view.row().count(); n++) {
            if (wrapped(clock(view.row(), n, angle(view.row())).subtract(view.reference()))
                    .equals(BigFraction.ZERO)) {
                return n;
            }
        }
        return 0;
    }

    private BigFraction clock(OracleRow row, int airfoil, BigFraction angle) {
        Anchor anchor = anchors.get(row.id());
        return anchor.clock()
                .add(TURN.multiply(row.sense() * (airfoil - anchor.airfoil())).divide(row.count()))
                .add(angle.subtract(anchor.angle()));
    }

    private void sweep(BigFraction from, BigFraction to) {
        OracleRow row = view.row();
        if (!anchors.containsKey(row.id())) {
            return;
        }
        BigFraction low = from.compareTo(to) <= 0 ? from : to;
        BigFraction high = from.compareTo(to) <= 0 ? to : from;
        BigInteger windowLow = floor(view.reference().subtract(view.halfWidth()));
        BigInteger windowHigh = floor(view.reference().add(view.halfWidth()));
        BigInteger turn = floor(TURN);
        for (int n = 1; n <= row.count(); n++) {
            BigInteger a = floor(clock(row, n, low));
            BigInteger b = floor(clock(row, n, high));
            boolean meets = false;
            long first = windowLow.subtract(b).divide(turn).longValueExact() - 1;
            long last = windowHigh.subtract(a).divide(turn).longValueExact() + 1;
            for (long k = first; k <= last && !meets; k++) {
                BigInteger shift = turn.multiply(BigInteger.valueOf(k));
                meets = b.add(shift).compareTo(windowLow) >= 0 && a.add(shift).compareTo(windowHigh) <= 0;
            }
            if (meets) {
                for (List<String> zone : row.zones()) {
                    if (includes(row, view.shows(), zone) && includes(row, watching, zone)) {
                        seen.add(new Cell(row.id(), n, zone.isEmpty() ? "all" : String.join("/", zone)));
                    }
                }
            }
        }
    }

    /** Parts of one kind unite, of different kinds intersect. */
    private static boolean includes(OracleRow row, List<String> parts, List<String> zone) {
        if (parts.contains("all")) {
            return true;
        }
        for (int kind = 0; kind < row.kinds().size(); kind++) {
            List<String> words = row.kinds().get(kind);
            boolean named = parts.stream().anyMatch(words::contains);
            if (named && !parts.contains(zone.get(kind))) {
                return false;
            }
        }
        return true;
    }

    static BigFraction wrapped(BigFraction angle) {
        BigInteger turns = floorOf(angle.divide(TURN));
        return angle.subtract(TURN.multiply(turns));
    }

    private static BigInteger floor(BigFraction degrees) {
        return floorOf(degrees.multiply(TICKS));
    }

    private static BigInteger floorOf(BigFraction number) {
        BigInteger[] parts = number.getNumerator().divideAndRemainder(number.getDenominator());
        return parts[1].signum() < 0 ? parts[0].subtract(BigInteger.ONE) : parts[0];
    }
}
