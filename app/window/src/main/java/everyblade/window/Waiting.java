package everyblade.window;

import everyblade.core.sight.Progress;
import everyblade.words.Words;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import javax.swing.SwingUtilities;
import javax.swing.Timer;
import net.miginfocom.swing.MigLayout;

/** Shows what is being waited for once it takes long, with a button to stop waiting where that can be done. */
final class Waiting {

    /** Shorter work would only flicker. */
    private static final int PATIENCE_MILLIS = 400;

    private final JPanel panel = new JPanel(new MigLayout("insets 4 8 4 8", "[][grow][]"));
    private final JLabel label = new JLabel();
    private final JProgressBar bar = new JProgressBar();
    private final JButton stop = new JButton();
    private final Timer timer;
    /** Whether it is known how far the work is. */
    private boolean counted;

    private final List<Ticket> tickets = new ArrayList<>();

    Waiting() {
        panel.add(bar);
        panel.add(label, "growx");
        panel.add(stop);
        panel.setVisible(false);
        panel.setName("waiting");
        stop.setName("wait.stop");
        stop.addActionListener(pressed -> stopWaiting());
        timer = new Timer(PATIENCE_MILLIS, due -> update(true));
        timer.setRepeats(false);
    }

    /** Speaks this language from now on. */
    void speak(Words words) {
        Texts.say(stop, words.say("wait.stop"));
    }

    JComponent component() {
        return panel;
    }

    /** One piece of work that is waited for; to be used on the event thread, but for {@link #wanted}. */
    static final class Ticket {

        static final Ticket NONE = new Ticket(null, "", false, () -> {});

        private final Waiting waiting;
        private final String what;
        private final boolean canStop;
        private final Runnable stopped;
        private volatile boolean wanted = true;

        private Ticket(Waiting waiting, String what, boolean canStop, Runnable stopped) {
            this.waiting = waiting;
            this.what = what;
            this.canStop = canStop;
            this.stopped = stopped;
        }

        /** Whether anybody still waits for it. */
        boolean wanted() {
            return wanted;
        }

        /** Nobody waits for it any more, and nobody need be told. */
        void drop() {
            wanted = false;
            end();
        }

        void end() {
            if (waiting != null) {
                waiting.tickets.remove(this);
                waiting.update(waiting.panel.isVisible());
            }
        }
    }

    Ticket begin(String what, boolean canStop) {
        return begin(new Ticket(this, what, canStop, () -> {}));
    }

    /** @param stopped is run when a person stops waiting for it */
    Ticket begin(String what, Runnable stopped) {
        return begin(new Ticket(this, what, true, stopped));
    }

    private Ticket begin(Ticket ticket) {
        tickets.add(ticket);
        if (!panel.isVisible()) {
            timer.restart();
        }
        return ticket;
    }

    /** Shows how far a long computation is; to be told from any thread. */
    Progress progress() {
        return progress(Ticket.NONE);
    }

    /** The same, and stops the computation once nobody waits for it. */
    Progress progress(Ticket ticket) {
        return new Progress() {
            @Override
            public void done(int parts, int all) {
                SwingUtilities.invokeLater(() -> {
                    counted = parts < all;
                    bar.setMaximum(all);
                    bar.setValue(parts);
                    animate();
                });
            }

            @Override
            public boolean cancelled() {
                return !ticket.wanted();
            }
        };
    }

    private void stopWaiting() {
        List<Ticket> ended = tickets.stream().filter(ticket -> ticket.canStop).toList();
        tickets.removeAll(ended);
        update(true);
        for (Ticket ticket : ended) {
            ticket.wanted = false;
            ticket.stopped.run();
        }
    }

    private void update(boolean late) {
        panel.setVisible(late && !tickets.isEmpty());
        counted &= panel.isVisible();
        animate();
        if (!tickets.isEmpty()) {
            Ticket last = tickets.get(tickets.size() - 1);
            Texts.say(label, last.what);
            stop.setVisible(last.canStop);
        }
    }

    /** A bar that runs to and fro does so even where nobody sees it, so it must be stopped. */
    private void animate() {
        bar.setIndeterminate(panel.isVisible() && !counted);
    }
}
