package everyblade.window;

import everyblade.session.Keeping;
import everyblade.words.Words;
import java.awt.Component;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JOptionPane;

/**
 * What a person does about a disk that refuses, and about a job that somebody else has.
 *
 * @param screen of the job
 * @param places where it may be saved
 * @param words in which to tell
 * @param window before which questions are asked
 * @param movedTo is told where the job is from now on
 */
record Saving(JobScreen screen, Places places, Words words, Component window, Consumer<Path> movedTo) {

    /** Tries the job's own disk again. */
    void again() {
        screen.work("wait.save", screen.session()::saveAgain, this::saved);
    }

    /** Asks for another place, and goes on there. */
    void elsewhere() {
        places.askNew(window, words, screen.state().folder())
                .ifPresent(
                        place -> screen.work("wait.save", () -> screen.session().saveElsewhere(place), this::saved));
    }

    private void saved(Optional<String> problem) {
        Path folder = screen.state().folder();
        if (problem.isEmpty()) {
            movedTo.accept(folder);
        }
        screen.tell(List.of(problem.orElseGet(() -> words.say("keeping.saved", folder.toString()))));
    }

    /** Becomes the job's writer, if whoever was has gone. */
    void tryWriting() {
        screen.work(
                "wait.open",
                () -> {
                    screen.session().tryWriting();
                    return true;
                },
                done -> screen.entry().focus());
    }

    /** Whether the job may be left: nothing would be lost, or the person says so. */
    boolean mayLeave() {
        List<String> notKept = screen.entry().notKept();
        return (!(screen.state().keeping() instanceof Keeping.InMemory) || sure(words.say("close.unsaved")))
                && (notKept.isEmpty() || sure(words.say("close.notKept", String.join("\n", notKept))));
    }

    private boolean sure(String question) {
        return JOptionPane.showConfirmDialog(window, question, "Everyblade", JOptionPane.YES_NO_OPTION)
                == JOptionPane.YES_OPTION;
    }
}
