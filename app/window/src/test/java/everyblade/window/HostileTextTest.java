package everyblade.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import everyblade.json.jar.CodeJar;
import everyblade.picture.scene.Theme;
import everyblade.session.Answer;
import everyblade.session.Session;
import everyblade.session.Workshop;
import everyblade.window.author.AuthorState;
import everyblade.window.author.Bench;
import everyblade.window.view.Choices;
import everyblade.window.view.RecentJob;
import everyblade.words.Visible;
import everyblade.words.Words;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.lang.reflect.Proxy;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.SocketTimeoutException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JOptionPane;
import javax.swing.JToolTip;
import javax.swing.ListCellRenderer;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What others wrote is text in every place of the window, hides nothing, and makes nothing go out. */
class HostileTextTest {

    private static final int AT_ONCE = 12;
    private static final Choices CHOICES = Choices.first(Locale.ENGLISH);

    @TempDir
    Path folder;

    private ServerSocket outside;
    private List<String> all;
    /** Every text that any component showed. */
    private final Set<String> shown = new TreeSet<>();

    @BeforeEach
    void listen() throws Exception {
        outside = new ServerSocket(0, 5, InetAddress.getLoopbackAddress());
        outside.setSoTimeout(50);
        all = new HostileTexts("http://127.0.0.1:" + outside.getLocalPort()).all();
    }

    @AfterEach
    void nothingWentOut() throws Exception {
        assertThatThrownBy(outside::accept).isInstanceOf(SocketTimeoutException.class);
        outside.close();
    }

    @Test
    void thereAreSixtyOfThem() {
        assertThat(all).doesNotHaveDuplicates().hasSize(60);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4})
    void onTheScreensOfAJob(int part) {
        List<String> texts = part(part);
        Workshop workshop = Workshop.of(folder, HostileTexts.model(texts), texts.get(1), texts.get(2), texts.get(3));
        try (Session session = workshop.open("view p-r", "datum r 1")) {
            for (String text : texts) {
                for (String verb : List.of("note ", "recheck 3 ", "refer ", "fact place ", "handover ")) {
                    assertThat(session.enter(verb + text, true, Workshop.ENGLISH))
                            .isInstanceOf(Answer.Kept.class);
                }
                assertThat(session.enter("tool out \"" + text.replace('"', '\'') + "\"", true, Workshop.ENGLISH))
                        .isInstanceOf(Answer.Kept.class);
            }
            Offscreen screen = Offscreen.of(session);
            for (String text : texts) {
                screen.type("note " + text);
                look(screen.screen().component());
            }
            Offscreen.on(() -> {
                screen.screen().middle().turnClosing();
                screen.screen().welcomeBack();
                return true;
            });
            look(screen.screen().component());
            for (String text : texts) {
                Offscreen.on(() -> {
                    screen.screen().tell(List.of(text));
                    return true;
                });
                look(screen.screen().component());
            }
        }
        assertThat(shown).noneMatch(text -> !Visible.text(text).equals(text));
        assertThat(texts)
                .allSatisfy(text -> assertThat(shown)
                        .as("shown somewhere, or the check would be worth nothing: " + text)
                        .anyMatch(told -> told.contains(Visible.text(text))));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4})
    void onTheScreensBeforeAJobAndInDialogs(int part) {
        List<String> texts = part(part);
        Bench bench = new Bench(folder.resolve("ring"));
        bench.save(HostileTexts.model(texts));
        Workshop workshop = Workshop.of(folder, HostileTexts.model(texts), "7", "routine", "Ann");
        List<RecentJob> recent = texts.stream()
                .map(text -> new RecentJob(
                        folder.resolve(text.replace("/", "_")),
                        Optional.of(new RecentJob.Glance(text, text, text, "4 %", 2, "2026-05-14"))))
                .toList();
        Words words = Workshop.ENGLISH;
        try (Session session = workshop.open()) {
            List<JComponent> screens = Offscreen.on(() -> {
                Looks.use(CHOICES);
                AuthorScreen author = new AuthorScreen(
                        AuthorState.first(bench.model()),
                        new DirectDoor(),
                        words,
                        CHOICES,
                        () -> Bench.FIRST,
                        () -> {});
                author.look();
                author.look();
                NewJobPanel form = new NewJobPanel(
                        words,
                        Theme.LIGHT,
                        List.of(session.state().model()),
                        texts.stream().map(HostileTextTest::jar).toList(),
                        jar -> {},
                        "job",
                        "Ann",
                        job -> {},
                        () -> {});
                StartPanel.Doing nothing = (StartPanel.Doing) Proxy.newProxyInstance(
                        getClass().getClassLoader(),
                        new Class<?>[] {StartPanel.Doing.class},
                        (self, method, arguments) -> method.getReturnType() == boolean.class ? false : null);
                StartPanel start = new StartPanel(words, Optional.empty(), recent, nothing);
                author.close();
                List<JComponent> made =
                        new ArrayList<>(List.of(author.component(), form.component(), start.component()));
                texts.forEach(text -> made.add(CodeQuestion.of(jar(text), words).panel()));
                texts.forEach(text -> made.add(new JOptionPane(Visible.text(text))));
                return made;
            });
            screens.forEach(this::look);
        }
        assertThat(texts)
                .allSatisfy(text -> assertThat(shown)
                        .anyMatch(told -> told.contains(Visible.text(text).replace("/", "_"))));
    }

    private List<String> part(int part) {
        return all.subList(part * AT_ONCE, (part + 1) * AT_ONCE);
    }

    /** Paints it, and looks at every component in it, at each line of each list, and at every tool tip. */
    private void look(JComponent screen) {
        Offscreen.paint(screen, new Dimension(1264, 740), 1);
        Offscreen.on(() -> {
            List<Component> components = Offscreen.all(screen).toList();
            components.forEach(this::check);
            return true;
        });
    }

    private void check(Component component) {
        if (component instanceof JComponent swing) {
            assertThat(swing.getClientProperty("html"))
                    .as(String.valueOf(swing))
                    .isNull();
            String tip = swing.getToolTipText();
            if (tip != null) {
                JToolTip told = swing.createToolTip();
                told.setTipText(tip);
                assertThat(told.getClientProperty("html")).as(tip).isNull();
                shown.add(tip);
            }
        }
        if (component instanceof JLabel label && label.getText() != null) {
            shown.add(label.getText());
        } else if (component instanceof AbstractButton button && button.getText() != null) {
            shown.add(button.getText());
        } else if (component instanceof JTextComponent text && !text.isEditable()) {
            shown.add(text.getText());
        } else if (component instanceof JList<?> list) {
            lines(list);
        } else if (component instanceof JComboBox<?> box) {
            lines(box);
        }
    }

    private <T> void lines(JList<T> list) {
        lines(list, list.getCellRenderer());
    }

    private <T> void lines(JComboBox<T> box) {
        lines(new JList<>(box.getModel()), box.getRenderer());
    }

    private <T> void lines(JList<T> list, ListCellRenderer<? super T> renderer) {
        for (int i = 0; i < list.getModel().getSize(); i++) {
            T value = list.getModel().getElementAt(i);
            Component line = renderer.getListCellRendererComponent(list, value, i, false, false);
            Offscreen.all((Container) line).forEach(this::check);
        }
    }

    /** What a jar says of itself, and who says to have signed it. */
    private static CodeJar jar(String text) {
        return new CodeJar(Path.of("p.jar"), "0".repeat(64), text, Optional.of(text), "", List.of());
    }
}
