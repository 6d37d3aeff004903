package everyblade.window;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.sight.Progress;
import everyblade.window.author.AuthorState;
import everyblade.window.author.Bench;
import everyblade.window.author.Sight;
import everyblade.window.author.Standpoint;
import everyblade.window.view.Choices;
import everyblade.words.Words;
import java.awt.Dimension;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JTable;
import javax.swing.JTextArea;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AuthorScreenTest {

    private static final Dimension SIZE = new Dimension(1264, 700);

    @TempDir
    Path folder;

    private Bench bench;
    private AuthorScreen screen;

    @BeforeEach
    void open() {
        bench = new Bench(folder.resolve("sedge-2"));
        bench.save(Bench.MODEL);
        screen = Offscreen.on(() -> screen(Locale.ENGLISH));
        look();
    }

    private AuthorScreen screen(Locale language) {
        Choices choices = Choices.first(language);
        Looks.use(choices);
        AuthorScreen made = new AuthorScreen(
                AuthorState.first(bench.model()),
                new DirectDoor(),
                Words.of(language),
                choices,
                () -> Bench.FIRST,
                () -> {});
        Rehearsal.lay(made.component(), SIZE);
        return made;
    }

    @AfterEach
    void leave() {
        Offscreen.on(() -> {
            screen.close();
            return true;
        });
    }

    /** As the timer would, until nothing changes any more. */
    private void look() {
        Offscreen.on(() -> {
            screen.look();
            screen.look();
            return true;
        });
    }

    private <T extends JComponent> T find(Class<T> type, String name) {
        return Offscreen.find(screen.component(), type, name);
    }

    private JList<?> messages() {
        return find(JList.class, "author messages");
    }

    private String drawn() {
        return find(DrawingPanel.class, "author SIDE").shown();
    }

    @Nested
    class Opened {

        @Test
        void showsTheDrawingsTheTextAndThatAllIsWell() {
            assertThat(screen.told()).startsWith("✔ Valid, read at ");
            assertThat(drawn()).isEqualTo("Sedge 2 (sedge-2)");
            assertThat(find(DrawingPanel.class, "author UNROLLED").shown()).contains("view p1-c1, station mid");
            assertThat(find(JTable.class, "author shares").getRowCount()).isEqualTo(13);
            assertThat(find(JTextArea.class, "author text").getText()).isEqualTo(Bench.MODEL);
            assertThat(messages().getModel().getSize()).isZero();
        }

        @Test
        void showsAnotherRowAndAnotherView() {
            Offscreen.on(() -> {
                find(JComboBox.class, "author.row").setSelectedItem("s1");
                find(JComboBox.class, "author.view").setSelectedItem(new Standpoint("p1-s1", Optional.empty()));
                return true;
            });

            assertThat(screen.state().row()).contains("s1");
            assertThat(find(Paragraph.class, "author sight").getText())
                    .startsWith("The view p1-s1 has no station, only a stated window");
            assertThat(find(JTable.class, "author shares").getRowCount()).isZero();
        }

        @Test
        void isReadAgainWhenAMeshIsSavedAndNotMoreOftenThanNeeded() throws IOException {
            bench.save(Bench.meshed("c1.ply"));
            look();
            assertThat(screen.told()).startsWith("✖ 1 error");
            AuthorState read = screen.state();
            look();
            assertThat(screen.state()).isSameAs(read);

            Files.writeString(bench.folder().resolve("c1.ply"), "ply");
            look();
            assertThat(screen.state().last().orElseThrow().problems())
                    .singleElement()
                    .extracting(everyblade.json.Problem::code)
                    .isEqualTo("bad-mesh");
        }

        @Test
        void isPaintedInEveryLanguageAndLook() {
            for (Locale language : Words.languages()) {
                for (int page = 0; page < 5; page++) {
                    int shown = page;
                    BufferedImage image = Offscreen.paint(
                            Offscreen.on(() -> screen.page(shown).component()), SIZE, 1);
                    assertThat(colours(image)).as(language + ", page " + page).isGreaterThan(20);
                }
                Offscreen.on(() -> {
                    screen.close();
                    screen = screen(language);
                    return true;
                });
                look();
            }
        }

        private long colours(BufferedImage image) {
            return java.util.Arrays.stream(
                            image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth()))
                    .distinct()
                    .count();
        }
    }

    @Nested
    class Broken {

        @BeforeEach
        void breakIt() {
            bench.save(Bench.BROKEN);
            look();
        }

        @Test
        void keepsTheDrawingsAndSaysSo() {
            assertThat(screen.told()).startsWith("✖ 1 error; the drawings are of the last valid state, read at ");
            assertThat(drawn()).isEqualTo("Sedge 2 (sedge-2)");
        }

        @Test
        void showsThePlaceOfTheMessageThatIsChosen() {
            assertThat(screen.markedLine()).isZero();
            Offscreen.on(() -> {
                messages().setSelectedIndex(0);
                return true;
            });

            assertThat(screen.markedLine())
                    .isEqualTo(Bench.BROKEN
                            .substring(0, Bench.BROKEN.indexOf("\"24\""))
                            .split("\n")
                            .length);
        }

        @Test
        void isMendedByTheNextSave() {
            bench.save(Bench.MODEL.replace("Sedge 2", "Sedge 3"));
            look();

            assertThat(screen.told()).startsWith("✔ Valid");
            assertThat(drawn()).isEqualTo("Sedge 3 (sedge-2)");
            assertThat(messages().getModel().getSize()).isZero();
            assertThat(screen.markedLine()).isZero();
        }

        @Test
        void isOutlivedWhenTheFolderVanishesAndComesBack() throws IOException {
            Path away = bench.folder().resolveSibling("away");
            Files.move(bench.folder(), away);
            look();
            assertThat(screen.told())
                    .startsWith("✖ The folder is gone; it is looked for again and again; the drawings");

            Files.move(away, bench.folder());
            bench.save(Bench.MODEL);
            look();
            assertThat(screen.told()).startsWith("✔ Valid");
        }
    }

    /** What is being computed when something newer comes. */
    @Nested
    class Computing {

        private final List<Runnable> waiting = new ArrayList<>();
        private int stopped;

        /** A door behind which what can be stopped is done only when it is asked for. */
        private final class SlowDoor implements Door {

            private final DirectDoor direct = new DirectDoor();

            @Override
            public <T> void run(String what, Callable<T> work, Consumer<T> then) {
                direct.run(what, work, then);
            }

            @Override
            public <T> void latest(String kind, Callable<T> work, Consumer<T> then) {
                direct.latest(kind, work, then);
            }

            @Override
            public <T> void aside(String what, Callable<T> work, Consumer<T> then) {
                direct.aside(what, work, then);
            }

            @Override
            public <T> Runnable watched(String what, Watched<T> work, Consumer<Optional<T>> then) {
                Runnable later = () ->
                        direct.run(what, () -> work.done(Progress.NONE), value -> then.accept(Optional.of(value)));
                waiting.add(later);
                return () -> stopped += waiting.remove(later) ? 1 : 0;
            }

            @Override
            public void fault(Throwable fault) {
                direct.fault(fault);
            }

            @Override
            public void close() {}
        }

        private AuthorDesk desk;

        @BeforeEach
        void readSlowly() {
            desk = new AuthorDesk(
                    AuthorState.first(bench.model()),
                    new SlowDoor(),
                    Words.of(Locale.ENGLISH),
                    () -> Bench.FIRST,
                    state -> {});
            desk.read();
        }

        private void goOn() {
            waiting.remove(0).run();
        }

        @Test
        void isGivenUpForANewerSave() {
            assertThat(desk.state().sight()).isInstanceOf(Sight.Computing.class);
            desk.read();

            assertThat(stopped).isEqualTo(1);
            assertThat(waiting).hasSize(1);
        }

        @Test
        void isKeptForTheLastValidStateWhenTheNewerSaveIsBroken() {
            bench.save(Bench.BROKEN);
            desk.read();
            goOn();

            assertThat(desk.state().last().orElseThrow().errors()).isEqualTo(1);
            assertThat(desk.state().sight()).isInstanceOf(Sight.Known.class);
        }

        @Test
        void isGivenUpForAnotherView() {
            desk.from(new Standpoint("p1-s1", Optional.empty()));

            assertThat(stopped).isEqualTo(1);
            assertThat(desk.state().sight()).isEqualTo(new Sight.Impossible("author.sight.noStation"));
        }

        @Test
        void isStoppedByAPersonAndBegunAgainByReading() {
            desk.stop();
            assertThat(desk.state().sight()).isInstanceOf(Sight.Stopped.class);
            assertThat(waiting).isEmpty();

            desk.read();
            while (!waiting.isEmpty()) {
                goOn();
            }
            assertThat(desk.state().sight()).isInstanceOf(Sight.Known.class);
        }
    }
}
