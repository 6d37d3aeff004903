package everyblade.window;

import everyblade.session.drill.Course;
import everyblade.session.drill.Course.Lesson;
import everyblade.words.Words;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** The drills of the course, of which one is chosen and begun. */
final class CoursePanel {

    private final JPanel panel =
            new JPanel(new MigLayout("insets 32, fill, wrap", "[grow, fill]", "[][][grow, fill][]"));
    private final LineList<Lesson> list;

    CoursePanel(Words words, Consumer<Lesson> begin, Runnable back) {
        List<Lesson> lessons = Course.shipped(words).lessons();
        list = new LineList<>(
                "course",
                lesson -> words.say(
                        "drill.course.line",
                        lessons.indexOf(lesson) + 1,
                        lesson.drill().title(),
                        lesson.drill().task(),
                        lesson.why()));
        list.getAccessibleContext().setAccessibleName(words.say("start.drill"));
        list.show(lessons);
        list.setSelectedIndex(0);
        Runnable chosen = () -> begin.accept(list.getSelectedValue());
        Keys.on(list, "ENTER", chosen);
        Keys.on(list, "ESCAPE", back);
        panel.add(Texts.bold(Texts.label(words.say("drill.course")), 2));
        panel.add(new Paragraph(words.say("drill.caution")), "wmin 0");
        panel.add(list.scrolled());
        panel.add(button(ButtonSign.DEMO, "drill.course.begin", words, chosen), "split 2, growx 0, hmin 44, sg go");
        panel.add(button(ButtonSign.BACK, "drill.course.back", words, back), "growx 0, hmin 44, sg go, gapright push");
    }

    private static JButton button(ButtonSign sign, String key, Words words, Runnable action) {
        JButton button = Texts.button(words.say(key));
        button.setIcon(sign);
        button.setName(key);
        button.addActionListener(pressed -> action.run());
        return button;
    }

    JComponent component() {
        return panel;
    }

    void focus() {
        list.requestFocusInWindow();
    }
}
