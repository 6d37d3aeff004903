package everyblade.core.finding;

import everyblade.core.entry.Entry.LengthUnit;
import everyblade.core.entry.ZonePhrase;
import everyblade.fact.Fact;
import everyblade.spi.RowKind;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * One thing that was held against a limit.
 *
 * @param what a {@link Dimension}, a kind of finding, or a {@link Counted}
 * @param value as it is, a {@link Value} or a {@link Verdict}
 * @param limit what the rule allows
 * @param margin how far from the limit, and how near it may come; empty where that makes no sense
 * @param verdict of this alone
 */
public record Figure(Fact what, Fact value, Allowed limit, Optional<Margin> margin, Verdict verdict) {

    /** What is neither measured nor of a kind, but counted, compared or asked of others. */
    public sealed interface Counted extends Fact {

        record OnAirfoil(RowKind row) implements Counted {}

        record AirfoilsWith(RowKind row) implements Counted {}

        record SideBySide(RowKind row) implements Counted {}

        /** @param row id */
        record LimitsOf(String row) implements Counted {}

        record Side(ZonePhrase side) implements Counted {}

        enum Whole implements Counted {
            IN_ROW,
            DISTANCE
        }
    }

    /** What was found. */
    public sealed interface Value extends Fact {

        /**
         * A size with its expanded uncertainty.
         *
         * @param size in the unit
         * @param plusMinus in the unit
         */
        record Size(BigDecimal size, BigDecimal plusMinus, LengthUnit unit) implements Value {}

        /** A size of which nobody said how sure it is. */
        record Bare(ShownLength size) implements Value {}

        record Number(int number) implements Value {}

        record Numbers(int sure, int maybe) implements Value {}

        record Distance(ShownLength least, ShownLength most) implements Value {}

        enum Without implements Value {
            NOT_ENTERED,
            NOT_KNOWN,
            FOUND,
            NOT_ALL_SEEN,
            NOT_SEEN_HERE
        }
    }

    /** What a rule allows. */
    public sealed interface Allowed extends Fact {

        record UpTo(ShownLength most) implements Allowed {}

        record From(ShownLength least) implements Allowed {}

        record Between(ShownLength least, ShownLength most) implements Allowed {}

        record Most(int most) implements Allowed {}

        enum Whole implements Allowed {
            NONE,
            ALL_WITHIN,
            BOTH_FACES
        }
    }

    /** How far from the limit, or what to do to know it. */
    public sealed interface Margin extends Fact {

        /**
         * From the nearer end.
         *
         * @param distance not negative
         * @param inside whether it lies within
         * @param guard how near it may come
         */
        record Kept(ShownLength distance, boolean inside, ShownLength guard) implements Margin {}

        enum ToDo implements Margin {
            SAY_UNCERTAINTY,
            MEASURE_AS_ZONES_DO_NOT_TELL,
            MEASURE
        }
    }
}
