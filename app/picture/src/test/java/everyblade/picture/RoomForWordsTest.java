package everyblade.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import everyblade.picture.paint.SceneFont;
import everyblade.picture.scene.DrawnShape.Text;
import everyblade.picture.scene.Lettering;
import everyblade.picture.scene.Scene;
import everyblade.spi.ChordBand;
import everyblade.spi.Direction;
import everyblade.spi.EngineModel;
import everyblade.spi.RowKind;
import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class RoomForWordsTest {

    private static final Font FONT = SceneFont.font();
    private static final FontRenderContext EXACT = new FontRenderContext(null, true, true);
    private static final Rectangle2D BORDER = new Rectangle2D.Double(5, 5, Sheet.WIDTH - 10, Sheet.HEIGHT - 10);

    /** Made once: what each of them shows is computed. */
    private static final List<Scene> SCENES = allScenes();

    /**
     * The box that a text takes, by the metrics of its font and as much wider as another font may make it: from the base
     * line to the top of capitals.
     */
    private static Box box(Text text) {
        double exact =
                FONT.deriveFont(100f).getStringBounds(text.words(), EXACT).getWidth() * text.size() / 100;
        double length = exact * Lettering.SLACK;
        Rectangle2D box = new Rectangle2D.Double(
                -text.anchor().share() * length,
                -Lettering.CAPITAL * text.size(),
                length,
                Lettering.CAPITAL * text.size());
        AffineTransform place =
                AffineTransform.getTranslateInstance(text.at().x(), text.at().y());
        place.rotate(Math.toRadians(text.angle()));
        double[] corners = new double[8];
        double[] flat = {
            box.getMinX(), box.getMinY(), box.getMaxX(), box.getMinY(),
            box.getMaxX(), box.getMaxY(), box.getMinX(), box.getMaxY()
        };
        place.transform(flat, 0, corners, 0, 4);
        return new Box(text, corners);
    }

    /** A turned rectangle: x and y of its four corners. */
    private record Box(Text text, double[] corners) {

        Rectangle2D bounds() {
            Path2D path = new Path2D.Double();
            path.moveTo(corners[0], corners[1]);
            for (int i = 2; i < 8; i += 2) {
                path.lineTo(corners[i], corners[i + 1]);
            }
            return path.getBounds2D();
        }

        /** Separating axes of two rectangles; they may touch by a tenth of a millimetre. */
        boolean meets(Box other) {
            return !apart(other) && !other.apart(this);
        }

        private boolean apart(Box other) {
            for (int side = 0; side < 4; side += 2) {
                double dx = corners[side + 2] - corners[side];
                double dy = corners[side + 3] - corners[side + 1];
                double length = Math.hypot(dx, dy);
                double[] mine = range(dx / length, dy / length);
                double[] theirs = other.range(dx / length, dy / length);
                if (mine[1] - theirs[0] < 0.1 || theirs[1] - mine[0] < 0.1) {
                    return true;
                }
            }
            return false;
        }

        private double[] range(double dx, double dy) {
            double low = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            for (int i = 0; i < 8; i += 2) {
                double along = corners[i] * dx + corners[i + 1] * dy;
                low = Math.min(low, along);
                high = Math.max(high, along);
            }
            return new double[] {low, high};
        }
    }

    private static EngineModel crowded() {
        SmallEngines engines = new SmallEngines()
                .named(
                        "An engine with a name that goes on and on, far longer than any sheet is wide, and then some more words",
                        "A notice that is longer than the sheet is wide. "
                                .repeat(8)
                                .strip());
        for (int i = 1; i <= 26; i++) {
            engines.row(
                    "rotor-number-" + i,
                    i % 9 == 0 ? RowKind.STATOR : RowKind.ROTOR,
                    30 + 4 * i,
                    i % 2 == 0 ? Direction.CW : Direction.CCW,
                    1 + i % 4,
                    i % 3 != 0,
                    List.of(ChordBand.LEADING, ChordBand.MIDDLE, ChordBand.TRAILING));
            for (int view = 0; view < 9; view++) {
                engines.view("view-" + i + "-" + view, "rotor-number-" + i, view % 2 * 180 + view / 3, 4);
            }
        }
        return engines.built();
    }

    private static Job busy() {
        Job job = new Job(crowded()).enter("view view-24-0", "datum rotor-number-24 1");
        for (int n = 1; n <= 126; n += 2) {
            job.enter("nick " + n + " leading 1", "recheck " + n + " again");
        }
        return job;
    }

    private static Scene scene(Job job, String row) {
        MapFacts facts = new MapFacts(
                job.facts().model(),
                job.facts().notice(),
                "S/N 0123456789-0123456789-0123456789-0123456789-0123456789",
                "A task that takes many words to tell, which it does at length, and is not done with even then. "
                        .repeat(4),
                "0123456789abcdef".repeat(4),
                MapWords.of(java.util.Locale.ENGLISH));
        return MapScene.of(job.coverage(), facts, Optional.ofNullable(row), MapStyle.PLAIN);
    }

    static List<Scene> scenes() {
        return SCENES;
    }

    private static List<Scene> allScenes() {
        Job larkspur = Jobs.larkspur();
        Job corncrake = Jobs.corncrake();
        Job tansy = Jobs.tansy();
        Job busy = busy();
        return List.of(
                scene(larkspur, null),
                scene(larkspur, "c1"),
                scene(larkspur, "imp"),
                scene(larkspur, "comb"),
                scene(corncrake, null),
                scene(corncrake, "s12"),
                scene(tansy, null),
                scene(tansy, "t"),
                scene(busy, null),
                scene(busy, "rotor-number-24"),
                scene(new Job(SmallEngines.rotor(1, Direction.CW, 0)), null),
                scene(new Job(SmallEngines.divided(3, 10)), "c1"));
    }

    @ParameterizedTest(name = "{index}")
    @MethodSource("scenes")
    void no_text_leaves_the_border(Scene scene) {
        assertThat(Scenes.texts(scene)).isNotEmpty();
        assertThat(Scenes.texts(scene).stream()
                        .filter(text -> !BORDER.contains(box(text).bounds())))
                .isEmpty();
    }

    @ParameterizedTest(name = "{index}")
    @MethodSource("scenes")
    void no_text_runs_into_another(Scene scene) {
        List<Box> boxes = Scenes.texts(scene).stream()
                .filter(text -> !text.words().isBlank())
                .map(RoomForWordsTest::box)
                .toList();
        List<Rectangle2D> bounds = boxes.stream().map(Box::bounds).toList();
        List<String> meeting = new ArrayList<>();
        for (int i = 0; i < boxes.size(); i++) {
            for (int j = 0; j < i; j++) {
                // Letters of one word that runs round a ring may touch.
                boolean letters = boxes.get(i).text().words().length() == 1
                        && boxes.get(j).text().words().length() == 1;
                if (!letters
                        && bounds.get(i).intersects(bounds.get(j))
                        && boxes.get(i).meets(boxes.get(j))) {
                    meeting.add(boxes.get(j).text() + " and " + boxes.get(i).text());
                }
            }
        }
        assertThat(meeting).isEmpty();
    }

    @ParameterizedTest(name = "{index}")
    @MethodSource("scenes")
    void no_share_is_cut(Scene scene) {
        assertThat(Scenes.words(scene)).noneMatch(words -> words.matches("\\d+[.,]\\d.*…"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"larkspur-4", "corncrake-12", "tansy-a1"})
    void no_name_of_a_row_is_cut_on_the_map_of_an_engine_that_was_not_begun(String engine) {
        Job job = Job.on(engine);
        assertThat(Scenes.words(scene(job, null)))
                .filteredOn(words -> words.startsWith("no datum"))
                .isNotEmpty()
                .noneMatch(words -> words.endsWith("…"));
    }

    @Test
    void lengths_are_those_of_the_font() {
        for (char letter = ' '; letter <= '~'; letter++) {
            String words = String.valueOf(letter);
            assertThat(Lettering.length(words, 1))
                    .as(words)
                    .isCloseTo(
                            FONT.deriveFont(1000f).getStringBounds(words, EXACT).getWidth() / 1000, within(0.001));
        }
        for (String words : List.of("118°", "± 2 − 3 – 4 · 5", "Größe", "İçindekiler", "coöperation")) {
            double exact = FONT.deriveFont(1000f).getStringBounds(words, EXACT).getWidth() / 1000;
            assertThat(Lettering.length(words, 1)).as(words).isBetween(exact - 0.01, exact + 1);
        }
    }

    @Test
    void words_too_long_for_their_room_are_cut_with_an_ellipsis() {
        String fitted = Lettering.fitted("a very long name of a row", 2, 20);
        assertThat(fitted).startsWith("a very").endsWith("…");
        assertThat(Lettering.length(fitted, 2) * Lettering.SLACK).isLessThanOrEqualTo(20);
        assertThat(Lettering.fitted("short", 2, 20)).isEqualTo("short");
        assertThat(Lettering.wrapped("one two three four five six", 2, 14, 2)).hasSize(2);
    }
}
