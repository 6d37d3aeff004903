package everyblade.window;

import everyblade.record.RecordKind;
import everyblade.session.Session;
import everyblade.session.around.Surroundings;
import everyblade.window.view.ReviewDesk;
import everyblade.window.view.Shown;
import everyblade.words.Words;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/**
 * Opens records; never on the event thread, since it may take long.
 *
 * @param words in which what is opened is told
 * @param pictures the folder that pictures come from, else they come from the job's own
 * @param waiting is told how far it is
 */
record JobOpening(Surroundings around, Words words, Optional<Path> pictures, Waiting waiting) {

    /** A job that was opened, and what is to be shown of it. */
    record Opened(Session session, Shown shown) {}

    /** A job to be worked on, or if it is packed, to be looked at. */
    Opened opened(Path folder) {
        if (around.isPacked(folder)) {
            return shown(Session.review(speaking(), folder, words.say("keeping.review"), waiting.progress()));
        }
        List<Path> from = pictures.map(List::of).orElseGet(() -> List.of(around.path(folder)));
        return shown(Session.open(speaking(), folder, from, waiting.progress()));
    }

    /** A drill to be gone on with. */
    Opened drill(Path folder) {
        return shown(Session.open(speaking(), folder, RecordKind.DRILL, List.of(folder), waiting.progress()));
    }

    /** A record to be reviewed. */
    ReviewDesk reviewed(Path folder) {
        return ReviewDesk.open(speaking(), folder, words.say("keeping.review"), waiting.progress());
    }

    /** What is to be shown of a job that is open. */
    Opened shown(Session session) {
        return new Opened(session, Shown.of(session.state(), words, ZoneId.systemDefault()));
    }

    private Surroundings speaking() {
        return around.speaking(words.locale());
    }
}
