package everyblade.practice.harm;

import everyblade.fact.Fact;
import java.util.List;
import java.util.Optional;

/**
 * What is to be invented.
 *
 * @param rows ids of the rows that may have it
 * @param kinds of damage that may be, at least one
 * @param damage how many there are
 * @param harmless how many harmless marks, deposits and glints there are
 * @param least size of damage, mm, above 0
 * @param most size of damage, mm; sizes are as likely in each doubling
 * @param grime 0 for washed rows to 1 for dirty ones
 */
public record Recipe(
        List<String> rows, List<HarmKind> kinds, int damage, int harmless, double least, double most, double grime) {

    /** So much is on one row at most, for each of its airfoils. */
    private static final int MOST = 400;

    public Recipe {
        rows = List.copyOf(rows);
        kinds = List.copyOf(kinds);
        flaw(rows, kinds, damage, harmless, least, most, grime).ifPresent(flaw -> {
            throw new IllegalArgumentException(flaw.toString());
        });
    }

    /** Why something cannot be invented. */
    public sealed interface Flaw extends Fact {}

    /** What needs no particulars. */
    enum Whole implements Flaw {
        NO_ROW_OR_KIND,
        SIZES,
        GRIME
    }

    /** @param most places with something on them that a drill may have */
    record Places(int most) implements Flaw {}

    /** Why this is no recipe; empty if it is one. */
    public static Optional<Flaw> flaw(
            List<String> rows,
            List<HarmKind> kinds,
            int damage,
            int harmless,
            double least,
            double most,
            double grime) {
        if (rows.isEmpty() || kinds.isEmpty() || kinds.stream().anyMatch(kind -> !kind.isDamage())) {
            return Optional.of(Whole.NO_ROW_OR_KIND);
        }
        if (damage < 0 || harmless < 0 || damage + harmless > MOST) {
            return Optional.of(new Places(MOST));
        }
        if (!(least >= 0.1 && most >= least && most <= 30)) {
            return Optional.of(Whole.SIZES);
        }
        return grime >= 0 && grime <= 1 ? Optional.empty() : Optional.of(Whole.GRIME);
    }
}
