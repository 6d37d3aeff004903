package everyblade.window.view;

import everyblade.session.Session;
import everyblade.session.Workshop;
import java.time.ZoneOffset;

/** The panels of a window, in English and in the time of Greenwich. */
public final class Panels {

    private Panels() {}

    /** What they show of a session. */
    public static Shown of(Session session) {
        return Shown.of(session.state(), Workshop.ENGLISH, ZoneOffset.UTC);
    }
}
