package everyblade.core.coverage;

import everyblade.core.entry.Settings;
import java.util.OptionalDouble;

/**
 * What a cell must show to count.
 *
 * @param seen share of its surface that must be in sight
 * @param reach share of its surface that some view must show for it to be within reach
 * @param edge share of its outermost strip that must be in sight too, of a cell at the leading or trailing edge
 * @param leastView seconds for which it must be in view, where the job asks for it
 */
record Judging(double seen, double reach, double edge, OptionalDouble leastView) {

    /** What the settings of a job ask for. */
    static Judging of(Settings settings) {
        return new Judging(
                settings.number("seen").orElseThrow(),
                settings.number("reach").orElseThrow(),
                settings.number("edge").orElseThrow(),
                settings.leastView());
    }
}
