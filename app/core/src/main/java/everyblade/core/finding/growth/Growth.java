package everyblade.core.finding.growth;

import everyblade.core.finding.Dimension;
import everyblade.core.finding.Length;
import everyblade.core.finding.Measured;
import everyblade.fact.Fact;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How one size of a finding grew between two records. Both were measured independently, so the squares of their
 * uncertainties add up (JCGM 100:2008, 5.1.2).
 *
 * @param dimension that grew
 * @param then as it was
 * @param now as it is
 */
public record Growth(Dimension dimension, Measured then, Measured now) {

    /** What growth there surely is. */
    public enum Trend implements Fact {
        GROWN,
        /** No more than the uncertainty explains. */
        UNSURE,
        /** Smaller than it was, so measured otherwise, or another finding. */
        SHRUNK,
        /** Nobody said how sure one of the sizes is. */
        UNKNOWN
    }

    /** Of every size that both have. */
    public static List<Growth> of(Matching.Pair pair) {
        List<Growth> growths = new ArrayList<>();
        for (Dimension dimension : Dimension.values()) {
            Measured then = pair.then().sizes().get(dimension);
            Measured now = pair.now().sizes().get(dimension);
            if (then != null && now != null) {
                growths.add(new Growth(dimension, then, now));
            }
        }
        return growths;
    }

    /** By how much, with its expanded uncertainty if both have one. */
    public Measured amount() {
        return new Measured(
                now.value().minus(then.value()),
                then.plusMinus()
                        .flatMap(one -> now.plusMinus()
                                .map(other ->
                                        Length.ofMillimetres(Math.hypot(one.millimetres(), other.millimetres())))));
    }

    /** Whether it grew more, or shrank more, than its uncertainty. */
    public Trend trend() {
        Measured amount = amount();
        if (amount.plusMinus().isEmpty()) {
            return Trend.UNKNOWN;
        }
        double beyond = amount.value().millimetres();
        double explained = amount.plusMinus().get().millimetres();
        return beyond > explained ? Trend.GROWN : beyond < -explained ? Trend.SHRUNK : Trend.UNSURE;
    }

    /** Growth in a unit of what was run, mm. */
    public double rate(Usage.Run run) {
        return amount().value().millimetres() / run.number().doubleValue();
    }

    /** Expanded uncertainty of that, mm; what was run is taken as exact. */
    public OptionalDouble rateError(Usage.Run run) {
        Optional<Length> plusMinus = amount().plusMinus();
        return plusMinus.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(plusMinus.get().millimetres() / run.number().doubleValue());
    }
}
