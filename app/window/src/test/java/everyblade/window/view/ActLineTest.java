package everyblade.window.view;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.session.Answer;
import everyblade.session.Session;
import everyblade.session.Workshop;
import everyblade.window.map.CellAt;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class ActLineTest {

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

    private ActLine.Outcome act(Act act) {
        return act(act, "");
    }

    private ActLine.Outcome act(Act act, String typed) {
        return new ActLine(session.state(), typed, Optional.empty(), Optional.empty(), Workshop.ENGLISH).of(act);
    }

    private ActLine.Outcome at(CellAt cell, Act act) {
        return new ActLine(session.state(), "", Optional.of(cell), Optional.of("my scope.jpg"), Workshop.ENGLISH)
                .of(act);
    }

    private static ActLine.Line line(String text) {
        return new ActLine.Line(text);
    }

    @ParameterizedTest
    @EnumSource(
            value = Act.class,
            mode = EnumSource.Mode.EXCLUDE,
            names = {"ROUND", "HERE", "RECHECK", "FIND"})
    void nothingThatIsTypedIsThrownAway(Act act) {
        session.say("turn on 38");

        assertThat(act(act, "note oil film on all of them")).isInstanceOf(ActLine.Not.class);
    }

    @Test
    void whatIsTypedBeforeARecheckIsItsNumberOrStays() {
        assertThat(act(Act.RECHECK, "12")).isEqualTo(new ActLine.Begin("recheck 12 "));
        assertThat(act(Act.RECHECK, "recheck 12 ")).isInstanceOf(ActLine.Not.class);
    }

    @Nested
    class TheSameAgain {

        @ParameterizedTest
        @ValueSource(strings = {"turn on 38", "skip on 31", "look"})
        void repeatsAMove(String move) {
            session.say(move);

            assertThat(act(Act.AGAIN)).isEqualTo(line(move));
        }

        @ParameterizedTest
        @ValueSource(strings = {"here 1", "round 1", "slip", "handover Bob", "note a word", "dent 3 tip 1", "view p-r"})
        void repeatsNothingElse(String entry) {
            session.say(entry);

            assertThat(act(Act.AGAIN)).isInstanceOf(ActLine.Not.class);
        }

        @Test
        void isOffAfterAWarning() {
            session.close();
            session = Workshop.in(folder.resolve("new")).open("heat 20 C", "view p-r", "turn on 30");

            assertThat(session.state().fold().warnings()).isNotEmpty();
            assertThat(act(Act.AGAIN)).isInstanceOf(ActLine.Not.class);
        }

        @Test
        void isAskedAboutAgainWhereItWasDoubtful() {
            session.say("skip on 3 blades");

            String line = ((ActLine.Line) act(Act.AGAIN)).text();
            assertThat(session.enter(line, false, Workshop.ENGLISH)).isInstanceOf(Answer.Asked.class);
        }

        @Test
        void isOffAtTheStart() {
            session.close();
            session = Workshop.in(folder.resolve("new")).open();

            assertThat(act(Act.AGAIN)).isInstanceOf(ActLine.Not.class);
        }
    }

    @ParameterizedTest
    @EnumSource(
            value = Act.class,
            names = {"ONE_ON", "LOOK", "WATCH_ROOT", "WATCH_TIP", "WATCH_ALL"})
    void needsAViewForWhatIsWatched(Act act) {
        session.close();
        session = Workshop.in(folder.resolve("new")).open();

        assertThat(act(act)).isInstanceOf(ActLine.Not.class);
    }

    @Test
    void turnsOnByOneBladeOrDrawsPastOneVane() {
        assertThat(act(Act.ONE_ON)).isEqualTo(line("turn on 1 blades"));
        session.say("view p-v");
        assertThat(act(Act.ONE_ON)).isEqualTo(line("draw 1 blades"));
    }

    @Test
    void watchesTheRootTheTipOrAll() {
        assertThat(act(Act.WATCH_ROOT)).isEqualTo(line("watch root"));
        assertThat(act(Act.WATCH_TIP)).isEqualTo(line("watch tip"));
        assertThat(act(Act.WATCH_ALL)).isEqualTo(line("watch all"));
    }

    @Test
    void hasNoRootAndTipWhereTheRowIsUndivided() {
        session.say("view p-v");

        assertThat(act(Act.WATCH_ROOT)).isInstanceOf(ActLine.Not.class);
    }

    @Test
    void takesTheNumberOfAnIdentificationFromThePersonAlone() {
        assertThat(act(Act.HERE)).isInstanceOf(ActLine.Not.class);
        assertThat(at(new CellAt("r", 5, 0), Act.HERE)).isInstanceOf(ActLine.Not.class);
        assertThat(act(Act.HERE, "12")).isEqualTo(line("here 12"));
        assertThat(act(Act.ROUND, "1")).isEqualTo(line("round 1"));
    }

    @Test
    void marksTheSelectedCellOrTheTypedNumberForLater() {
        assertThat(at(new CellAt("r", 5, 1), Act.RECHECK)).isEqualTo(new ActLine.Begin("recheck 5 tip "));
        assertThat(at(new CellAt("v", 3, 0), Act.RECHECK)).isEqualTo(new ActLine.Begin("recheck v 3 all "));
        assertThat(act(Act.RECHECK, "7")).isEqualTo(new ActLine.Begin("recheck 7 "));
        assertThat(act(Act.RECHECK)).isInstanceOf(ActLine.Not.class);
    }

    @Test
    void keepsTheNewestPictureAtTheSelectedCellOfTheRowInView() {
        assertThat(at(new CellAt("r", 5, 1), Act.PHOTO)).isEqualTo(line("photo \"my scope.jpg\" of 5 tip"));
        assertThat(at(new CellAt("v", 5, 0), Act.PHOTO)).isEqualTo(line("photo \"my scope.jpg\""));
        assertThat(act(Act.PHOTO)).isInstanceOf(ActLine.Not.class);
    }

    @Nested
    class Undoing {

        private void undo() {
            session.say(((ActLine.Line) act(Act.UNDO)).text());
        }

        private void redo() {
            session.say(((ActLine.Line) act(Act.REDO)).text());
        }

        @Test
        void voidsTheLastEntryThatStandsThenTheOneBefore() {
            session.say("turn on 30");
            session.say("turn on 31");
            undo();
            assertThat(session.state().fold().isVoid(5)).isTrue();
            undo();
            assertThat(session.state().fold().isVoid(4)).isTrue();
        }

        @Test
        void isTakenBackStepByStep() {
            session.say("turn on 30");
            session.say("turn on 31");
            undo();
            undo();

            redo();
            assertThat(session.state().fold().isVoid(4)).isFalse();
            assertThat(session.state().fold().isVoid(5)).isTrue();
            redo();
            assertThat(session.state().fold().isVoid(5)).isFalse();
            assertThat(act(Act.REDO)).isInstanceOf(ActLine.Not.class);
        }

        @Test
        void cannotBeTakenBackAfterAnotherEntry() {
            session.say("turn on 30");
            undo();
            session.say("turn on 29");

            assertThat(act(Act.REDO)).isInstanceOf(ActLine.Not.class);
        }

        @Test
        void hasNothingToDoInAnEmptyJournal() {
            session.close();
            session = Workshop.in(folder.resolve("new")).open();

            assertThat(act(Act.UNDO)).isInstanceOf(ActLine.Not.class);
            assertThat(act(Act.REDO)).isInstanceOf(ActLine.Not.class);
        }
    }
}
