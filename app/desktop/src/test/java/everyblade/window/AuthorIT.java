package everyblade.window;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.cli.Commands;
import everyblade.record.LocalDisk;
import everyblade.session.Workshop;
import everyblade.session.around.Surroundings;
import everyblade.session.model.Consent;
import everyblade.session.model.Shelf;
import everyblade.window.author.Bench;
import everyblade.window.view.Choices;
import java.awt.KeyboardFocusManager;
import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.swing.JButton;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A model author's screen in the real window, beside an editor that saves. */
class AuthorIT {

    private static final Path SHIPPED = Path.of("..", "..", "engine-models", "larkspur-4", "engine.json");

    @TempDir
    Path folder;

    private final Hands hands = WindowIT.hasScreen() ? new Hands() : null;
    private MainWindow window;

    @BeforeEach
    void needsAScreen() {
        if (!WindowIT.hasScreen() && Boolean.getBoolean("everyblade.screen.required")) {
            throw new AssertionError("there is no screen, and one is required here");
        }
        Assumptions.assumeTrue(WindowIT.hasScreen(), "left out: there is no screen to open a window on");
    }

    @AfterEach
    void closeWindow() {
        if (window != null) {
            Offscreen.on(() -> {
                window.close();
                return true;
            });
        }
    }

    private void open(Path model) {
        Surroundings plain = Workshop.in(folder).around();
        Surroundings around = new Surroundings(
                plain.in(),
                plain.out(),
                plain.err(),
                InstantSource.system(),
                Map.of("HOME", folder.toString()),
                folder,
                Optional.empty(),
                new LocalDisk());
        Choices.first(Locale.ENGLISH).write(folder.resolve(".config/everyblade/window.properties"));
        window = Offscreen.on(() -> {
            MainWindow made = new MainWindow(
                    around, new Shelf(around, List.of(), new Consent(around, Set.of())), Commands::run, () -> {});
            made.author(model);
            made.open();
            return made;
        });
        hands.until("the window to be in front", window.frame()::isActive);
    }

    private AuthorScreen screen() {
        return window.authoring().orElseThrow();
    }

    private void untilTold(String start) {
        hands.until(start, () -> screen().told().startsWith(start));
    }

    private String drawn() {
        return Offscreen.find(window.frame(), DrawingPanel.class, "author SIDE").shown();
    }

    @Test
    void aModelIsBrokenAndMendedAndTheWindowFollows() throws Exception {
        Bench bench = new Bench(folder.resolve("model"));
        String text = Files.readString(SHIPPED);
        bench.save(text);
        open(bench.folder());
        untilTold("✔ Valid");
        hands.untilAtRest();
        assertThat(drawn()).isEqualTo("Larkspur 4 turboprop (larkspur-4)");

        String broken = text.replaceFirst("\"count\": ([0-9]+)", "\"count\": \"$1\"");
        bench.save(broken);
        untilTold("✖ 1 error; the drawings are of the last valid state");
        assertThat(drawn()).isEqualTo("Larkspur 4 turboprop (larkspur-4)");
        hands.control(KeyEvent.VK_G);
        hands.strike(KeyEvent.VK_ENTER);
        int line = broken.substring(0, broken.indexOf("\"count\": \"")).split("\n").length;
        hands.until("the place of the error", () -> screen().markedLine() == line);

        hands.control(KeyEvent.VK_PAGE_DOWN);
        hands.until("the next page of the drawings", () -> screen().page() == 1);

        bench.save(text.replace("Larkspur 4 turboprop", "Larkspur 5"));
        untilTold("✔ Valid");
        hands.until("the new drawing", () -> drawn().equals("Larkspur 5 (larkspur-4)"));

        hands.strike(KeyEvent.VK_ESCAPE);
        hands.until("the start screen", () -> window.authoring().isEmpty());
        hands.until("the focus on it", () -> {
            var owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
            return owner instanceof JButton button && button.getName().startsWith("start.");
        });
    }
}
