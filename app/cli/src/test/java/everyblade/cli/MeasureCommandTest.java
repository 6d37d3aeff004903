package everyblade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.cli.Console.Ran;
import everyblade.session.photo.CameraPicture;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MeasureCommandTest {

    /**
     * Twelve flat plates along the axis, 20 mm long, from radius 80 to 100. Plate at clock 0: from x = 0 to 20. The eye stands
     * 30 mm clockwise beside its middle, of view {@code square} on its normal, of view {@code slanted} 30 mm ahead of that,
     * and looks at the plate's middle.
     */
    static final String PLATES = """
            { "schema": "everyblade/engine-model/1", "id": "plates", "name": "Plates", "notice": "Invented for tests.",
              "walls": [ { "id": "hub", "curve": [[-50, 80], [60, 80]] }, { "id": "casing", "curve": [[-50, 100], [60, 100]] } ],
              "rows": [ { "id": "r", "name": "Rotor", "kind": "rotor", "count": 12, "spanBands": 1, "chordBands": [],
                          "landmarks": [ { "airfoil": 1, "what": "etched" } ],
                          "shape": { "type": "axial", "sections": [
                            { "span": 0, "chord": 20, "stagger": 0, "camber": 0, "thickness": 0.01, "x": 0 },
                            { "span": 1, "chord": 20, "stagger": 0, "camber": 0, "thickness": 0.01, "x": 0 } ] },
                          "source": "invented" } ],
              "scopeTips": [ { "id": "side", "cone": 60, "near": 4, "far": 80, "pixels": 640, "diameter": 4 } ],
              "views": [
                { "id": "square", "row": "r", "scopeTip": "side", "reference": 0, "stations": [
                  { "id": "mid", "x": 10, "r": 94.868330, "clock": 18.434949,
                    "forward": [0, -0.948683, -0.316228], "up": [0, -0.316228, 0.948683],
                    "within": { "mm": 0, "deg": 0 } } ] },
                { "id": "slanted", "row": "r", "scopeTip": "side", "reference": 0, "stations": [
                  { "id": "mid", "x": -20, "r": 94.868330, "clock": 18.434949,
                    "forward": [0.707107, -0.670820, -0.223607], "up": [0, -0.316228, 0.948683],
                    "within": { "mm": 0, "deg": 0 } } ] } ] }
            """;

    @TempDir
    Path folder;

    private Console console;

    @BeforeEach
    void aJobWithAPicture() {
        console = Console.in(folder);
        console.write("plates/engine.json", PLATES);
        console.write("one.jpg", CameraPicture.jpeg(6, ""));
        assertThat(console.run("start", "job", "--model", "plates", "--serial", "7", "--task", "look", "--by", "Ann")
                        .err())
                .isEmpty();
        log("view square", "datum r 1 at 0", "photo one.jpg of 1 all");
    }

    private void log(String... entries) {
        String[] all = new String[entries.length + 2];
        all[0] = "log";
        all[1] = "job";
        System.arraycopy(entries, 0, all, 2, entries.length);
        Ran logged = console.run(all);
        assertThat(logged.status()).as(logged.err()).isZero();
    }

    private Ran measure(String... more) {
        String[] all = new String[more.length + 3];
        all[0] = "measure";
        all[1] = "job";
        all[2] = "one.jpg";
        System.arraycopy(more, 0, all, 3, more.length);
        return console.run(all);
    }

    @Test
    void saysTheSizeWithItsUncertaintyAndItsShares() {
        Ran measured = measure("--known", "4,10,44,10=20 ± 0.2 mm", "--size", "10,20,20,20");

        assertThat(measured.status()).isZero();
        assertThat(measured.outLines().get(0)).matches("one.jpg, entry 3: 5\\.[0-9] ± [0-9]\\.[0-9]+ mm");
        assertThat(measured.outLines())
                .contains("of blade 1 of Rotor (r), all", "25.0 % of the chord (20 mm)")
                .anySatisfy(line -> assertThat(line).matches("2[56]\\.[0-9] % of the span \\(1?[0-9.]+ mm\\)"));
        assertThat(measured.err()).doesNotContain("does not tell how this was seen");
    }

    @Test
    void saysThatThePictureIsNotThereAsItWasKept() throws IOException {
        assertThat(measure("--known", "4,10,44,10=20mm", "--size", "10,20,20,20")
                        .err())
                .doesNotContain("as it was kept");
        Files.writeString(folder.resolve("job/photos/one.jpg"), "another");

        assertThat(measure("--known", "4,10,44,10=20mm", "--size", "10,20,20,20")
                        .err())
                .contains("warning: one.jpg is not in the job as it was kept");
    }

    @Test
    void knowsWhatIsUprightInAPictureThatLiesOnItsSide() {
        assertThat(measure("--known", "4,60,44,60=20mm", "--size", "10,20,20,20")
                        .status())
                .isZero();
        assertThat(measure("--known", "4,10,60,10=20mm", "--size", "10,20,20,20")
                        .err())
                .contains("--known", "outside the picture, which has 48 by 64 pixels");
    }

    @Test
    void measuresTheSameInInchesAndMillimetres() {
        String[] size = {"--size", "10,20,20,20", "--json"};

        assertThat(measure("--known", "4,10,44,10=1in±0.01", size[0], size[1], size[2])
                        .out())
                .isEqualTo(measure("--known", "4,10,44,10=25.4 ± 0.254 mm", size[0], size[1], size[2])
                        .out());
    }

    @Nested
    class OfASlantedSurface {

        private double incidence() {
            String out = measure("--known", "4,10,44,10=20mm", "--size", "10,20,20,20", "--json")
                    .out();
            return Double.parseDouble(out.replaceAll("(?s).*\"incidence\" : ([0-9.]+).*", "$1"));
        }

        @Test
        void seesASquareViewAsSquareUpToTheWidthOfTheField() {
            assertThat(incidence()).isBetween(5.0, 25.0);
        }

        @Test
        void seesAViewFromAsideAsSlantedWarnsAndStatesALargerUncertainty() {
            Ran before = measured();
            log("view slanted", "photo one.jpg of 1 all");

            assertThat(incidence()).isBetween(40.0, 60.0);
            Ran after = measured();
            assertThat(after.err()).contains("warning: the line is seen ").contains("from square");
            assertThat(plusMinus(after)).isGreaterThan(2 * plusMinus(before));
        }

        private Ran measured() {
            return measure("--known", "4,10,44,10=20mm", "--size", "10,20,20,20", "--pointing", "0.1");
        }

        private double plusMinus(Ran ran) {
            return Double.parseDouble(ran.outLines().get(0).replaceAll(".* ± ([0-9.]+) mm", "$1"));
        }

        @Test
        void saysThatNothingIsKnownOfAPlateThatWasNotInView() {
            log("clear", "skip on 180 ± 0", "photo one.jpg of 7 all");

            // Entries may be typed long after: the airfoil that a person names stood in the middle of the picture.
            assertThat(incidence()).isBetween(5.0, 25.0);
            console.write("two.jpg", CameraPicture.jpeg(1, "2026:05:14 06:00:00"));
            log("photo two.jpg of 3 all");

            Ran measured =
                    console.run("measure", "job", "two.jpg", "--known", "4,10,44,10=20mm", "--size", "10,20,20,20");
            assertThat(measured.err()).contains("warning: the engine model does not tell how this was seen");
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "one.jpg; 4,10,44,10; 10,20,20,20; does not say how long that is",
                "one.jpg; 4,10,44,10=; 10,20,20,20; is no length",
                "one.jpg; 4,10,44,10=0mm; 10,20,20,20; is no length",
                "one.jpg; 4,10,44=20mm; 10,20,20,20; two points are four numbers",
                "one.jpg; 4,10,44,10=20mm; 10,20,10,20; both points are the same",
                "one.jpg; 4,10,44,10=20mm; 10,20,x,20; is no number",
                "other.jpg; 4,10,44,10=20mm; 10,20,20,20; the job has 3 (one.jpg)"
            })
    void refusesInOneLineWhatCannotBeMeasured(String picture, String known, String size, String told) {
        Ran refused = console.run("measure", "job", picture, "--known", known, "--size", size);

        assertThat(refused.status()).isEqualTo(2);
        assertThat(refused.out()).isEmpty();
        assertThat(refused.errLines()).singleElement().asString().contains(told);
    }

    @ParameterizedTest
    @CsvSource({"--of, 13, the numbers 1 to 12", "--zone, tip/pressure/leading, --zone"})
    void refusesAnAirfoilAndAZoneThatTheRowHasNot(String option, String value, String told) {
        Ran refused = measure("--known", "4,10,44,10=20mm", "--size", "10,20,20,20", option, value);

        assertThat(refused.status()).isEqualTo(2);
        assertThat(refused.errLines()).singleElement().asString().contains(told);
    }
}
