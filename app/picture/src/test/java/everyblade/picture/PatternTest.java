package everyblade.picture;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.picture.paint.ScenePainter;
import everyblade.picture.scene.Colour;
import everyblade.picture.scene.DrawnShape;
import everyblade.picture.scene.DrawnShape.Dots;
import everyblade.picture.scene.DrawnShape.Patch;
import everyblade.picture.scene.DrawnShape.Strokes;
import everyblade.picture.scene.Flat;
import everyblade.picture.scene.Frame;
import everyblade.picture.scene.Group;
import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Item;
import everyblade.picture.scene.Point;
import everyblade.picture.scene.Polar;
import everyblade.picture.scene.Scene;
import everyblade.picture.scene.Theme;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.BitSet;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class PatternTest {

    private static final int FINENESS = 20;
    private static final ScenePainter PAINTER = ScenePainter.of(Theme.LIGHT);

    /** Where a cell has its mark rather than what lies under it, as printed in black and white, its outline left out. */
    private static BitSet print(Look look, double width, double height) {
        Patch patch = new Patch(new Flat(new Point(0, height)), 0, width, 0, height);
        List<Item> items = AirfoilDrawing.cell(look, patch, Optional.empty());
        Scene scene = new Scene(width, height, "", "", List.of(Group.of(items)));
        int columns = (int) (width * FINENESS);
        int rows = (int) (height * FINENESS);
        BufferedImage image = new BufferedImage(columns, rows, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.scale(FINENESS, FINENESS);
        PAINTER.paint(scene, g);
        g.dispose();
        int mark = green(Theme.LIGHT.colour(look.mark()));
        int wash = green(Theme.LIGHT.colour(look.wash()));
        BitSet marked = new BitSet();
        for (int y = 2; y < rows - 2; y++) {
            for (int x = 2; x < columns - 2; x++) {
                int here = image.getRGB(x, y) >> 8 & 255;
                marked.set(y * columns + x, Math.abs(here - mark) < Math.abs(here - wash));
            }
        }
        return marked;
    }

    private static int green(Colour colour) {
        return colour.green();
    }

    @ParameterizedTest
    @CsvSource({"9, 5.6", "1.5, 1.8", "0.9, 1.3", "12, 2", "1, 12"})
    void states_differ_by_pattern_alone_however_small_the_cell(double width, double height) {
        double points = width * FINENESS * height * FINENESS;
        Map<Look, BitSet> prints = new EnumMap<>(Look.class);
        for (Look look : Look.values()) {
            prints.put(look, print(look, width, height));
        }
        for (Look one : Look.values()) {
            for (Look other : Look.values()) {
                if (one != other) {
                    BitSet different = (BitSet) prints.get(one).clone();
                    different.xor(prints.get(other));
                    assertThat(different.cardinality() / points)
                            .as(one + " and " + other)
                            .isGreaterThan(0.05);
                }
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Pattern.class)
    void stay_within_their_cell(Pattern pattern) {
        for (Frame frame : List.of(new Flat(new Point(10, 10)), new Polar(new Point(10, 10), true))) {
            Patch patch = new Patch(frame, 3, 47, 20, 29);
            Optional<DrawnShape> shape = pattern.on(patch, 0.7);
            points(shape).forEach(point -> {
                double along = frame instanceof Polar polar
                        ? CurvedText.wrapped(Math.toDegrees(Math.atan2(
                                polar.centre().x() - point.x(), polar.centre().y() - point.y())))
                        : point.x() - 10;
                double across = frame instanceof Polar ? Math.hypot(point.x() - 10, point.y() - 10) : 10 - point.y();
                assertThat(along).isBetween(3 - 1e-9, 47 + 1e-9);
                assertThat(across).isBetween(20 - 1e-9, 29 + 1e-9);
            });
            assertThat(shape.isEmpty()).isEqualTo(pattern == Pattern.EMPTY);
        }
    }

    private static Stream<Point> points(Optional<DrawnShape> shape) {
        if (shape.orElse(null) instanceof Strokes strokes) {
            return strokes.lines().stream().flatMap(List::stream);
        } else if (shape.orElse(null) instanceof Dots dots) {
            return dots.centres().stream();
        }
        return Stream.empty();
    }

    @Test
    void what_is_seen_as_far_as_it_can_be_is_filled_from_its_foot_over_most_of_the_cell_but_not_all() {
        Patch patch = new Patch(new Flat(new Point(0, 0)), 0, 4, 10, 20);
        assertThat(Pattern.FILLED_UP.on(patch, 1))
                .containsInstanceOf(Patch.class)
                .get()
                .satisfies(shape -> {
                    assertThat(((Patch) shape).low()).isEqualTo(10);
                    assertThat(((Patch) shape).high()).isBetween(16.0, 19.0);
                });
    }

    @Test
    void every_look_has_a_pattern_of_its_own() {
        assertThat(Look.values()).extracting(Look::pattern).doesNotHaveDuplicates();
        assertThat(Look.values())
                .extracting(look -> look.words(MapWords.of(Locale.ENGLISH)))
                .doesNotHaveDuplicates();
        assertThat(Look.values()).extracting(Look::wash).doesNotContain(Ink.LINE);
    }
}
