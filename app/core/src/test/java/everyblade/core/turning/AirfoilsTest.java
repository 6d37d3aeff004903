package everyblade.core.turning;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.Engines;
import everyblade.core.English;
import everyblade.spi.Row;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class AirfoilsTest {

    private static final Row ROW = new Engines().rotor("c1", 12).built().rows().get("c1");

    private static String told(Integer... numbers) {
        return English.say(Airfoils.of(ROW, List.of(numbers)));
    }

    @Test
    void runsAreToldByTheirEnds() {
        assertThat(told(2, 3, 4, 7, 9, 10, 11)).isEqualTo("blades 2–4, 7 and 9–11");
        assertThat(told(5, 6)).isEqualTo("blades 5, 6");
        assertThat(told(5)).isEqualTo("blade 5");
    }

    @Test
    void aRunOverTheSeamIsOne() {
        assertThat(told(1, 2, 12)).isEqualTo("blades 12–2");
    }

    @Test
    void theWholeRowIsToldByItsCount() {
        assertThat(told(IntStream.rangeClosed(1, 12).boxed().toArray(Integer[]::new)))
                .isEqualTo("all 12 blades");
    }
}
