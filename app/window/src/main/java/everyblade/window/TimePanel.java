package everyblade.window;

import everyblade.picture.chart.ShareChart;
import everyblade.picture.chart.Timeline;
import everyblade.session.JobState;
import everyblade.window.view.Choices;
import everyblade.words.Words;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.JPanel;

/** The share seen against time; worked out beside the job, and only while somebody looks at it. */
final class TimePanel {

    private final Words words;
    private final Door door;
    private final Chart chart;
    private JobState state;
    private boolean looking;
    private int drawn = -1;

    TimePanel(Words words, Supplier<Choices> choices, Door door) {
        this.words = words;
        this.door = door;
        this.chart = new Chart(words, choices);
        chart.getAccessibleContext().setAccessibleName(words.say("page.time"));
    }

    JComponent component() {
        return chart;
    }

    void show(JobState newState) {
        state = newState;
        work();
    }

    /** Whether the chart is in front. */
    void shown(boolean isLooking) {
        looking = isLooking;
        work();
    }

    private void work() {
        if (!looking || state == null || state.fold().entries().size() == drawn) {
            return;
        }
        JobState now = state;
        drawn = now.fold().entries().size();
        door.aside(words.say("wait.chart"), () -> Timeline.of(now.fold(), now.coverage()), chart::show);
    }

    private static final class Chart extends JPanel {

        private static final long serialVersionUID = 1;

        private final transient Words words;
        private final transient Supplier<Choices> choices;
        private transient Optional<Timeline> timeline = Optional.empty();

        Chart(Words words, Supplier<Choices> choices) {
            this.words = words;
            this.choices = choices;
        }

        void show(Timeline newTimeline) {
            timeline = Optional.of(newTimeline).filter(Timeline::takesTime);
            repaint();
        }

        @Override
        protected void paintComponent(Graphics graphics) {
            timeline.ifPresent(shown -> {
                Graphics2D g = (Graphics2D) graphics.create();
                ShareChart.paint(shown, words, Looks.theme(choices.get()), g, getWidth(), getHeight());
                g.dispose();
            });
        }
    }
}
