package everyblade.window;

import everyblade.session.Session;
import everyblade.session.Workshop;
import everyblade.window.view.Choices;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A counting job that is open in each test, and its screen as it is chosen. */
abstract class WithAJob {

    @TempDir
    Path folder;

    Workshop workshop;
    Session session;

    @BeforeEach
    void open() {
        workshop = Workshop.in(folder);
        session = workshop.counting();
    }

    @AfterEach
    void close() {
        session.close();
    }

    Offscreen screen(Choices choices) {
        return Offscreen.of(session, new DirectDoor(), choices);
    }

    Offscreen screen() {
        return screen(Choices.first(Locale.ENGLISH));
    }
}
