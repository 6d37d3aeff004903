package everyblade.session;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.coverage.RowCoverage;
import everyblade.words.Words;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DoubtsTest {

    @TempDir
    Path folder;

    private Session session;

    @BeforeEach
    void open() {
        session = Workshop.in(folder).counting();
    }

    @AfterEach
    void close() {
        session.close();
    }

    private List<String> about(String line) {
        Preview preview = Preview.of(session.state(), line, Workshop.NOW, Workshop.ENGLISH);
        return preview instanceof Preview.Will will ? will.doubts() : List.of();
    }

    @Nested
    class ANumberOffByTen {

        @BeforeEach
        void turn() {
            List.of("turn on 31", "turn on 29", "turn on 32").forEach(session::say);
        }

        @ParameterizedTest
        @ValueSource(strings = {"turn on 310", "turn on 3,1", "turn back 290"})
        void isQuestioned(String line) {
            assertThat(about(line)).singleElement().asString().contains("about 31 deg", "decimal mark");
        }

        @ParameterizedTest
        @ValueSource(
                strings = {"turn on 45", "turn on 7", "turn on 200", "turn on 1 blades", "turn to 300", "turn on 0"})
        void isToldFromAUsualOneAndFromAnotherUnit(String line) {
            assertThat(about(line)).isEmpty();
        }
    }

    @Test
    void twoMovesBeforeAreTooFewToCompareWith() {
        List.of("turn on 31", "turn on 29").forEach(session::say);

        assertThat(about("turn on 310")).isEmpty();
    }

    @Test
    void aSizeOffByTenIsQuestioned() {
        List.of("round 1", "dent 1 tip 1.2", "dent 2 tip 0.9", "nick 3 root 2").forEach(session::say);

        assertThat(about("dent 4 tip 12")).isEmpty();
        assertThat(about("dent 4 tip 20")).singleElement().asString().contains("20 mm");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"turn on 3 blades", "skip on 2 blades", "skip on 90", "turn back 8 blades", "turn on 6 blades"})
    void aStepThatSharesAFactorWithTheCountIsQuestioned(String line) {
        assertThat(about(line)).singleElement().asString().contains("repeated, never stands at blades");
    }

    @ParameterizedTest
    @ValueSource(strings = {"turn on 5 blades", "turn on 1 blades", "turn on 12 blades", "turn on 90", "skip on 31"})
    void aStepThatReachesEveryBladeIsNot(String line) {
        assertThat(about(line)).isEmpty();
    }

    @Test
    void theBladesThatAreMissedAreNamed() {
        assertThat(about("skip on 90")).first().asString().contains("2, 3, 5, 6, 8, 9 and 11, 12");
    }

    @Test
    void anIdentificationThatWouldLoseTheCountIsQuestioned() {
        session.say("turn on 60");

        assertThat(about("here 11")).isEmpty();
        assertThat(about("here 8")).singleElement().asString().contains("off by 3");
        assertThat(about("round 8")).singleElement().asString().contains("off by 3");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "turn on 7 tool | 7 tool is 7 whole turns of the turning tool, 2520° of the shaft; for degrees of the tool, say tooldeg.",
                "turn on 3600 | That is 10 whole turns of the shaft in one move: did a digit slip in?",
                "here 1 ± 1 | ± 1 is degrees of the shaft, and from one blade to the next are 30°: say ± 1 deg if degrees are meant.",
                "saw root 11-2 photo a.jpg | 11-2 goes on over the last one: 4 blades, blades 11–2. Is the order right?",
                "nick 1 tip 800 | 800 mm is longer than any blade of this row (300 mm at most): is the decimal mark right?",
                "nick 7 tip | By the count, blade 7 was not in view here; blade 1 stands at the reference: is the number right?",
            })
    void whatMayBeMeantOtherwiseIsQuestionedInWords(String line, String question) {
        assertThat(about(line)).containsExactly(question);
    }

    @Test
    void whatViewsCanShowIsNotAcceptedAsNotSeenWithoutAQuestion() {
        assertThat(about("noaccess root 3-4 because the lens was misted over"))
                .containsExactly(
                        "Of these 2 cells of row r, 2 were not seen and can be, through p-r: accept them as not"
                                + " seen all the same?");
        assertThat(about("noaccess root 3-4 because ok"))
                .last()
                .isEqualTo("The reason \"ok\" tells nobody why; say because and a few words that another person can"
                        + " follow.");
    }

    /** What the cone holds is more than what is in sight, and never less. */
    @ParameterizedTest
    @ValueSource(strings = {"far", "near"})
    void noFindingIsQuestionedOnABladeThatTheStationShows(String station) {
        session.close();
        session = Workshop.shaped(folder.resolve("shaped")).open("view p-r", "at " + station, "datum r 1", "look");
        RowCoverage seen = session.state().coverage().row("r");
        List<Integer> questioned = new ArrayList<>();
        List<Integer> shown = new ArrayList<>();
        for (int n = 1; n <= 12; n++) {
            int blade = n;
            // Maybe seen is in the field, too.
            if (IntStream.range(0, seen.zoning().size())
                    .anyMatch(zone -> seen.areas(blade, zone).maybe() > 0)) {
                shown.add(blade);
            }
            if (!about("nick " + blade + " tip").isEmpty()) {
                questioned.add(blade);
            }
        }
        assertThat(shown).isNotEmpty().doesNotContainAnyElementsOf(questioned);
        assertThat(questioned).contains(7).hasSizeGreaterThan(5);
    }

    @Test
    void goingOnAfterAPauseIsQuestioned() {
        session.say("pause");

        assertThat(about("turn on 30")).singleElement().asString().contains("After entry 4 (pause)", "as after a slip");
    }

    @Test
    void whatIsQuestionedIsKeptOnlyWhenItIsMeant() {
        assertThat(session.enter("turn on 7 tool", false, Workshop.ENGLISH)).isInstanceOf(Answer.Asked.class);
        assertThat(session.state().fold().entries()).hasSize(3);

        assertThat(session.enter("turn on 7 tool", true, Workshop.ENGLISH)).isInstanceOf(Answer.Kept.class);
    }

    @Test
    void germanQuestionsNameTheSame() {
        Preview preview = Preview.of(session.state(), "nick 7 tip", Workshop.NOW, Words.of(Locale.GERMAN));

        assertThat(((Preview.Will) preview).doubts())
                .containsExactly("Nach der Zählung war Schaufel 7 hier nicht im Blick; am Bezug steht Schaufel 1:"
                        + " stimmt die Nummer?");
    }

    @Test
    void whatWillBeRefusedIsNotQuestionedToo() {
        assertThat(about("turn on 9999999 blades")).isEmpty();
    }
}
