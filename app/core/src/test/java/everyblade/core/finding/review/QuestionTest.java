package everyblade.core.finding.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import everyblade.core.English;
import everyblade.core.Job;
import everyblade.core.entry.Refusal;
import everyblade.core.finding.LimitsUnderTest;
import everyblade.core.finding.closing.Beside;
import everyblade.core.finding.closing.ClosingList;
import everyblade.core.finding.closing.OpenItem;
import everyblade.core.finding.closing.OpenItem.Kind;
import everyblade.core.finding.review.ReviewRemark.What;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class QuestionTest {

    private static final int REVIEWED = 2;

    private static ReviewRemark remark(int number, What what, String by, OptionalInt of) {
        Optional<ReviewedPlace> place =
                what == What.QUESTION ? Optional.of(new ReviewedPlace("a", 3, 4, "")) : Optional.empty();
        return new ReviewRemark(
                number,
                Instant.parse("2026-03-02T09:00:00Z"),
                by,
                "00",
                REVIEWED,
                what,
                "what is the shadow on it",
                place,
                of);
    }

    private static ReviewRemark question(int number) {
        return remark(number, What.QUESTION, "R. Viewer", OptionalInt.empty());
    }

    private static List<OpenItem> open(List<ReviewRemark> remarks, String... lines) {
        Job job = new Job(LimitsUnderTest.ENGINE).enter("view va", "note begun").enter(lines);
        return ClosingList.of(job.fold(), job.coverage(), Optional.empty(), List.of(), Beside.NOTHING.reviewed(remarks))
                .of(Kind.SENT_BACK);
    }

    @Test
    void staysOpenAndTellsWhoAsksWhatAndWhere() {
        assertThat(open(List.of(question(1)), "round 1")).singleElement().satisfies(item -> {
            assertThat(English.say(item.line())).contains("R. Viewer", "review 1", "what is the shadow on it", "a 3-4");
            assertThat(item.entry()).isEqualTo("note review 1: ");
            assertThat(item.place()).contains(new ReviewedPlace("a", 3, 4, ""));
        });
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "note review 1: it is oil, wiped off",
                "note Review 1 it is oil",
                "note review 1 – ölig, sonst nichts",
                "note review 1: 2 mm, as entered"
            })
    void isAnsweredByANoteThatNamesIt(String note) {
        assertThat(open(List.of(question(1)), note)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "note review 2: it is oil",
                "note review 1:",
                "note review 1: …",
                "note the review 1 comes tomorrow",
                "note review 12: it is oil",
                "refer review 1: it is oil"
            })
    void isNotAnsweredByWhatOnlyLooksLikeIt(String line) {
        assertThat(open(List.of(question(1)), line)).hasSize(1);
    }

    @Test
    void isOpenAgainOnceItsAnswerIsVoid() {
        String answer = "note review 1: it is oil";
        assertThat(open(List.of(question(1)), answer, "void 3 because it was not"))
                .hasSize(1);
        assertThat(open(List.of(question(1)), answer, "void 3 because it was not", "void 4 because it was"))
                .isEmpty();
    }

    @Test
    void isNotAnsweredBeforeItWasAsked() {
        Job job = new Job(LimitsUnderTest.ENGINE).enter("view va", "note review 1: all is well");

        assertThat(Question.of(List.of(question(1)), job.fold()))
                .singleElement()
                .satisfies(question -> assertThat(question.open()).isTrue());
    }

    @Test
    void isTakenBackByWhoeverAskedItAndNobodyElse() {
        ReviewRemark asked = question(1);

        assertThat(open(Arrays.asList(asked, remark(2, What.WITHDRAWN, "R. Viewer", OptionalInt.of(1)))))
                .isEmpty();
        assertThat(open(Arrays.asList(asked, remark(2, What.WITHDRAWN, "S. Body", OptionalInt.of(1)))))
                .hasSize(1);
        assertThat(open(Arrays.asList(asked, question(2), remark(3, What.WITHDRAWN, "R. Viewer", OptionalInt.of(2)))))
                .hasSize(1);
    }

    @Test
    void aRemarkThatIsNoQuestionOpensNothing() {
        assertThat(open(Arrays.asList(
                        remark(1, What.WANTED, "R. Viewer", OptionalInt.empty()),
                        remark(2, What.SHOWN, "R. Viewer", OptionalInt.empty()),
                        remark(3, What.REMARK, "R. Viewer", OptionalInt.empty()))))
                .isEmpty();
    }

    @Test
    void aPlaceIsReadAndJudgedByTheEngine() throws Refusal {
        for (String words : List.of("a 3", "a 3-4", "a 4-3")) {
            assertThat(ReviewedPlace.of(words, LimitsUnderTest.ENGINE).words()).isEqualTo(words);
        }
        for (String words : List.of("zz 3", "a 0", "a 4000", "a 3 nowhere", "a", "blade 3 of a")) {
            assertThatThrownBy(() -> ReviewedPlace.of(words, LimitsUnderTest.ENGINE))
                    .isInstanceOf(Refusal.class)
                    .extracting(English::why)
                    .asString()
                    .isNotBlank();
        }
    }
}
