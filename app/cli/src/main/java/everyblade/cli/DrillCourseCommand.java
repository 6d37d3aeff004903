package everyblade.cli;

import everyblade.session.around.Surroundings;
import everyblade.session.drill.Course;
import everyblade.session.drill.DrillText;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;

/** Lists the drills that come with the program. */
@Command(name = "course", description = "${bundle:help.drillCourse}")
final class DrillCourseCommand implements Callable<Integer> {

    private final Surroundings around;

    DrillCourseCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() {
        List<Course.Lesson> lessons = Course.shipped(around.words()).lessons();
        for (int i = 0; i < lessons.size(); i++) {
            Course.Lesson lesson = lessons.get(i);
            around.out()
                    .println((i + 1) + ". " + lesson.drill().title() + " (" + lesson.model() + ", "
                            + String.join(" ", lesson.recipe().rows()) + ", "
                            + new DrillText(around.words()).mode(lesson.drill().mode()) + "): "
                            + lesson.drill().task());
            around.out().println("   " + lesson.why());
        }
        around.out().println(around.words().say("drill.course.make"));
        return Commands.FINE;
    }
}
