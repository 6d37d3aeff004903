package everyblade.core.finding;

import everyblade.core.entry.Entry.LengthUnit;
import everyblade.core.finding.Figure.Allowed;
import everyblade.core.finding.Figure.Counted;
import everyblade.core.finding.Figure.Margin;
import everyblade.core.finding.Figure.Value;
import everyblade.core.finding.Figure.Value.Without;
import java.util.Map;
import java.util.Optional;

/** Holds single sizes and numbers against a step, and gives what came of it. */
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
            return new Figure(dimension, Without.NOT_ENTERED, limit(bounds), Optional.empty(), Verdict.NOT_MEASURED);
        }
        Measured size = entered.orElse(assumed);
        return new Figure(
                dimension,
                value(size),
                limit(bounds),
                Optional.of(size.plusMinus().isPresent() ? margin(size, bounds) : Margin.ToDo.SAY_UNCERTAINTY),
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
    static Figure count(Counted what, int sure, int maybe, int most) {
        Verdict verdict = maybe <= most ? Verdict.WITHIN : sure > most ? Verdict.BEYOND : Verdict.CLOSE;
        return new Figure(
                what,
                sure == maybe ? new Value.Number(sure) : new Value.Numbers(sure, maybe),
                new Allowed.Most(most),
                Optional.empty(),
                verdict);
    }

    Figure apart(Distances.Span span, Length least) {
        Verdict verdict = span.least().compareTo(least) >= 0
                ? Verdict.WITHIN
                : span.most().compareTo(least) < 0 ? Verdict.BEYOND : Verdict.CLOSE;
        return new Figure(
                Counted.Whole.DISTANCE,
                new Value.Distance(shown(span.least()), shown(span.most())),
                new Allowed.From(shown(least)),
                verdict == Verdict.CLOSE ? Optional.of(Margin.ToDo.MEASURE_AS_ZONES_DO_NOT_TELL) : Optional.empty(),
                verdict);
    }

    Figure apartUnknown(Length least) {
        return new Figure(
                Counted.Whole.DISTANCE,
                Without.NOT_KNOWN,
                new Allowed.From(shown(least)),
                Optional.of(Margin.ToDo.MEASURE),
                Verdict.CLOSE);
    }

    private Value value(Measured size) {
        ShownLength value = shown(size.value());
        return size.plusMinus()
                .<Value>map(plusMinus ->
                        new Value.Size(value.number(), shown(plusMinus).number(), unit))
                .orElseGet(() -> new Value.Bare(value));
    }

    private Allowed limit(Bounds bounds) {
        Optional<ShownLength> least = bounds.least().map(this::shown);
        Optional<ShownLength> most = bounds.most().map(this::shown);
        if (least.isEmpty()) {
            return new Allowed.UpTo(most.orElseThrow());
        }
        return most.<Allowed>map(end -> new Allowed.Between(least.get(), end))
                .orElseGet(() -> new Allowed.From(least.get()));
    }

    private Margin margin(Measured size, Bounds bounds) {
        Length margin = bounds.margin(size.value());
        boolean inside = margin.compareTo(Length.ZERO) >= 0;
        Length distance = inside ? margin : Length.ZERO.minus(margin);
        Length needed = guard == Guard.EXPANDED
                ? size.plusMinus().orElse(Length.ZERO)
                : Length.ofMillimetres(ONE_SIDED * size.standardUncertainty());
        return new Margin.Kept(shown(distance), inside, shown(needed));
    }

    private ShownLength shown(Length length) {
        return length.shown(unit, unit.decimals());
    }
}
