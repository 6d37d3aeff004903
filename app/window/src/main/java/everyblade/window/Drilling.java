package everyblade.window;

import everyblade.core.sight.Progress;
import everyblade.picture.MapStyle;
import everyblade.session.JobState;
import everyblade.session.drill.DrillRecord;
import everyblade.window.view.Practising;
import everyblade.words.Words;
import java.time.InstantSource;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JOptionPane;

/** A drill in the window: while it goes on, and what came of it. */
final class Drilling {

    private final Practising practising;
    private final Door door;
    private final Door eyeDoor;
    private final InstantSource clock;
    private final Progress progress;
    private final Runnable changed;
    private Words words;
    private MapStyle style = MapStyle.PLAIN;
    private Optional<DrillScreen> screen = Optional.empty();
    private Optional<DrillRecord.Told> told;
    private Optional<DrillResultScreen> result = Optional.empty();

    /**
     * A drill.
     *
     * @param told what came of it, if it has ended
     * @param progress is told how far the drill was gone through once more
     * @param changed is run when something else is to be shown
     */
    Drilling(
            Practising practising,
            Optional<DrillRecord.Told> told,
            Door door,
            Door eyeDoor,
            InstantSource clock,
            Words words,
            Progress progress,
            Runnable changed) {
        this.practising = practising;
        this.told = told;
        this.door = door;
        this.eyeDoor = eyeDoor;
        this.clock = clock;
        this.words = words;
        this.progress = progress;
        this.changed = changed;
    }

    /** Shows the drill beside this screen of its entries, in this language, its maps in this style. */
    void show(JobScreen job, Words spoken, MapStyle drawn) {
        words = spoken;
        style = drawn;
        screen.ifPresent(DrillScreen::stop);
        screen = Optional.of(new DrillScreen(practising, job, door, eyeDoor, words, clock, () -> end(job)));
        result = told.map(each -> new DrillResultScreen(practising, each, words, style, eyeDoor));
        if (told.isEmpty()) {
            screen.get().start();
        }
    }

    JComponent component() {
        return result.map(DrillResultScreen::component)
                .orElseGet(() -> screen.orElseThrow().component());
    }

    /** Where a person goes on: what came of it, or the entry line. */
    void focus(JobScreen job) {
        result.ifPresentOrElse(DrillResultScreen::focus, () -> job.entry().focus());
    }

    Optional<DrillScreen> screen() {
        return screen;
    }

    /** Stops drawing, and keeps the track. */
    void close() {
        screen.ifPresent(DrillScreen::stop);
        eyeDoor.close();
    }

    private void end(JobScreen job) {
        int answer = JOptionPane.showConfirmDialog(
                job.component(), words.say("drill.end.sure"), words.say("drill.end"), JOptionPane.YES_NO_OPTION);
        if (answer == JOptionPane.YES_OPTION) {
            endNow(job.state());
        }
    }

    /** Ends the drill and shows its truth. */
    void endNow(JobState state) {
        screen.orElseThrow().stop();
        DrillRecord drill = practising.drill();
        door.run(
                words.say("drill.telling"),
                () -> {
                    drill.end(practising.truth());
                    return drill.told(practising.truth(), state.fold(), state.coverage(), progress);
                },
                done -> {
                    told = Optional.of(done);
                    result = Optional.of(new DrillResultScreen(practising, done, words, style, eyeDoor));
                    changed.run();
                    result.get().focus();
                });
    }
}
