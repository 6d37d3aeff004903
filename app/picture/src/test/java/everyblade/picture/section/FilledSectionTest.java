package everyblade.picture.section;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.json.EngineJsonReader;
import everyblade.json.Reading;
import everyblade.picture.scene.DrawnShape.Polygon;
import everyblade.picture.scene.DrawnShape.Strokes;
import everyblade.picture.scene.Group;
import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Point;
import everyblade.picture.scene.Scene;
import everyblade.picture.section.FilledSection.Fill;
import everyblade.spi.EngineModel;
import everyblade.words.Words;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FilledSectionTest {

    private static final Words WORDS = Words.of(Locale.ENGLISH);

    private static EngineModel model(String id) {
        Path file = Path.of("..", "..", "engine-models", id, EngineJsonReader.FILE);
        return ((Reading.Read) EngineJsonReader.read(file)).model();
    }

    private static Scene scene(String engine, Fill fill, Set<String> open) {
        EngineModel model = model(engine);
        Map<String, Fill> fills = model.rows().stream().collect(Collectors.toMap(row -> row.id(), row -> fill));
        return FilledSection.of(model, WORDS)
                .orElseThrow()
                .scene(fills, model.rows().get(0).id(), open, 150, 22);
    }

    private static Group group(Scene scene, String words) {
        return scene.groups().stream()
                .filter(group -> group.title().contains(words))
                .findFirst()
                .orElseThrow();
    }

    private static boolean has(Group group, Ink ink) {
        return group.items().stream().anyMatch(item -> item.style().fill().equals(Optional.of(ink)));
    }

    @Test
    void fillsARowWithWhatItsCellsAre() {
        Group half = group(scene("larkspur-4", new Fill(0.3, 0.2, 0.1), Set.of()), "(c1)");
        assertThat(has(half, Ink.SEEN) && has(half, Ink.PART) && has(half, Ink.MAYBE))
                .isTrue();

        Group none = group(scene("larkspur-4", new Fill(0, 0, 0), Set.of()), "(c1)");
        assertThat(has(none, Ink.SEEN) || has(none, Ink.PART) || has(none, Ink.MAYBE))
                .isFalse();
    }

    @Test
    void tellsWhichPortsAreOpen() {
        assertThat(scene("larkspur-4", new Fill(0, 0, 0), Set.of("p1")).summary())
                .isEqualTo("open: p1");
        assertThat(scene("larkspur-4", new Fill(0, 0, 0), Set.of()).summary()).isEqualTo("no port is open");
        assertThat(group(scene("larkspur-4", new Fill(0, 0, 0), Set.of("p1")), "port p1,")
                        .title())
                .contains(": open");
    }

    @ParameterizedTest
    @ValueSource(strings = {"larkspur-4", "corncrake-12", "tansy-a1"})
    void standsWholeOnASheetAsLowAsItsPlaceInTheWindow(String engine) {
        List<Point> corners = scene(engine, new Fill(0.5, 0.2, 0.1), Set.of())
                .items()
                .flatMap(item -> item.shape() instanceof Polygon polygon
                        ? polygon.corners().stream()
                        : item.shape() instanceof Strokes strokes
                                ? strokes.lines().stream().flatMap(List::stream)
                                : Stream.of())
                .toList();
        assertThat(corners).hasSizeGreaterThan(99).allSatisfy(corner -> {
            assertThat(corner.x()).isBetween(0.0, 150.0);
            assertThat(corner.y()).isBetween(0.0, 22.0);
        });
    }
}
