package everyblade.picture.sight;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Where the numbers of airfoils are written in a field: each on its airfoil, as far from the airfoil's visible border as can
 * be, largest airfoil first; one that would cover another, or of which hardly anything shows, is left out.
 */
final class TipNumbers {

    /** Radius of a number's disc, in picture elements. */
    static final double RADIUS = 11;

    /** Airfoils of which less than this share of the field shows are not numbered. */
    private static final double LEAST_SHARE = 0.0008;

    private TipNumbers() {}

    /**
     * A number.
     *
     * @param airfoil from 0
     * @param x picture elements from the left
     * @param y picture elements from the top
     * @param shown how many picture elements of the airfoil show
     */
    record Number(int airfoil, double x, double y, int shown) {

        private boolean covers(Number other) {
            return StrictMath.hypot(x - other.x, y - other.y) < 2 * RADIUS;
        }
    }

    /** The numbers of a field, in the order of the airfoils. */
    static List<Number> of(TipField field, int airfoils) {
        int size = field.size();
        int[] owner = new int[size * size];
        Arrays.setAll(owner, i -> field.airfoil(i % size, i / size));
        int[] depth = depth(owner, size);
        int[] shown = new int[airfoils];
        int[] best = new int[airfoils];
        Arrays.fill(best, -1);
        for (int i = 0; i < owner.length; i++) {
            int of = owner[i];
            if (of >= 0) {
                shown[of]++;
                best[of] = best[of] < 0 || depth[i] > depth[best[of]] ? i : best[of];
            }
        }
        List<Number> candidates = new ArrayList<>();
        for (int of = 0; of < airfoils; of++) {
            if (shown[of] >= LEAST_SHARE * size * size) {
                candidates.add(new Number(of, best[of] % size + 0.5, best[of] / size + 0.5, shown[of]));
            }
        }
        candidates.sort(Comparator.comparingInt(Number::shown).reversed().thenComparing(Number::airfoil));
        List<Number> numbers = new ArrayList<>();
        for (Number candidate : candidates) {
            if (numbers.stream().noneMatch(candidate::covers)) {
                numbers.add(candidate);
            }
        }
        numbers.sort(Comparator.comparingInt(Number::airfoil));
        return numbers;
    }

    /** How many steps each picture element lies within the border of what shows of its airfoil. */
    private static int[] depth(int[] owner, int size) {
        int[] depth = new int[owner.length];
        for (int i = 0; i < owner.length; i++) {
            depth[i] = Math.min(beside(owner, depth, i, -1, size), beside(owner, depth, i, -size, size)) + 1;
        }
        for (int i = owner.length - 1; i >= 0; i--) {
            int after = Math.min(beside(owner, depth, i, 1, size), beside(owner, depth, i, size, size)) + 1;
            depth[i] = Math.min(depth[i], after);
        }
        return depth;
    }

    private static int beside(int[] owner, int[] depth, int i, int step, int size) {
        int other = i + step;
        boolean inField = other >= 0 && other < owner.length && (Math.abs(step) > 1 || other / size == i / size);
        return inField && owner[other] == owner[i] ? depth[other] : 0;
    }
}
