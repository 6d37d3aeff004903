package everyblade.core.move;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.spi.Landmark;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** An airfoil is told by a landmark that it bears or that is at most two airfoils away, also over the last number. */
class ToldByTest {

    private static final Row ROW = Row.of("r", RowKind.ROTOR, 20)
            .landmarks(List.of(new Landmark(1, "notch"), new Landmark(5, "rivet")))
            .build();

    @ParameterizedTest
    @CsvSource({
        "1, notch, 0",
        "2, notch, 1",
        "20, notch, 1",
        "19, notch, 2",
        "5, rivet, 0",
        "4, rivet, 1",
        "7, rivet, 2"
    })
    void theNearestLandmarkTellsIt(int airfoil, String what, int apart) {
        ToldBy told = ToldBy.of(ROW, airfoil).orElseThrow();
        assertThat(told.landmark().what()).isEqualTo(what);
        assertThat(told.apart()).isEqualTo(apart);
    }

    @ParameterizedTest
    @CsvSource({"8", "18", "12"})
    void noneTellsOneThatIsFartherAway(int airfoil) {
        assertThat(ToldBy.of(ROW, airfoil)).isEmpty();
    }

    /** Airfoils stand 18° apart; while airfoil 5 is at the reference of 90°, airfoil 1 is at 18°. */
    @ParameterizedTest
    @CsvSource({
        "18, 18",
        "17, 18",
        "352, 0",
        "350, -18",
        "-9.1, -18",
        "340, -18",
        "200, -18",
        "26, 18",
        "28, 36",
        "60, 54",
        "120, 54"
    })
    void aRoundIsToldByTheNearestOfFiveAirfoils(double first, double there) {
        assertThat(ToldBy.nearest(ROW, 5, first, 90, 2)).isEqualTo(there);
    }
}
