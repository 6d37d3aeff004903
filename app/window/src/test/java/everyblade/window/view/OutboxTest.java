package everyblade.window.view;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.window.view.Outbox.Line;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class OutboxTest {

    private final Outbox outbox = new Outbox();

    @Test
    void theFirstLineIsHandedInAtOnceAndTheNextWhenItIsKept() {
        assertThat(outbox.entered("a", false)).hasValue(new Line("a", false));
        assertThat(outbox.entered("b", false)).isEmpty();
        assertThat(outbox.beingKept()).hasValue("a");
        assertThat(outbox.waiting()).containsExactly("b");

        assertThat(outbox.kept()).hasValue(new Line("b", false));
        assertThat(outbox.kept()).isEmpty();
        assertThat(outbox.inTheWay()).isFalse();
    }

    @Nested
    class ALineThatCameBack {

        @BeforeEach
        void comesBackBeforeTwoOthers() {
            outbox.entered("a", false);
            outbox.entered("b", false);
            outbox.cameBack();
            outbox.entered("c", false);
        }

        @Test
        void keepsEverythingSaidAfterItWaiting() {
            assertThat(outbox.back()).hasValue("a");
            assertThat(outbox.waiting()).containsExactly("b", "c");
            assertThat(outbox.beingKept()).isEmpty();
        }

        @Test
        void isTheOneThatIsEnteredAgain() {
            assertThat(outbox.taken()).hasValue("a");

            assertThat(outbox.entered("a, mended", true)).hasValue(new Line("a, mended", true));
            assertThat(outbox.waiting()).containsExactly("b", "c");
        }

        @Test
        void letsTheOthersComeBackInTheirTurnAndRunsNoneUnasked() {
            outbox.taken();
            outbox.entered("a, mended", false);

            assertThat(outbox.kept()).isEmpty();
            assertThat(outbox.back()).hasValue("b");
        }

        @Test
        void canBeDropped() {
            outbox.taken();
            outbox.dropped();

            assertThat(outbox.back()).hasValue("b");
            assertThat(outbox.waiting()).containsExactly("c");
        }

        @Test
        void isForgottenOnceAllIsSettled() {
            for (int i = 0; i < 3; i++) {
                outbox.taken();
                outbox.dropped();
            }

            assertThat(outbox.entered("d", false)).hasValue(new Line("d", false));
            assertThat(outbox.entered("e", false)).isEmpty();
            assertThat(outbox.kept()).hasValue(new Line("e", false));
        }
    }

    @Test
    void nothingIsDroppedThatDoesNotStandInTheLine() {
        outbox.entered("a", false);
        outbox.dropped();

        assertThat(outbox.beingKept()).hasValue("a");
        assertThat(outbox.taken()).isEmpty();
    }
}
