package everyblade.core.move;

import everyblade.spi.Landmark;
import everyblade.spi.Row;
import java.util.Comparator;
import java.util.Optional;

/**
 * The landmark by which an airfoil is told from the others.
 *
 * @param apart how many airfoils it stands away from it; none if it bears the landmark itself
 */
public record ToldBy(Landmark landmark, int apart) {

    /** An airfoil that is no farther from a landmark is told by it at a glance. */
    static final int BESIDE = 2;

    /** The nearest landmark; empty if none is near enough. */
    public static Optional<ToldBy> of(Row row, int airfoil) {
        return row.landmarks().stream()
                .map(landmark -> new ToldBy(landmark, apart(row, landmark.airfoil(), airfoil)))
                .filter(told -> told.apart <= BESIDE)
                .min(Comparator.comparingInt(ToldBy::apart));
    }

    static int apart(Row row, int one, int other) {
        int on = Math.floorMod(one - other, row.count());
        return Math.min(on, row.count() - on);
    }
}
