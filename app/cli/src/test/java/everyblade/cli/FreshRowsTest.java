package everyblade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What it takes to see a whole row of which nothing was seen. How many whole turns it takes at least is proved by trying
 * every set of stations, how many minutes by every order of turning before them; what a plan turns beyond whole turns are ways
 * to known blades and the seams.
 */
class FreshRowsTest {

    private static final Path MODELS = Path.of("../../engine-models").toAbsolutePath();

    @TempDir
    Path folder;

    @Test
    void noPlanTurnsLess() throws IOException {
        assertPlanned("tansy-a1", "t", 5, 1874, 49);
    }

    /** 106.5 of 110.5 minutes. */
    @Test
    void whatNoPlanTakesLessThanIsNeverRoundedUp() {
        assertThat(Console.in(folder)
                        .run("plan", MODELS.resolve("tansy-a1").toString(), "--rows", "i1,t")
                        .out())
                .contains("111 min in all; no plan takes less than 106 min;");
    }

    @ParameterizedTest
    @CsvSource({
        "larkspur-4, c1, 5, 1937, 50",
        "larkspur-4, c2, 4, 1457, 44",
        "larkspur-4, gt, 6, 2349, 66",
        "corncrake-12, c12, 5, 1957, 50",
        "corncrake-12, t1, 4, 1519, 45"
    })
    @EnabledIfSystemProperty(named = "everyblade.campaign", matches = "true")
    void noPlanTurnsLessOnLargerEngines(String model, String row, int turns, int degrees, double minutes)
            throws IOException {
        assertPlanned(model, row, turns, degrees, minutes);
    }

    private void assertPlanned(String model, String row, int turns, int degrees, double minutes) throws IOException {
        Console.Ran ran = Console.in(folder).run("plan", MODELS.resolve(model).toString(), "--rows", row, "--json");
        JsonNode plan = new ObjectMapper().readTree(ran.out());
        assertThat(plan.at("/least/turns").asDouble()).isEqualTo(turns);
        double turned = 360 * plan.get("turns").asDouble();
        assertThat(turned).isBetween(360.0 * turns, (double) degrees);
        double taken = plan.get("minutes").asDouble();
        assertThat(taken).isLessThanOrEqualTo(minutes);
        assertThat(plan.get("bound").asDouble()).isEqualTo(taken);
        assertThat(plan.get("proved").asBoolean()).isTrue();
    }
}
