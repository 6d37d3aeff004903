package everyblade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pictures, the last record, the hand-over: what the commands say of them. */
class AgainAndBeforeTest {

    @TempDir
    Path folder;

    private Console console;

    @BeforeEach
    void console() {
        console = Console.in(folder);
    }

    private String text(String pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(console.file(pdf).toFile())) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }

    @Nested
    class SinceTheLastRecord {

        @BeforeEach
        void twoRecords() {
            console.job(
                    "fact cycles 100",
                    "view p-r",
                    "watch root",
                    "round 1",
                    "nick 3 root 0.5 ± 0.1",
                    "nick 4 root 1 ± 0.1",
                    "v noaccess all all because blocked");
            console.startNext("next", "job");
            console.run("log", "next", "fact cycles 300", "r nick 3 root 0.9 ± 0.1", "r dent 5 tip 1");
        }

        @Test
        void findingsTellTheirGrowthAndWhatIsNewOrMissing() {
            assertThat(console.run("findings", "next").out())
                    .contains("Since the last record, of 2026-05-14T06:00:00Z, 200 cycles ago:")
                    .contains(
                            "  entry 2 (then 5): length from 0.5 mm ± 0.1 mm to 0.9 mm ± 0.1 mm, by 0.4 mm ± 0.141 mm:"
                                    + " grown; 0.2000 ± 0.0707 mm per 100 cycles")
                    .contains("  entry 3: not in the last record")
                    .contains("  not entered now: nick, r, blade 4 (entry 6 then)");
        }

        @Test
        void gapsThatWereLeftLastTimeComeFirst() {
            console.run("log", "next", "r noaccess tip all because no time");

            assertThat(console.run("gaps", "next").outLines())
                    .satisfiesExactly(
                            first ->
                                    assertThat(first).startsWith("1. Vanes (v)").endsWith("Not seen last time either."),
                            second -> assertThat(second)
                                    .startsWith("2. Rotor (r)")
                                    .doesNotContain("last time"),
                            last -> assertThat(last).startsWith("2 gaps"));
            assertThat(console.run("gaps", "next", "--json").out()).containsOnlyOnce("\"lastTimeToo\" : true");
        }

        @Test
        void theReportHasAChapterOfIt() throws IOException {
            assertThat(console.run("report", "next", "--out", "r.pdf").err()).isEmpty();

            assertThat(text("r.pdf"))
                    .contains("Since the last record Compared with the record that was started 2026-05-14 06:00 UTC")
                    .contains("Run since: 200 cycles.", "+0.4 ± 0.141", "0.0707", "grown")
                    .contains("Not in the last record", "In the last record, and not entered now")
                    .contains("Not seen last time either");
        }
    }

    @Nested
    class Photos {

        @BeforeEach
        void some() {
            console.start();
            console.write("a.png", Pictured.png(7));
            console.write("day.txt", """
                    2026-05-14T06:10:00Z view p-r
                    2026-05-14T06:11:00Z datum r 1
                    2026-05-14T06:15:00Z turn on 90
                    2026-05-14T06:16:00Z photo a.png
                    2026-05-14T06:17:00Z photo a.png of 3 root
                    """);
            console.run("log", "job", "--file", "day.txt");
        }

        @Test
        void areListedWithTheBladeThatTheyLikelyShow() {
            assertThat(console.run("photos", "job").outLines())
                    .containsExactly(
                            "entry 4: a.png, 2026-05-14T06:16:00Z (of the entry), view p-r, shaft at 90.0° ± 0.0°: about"
                                    + " blade 10",
                            "entry 5: a.png, 2026-05-14T06:17:00Z (of the entry), view p-r, shaft at 90.0° ± 0.0°: about"
                                    + " blade 10; entered as of 3",
                            "2 pictures.");
            assertThat(console.run("photos", "job", "--json").out())
                    .contains("\"airfoil\" : 10", "\"stated\" : 3", "\"shaftAngle\" : 90");
        }

        @Test
        void standOnTheContactSheetOfTheReport() throws IOException {
            console.run("report", "job", "--out", "r.pdf");

            assertThat(text("r.pdf"))
                    .contains("Contact sheet", "a.png, entry 4", "about blade 10 (by the time)")
                    .contains("blade 3 (as entered)");
        }

        @Test
        void thatAreNoLongerThereAreToldAsMissing() throws IOException {
            java.nio.file.Files.delete(console.file("job/photos/a.png"));

            assertThat(console.run("report", "job", "--out", "r.pdf").status()).isZero();
            assertThat(text("r.pdf")).contains("not there as it was kept");
            assertThat(console.run("verify", "job").status()).isEqualTo(1);
        }
    }

    @Nested
    class HandOver {

        @Test
        void isAPageWithWhereEverythingIsTheLastThreeStepsAndWhatIsOpen() throws IOException {
            console.job(
                    "view p-r", "datum r 1", "turn on 60", "open cover", "tool out lamp", "note tea", "handover Bea");

            assertThat(console.run("handover", "job", "--out", "h.pdf").status())
                    .isZero();

            assertThat(text("h.pdf"))
                    .contains("First: bring a blade that is surely known to the reference, and say here N.")
                    .contains("at view p-r of Rotor", "reads 60.0°; blade 11 of r nearest to the reference")
                    .contains("cover is open, entry 4 by Ann", "lamp is out, entry 5 by Ann")
                    .containsSubsequence(
                            "The last three steps done", "turn on 60", "open cover", "tool out lamp", "Next")
                    .contains("handed over to Bea, and nobody has taken over")
                    .contains("Rotor (r)", "taken over by");
        }
    }
}
