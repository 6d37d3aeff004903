package everyblade.session.drill;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import everyblade.practice.drill.Drill;
import everyblade.practice.harm.HarmKind;
import everyblade.practice.harm.Recipe;
import everyblade.words.Words;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The drills of the course that comes with the program, from turning and counting to a whole engine.
 *
 * @param lessons in the order in which they are best done
 */
public record Course(List<Lesson> lessons) {

    private static final String FILE = "course.json";

    /**
     * One drill of the course.
     *
     * @param model id of the engine model
     * @param drill as the trainee is told of it
     * @param recipe of its damage
     * @param why it is there, in a sentence
     */
    public record Lesson(String model, Drill drill, Recipe recipe, String why) {}

    /** The course as it lies in the program, told in these words. */
    public static Course shipped(Words words) {
        try (InputStream in = Course.class.getResourceAsStream(FILE)) {
            List<Lesson> lessons = new ArrayList<>();
            for (JsonNode node : new JsonMapper().readTree(in).path("drills")) {
                lessons.add(lesson(node, words));
            }
            return new Course(lessons);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    private static Lesson lesson(JsonNode node, Words words) {
        String key = "drill.lesson." + node.path("id").textValue();
        List<HarmKind> kinds = texts(node.path("kinds")).stream()
                .map(word -> HarmKind.valueOf(word.toUpperCase(Locale.ROOT)))
                .toList();
        Recipe recipe = new Recipe(
                texts(node.path("rows")),
                kinds,
                node.path("damage").intValue(),
                node.path("harmless").intValue(),
                node.path("least").doubleValue(),
                node.path("most").doubleValue(),
                node.path("grime").doubleValue());
        Drill drill = new Drill(
                words.say(key + ".title"),
                Drill.Mode.valueOf(node.path("mode").textValue().toUpperCase(Locale.ROOT)),
                words.say(key + ".task"),
                texts(node.path("views")),
                kinds,
                false);
        return new Lesson(node.path("model").textValue(), drill, recipe, words.say(key + ".why"));
    }

    private static List<String> texts(JsonNode list) {
        List<String> texts = new ArrayList<>();
        list.forEach(each -> texts.add(each.textValue()));
        return texts;
    }
}
