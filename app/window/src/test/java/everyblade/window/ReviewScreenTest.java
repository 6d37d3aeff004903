package everyblade.window;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.finding.review.ReviewRemark;
import everyblade.core.finding.review.ReviewRemark.What;
import everyblade.core.finding.review.ReviewedPlace;
import everyblade.core.sight.Progress;
import everyblade.session.Session;
import everyblade.session.Workshop;
import everyblade.window.map.CellAt;
import everyblade.window.view.Choices;
import everyblade.window.view.ReviewDesk;
import everyblade.words.Words;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JList;
import javax.swing.JSlider;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReviewScreenTest {

    private static final Dimension SIZE = new Dimension(1280, 740);

    @TempDir
    Path folder;

    private Workshop workshop;
    private ReviewScreen screen;
    private Optional<Path> other = Optional.empty();

    @BeforeEach
    void aRecordToReview() {
        workshop = Workshop.in(folder);
        workshop.counting(
                        "turn on 90",
                        "tool out hand lamp",
                        "nick 3 tip 0.4 ± 0.1",
                        "note all is well",
                        "noaccess root 5-7 because behind the strut")
                .close();
        screen = Offscreen.on(() -> open(Locale.ENGLISH));
    }

    private ReviewScreen open(Locale language) {
        Choices choices = Choices.first(language);
        Looks.use(choices);
        ReviewDesk desk = ReviewDesk.open(workshop.around(), workshop.job(), "", Progress.NONE);
        ReviewScreen made = new ReviewScreen(
                desk,
                desk.state(),
                true,
                "",
                new DirectDoor(),
                Words.of(language),
                () -> choices,
                new ReviewScreen.Doing() {
                    @Override
                    public void back() {}

                    @Override
                    public Optional<Path> otherRecord() {
                        return other;
                    }
                });
        Rehearsal.lay(made.component(), SIZE);
        return made;
    }

    private Map<String, String> contents() throws IOException {
        Map<String, String> contents = new TreeMap<>();
        try (Stream<Path> paths = Files.walk(workshop.job())) {
            for (Path path : paths.filter(Files::isRegularFile).toList()) {
                contents.put(path.toString(), Arrays.toString(Files.readAllBytes(path)));
            }
        }
        return contents;
    }

    private <T extends Component> T find(Class<T> type, String name) {
        return Offscreen.find(screen.component(), type, name);
    }

    private void press(String name) {
        Offscreen.on(() -> {
            find(AbstractButton.class, name).doClick(0);
            return true;
        });
    }

    private void say(String name, String text, String button) {
        Offscreen.on(() -> {
            find(JTextField.class, "reviewer").setText("R. Viewer");
            find(JTextField.class, name).setText(text);
            return true;
        });
        press(button);
    }

    private void key(int code, int modifiers) {
        Offscreen.on(() -> {
            KeyEvent event =
                    new KeyEvent(screen.component(), KeyEvent.KEY_PRESSED, 1, modifiers, code, KeyEvent.CHAR_UNDEFINED);
            screen.component().dispatchEvent(event);
            var stroke = javax.swing.KeyStroke.getKeyStrokeForEvent(event);
            Object action = screen.component()
                    .getInputMap(javax.swing.JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT)
                    .get(stroke);
            screen.component().getActionMap().get(action).actionPerformed(null);
            return true;
        });
    }

    /** Every text that can be read on the screen now, the tables of lists included. */
    private String read() {
        return Offscreen.on(() -> {
            List<String> texts = new ArrayList<>();
            collect(screen.component(), texts);
            return String.join("\n", texts);
        });
    }

    private static void collect(Container container, List<String> texts) {
        for (Component child : container.getComponents()) {
            if (!child.isVisible()) {
                continue;
            }
            if (child instanceof JTextArea area) {
                texts.add(area.getText());
            } else if (child instanceof JList<?> list) {
                lines(list, texts);
            } else if (child instanceof javax.swing.JComponent shown
                    && shown.getName() != null
                    && shown.getName().equals("map")) {
                texts.add(shown.getAccessibleContext().getAccessibleDescription());
            }
            if (child instanceof Container inner) {
                collect(inner, texts);
            }
        }
    }

    private static <T> void lines(JList<T> list, List<String> texts) {
        for (int i = 0; i < list.getModel().getSize(); i++) {
            Component cell = list.getCellRenderer()
                    .getListCellRendererComponent(list, list.getModel().getElementAt(i), i, false, false);
            texts.add(cell.getAccessibleContext().getAccessibleName());
        }
    }

    private List<ReviewRemark> said() {
        return screen.state().review();
    }

    @Test
    void openingAndReplayingWritesNothing() throws IOException {
        Map<String, String> before = contents();

        Offscreen.on(() -> {
            screen.replay().seek(2);
            screen.replay().on();
            return true;
        });

        assertThat(contents()).isEqualTo(before);
    }

    @Test
    void atFirstShowsWhatWasDoneAndFoundAndNothingThatTheTechnicianMakesOfIt() {
        assertThat(read()).contains("turn on 90", "nick 3 tip", "tool out hand lamp");
        assertThat(read()).doesNotContain("all is well", "behind the strut", "%", "surface", "ENGINE!");
        Offscreen.on(() -> {
            screen.replay().seek(7);
            return true;
        });
        assertThat(read()).doesNotContain("all is well").contains("not shown yet");
    }

    @Test
    void saysNothingUnderNoName() {
        Offscreen.on(() -> {
            find(JTextField.class, "want").setText("the roots again");
            return true;
        });
        press("want wanted");

        assertThat(said()).isEmpty();
        assertThat(read()).contains("under which name");
    }

    @Test
    void afterTheFirstLookBothSidesStandTogetherTheWorstFirst() {
        Offscreen.on(() -> {
            screen.map().select(new CellAt("r", 6, 0));
            return true;
        });
        say("want", "the roots again", "want wanted");
        assertThat(screen.blind()).isTrue();

        key(KeyEvent.VK_ENTER, KeyEvent.CTRL_DOWN_MASK);

        assertThat(screen.blind()).isFalse();
        assertThat(said()).extracting(ReviewRemark::what).containsExactly(What.WANTED, What.SHOWN);
        String all = read();
        assertThat(all).contains("the roots again", "accepted as not seen", "behind the strut", "surface seen");
        assertThat(all.indexOf("ENGINE!   tool: hand lamp is out")).isPositive().isLessThan(all.indexOf("DAMAGE?   "));
    }

    @Test
    void aLineOpensTheMapAtItsPlaceOrTheRecordWhenItWasEntered() {
        say("want", "the roots again", "want wanted");
        press("review.showAll");
        JList<?> risks = find(JList.class, "risks");
        String[] lines = read().split("\n");
        int tool = index(risks, "tool: hand lamp");
        int finding = index(risks, "finding: nick");
        assertThat(lines).isNotEmpty();

        Offscreen.on(() -> {
            risks.setSelectedIndex(tool);
            return true;
        });
        assertThat(screen.replay().clock().entry()).isEqualTo(5);

        Offscreen.on(() -> {
            risks.setSelectedIndex(finding);
            return true;
        });
        assertThat(screen.replay().clock().entry()).isEqualTo(8);
        assertThat(screen.map().selected()).contains(new CellAt("r", 3, 1));
    }

    private static int index(JList<?> list, String text) {
        List<String> lines = new ArrayList<>();
        lines(list, lines);
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).contains(text)) {
                return i;
            }
        }
        throw new AssertionError("no line says " + text + ": " + lines);
    }

    @Test
    void aQuestionOfWhatIsSelectedIsSentBackToTheTechnician() {
        say("want", "the roots again", "want wanted");
        press("review.showAll");
        Offscreen.on(() -> {
            find(JList.class, "risks").setSelectedIndex(index(find(JList.class, "risks"), "finding: nick"));
            return true;
        });

        say("say", "how long is it", "say question");

        assertThat(said()).last().satisfies(remark -> {
            assertThat(remark.what()).isEqualTo(What.QUESTION);
            assertThat(remark.place()).contains(new ReviewedPlace("r", 3, 3, "tip"));
        });
        assertThat(read()).contains("how long is it", "OPEN; to answer it: note review 3");
        try (Session session = workshop.open()) {
            assertThat(session.state().closing().items())
                    .anyMatch(item -> Words.of(Locale.ENGLISH).say(item.what()).contains("how long is it"));
        }
    }

    @Test
    void keysPlayAndStepThroughTheRecord() {
        key(KeyEvent.VK_HOME, KeyEvent.CTRL_DOWN_MASK);
        assertThat(screen.replay().clock().entry()).isZero();
        key(KeyEvent.VK_F7, 0);
        key(KeyEvent.VK_F7, 0);
        key(KeyEvent.VK_F6, 0);
        assertThat(screen.replay().clock().entry()).isEqualTo(1);
        assertThat(find(JSlider.class, "replay").getValue()).isEqualTo(1);
        key(KeyEvent.VK_F9, 0);
        assertThat(screen.replay().clock().speed()).isEqualTo(8);
        key(KeyEvent.VK_F8, 0);
        key(KeyEvent.VK_F5, 0);
        assertThat(screen.replay().clock().playing()).isTrue();
        key(KeyEvent.VK_F5, 0);
        assertThat(screen.replay().clock().playing()).isFalse();
        key(KeyEvent.VK_END, KeyEvent.CTRL_DOWN_MASK);
        assertThat(screen.replay().clock().entry()).isEqualTo(8);
        assertThat(screen.replay().dial().pose()).isPresent();
    }

    @Test
    void isHeldAgainstAnotherRecord() throws IOException {
        Workshop later = Workshop.in(Files.createDirectory(folder.resolve("later")));
        later.counting("turn back 60").close();
        other = Optional.of(later.job());

        key(KeyEvent.VK_K, KeyEvent.CTRL_DOWN_MASK);
        assertThat(read()).contains("have yourself shown").doesNotContain("Held against");

        say("want", "the roots again", "want wanted");
        press("review.showAll");
        press("review.compare");

        assertThat(read()).contains("cells seen by both", "cells seen only here: blades");
    }

    @Test
    void speaksGermanToo() {
        screen = Offscreen.on(() -> open(Locale.GERMAN));

        assertThat(read()).contains("Sagen Sie, was Sie noch sehen möchten").doesNotContain("Say what");
    }
}
