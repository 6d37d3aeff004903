package everyblade.core.entry;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * One entry of the journal: what the technician did, saw or said. Numbers are as typed, angles in degrees, times in
 * seconds; {@code plusMinus} is always ± degrees of shaft at 95 % unless said otherwise, and not negative. The records stand
 * in four groups, each kind beside how it is said.
 */
public sealed interface Entry permits LookEntry, TurnEntry, FindingEntry, RecordEntry {

    /** What moves what turns, or the scope tip round the annulus, by an amount or to a reading. */
    interface Moving {
        Said<Movement> movement();
    }

    /** What may say how long it took, s. */
    interface Timed {
        Optional<BigDecimal> seconds();
    }

    /** What says where an airfoil is, and may say how far that may be off, ± degrees. */
    interface Placing {
        Optional<BigDecimal> plusMinus();
    }

    /** What names a picture. */
    interface Pictured {
        Said<String> file();
    }

    /** What speaks of a run of airfoils, of the row in view unless one is named. */
    interface OfAirfoils {
        Optional<Said<String>> row();

        Airfoils airfoils();
    }

    /** Moving between two stations of the view in use. */
    record Through(Said<String> from, Said<String> to) {}

    /** A run of airfoil numbers, ends included, or all of a row if both are empty. */
    record Airfoils(Optional<Said<Integer>> first, Optional<Said<Integer>> last) {}

    /**
     * The size of a finding.
     *
     * @param plusMinus of every dimension, in {@code unit}
     * @param unit mm or in
     */
    record Size(
            Optional<BigDecimal> length,
            Optional<BigDecimal> depth,
            Optional<BigDecimal> width,
            Optional<BigDecimal> plusMinus,
            LengthUnit unit) {}

    /** Unit of a length; without a word it is the first. */
    enum LengthUnit {
        MM("1", 3),
        IN("25.4", 4);

        private final BigDecimal mm;
        private final int decimals;

        LengthUnit(String mm, int decimals) {
            this.mm = new BigDecimal(mm);
            this.decimals = decimals;
        }

        /** How many mm it is, exactly. */
        public BigDecimal mm() {
            return mm;
        }

        /** To so many decimals a size that was measured inside an engine is worth telling. */
        public int decimals() {
            return decimals;
        }

        /** The word in entries and files. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        /** The unit of this word in lower case, if there is one. */
        public static Optional<LengthUnit> named(String word) {
            return Arrays.stream(values())
                    .filter(unit -> unit.word().equals(word))
                    .findFirst();
        }
    }

    /** Unit of a repeat interval. */
    enum Interval {
        CYCLES,
        HOURS,
        DAYS
    }
}
