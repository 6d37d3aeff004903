package everyblade.core.surface;

/** Values between given ones, along straight lines. */
final class Between {

    private Between() {}

    /** The value that share of the way from a to b; exactly a at 0 and b at 1. */
    static double mix(double a, double b, double share) {
        return (1 - share) * a + share * b;
    }

    /** The value at a place between rising places; before the first and after the last, the value there. */
    static double linear(double[] places, double[] values, double at) {
        int last = places.length - 1;
        if (at <= places[0]) {
            return values[0];
        }
        for (int i = 1; i <= last; i++) {
            if (at < places[i]) {
                return mix(values[i - 1], values[i], (at - places[i - 1]) / (places[i] - places[i - 1]));
            }
        }
        return values[last];
    }
}
