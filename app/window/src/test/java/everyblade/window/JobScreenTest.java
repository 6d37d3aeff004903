package everyblade.window;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.session.FailingDisk;
import everyblade.session.Session;
import everyblade.session.Workshop;
import everyblade.window.map.CellAt;
import everyblade.window.view.Act;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.swing.AbstractButton;
import javax.swing.JButton;
import javax.swing.JList;
import javax.swing.JTextField;
import javax.swing.JToggleButton;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JobScreenTest {

    private static final int STANDARD = KeyEvent.KEY_LOCATION_STANDARD;
    private static final int NUMPAD = KeyEvent.KEY_LOCATION_NUMPAD;

    @TempDir
    Path folder;

    private final FailingDisk disk = new FailingDisk();
    private Workshop workshop;
    private Session session;
    private Offscreen screen;

    @BeforeEach
    void open() {
        workshop = Workshop.in(folder, disk.asDisk());
        session = workshop.counting();
        screen = Offscreen.of(session);
    }

    @AfterEach
    void close() {
        session.close();
    }

    @Nested
    class TheEntryLine {

        @Test
        void keepsWhatIsEnteredAndIsReadyForTheNext() {
            screen.enter("turn on 30");

            assertThat(workshop.kept()).last().isEqualTo("turn on 30");
            assertThat(screen.text()).isEmpty();
            assertThat(screen.told()).isEqualTo("kept 4: turn on 30");
        }

        @Test
        void tellsTheBarAboveAndWhoeverFollowsTheJobOfWhatIsKept() {
            List<String> told = new ArrayList<>();
            Offscreen.on(() -> {
                screen.screen().onFollowed(() -> told.add("follower"));
                screen.screen().onShown(shown -> told.add("bar"));
                told.clear();
                return true;
            });

            screen.enter("turn on 30");

            assertThat(told).containsOnlyOnce("bar", "follower");
        }

        @Test
        void tellsBeforeEnterWhatWillHappenAndWritesNothing() {
            screen.type("turn on 60");

            assertThat(screen.told()).contains("+60° (2 blades)", "blade 11 of r");
            assertThat(workshop.kept()).hasSize(3);
        }

        @Test
        void leavesARefusedLineStandingWithTheCaretAtTheFault() {
            screen.enter("turn on many");

            assertThat(screen.text()).isEqualTo("turn on many");
            assertThat(screen.told()).startsWith("not kept, column 9: expected");
            assertThat(Offscreen.<Integer>on(() -> screen.field().getCaretPosition()))
                    .isEqualTo(8);
        }

        @Test
        void asksOnceAboutWhatIsDoubtful() {
            screen.enter("skip on 90");
            assertThat(screen.told()).contains("never stands at blades", "Enter keeps it as it is");
            assertThat(workshop.kept()).hasSize(3);

            screen.strike(KeyEvent.VK_ENTER, STANDARD);
            assertThat(workshop.kept()).last().isEqualTo("skip on 90");
        }

        @Test
        void asksAgainAfterTheTextWasChanged() {
            screen.enter("skip on 90");
            screen.type("skip on 9");
            screen.enter("skip on 90");

            assertThat(workshop.kept()).hasSize(3);
        }

        @Test
        void completesWordsByTab() {
            screen.type("vi");
            screen.strike(KeyEvent.VK_TAB, STANDARD);

            assertThat(screen.text()).isEqualTo("view ");
        }

        @Test
        void bringsBackWhatWasTypedBefore() {
            screen.enter("look");
            screen.strike(KeyEvent.VK_UP, STANDARD);

            assertThat(screen.text()).isEqualTo("look");
        }
    }

    @Nested
    class SingleKeys {

        @Test
        void repeatTheLastMove() {
            screen.enter("turn on 31");
            screen.strike(KeyEvent.VK_ENTER, NUMPAD);

            assertThat(workshop.kept()).endsWith("turn on 31", "turn on 31");
        }

        @Test
        void repeatNothingWhileAKeyIsOnlyHeldDown() {
            screen.enter("turn on 31");
            screen.hold(KeyEvent.VK_ENTER, NUMPAD, 40);

            assertThat(workshop.kept()).hasSize(5);
        }

        @Test
        void doNotConfirmADoubtByBeingHeldDown() {
            screen.type("skip on 90");
            screen.hold(KeyEvent.VK_ENTER, STANDARD, 40);

            assertThat(workshop.kept()).hasSize(3);
        }

        @Test
        void repeatNothingAfterAnIdentification() {
            screen.enter("here 1");
            screen.strike(KeyEvent.VK_ENTER, NUMPAD);

            assertThat(workshop.kept()).hasSize(4);
            assertThat(screen.told()).contains("Only a move or a look can be repeated");
        }

        @Test
        void enterWhatIsTypedByTheNumberPadToo() {
            screen.type("31");
            screen.strike(KeyEvent.VK_ENTER, NUMPAD);

            assertThat(workshop.kept()).last().isEqualTo("turn on 31 deg");
        }

        @Test
        void turnOnByOneAndLook() {
            screen.typed('+');
            screen.typed('*');

            assertThat(workshop.kept()).endsWith("turn on 1 blades", "look");
        }

        @Test
        void takeANumberFirstWhereOneIsNeeded() {
            screen.type("1");
            screen.strike(KeyEvent.VK_F3, STANDARD);
            screen.type("1");
            screen.strike(KeyEvent.VK_F2, STANDARD);

            assertThat(workshop.kept()).endsWith("here 1", "round 1");
        }

        @Test
        void undoAndRedoOnAnEmptyLineOnly() {
            screen.enter("turn on 31");
            screen.strike(KeyEvent.VK_Z, STANDARD, KeyEvent.CTRL_DOWN_MASK);
            assertThat(session.state().fold().isVoid(4)).isTrue();
            screen.strike(KeyEvent.VK_Y, STANDARD, KeyEvent.CTRL_DOWN_MASK);
            assertThat(session.state().fold().isVoid(4)).isFalse();

            screen.type("no");
            screen.strike(KeyEvent.VK_Z, STANDARD, KeyEvent.CTRL_DOWN_MASK);
            assertThat(workshop.kept()).hasSize(6);
        }
    }

    @Nested
    class Buttons {

        @Test
        void sayTheSameAsTheKeys() {
            screen.press("act ONE_ON");
            screen.press("act WATCH_TIP");
            screen.press("act LOOK");
            screen.press("act SLIP");

            assertThat(workshop.kept()).endsWith("turn on 1 blades", "watch tip", "look", "slip");
        }

        @Test
        void areLargeEnoughForGloves() {
            screen.paint();

            for (Act act : Act.values()) {
                AbstractButton button = Offscreen.find(screen.screen().component(), AbstractButton.class, "act " + act);
                assertThat(button.getWidth()).as(act.name()).isGreaterThanOrEqualTo(Looks.GLOVE_TARGET);
                // The switch of what is watched has its words in one line.
                assertThat(button.getHeight())
                        .as(act.name())
                        .isGreaterThanOrEqualTo(button instanceof JToggleButton ? 54 : Looks.GLOVE_TARGET);
            }
        }

        @Test
        void digitsAndWordsMakeAnEntryWithoutAKeyboard() {
            screen.press("chip turn");
            screen.press("chip on");
            screen.press("digit 3");
            screen.press("digit 1");
            screen.press("keep");

            assertThat(workshop.kept()).last().isEqualTo("turn on 31");
        }
    }

    @Nested
    class WhatIsLeft {

        @Test
        void isListedAndChosenOnTheMapWithTheWayThere() {
            Offscreen.on(() -> {
                Offscreen.find(screen.screen().component(), JList.class, "left").setSelectedIndex(0);
                return true;
            });

            assertThat(screen.screen().stages().selected()).hasValue(new CellAt("r", 1, 0));
            JButton first = Offscreen.all(screen.screen().component())
                    .filter(one -> one.getName() != null && one.getName().startsWith("way "))
                    .map(JButton.class::cast)
                    .findFirst()
                    .orElseThrow();
            screen.press(first.getName());
            assertThat(screen.text()).isEqualTo(first.getText()).startsWith("skip to ");
        }
    }

    @Nested
    class AFinding {

        @Test
        void isEnteredAtTheSelectedCell() {
            Offscreen.on(() -> {
                screen.screen().stages().select(new CellAt("r", 1, 1));
                screen.screen().act(Act.FIND);
                Offscreen.find(screen.screen().component(), JTextField.class, "finding.length")
                        .setText("1,2");
                return true;
            });
            screen.press("finding add");

            assertThat(workshop.kept()).last().isEqualTo("nick 1 tip length 1,2");
        }

        @Test
        void onABladeThatIsNotInViewIsAskedAboutFirst() {
            Offscreen.on(() -> {
                screen.screen().stages().select(new CellAt("r", 5, 1));
                screen.screen().act(Act.FIND);
                return true;
            });
            screen.press("finding add");

            assertThat(workshop.kept()).last().isEqualTo("datum r 1 at 0");
            assertThat(screen.text()).isEqualTo("nick 5 tip");
        }

        @Test
        void thatWouldBeRefusedStaysInTheFormWithTheReason() {
            Offscreen.on(() -> {
                screen.screen().stages().select(new CellAt("r", 5, 1));
                screen.screen().act(Act.FIND);
                Offscreen.find(screen.screen().component(), JTextField.class, "finding.length")
                        .setText("much");
                return true;
            });
            screen.press("finding add");

            assertThat(limitsSay()).startsWith("Not yet a finding: ");
            assertThat(workshop.kept()).hasSize(3);
        }

        @Test
        void ofAJobWithoutLimitsIsNotJudged() {
            Offscreen.on(() -> {
                screen.screen().stages().select(new CellAt("r", 5, 1));
                screen.screen().act(Act.FIND);
                return true;
            });

            assertThat(limitsSay()).startsWith("The job has no limits");
        }

        private String limitsSay() {
            return Offscreen.on(() -> Offscreen.find(screen.screen().component(), Paragraph.class, "limits say")
                    .getText());
        }
    }

    @Nested
    class OnADiskThatRefuses {

        @Test
        void theEntryIsToldInRedAndTypingGoesOn() {
            disk.fill();
            screen.enter("turn on 31");

            assertThat(screen.told()).startsWith("NOT ON DISK");
            assertThat(Offscreen.<Long>on(() -> Offscreen.all(screen.screen().component())
                            .filter(one -> "keeping.elsewhere".equals(one.getName())
                                    && one.getParent().isVisible())
                            .count()))
                    .isEqualTo(1);
            screen.enter("turn on 32");
            assertThat(session.state().fold().entries()).hasSize(5);
            assertThat(workshop.kept()).hasSize(3);
        }
    }

    @Test
    void aSecondWindowShowsWhoHasTheJobAndTakesNoEntries() {
        try (Session second = workshop.open()) {
            Offscreen other = Offscreen.of(second);

            assertThat(Offscreen.<Boolean>on(() -> other.field().isEditable())).isFalse();
            Offscreen.find(other.screen().component(), JButton.class, "keeping.tryWriting");
            other.press("act LOOK");
            assertThat(workshop.kept()).hasSize(3);
        }
    }

    @Test
    void afterAnInterruptionTheLastThingAndTheNextAreTold() {
        screen.enter("turn on 31");
        Offscreen.on(() -> {
            screen.screen().welcomeBack();
            return true;
        });

        assertThat(Offscreen.<String>on(() -> screen.screen().banners().told()))
                .contains("Last kept: 4 turn on 31", "Next: 1. skip on to 63");
    }
}
