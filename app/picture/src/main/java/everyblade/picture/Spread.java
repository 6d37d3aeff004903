package everyblade.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Sets labels round a circle apart: each as near to its wanted direction as its neighbours allow, in unchanged order.
 *
 * <p>Least squares under a least distance: with the distances taken off it is a monotone regression, solved by pooling
 * neighbours that collide. The circle is cut in its widest gap.
 */
final class Spread {

    /** Labels that have met and stand side by side. */
    private record Pool(double sum, int count) {

        double mean() {
            return sum / count;
        }

        Pool with(Pool other) {
            return new Pool(sum + other.sum, count + other.count);
        }
    }

    private Spread() {}

    /**
     * Directions for labels, in the order in which they were wanted.
     *
     * @param wanted degrees
     * @param least degrees from one to the next; less where the circle is too full
     */
    static List<Double> of(List<Double> wanted, double least) {
        if (wanted.size() < 2) {
            return wanted;
        }
        double apart = Math.min(least, 360.0 / wanted.size());
        List<Integer> order = IntStream.range(0, wanted.size())
                .boxed()
                .sorted(Comparator.comparingDouble(i -> CurvedText.wrapped(wanted.get(i))))
                .toList();
        int cut = widestGap(wanted, order);
        List<Pool> pools = new ArrayList<>();
        for (int i = 0; i < order.size(); i++) {
            int at = cut + i;
            double direction = CurvedText.wrapped(wanted.get(order.get(at % order.size()))) + at / order.size() * 360;
            Pool pool = new Pool(direction - i * apart, 1);
            while (!pools.isEmpty() && pools.get(pools.size() - 1).mean() >= pool.mean()) {
                pool = pools.remove(pools.size() - 1).with(pool);
            }
            pools.add(pool);
        }
        List<Double> placed = unpooled(pools, apart);
        if (placed.get(placed.size() - 1) - placed.get(0) > 360 - apart) {
            placed = even(placed);
        }
        Double[] result = new Double[wanted.size()];
        for (int i = 0; i < result.length; i++) {
            result[order.get((cut + i) % result.length)] = placed.get(i);
        }
        return List.of(result);
    }

    private static List<Double> unpooled(List<Pool> pools, double apart) {
        List<Double> placed = new ArrayList<>();
        for (Pool pool : pools) {
            for (int i = 0; i < pool.count(); i++) {
                placed.add(pool.mean() + placed.size() * apart);
            }
        }
        return placed;
    }

    /** All round the circle, where they have met across the cut: evenly, moved as little as that allows. */
    private static List<Double> even(List<Double> placed) {
        double step = 360.0 / placed.size();
        double offset = IntStream.range(0, placed.size())
                .mapToDouble(i -> placed.get(i) - i * step)
                .average()
                .orElse(0);
        return IntStream.range(0, placed.size())
                .mapToObj(i -> offset + i * step)
                .toList();
    }

    /** Which one, in order, follows the widest gap. */
    private static int widestGap(List<Double> wanted, List<Integer> order) {
        int best = 0;
        double widest = -1;
        for (int i = 0; i < order.size(); i++) {
            double here = CurvedText.wrapped(wanted.get(order.get(i)));
            double last = CurvedText.wrapped(wanted.get(order.get((i + order.size() - 1) % order.size())));
            double gap = i == 0 ? here - last + 360 : here - last;
            if (gap > widest) {
                widest = gap;
                best = i;
            }
        }
        return best;
    }
}
