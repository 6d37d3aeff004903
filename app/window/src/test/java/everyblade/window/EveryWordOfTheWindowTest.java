package everyblade.window;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.entry.Kind;
import everyblade.core.sight.Progress;
import everyblade.picture.scene.Theme;
import everyblade.session.PseudoLanguage;
import everyblade.session.Session;
import everyblade.session.Workshop;
import everyblade.window.author.AuthorState;
import everyblade.window.author.Bench;
import everyblade.window.view.Choices;
import everyblade.window.view.ReviewDesk;
import everyblade.words.Words;
import java.lang.reflect.Proxy;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import javax.swing.JComponent;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The window in a language of which every letter is marked: a plain word is one that somebody wrote outside the bundles. */
class EveryWordOfTheWindowTest {

    private static final Words WORDS = PseudoLanguage.addedFor(EveryWordOfTheWindowTest.class);
    private static final Choices CHOICES = Choices.first(PseudoLanguage.LOCALE);

    /** Words of entries, which are typed the same in every language, and of the engine models shown. */
    private static final Set<String> KNOWN = known();

    private static Set<String> known() {
        Set<String> words = new TreeSet<>(PseudoLanguage.words(
                Workshop.RING,
                Bench.MODEL,
                "routine",
                "view datum turn look round here watch heat clear skip settle because root both everyblade engine json"
                        + " fact cycles hours manual position revision"));
        Arrays.stream(Kind.values()).forEach(kind -> words.add(kind.word()));
        return words;
    }

    @TempDir
    Path folder;

    private PlainWordsShown shown;

    @BeforeEach
    void begin() {
        shown = new PlainWordsShown(folder, KNOWN);
    }

    @Test
    void comesFromTheBundlesOnTheScreenOfAJob() {
        try (Session session =
                Workshop.in(folder).open("heat 24 C", "view p-r", "datum r 1", "turn 40", "nick 3 tip 0.8")) {
            Offscreen screen = Offscreen.of(session, new DirectDoor(), CHOICES);
            shown.look(screen.screen().component());
            Offscreen.on(() -> {
                screen.screen().middle().turnClosing();
                return true;
            });
            shown.look(screen.screen().component());
            for (Runnable page : List.<Runnable>of(
                    () -> screen.screen().middle().find(Optional.empty()),
                    () -> screen.screen().tell(List.of(WORDS.say("sign.unsaved"))))) {
                Offscreen.on(() -> {
                    page.run();
                    return true;
                });
                shown.look(screen.screen().component());
            }
            KeySheet sheet = new KeySheet(WORDS);
            shown.look(Offscreen.on(sheet::component));
            shown.look(Offscreen.on(sheet::ofAuthor));
            shown.look(Offscreen.on(sheet::ofReview));
        }
        assertThat(shown.plain()).isEmpty();
    }

    @Test
    void comesFromTheBundlesWhereARecordIsReviewed() {
        Workshop workshop = Workshop.in(folder);
        workshop.open("heat 24 C", "view p-r", "datum r 1", "turn 40", "nick 3 tip 0.8")
                .close();
        shown.look(Offscreen.on(() -> {
            Looks.use(CHOICES);
            ReviewDesk desk = ReviewDesk.open(
                    workshop.around().speaking(PseudoLanguage.LOCALE), workshop.job(), "", Progress.NONE);
            ReviewScreen.Doing nothing = (ReviewScreen.Doing) Proxy.newProxyInstance(
                    getClass().getClassLoader(),
                    new Class<?>[] {ReviewScreen.Doing.class},
                    (self, method, arguments) -> null);
            return new ReviewScreen(desk, desk.state(), true, "", new DirectDoor(), WORDS, () -> CHOICES, nothing)
                    .component();
        }));
        assertThat(shown.plain()).isEmpty();
    }

    @Test
    void comesFromTheBundlesBeforeAJob() {
        Bench bench = new Bench(folder.resolve("sedge-2"));
        bench.save(Bench.MODEL);
        try (Session session = Workshop.in(folder).open()) {
            List<JComponent> screens = Offscreen.on(() -> {
                Looks.use(CHOICES);
                AuthorScreen author = new AuthorScreen(
                        AuthorState.first(bench.model()),
                        new DirectDoor(),
                        WORDS,
                        CHOICES,
                        () -> Bench.FIRST,
                        () -> {});
                author.look();
                author.look();
                author.close();
                NewJobPanel form = new NewJobPanel(
                        WORDS,
                        Theme.LIGHT,
                        List.of(session.state().model()),
                        List.of(),
                        jar -> {},
                        "job",
                        "Ann",
                        job -> {},
                        () -> {});
                StartPanel.Doing nothing = (StartPanel.Doing) Proxy.newProxyInstance(
                        getClass().getClassLoader(),
                        new Class<?>[] {StartPanel.Doing.class},
                        (self, method, arguments) -> null);
                StartPanel start = new StartPanel(WORDS, Optional.empty(), List.of(), nothing);
                CoursePanel course = new CoursePanel(WORDS, lesson -> {}, () -> {});
                return List.of(
                        author.component(),
                        form.component(),
                        start.component(),
                        course.component(),
                        new SignForm(WORDS).component());
            });
            screens.forEach(shown::look);
        }
        assertThat(shown.plain()).isEmpty();
    }
}
