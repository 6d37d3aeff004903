package everyblade.practice.harm;

import java.util.List;

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
        if (rows.isEmpty() || kinds.isEmpty() || kinds.stream().anyMatch(kind -> !kind.isDamage())) {
            throw new IllegalArgumentException("a drill has rows, and kinds of damage");
        }
        if (damage < 0 || harmless < 0 || damage + harmless > MOST) {
            throw new IllegalArgumentException("a drill has from 0 to " + MOST + " places with something on them");
        }
        if (!(least >= 0.1 && most >= least && most <= 30)) {
            throw new IllegalArgumentException("damage is from 0.1 to 30 mm, the least size not above the most");
        }
        if (!(grime >= 0 && grime <= 1)) {
            throw new IllegalArgumentException("rows are from 0 (washed) to 1 (dirty)");
        }
    }
}
