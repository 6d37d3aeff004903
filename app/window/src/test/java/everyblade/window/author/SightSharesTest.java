package everyblade.window.author;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.sight.Progress;
import everyblade.words.Words;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SightSharesTest {

    private static final double TINY = 1e-12;

    @TempDir
    Path folder;

    private ReadModel read(String text) {
        return new Bench(folder).read(text, Bench.FIRST).model().orElseThrow();
    }

    private SightShares shares(String text) {
        return SightShares.of(read(text), Bench.at("p1-c1", "mid"), Progress.NONE);
    }

    @Test
    void theWholeAirfoilComesFirstThenItsZonesAsTheRowNumbersThem() {
        SightShares shares = shares(Bench.MODEL);

        assertThat(shares.positions()).isEqualTo(27);
        assertThat(shares.zones())
                .hasSize(13)
                .extracting(SightShares.Zone::name)
                .startsWith("all", "root/pressure/leading")
                .endsWith("tip/suction/trailing");
    }

    @Test
    void whatEveryPositionShowsIsNoMoreThanWhatOneShowsOnAverageAndThatNoMoreThanWhatSomeShow() {
        assertThat(shares(Bench.MODEL).zones()).allSatisfy(zone -> {
            assertThat(zone.every()).isBetween(0.0, zone.mean() + TINY);
            assertThat(zone.mean()).isLessThanOrEqualTo(1 - zone.none() + TINY);
            assertThat(zone.why().isPresent()).isEqualTo(zone.every() < 1 - TINY);
        });
        assertThat(shares(Bench.MODEL).zones().get(0).mean()).isBetween(0.05, 0.95);
    }

    @Test
    void aStationWithoutToleranceIsOnePositionThatShowsAllOrNothingOfAFacet() {
        SightShares exact = shares(Bench.MODEL.replace(
                "\"within\": { \"mm\": 0.5, \"deg\": 2 }", "\"within\": { \"mm\": 0, \"deg\": 0 }"));

        assertThat(exact.positions()).isEqualTo(1);
        assertThat(exact.zones()).allSatisfy(zone -> {
            assertThat(zone.mean()).isCloseTo(zone.every(), within(TINY));
            assertThat(zone.none()).isCloseTo(1 - zone.every(), within(TINY));
        });
    }

    @Test
    void theComputationCanBeStopped() {
        Progress stopped = new Progress() {
            @Override
            public boolean cancelled() {
                return true;
            }
        };

        assertThatThrownBy(() -> SightShares.of(read(Bench.MODEL), Bench.at("p1-c1", "mid"), stopped))
                .isInstanceOf(CancellationException.class);
    }

    @Test
    void oneAirfoilIsDrawnUnrolledForTheSameStation() {
        assertThat(UnrolledAirfoil.of(read(Bench.MODEL), Bench.at("p1-c1", "mid"), Words.of(Locale.ENGLISH)))
                .hasValueSatisfying(scene -> assertThat(scene.title()).contains("view p1-c1, station mid"));
    }
}
