package everyblade.window;

import everyblade.window.view.Interruption;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.time.InstantSource;

/** Tells an interruption from a glance elsewhere, and takes the window's own button for closing. */
final class Presence extends WindowAdapter {

    private final Interruption interruption = new Interruption();
    private final InstantSource clock;
    private final Runnable welcomeBack;
    private final Runnable close;

    Presence(InstantSource clock, Runnable welcomeBack, Runnable close) {
        this.clock = clock;
        this.welcomeBack = welcomeBack;
        this.close = close;
    }

    @Override
    public void windowClosing(WindowEvent event) {
        close.run();
    }

    @Override
    public void windowLostFocus(WindowEvent event) {
        boolean toOurs = event.getOppositeWindow() != null;
        if (!toOurs) {
            interruption.left(clock.instant());
        }
    }

    @Override
    public void windowGainedFocus(WindowEvent event) {
        if (interruption.back(clock.instant())) {
            welcomeBack.run();
        }
    }
}
