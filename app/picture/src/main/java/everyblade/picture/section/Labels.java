package everyblade.picture.section;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Sets labels in a line apart: each as near to its wanted place as its neighbours allow, in unchanged order. */
final class Labels {

    /** Labels that have met and stand side by side; the mean is where the first of them stands. */
    private record Pool(double sum, int count) {

        double mean() {
            return sum / count;
        }
    }

    private Labels() {}

    /**
     * Places for labels, in the order in which they were wanted.
     *
     * @param wanted where each should stand
     * @param apart from one to the next
     * @param from least place
     * @param to greatest place, if there is room for all
     */
    static List<Double> spread(List<Double> wanted, double apart, double from, double to) {
        List<Integer> order = IntStream.range(0, wanted.size())
                .boxed()
                .sorted(Comparator.comparingDouble(wanted::get))
                .toList();
        double last = Math.max(from, to - apart * (wanted.size() - 1));
        List<Pool> pools = new ArrayList<>();
        for (int i = 0; i < order.size(); i++) {
            double free = Math.max(from, Math.min(last, wanted.get(order.get(i)) - i * apart));
            Pool pool = new Pool(free, 1);
            while (!pools.isEmpty() && pools.get(pools.size() - 1).mean() > pool.mean()) {
                Pool before = pools.remove(pools.size() - 1);
                pool = new Pool(before.sum() + pool.sum(), before.count() + pool.count());
            }
            pools.add(pool);
        }
        Double[] placed = new Double[wanted.size()];
        int next = 0;
        for (Pool pool : pools) {
            for (int i = 0; i < pool.count(); i++) {
                placed[order.get(next)] = pool.mean() + next * apart;
                next++;
            }
        }
        return List.of(placed);
    }
}
