package everyblade.window;

import everyblade.core.turning.Fold;
import everyblade.window.view.NextToDo;
import everyblade.window.view.Shown;
import everyblade.words.Words;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * What is to be done next, worked out beside the job: no entry and no preview waits for it, and what was worked out for an
 * earlier state of the job is never told as if it were for this one.
 */
final class Planning {

    private final Door door;
    private final Words words;
    private final Consumer<Optional<NextToDo>> tell;
    private Runnable stop = () -> {};
    private Optional<Fold> planned = Optional.empty();
    private Optional<NextToDo> next = Optional.empty();

    /** @param tell is given what is next, or nothing while nobody knows; on the event thread */
    Planning(Door door, Words words, Consumer<Optional<NextToDo>> tell) {
        this.door = door;
        this.words = words;
        this.tell = tell;
    }

    /** What is next in the state shown last, if that is known yet. */
    Optional<NextToDo> next() {
        return next;
    }

    /** Plans from this state; what is still being planned from another is given up. */
    void show(Shown shown) {
        Fold fold = shown.state().fold();
        if (planned.filter(before -> before == fold).isPresent()) {
            return;
        }
        planned = Optional.of(fold);
        stop.run();
        known(Optional.empty());
        stop = door.watched(words.say("wait.next"), progress -> NextToDo.of(shown, words, progress), this::known);
    }

    private void known(Optional<NextToDo> step) {
        next = step;
        tell.accept(step);
    }
}
