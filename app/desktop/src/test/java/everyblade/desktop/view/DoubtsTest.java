package everyblade.desktop.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
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
        return new Doubts(session.state(), Workshop.ENGLISH, Workshop.NOW).about(line);
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
        List.of("dent 1 tip 1.2", "dent 2 tip 0.9", "nick 3 root 2").forEach(session::say);

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
        assertThat(about("skip on 90")).first().asString().contains("2–3, 5–6, 8–9, 11–12");
    }

    @Test
    void anIdentificationThatWouldLoseTheCountIsQuestioned() {
        session.say("turn on 60");

        assertThat(about("here 11")).isEmpty();
        assertThat(about("here 8")).singleElement().asString().contains("off by 3");
        assertThat(about("round 8")).singleElement().asString().contains("off by 3");
    }

    @Test
    void whatWillBeRefusedIsNotQuestionedToo() {
        assertThat(about("turn on 9999999 blades")).isEmpty();
    }
}
