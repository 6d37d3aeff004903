package everyblade.core.angle;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Sets of arcs as one line of text, exact both ways: {@code [0,45) [350,370)}, in degrees on the standard circle and in
 * ticks on any other. An end past a turn lies beyond the seam; the empty set is {@code -}.
 */
final class ArcText {

    private static final String EMPTY = "-";
    private static final Pattern ARC = Pattern.compile("\\[(-?[0-9]+(?:\\.[0-9]+)?),(-?[0-9]+(?:\\.[0-9]+)?)\\)");

    private ArcText() {}

    /** The text of a set. */
    static String of(ArcSet set) {
        return set.isEmpty()
                ? EMPTY
                : set.arcs().stream()
                        .map(arc -> "[" + number(set.circle(), arc.start()) + ","
                                + number(set.circle(), arc.start() + arc.length()) + ")")
                        .collect(Collectors.joining(" "));
    }

    /**
     * The set of a text.
     *
     * @throws IllegalArgumentException if it is not such a text, an end is no whole tick or lies more than two turns
     *     away, or an arc is longer than a turn or ends before it starts
     */
    public static ArcSet parse(Circle circle, String text) {
        if (text.strip().equals(EMPTY)) {
            return ArcSet.empty(circle);
        }
        List<Arc> arcs = new ArrayList<>();
        for (String part : text.strip().split("\\s+")) {
            Matcher matcher = ARC.matcher(part);
            if (!matcher.matches()) {
                throw new IllegalArgumentException("expected arcs such as [0,45) and not " + part);
            }
            long from = ticks(circle, matcher.group(1));
            arcs.add(new Arc(circle, from, ticks(circle, matcher.group(2)) - from));
        }
        return ArcSet.of(circle, arcs);
    }

    private static BigDecimal unit(Circle circle) {
        return BigDecimal.valueOf(circle.equals(Circle.STANDARD) ? Circle.TICKS_PER_DEGREE : 1);
    }

    private static String number(Circle circle, long ticks) {
        // 1/3,600,000 of a degree has no finite decimal; ten decimals tell any two ticks apart.
        return BigDecimal.valueOf(ticks)
                .divide(unit(circle), 10, RoundingMode.HALF_EVEN)
                .stripTrailingZeros()
                .toPlainString();
    }

    private static long ticks(Circle circle, String number) {
        BigDecimal exact = new BigDecimal(number).multiply(unit(circle));
        BigDecimal nearest = exact.setScale(0, RoundingMode.HALF_EVEN);
        if (exact.subtract(nearest).abs().compareTo(new BigDecimal("0.001")) > 0) {
            throw new IllegalArgumentException(number + " is no whole tick of the circle");
        }
        if (nearest.abs().compareTo(BigDecimal.valueOf(2 * circle.ticks())) > 0) {
            throw new IllegalArgumentException(number + " is more than two turns away");
        }
        return nearest.longValueExact();
    }
}
