package everyblade.session.drill;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.json.EngineJsonReader;
import everyblade.json.Reading;
import everyblade.practice.drill.Reachable;
import everyblade.spi.EngineModel;
import everyblade.spi.View;
import everyblade.words.Words;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class CourseTest {

    @Test
    void a_dozen_drills_begin_with_the_count_and_end_with_a_whole_engine() {
        Course course = Course.shipped(Words.of(Locale.ENGLISH));

        assertThat(course.lessons()).hasSize(12);
        assertThat(course.lessons().get(0).recipe().damage()).isZero();
        assertThat(course.lessons().get(11).recipe().rows()).hasSizeGreaterThan(3);
    }

    @Test
    void every_drill_of_the_course_can_be_made_of_its_engine() {
        for (Course.Lesson lesson : Course.shipped(Words.of(Locale.ENGLISH)).lessons()) {
            Path file = Path.of("..", "..", "engine-models", lesson.model(), EngineJsonReader.FILE);
            EngineModel engine = ((Reading.Read) EngineJsonReader.read(file)).model();

            assertThat(Reachable.views(engine, lesson.recipe().rows()))
                    .as(lesson.drill().title())
                    .extracting(View::id)
                    .containsAll(lesson.drill().views());
            assertThat(lesson.recipe().rows())
                    .allSatisfy(row -> assertThat(lesson.drill().views().stream()
                                    .map(view -> engine.view(view).orElseThrow().row()))
                            .contains(row));
        }
    }
}
