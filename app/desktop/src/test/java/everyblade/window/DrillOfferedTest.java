package everyblade.window;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.session.drill.DrillRecord;
import everyblade.window.view.RecentJob;
import everyblade.words.Words;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JList;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.Test;

/** Where drills are offered: among recent jobs, and as a course. */
class DrillOfferedTest extends WithADrill {

    @Test
    void a_recent_drill_is_told_from_a_job_and_can_be_opened_again() {
        Path drill = folder.resolve("d");
        Path other = folder.resolve("ring");
        List<Path> opened = new ArrayList<>();
        StartPanel start = Offscreen.on(() -> new StartPanel(
                Words.of(Locale.ENGLISH),
                Optional.empty(),
                List.of(recent(drill), recent(other)),
                new OnlyOpening(opened)));

        Offscreen.on(() -> {
            Offscreen.find(start.component(), JButton.class, "start.openRecent").doClick();
            return null;
        });

        assertThat(opened).containsExactly(drill);
        JList<?> list = Offscreen.on(() -> Offscreen.find(start.component(), JList.class, "recent"));
        assertThat(rendered(list, 0)).isEqualTo("DRILL: " + drill);
        assertThat(rendered(list, 1)).isEqualTo(other.toString());
    }

    private static RecentJob recent(Path folder) {
        return new RecentJob(folder, Optional.empty());
    }

    private static <T> String rendered(JList<T> list, int index) {
        return Offscreen.on(() -> ((JTextComponent) list.getCellRenderer()
                        .getListCellRendererComponent(list, list.getModel().getElementAt(index), index, false, false))
                .getText());
    }

    /** Keeps what is to be opened, and does nothing. */
    private final class OnlyOpening implements StartPanel.Doing {

        private final List<Path> opened;

        OnlyOpening(List<Path> opened) {
            this.opened = opened;
        }

        @Override
        public void open(Path job) {
            opened.add(job);
        }

        @Override
        public boolean isDrill(Path folder) {
            return DrillRecord.isOne(around, folder);
        }

        @Override
        public void review(Path job) {}

        @Override
        public void newJob() {}

        @Override
        public void practise() {}

        @Override
        public void fleet() {}

        @Override
        public void author() {}

        @Override
        public void choose(boolean review) {}
    }

    @Test
    void the_course_is_offered_with_what_each_drill_is_for() {
        List<String> begun = new ArrayList<>();
        CoursePanel course = Offscreen.on(() -> new CoursePanel(
                Words.of(Locale.ENGLISH), lesson -> begun.add(lesson.drill().title()), () -> {}));

        Offscreen.on(() -> {
            Offscreen.find(course.component(), JButton.class, "drill.course.begin")
                    .doClick();
            return null;
        });

        assertThat(begun).containsExactly("Turning and counting");
        assertThat(texts(course.component()))
                .filteredOn(text -> text.startsWith("Lesson"))
                .hasSize(12);
    }
}
