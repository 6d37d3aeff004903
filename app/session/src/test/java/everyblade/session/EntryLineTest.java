package everyblade.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class EntryLineTest {

    @TempDir
    Path folder;

    private final EntryLine line = new EntryLine();
    private Session session;

    @BeforeEach
    void open() {
        session = Workshop.in(folder).counting();
    }

    @AfterEach
    void close() {
        session.close();
    }

    @Nested
    class ANumberAlone {

        @Test
        void isAnAmountInDegreesAtFirst() {
            assertThat(EntryLine.expand(session.state(), "38")).isEqualTo("turn on 38 deg");
        }

        @Test
        void isAnAmountInTheUnitUsedLast() {
            session.say("turn on 2 blades");

            assertThat(EntryLine.expand(session.state(), "3")).isEqualTo("turn on 3 blades");
        }

        @Test
        void doesNotFollowTheUnitOfAVoidEntry() {
            session.say("turn on 2 blades");
            session.say("void 4 because a slip of the finger");

            assertThat(EntryLine.expand(session.state(), "3")).isEqualTo("turn on 3 deg");
        }

        @Test
        void goesBackIfItHasAMinusAndKeepsItsDecimalComma() {
            assertThat(EntryLine.expand(session.state(), "-12,5")).isEqualTo("turn back 12,5 deg");
        }

        @Test
        void drawsTheScopeTipWhereTheRowStandsStill() {
            session.say("view p-v");

            assertThat(EntryLine.expand(session.state(), "45")).isEqualTo("draw on 45 deg");
        }
    }

    @Test
    void anythingElseIsSaidAsItIsTyped() {
        assertThat(EntryLine.expand(session.state(), "here 12")).isEqualTo("here 12");
    }

    @Test
    void theSameTextEnteredAgainIsMeantAndAnotherIsNot() {
        line.asked("skip on 90");

        assertThat(line.entered("skip on 90")).isTrue();
        line.asked("skip on 90");
        assertThat(line.entered("skip on 60")).isFalse();
    }

    @Test
    void changingTheTextTakesTheQuestionBack() {
        line.asked("skip on 90");
        line.changed();

        assertThat(line.entered("skip on 90")).isFalse();
    }

    @Test
    void whatWasTypedBeforeComesBackAndSoDoesTheDraft() {
        line.entered("look");
        line.entered("12");

        assertThat(line.older("dra")).hasValue("12");
        assertThat(line.older("12")).hasValue("look");
        assertThat(line.older("look")).isEmpty();
        assertThat(line.newer()).hasValue("12");
        assertThat(line.newer()).hasValue("dra");
        assertThat(line.newer()).isEmpty();
    }
}
