package everyblade.core.doubt;

import everyblade.core.entry.Entry;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Logged;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.DoubleStream;

/**
 * What a person said so far of one kind of number.
 *
 * @param sorted the latest of them above 0, without their signs, least first
 */
record Usual(List<BigDecimal> sorted) {

    /** A typing slip moves the decimal mark; hands do not turn eight times as far as they did. */
    private static final double FAR_MORE = 8;

    private static final double ABOUT = 0.02;

    private static final int ENOUGH_TO_COMPARE = 3;
    private static final int REMEMBERED = 100;
    /** More entries than a shift has; what was usual before that is asked of nobody. */
    private static final int LOOKED_BACK = 500;

    /** The numbers of the latest entries that have such a number. */
    static Usual of(Fold fold, Function<Entry, Optional<BigDecimal>> number) {
        List<BigDecimal> latest = new ArrayList<>();
        List<Logged> entries = fold.entries();
        int first = Math.max(0, entries.size() - LOOKED_BACK);
        for (int i = entries.size() - 1; i >= first && latest.size() < REMEMBERED; i--) {
            if (!fold.isVoid(entries.get(i).number())) {
                number.apply(entries.get(i).entry())
                        .map(BigDecimal::abs)
                        .filter(one -> one.signum() > 0)
                        .ifPresent(latest::add);
            }
        }
        return new Usual(latest.stream().sorted().toList());
    }

    /**
     * The median, if this number is far from every one of them. Where all of them were so large, one that is less asks only if it
     * is one of them with its decimal mark elsewhere: who has always gone as far as that may well go a little once.
     */
    Optional<BigDecimal> unlike(BigDecimal number, BigDecimal large) {
        double here = Math.abs(number.doubleValue());
        return unlike(number)
                .filter(usual -> sorted.get(0).compareTo(large) < 0
                        || here > sorted.get(0).doubleValue()
                        || slipped(here));
    }

    /** Whether it is about as one of these with its decimal mark further left. */
    private boolean slipped(double number) {
        double most = (1 + ABOUT) * sorted.get(sorted.size() - 1).doubleValue();
        double least = (1 - ABOUT) * sorted.get(0).doubleValue();
        return DoubleStream.iterate(10 * number, moved -> moved <= most, moved -> 10 * moved)
                .anyMatch(moved -> moved >= least);
    }

    /** The median, if this number is far from every one of them. */
    Optional<BigDecimal> unlike(BigDecimal number) {
        double here = Math.abs(number.doubleValue());
        if (sorted.size() < ENOUGH_TO_COMPARE || here == 0) {
            return Optional.empty();
        }
        boolean far = here >= FAR_MORE * sorted.get(sorted.size() - 1).doubleValue()
                || here * FAR_MORE <= sorted.get(0).doubleValue();
        return far ? Optional.of(sorted.get(sorted.size() / 2)) : Optional.empty();
    }
}
