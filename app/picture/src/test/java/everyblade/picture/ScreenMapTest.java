package everyblade.picture;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.coverage.Coverage;
import everyblade.picture.paint.SceneFont;
import everyblade.picture.scene.Cell;
import everyblade.picture.scene.Group;
import everyblade.picture.scene.Item;
import everyblade.picture.scene.Point;
import everyblade.picture.scene.Shape.Patch;
import everyblade.picture.scene.Shape.Text;
import everyblade.spi.ChordBand;
import everyblade.spi.Direction;
import everyblade.spi.EngineModel;
import everyblade.spi.RowKind;
import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ScreenMapTest {

    private static final Font FONT = SceneFont.font();
    private static final FontRenderContext EXACT = new FontRenderContext(null, true, true);
    private static final double FINE = 1.5;

    private static EngineModel engine() {
        SmallEngines engines =
                new SmallEngines().named("Engine", "An invented engine of which this is said. ".repeat(3));
        for (int i = 1; i <= 8; i++) {
            engines.row(
                            "r" + i,
                            i % 3 == 0 ? RowKind.STATOR : RowKind.ROTOR,
                            9 + 4 * i,
                            i % 2 == 0 ? Direction.CW : Direction.CCW,
                            1 + i % 4,
                            i % 3 != 0,
                            List.of(ChordBand.LEADING, ChordBand.TRAILING))
                    .view("view-" + i, "r" + i, 40 * i, 6);
        }
        return engines.built();
    }

    private static Job begun() {
        return new Job(engine()).enter("view view-5", "datum r5 1", "turn 100", "nick 7 leading 1", "recheck 9 again");
    }

    private static ScreenMap map(Coverage coverage, String row, Facing facing, boolean turning, double w, double h) {
        return map(coverage, row, facing, turning, w, h, MapWords.ENGLISH);
    }

    private static ScreenMap map(
            Coverage coverage, String row, Facing facing, boolean turning, double w, double h, MapWords words) {
        MapStyle style = new MapStyle(MapStyle.PLAIN.theme(), facing);
        return ScreenMap.of(
                coverage, begun().facts(), new ScreenView(style, Optional.ofNullable(row), turning, w, h, FINE, words));
    }

    @ParameterizedTest(name = "{0}, {1}, turning {2}")
    @CsvSource({
        ",AFT_LOOKING_FORWARD,true",
        ",FORWARD_LOOKING_AFT,false",
        "r5,AFT_LOOKING_FORWARD,true",
        "r5,FORWARD_LOOKING_AFT,true",
        "r2,FORWARD_LOOKING_AFT,false"
    })
    void every_drawing_of_a_cell_is_found_at_its_middle_and_near_its_corners(
            String row, Facing facing, boolean turning) {
        ScreenMap map = map(begun().coverage(), row, facing, turning, 225, 170);
        List<Item> cells =
                map.scene().items().filter(item -> item.cell().isPresent()).toList();
        assertThat(cells).hasSizeGreaterThan(1000);
        for (Item item : cells) {
            Patch patch = (Patch) item.shape();
            Cell cell = item.cell().orElseThrow();
            assertThat(map.patches(cell)).contains(patch);
            for (double along : new double[] {0.001, 0.5, 0.999}) {
                for (double across : new double[] {0.001, 0.5, 0.999}) {
                    assertThat(map.cellAt(patch.at(along, across))).contains(cell);
                }
            }
        }
    }

    @Test
    void between_airfoils_and_beyond_the_rings_there_is_no_cell() {
        ScreenMap map = map(begun().coverage(), "r5", Facing.AFT_LOOKING_FORWARD, true, 225, 170);
        Patch first = map.patches(new Cell("r5", 1, 0)).get(0);
        Point centre = new Point(112.5, 85);
        assertThat(map.cellAt(centre)).isEmpty();
        assertThat(map.cellAt(new Point(0, 0))).isEmpty();
        // Numbers of this row rise counter-clockwise, and the first column of airfoil 1 is its most clockwise one.
        double pitch = 360.0 / 29;
        Patch whole = new Patch(first.frame(), 0, pitch, first.low(), first.high());
        long gaps = java.util.stream.IntStream.range(0, 2900)
                .filter(i -> map.cellAt(whole.at(29.0 * i / 2900, 0.5)).isEmpty())
                .count();
        assertThat(gaps / 2900.0).isBetween(0.05, 0.07);
    }

    @Test
    void one_changed_cell_leaves_the_groups_of_all_other_airfoils_the_same() {
        Job job = begun();
        ScreenView view = new ScreenView(MapStyle.PLAIN, Optional.of("r5"), true, 225, 170, FINE, MapWords.ENGLISH);
        ScreenMap before = ScreenMap.of(job.coverage(), job.facts(), view);
        ScreenMap after = before.after(
                job.enter("saw root/pressure/leading 20 photo a.jpg").coverage(), job.facts(), view);
        Map<Group, Boolean> known = new IdentityHashMap<>();
        before.scene().groups().forEach(group -> known.put(group, true));
        List<Group> anew = after.scene().groups().stream()
                .filter(group ->
                        group.items().stream().anyMatch(item -> item.cell().isPresent()))
                .filter(group -> !known.containsKey(group))
                .toList();
        assertThat(anew).hasSize(2);
        assertThat(anew)
                .allSatisfy(group -> assertThat(group.items())
                        .anyMatch(item -> item.cell().equals(Optional.of(new Cell("r5", 20, 0)))));
        assertThat(after.scene().groups())
                .isEqualTo(
                        ScreenMap.of(job.coverage(), job.facts(), view).scene().groups());
    }

    @Test
    void when_the_rotor_stays_airfoil_1_of_each_row_that_turns_is_on_top_and_vanes_stand_where_they_are() {
        Coverage coverage = begun().coverage();
        ScreenMap stays = map(coverage, "r5", Facing.AFT_LOOKING_FORWARD, false, 225, 170);
        ScreenMap turns = map(coverage, "r5", Facing.AFT_LOOKING_FORWARD, true, 225, 170);
        assertThat(stays.patches(new Cell("r5", 1, 0)))
                .allSatisfy(patch -> assertThat(patch.from() + patch.to()).isBetween(-20.0, 20.0));
        assertThat(turns.patches(new Cell("r5", 1, 0)))
                .noneSatisfy(patch -> assertThat(patch.from() + patch.to()).isBetween(-20.0, 20.0));
        assertThat(stays.patches(new Cell("r3", 4, 1)).get(0).from())
                .isEqualTo(turns.patches(new Cell("r3", 4, 1)).get(0).from());
    }

    @ParameterizedTest(name = "{1} by {2} mm, {0}, {3}")
    @CsvSource({
        "r5,170,140,en",
        "r5,170,140,de",
        ",170,140,en",
        "r5,225,170,de",
        "r8,338,211,en",
        "r8,338,211,de",
        ",338,211,en",
        "r5,150,260,de"
    })
    void no_words_leave_the_sheet_and_the_cards_in_the_corners_leave_the_rings_free(
            String row, double width, double height, Locale language) {
        ScreenMap map =
                map(begun().coverage(), row, Facing.AFT_LOOKING_FORWARD, true, width, height, MapWords.of(language));
        List<Text> texts = new ArrayList<>();
        map.margin()
                .items()
                .map(Item::shape)
                .filter(Text.class::isInstance)
                .map(Text.class::cast)
                .forEach(texts::add);
        assertThat(texts).hasSizeGreaterThan(12);
        for (Text text : texts) {
            double length =
                    FONT.deriveFont(100f).getStringBounds(text.words(), EXACT).getWidth() * text.size() / 100;
            double left = text.at().x() - text.anchor().share() * length;
            assertThat(left).as(text.words()).isGreaterThan(0);
            assertThat(left + length).as(text.words()).isLessThan(width);
            assertThat(text.at().y()).as(text.words()).isBetween(text.size() * 0.7, height);
            for (double share : new double[] {0, 0.5, 1}) {
                assertThat(map.covers(text.at().plus((share - text.anchor().share()) * length, -0.1)))
                        .as(text.words())
                        .isTrue();
            }
        }
        map.scene()
                .items()
                .filter(item -> item.cell().isPresent())
                .map(item -> (Patch) item.shape())
                .forEach(patch -> assertThat(map.covers(patch.at(0.5, 1))).isFalse());
    }
}
