package everyblade.picture.section;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.surface.Fineness;
import everyblade.core.surface.PlyText;
import everyblade.core.surface.Surfaces;
import everyblade.core.surface.UnusableShape;
import everyblade.json.EngineJsonReader;
import everyblade.json.Reading;
import everyblade.picture.scene.DrawnShape.Polygon;
import everyblade.picture.scene.DrawnShape.Strokes;
import everyblade.picture.scene.DrawnShape.Text;
import everyblade.picture.scene.Group;
import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Item;
import everyblade.picture.scene.Lettering;
import everyblade.picture.scene.Point;
import everyblade.picture.scene.Scene;
import everyblade.picture.section.FilledSection.Fill;
import everyblade.spi.EngineModel;
import everyblade.spi.Port;
import everyblade.spi.Row;
import everyblade.spi.Shape;
import everyblade.words.Words;
import java.nio.charset.StandardCharsets;
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
        return FilledSection.of(model, Map.of(), WORDS)
                .orElseThrow()
                .scene(fills(model, fill), model.rows().get(0).id(), open, 150, 22);
    }

    private static Map<String, Fill> fills(EngineModel model, Fill fill) {
        return model.rows().stream().collect(Collectors.toMap(Row::id, row -> fill));
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

    private static EngineModel withFile(EngineModel of, Row row) {
        Row other = new Row(
                row.id(),
                row.name(),
                row.kind(),
                row.spool(),
                row.count(),
                row.numbering(),
                row.rock(),
                row.spanBands(),
                row.chordBands(),
                row.sides(),
                row.landmarks(),
                row.ring(),
                row.ringOffset(),
                row.phase(),
                Optional.of(new Shape.Mesh("airfoil.ply")),
                row.positions(),
                row.source());
        List<Row> rows =
                of.rows().stream().map(each -> each.equals(row) ? other : each).toList();
        return new EngineModel(
                of.id(),
                of.name(),
                of.notice(),
                of.spools(),
                of.walls(),
                rows,
                of.scopeTips(),
                of.ports(),
                of.views(),
                of.taskCards());
    }

    @Test
    void aRowWhoseShapeIsAFileStandsWhereItsFileSays() throws UnusableShape {
        EngineModel model = model("larkspur-4");
        Row row = model.rows().get(0);
        String airfoil = PlyText.write(Surfaces.of(model, row, Optional.empty(), Fineness.STANDARD, Map.of())
                .orElseThrow());
        Scene scene = FilledSection.of(
                        withFile(model, row), Map.of("airfoil.ply", airfoil.getBytes(StandardCharsets.UTF_8)), WORDS)
                .orElseThrow()
                .scene(fills(model, new Fill(0.3, 0.2, 0.1)), row.id(), Set.of(), 150, 22);

        assertThat(group(scene, "(c1)").items())
                .hasSameSizeAs(group(scene("larkspur-4", new Fill(0.3, 0.2, 0.1), Set.of()), "(c1)")
                        .items());
    }

    @Test
    void namesOfOpenPortsGiveWayToEachOther() {
        EngineModel model = model("larkspur-4");
        Set<String> all = model.ports().stream().map(Port::id).collect(Collectors.toSet());
        List<Text> names = scene("larkspur-4", new Fill(0, 0, 0), all)
                .items()
                .map(Item::shape)
                .filter(Text.class::isInstance)
                .map(Text.class::cast)
                .toList();

        assertThat(names).hasSize(all.size());
        for (int i = 1; i < names.size(); i++) {
            Text before = names.get(i - 1);
            assertThat(names.get(i).at().x())
                    .as(before.words() + " and " + names.get(i).words())
                    .isGreaterThan(before.at().x() + Lettering.length(before.words(), before.size()));
        }
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
