package everyblade.window;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.session.Session;
import everyblade.session.Workshop;
import everyblade.window.author.AuthorState;
import everyblade.window.author.Bench;
import everyblade.window.view.Choices;
import everyblade.window.view.RecentJob;
import everyblade.words.Words;
import java.awt.Dimension;
import java.lang.reflect.Proxy;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JScrollPane;
import javax.swing.JViewport;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is shown before a job, beside it and instead of it: nothing is cut off, and large buttons have their signs. */
class EveryScreenLaidOutTest {

    private static final Dimension SIZE = new Dimension(1280, 740);

    @TempDir
    Path folder;

    private static void standsWhole(JComponent screen, int words) {
        Laid laid = Laid.out(screen, SIZE);
        laid.reachesNowhereBeyond();
        laid.overlapsNowhere();
        laid.cutsNoWords(words);
    }

    private static <T> T idle(Class<T> doing) {
        return doing.cast(Proxy.newProxyInstance(
                doing.getClassLoader(),
                new Class<?>[] {doing},
                (self, method, arguments) -> method.getReturnType() == boolean.class ? false : null));
    }

    private static JComponent start(Words words) {
        RecentJob.Glance glance = new RecentJob.Glance(
                "Ring of twelve, with a name that takes some room",
                "INVENTED-0999",
                "routine look",
                "4 %",
                51,
                "2026-05-14");
        return new StartPanel(
                        words,
                        Optional.of(Path.of("demo")),
                        List.of(
                                new RecentJob(Path.of("a-job"), Optional.of(glance)),
                                new RecentJob(Path.of("another"), Optional.empty())),
                        idle(StartPanel.Doing.class))
                .component();
    }

    private static JComponent form(Words words, Choices choices, Session session) {
        return new NewJobPanel(
                        words,
                        Looks.theme(choices),
                        List.of(session.state().model()),
                        List.of(),
                        jar -> {},
                        "job",
                        "Ann",
                        job -> {},
                        () -> {})
                .component();
    }

    @ParameterizedTest
    @CsvSource({"en,100,false", "de,100,true", "en,150,true", "de,150,false"})
    void standsWholeBeforeAJob(Locale language, int text, boolean dark) {
        Choices choices = Choices.first(language).text(text).dark(dark);
        Words words = Words.of(language);
        try (Session session = Workshop.in(folder).open()) {
            Offscreen.on(() -> {
                Looks.use(choices);
                JComponent start = start(words);
                standsWhole(start, 8);
                assertThat(Offscreen.all(start)
                                .filter(one ->
                                        one.getName() != null && one.getName().startsWith("start."))
                                .map(AbstractButton.class::cast))
                        .hasSize(8)
                        .allSatisfy(button -> assertThat(button.getIcon())
                                .as(button.getName())
                                .isNotNull());
                JComponent form = form(words, choices, session);
                if (text == 100) {
                    standsWhole(form, 12);
                } else { // larger, it scrolls: across, nothing is lost
                    Laid.out(form, SIZE);
                    JViewport port = ((JScrollPane) form).getViewport();
                    assertThat(port.getView().getWidth()).isEqualTo(port.getWidth());
                    new Laid((JComponent) port.getView()).reachesNowhereBeyond();
                }
                return true;
            });
        }
    }

    @ParameterizedTest
    @CsvSource({"en,100,false", "de,100,true", "en,150,true", "de,150,false"})
    void standsWholeWhereAModelIsWritten(Locale language, int text, boolean dark) {
        Choices choices = Choices.first(language).text(text).dark(dark);
        Bench bench = new Bench(folder.resolve("sedge-2"));
        bench.save(Bench.MODEL);
        Offscreen.on(() -> {
            Looks.use(choices);
            AuthorScreen author = new AuthorScreen(
                    AuthorState.first(bench.model()),
                    new DirectDoor(),
                    Words.of(language),
                    choices,
                    () -> Bench.FIRST,
                    () -> {});
            author.look();
            author.look();
            standsWhole(author.component(), 5);
            author.close();
            return true;
        });
    }

    @ParameterizedTest
    @CsvSource({"en,100,true", "de,100,false", "en,150,true", "de,150,true"})
    void standsWholeWithWhatComesBesideTheMap(Locale language, int text, boolean gloves) {
        Workshop workshop = Workshop.limited(folder);
        workshop.picture("a.png");
        try (Session session = workshop.counting()) {
            List.of("turn on 60", "nick 3 tip 0.8", "photo a.png of 3 tip")
                    .forEach(entry -> session.enter(entry, true, Workshop.ENGLISH));
            Offscreen screen = Offscreen.of(
                    session,
                    DirectDoor.withoutPlans(),
                    Choices.first(language).text(text).gloves(gloves));
            Offscreen.on(() -> {
                Middle middle = screen.screen().middle();
                for (Runnable page : List.<Runnable>of(
                        middle::turnClosing, () -> middle.find(Optional.empty()), middle::turnPictures)) {
                    page.run();
                    standsWhole(screen.screen().component(), 20);
                }
                return true;
            });
        }
    }
}
