package everyblade.window;

import everyblade.session.JobState;
import everyblade.window.view.Choices;
import everyblade.window.view.ReviewDesk;
import everyblade.words.Words;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.JComponent;

/** The place of the window where a reviewer's screen is, while one is open. */
final class Reviewing {

    private final Door door;
    private final ReviewScreen.Doing doing;
    private Optional<ReviewScreen> screen = Optional.empty();

    Reviewing(Door door, ReviewScreen.Doing doing) {
        this.door = door;
        this.doing = doing;
    }

    Optional<ReviewScreen> screen() {
        return screen;
    }

    Optional<JComponent> component() {
        return screen.map(ReviewScreen::component);
    }

    /** What the window is called while this screen is open. */
    Optional<String> title() {
        return screen.map(ReviewScreen::state)
                .map(state -> state.model().name() + ", " + state.beginning().serial() + " – Everyblade");
    }

    /** Opens the screen on a record. */
    void open(ReviewDesk desk, Words words, Supplier<Choices> choices) {
        close();
        screen = Optional.of(new ReviewScreen(desk, desk.state(), true, "", door, words, choices, doing));
    }

    /** Shows the same in other words or another look. */
    void again(Words words, Supplier<Choices> choices) {
        screen.ifPresent(old -> {
            old.close();
            JobState state = old.state();
            screen = Optional.of(
                    new ReviewScreen(old.desk(), state, old.blind(), old.by(), door, words, choices, doing));
        });
    }

    /** Plays no more. */
    void close() {
        screen.ifPresent(ReviewScreen::close);
        screen = Optional.empty();
    }
}
