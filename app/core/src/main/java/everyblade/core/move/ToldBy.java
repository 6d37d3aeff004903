package everyblade.core.move;

import everyblade.core.turning.Engine;
import everyblade.spi.Direction;
import everyblade.spi.Landmark;
import everyblade.spi.Row;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The landmark by which an airfoil is told from the others.
 *
 * @param apart how many airfoils it stands away from it; none if it bears the landmark itself
 */
public record ToldBy(Landmark landmark, int apart) {

    /** An airfoil that is no farther from a landmark is told by it at a glance. */
    static final int BESIDE = 2;
    /** How far from a landmark a whole turn may end, with what is added to it for its seam. */
    static final int FURTHEST = 2 * BESIDE;

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

    /**
     * Where airfoil 1 stands while one of the airfoils at a landmark and beside it is at a reference: that which is nearest;
     * clock angle in degrees.
     *
     * @param first where airfoil 1 stands now
     * @param reference clock angle
     * @param beside how many airfoils either way
     */
    static double nearest(Row row, int landmark, double first, double reference, int beside) {
        double there = reference - Engine.fromFirst(row, landmark).degrees();
        return IntStream.rangeClosed(-beside, beside)
                .mapToObj(apart -> there - apart * Engine.pitch(row))
                .min(Comparator.comparingDouble(place -> off(first, place)))
                .orElseThrow();
    }

    /** How far one clock angle is from another, degrees. */
    static double off(double from, double to) {
        return Math.abs(RotationProblem.way(from, to, EnumSet.allOf(Direction.class)));
    }
}
