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
}
