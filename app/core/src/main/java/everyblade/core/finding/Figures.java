package everyblade.core.finding;

import everyblade.core.entry.Entry.LengthUnit;
import java.util.Map;
import java.util.Optional;

/** Holds single sizes and numbers against a step, and tells what came of it. */
final class Figures {

    private static final double ONE_SIDED = 1.6448536269514722;

    private final LengthUnit unit;
    private final Guard guard;
    private final Optional<Length> assumed;

    Figures(Limits limits) {
        this.unit = limits.unit();
        this.guard = limits.guard();
        this.assumed = limits.plusMinus();
    }

    Figure size(Dimension dimension, Bounds bounds, Map<Dimension, Measured> sizes) {
        Measured entered = sizes.get(dimension);
        if (entered == null) {
            return new Figure(dimension.word(), "not entered", limit(bounds), "", Verdict.NOT_MEASURED);
        }
        Measured size = entered.orElse(assumed);
        return new Figure(
                dimension.word(),
                value(size),
                limit(bounds),
                size.plusMinus().map(plusMinus -> margin(size, bounds)).orElse("say its ± to have it judged"),
                Conformance.judge(size, bounds, guard));
    }

    Verdict verdict(Dimension dimension, Bounds bounds, Map<Dimension, Measured> sizes) {
        Measured entered = sizes.get(dimension);
        return entered == null ? Verdict.NOT_MEASURED : Conformance.judge(entered.orElse(assumed), bounds, guard);
    }

    /**
     * A number of things of which some may not count.
     *
     * @param sure how many there surely are
     * @param maybe how many there are at most
     */
    static Figure count(String what, int sure, int maybe, int most) {
        Verdict verdict = maybe <= most ? Verdict.WITHIN : sure > most ? Verdict.BEYOND : Verdict.CLOSE;
        return new Figure(what, sure == maybe ? "" + sure : sure + " to " + maybe, "at most " + most, "", verdict);
    }

    Figure apart(Distances.Span span, Length least) {
        Verdict verdict = span.least().compareTo(least) >= 0
                ? Verdict.WITHIN
                : span.most().compareTo(least) < 0 ? Verdict.BEYOND : Verdict.CLOSE;
        return new Figure(
                "distance between findings",
                text(span.least()) + " to " + text(span.most()),
                "at least " + text(least),
                verdict == Verdict.CLOSE ? "their zones do not tell; measure it" : "",
                verdict);
    }

    Figure apartUnknown(Length least) {
        return new Figure(
                "distance between findings", "not known", "at least " + text(least), "measure it", Verdict.CLOSE);
    }

    private String value(Measured size) {
        String value = text(size.value());
        return size.plusMinus()
                .map(plusMinus -> value.replaceFirst(" .*", "") + " ± " + text(plusMinus))
                .orElse(value + ", no ± entered");
    }

    private String limit(Bounds bounds) {
        String least = bounds.least().map(this::text).orElse("");
        String most = bounds.most().map(this::text).orElse("");
        return least.isEmpty() ? "at most " + most : most.isEmpty() ? "at least " + least : least + " to " + most;
    }

    private String margin(Measured size, Bounds bounds) {
        Length margin = bounds.margin(size.value());
        boolean inside = margin.compareTo(Length.ZERO) >= 0;
        Length distance = inside ? margin : Length.ZERO.minus(margin);
        Length needed = guard == Guard.EXPANDED
                ? size.plusMinus().orElse(Length.ZERO)
                : Length.ofMillimetres(ONE_SIDED * size.standardUncertainty());
        return text(distance) + (inside ? " inside" : " outside") + ", guard " + text(needed);
    }

    private String text(Length length) {
        return length.text(unit, unit == LengthUnit.IN ? 4 : 3);
    }
}
