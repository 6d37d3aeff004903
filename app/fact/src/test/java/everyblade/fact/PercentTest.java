package everyblade.fact;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class PercentTest {

    @Test
    void callsAGoodShareAllOnlyIfNothingIsMissing() {
        assertThat(Percent.good(1, 1)).hasToString("100.0");
        assertThat(Percent.good(19_999 / 20_000.0, 1)).hasToString("99.9");
        assertThat(Percent.good(0.9999, 0)).hasToString("99");
        assertThat(Percent.good(1 - 1e-12, 1)).hasToString("100.0");
    }

    @Test
    void callsABadShareNoneOnlyIfThereIsNone() {
        assertThat(Percent.bad(0, 1)).hasToString("0.0");
        assertThat(Percent.bad(1 / 20_000.0, 1)).hasToString("0.1");
        assertThat(Percent.bad(1e-12, 1)).hasToString("0.0");
        assertThat(Percent.bad(1.0 / 3, 1)).hasToString("33.4");
    }

    @Test
    void neverLetsAPartAndTheRestAddUpToLessThanAll() {
        for (int whole : new int[] {1, 7, 228, 999}) {
            assertThat(IntStream.rangeClosed(0, whole)).allSatisfy(part -> {
                double good = Percent.good((double) part / whole, 1).doubleValue();
                double bad = Percent.bad((double) (whole - part) / whole, 1).doubleValue();
                assertThat(good + bad).isBetween(99.99, 100.01);
                assertThat(good == 100).isEqualTo(part == whole);
                assertThat(bad == 0).isEqualTo(part == whole);
            });
        }
    }
}
