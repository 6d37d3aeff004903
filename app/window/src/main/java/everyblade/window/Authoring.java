package everyblade.window;

import everyblade.window.author.AuthorState;
import everyblade.window.author.ModelFolder;
import everyblade.window.view.Choices;
import everyblade.words.Words;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.Optional;
import javax.swing.JComponent;

/** The place of the window where a model author's screen is, while one is open. */
final class Authoring {

    private final Door door;
    private final InstantSource clock;
    private final Runnable back;
    private Optional<AuthorScreen> screen = Optional.empty();

    /** @param back shows the start screen again, after the author's screen was left */
    Authoring(Door door, InstantSource clock, Runnable back) {
        this.door = door;
        this.clock = clock;
        this.back = back;
    }

    Optional<AuthorScreen> screen() {
        return screen;
    }

    Optional<JComponent> component() {
        return screen.map(AuthorScreen::component);
    }

    /** What the window is called while this screen is open. */
    Optional<String> title() {
        return screen.map(one -> one.state().folder().path().getFileName() + " – Everyblade");
    }

    /** Opens the screen on a folder. */
    void open(Path folder, Words words, Choices choices) {
        close();
        screen = Optional.of(
                screen(AuthorState.first(new ModelFolder(folder.toAbsolutePath().normalize())), words, choices));
    }

    /** Shows the same in other words or another look. */
    void again(Words words, Choices choices) {
        screen.ifPresent(old -> {
            old.close();
            screen = Optional.of(screen(old.state(), words, choices).page(old.page()));
            screen.get().watch();
        });
    }

    private AuthorScreen screen(AuthorState state, Words words, Choices choices) {
        return new AuthorScreen(state, door, words, choices, clock, this::leave);
    }

    private void leave() {
        close();
        back.run();
    }

    /** Watches no more. */
    void close() {
        screen.ifPresent(AuthorScreen::close);
        screen = Optional.empty();
    }
}
