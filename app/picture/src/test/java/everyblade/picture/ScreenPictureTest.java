package everyblade.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import everyblade.picture.paint.SceneFont;
import everyblade.picture.scene.Cell;
import everyblade.picture.scene.DrawnShape.Patch;
import everyblade.picture.scene.DrawnShape.Polygon;
import everyblade.picture.scene.DrawnShape.Text;
import everyblade.picture.scene.Group;
import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Item;
import everyblade.picture.scene.Point;
import everyblade.picture.scene.Polar;
import everyblade.spi.ChordBand;
import everyblade.spi.Direction;
import everyblade.spi.EngineModel;
import everyblade.spi.RowKind;
import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class ScreenPictureTest {

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

    private static ScreenView view(Facing facing, String chosen, double width, double height, MapWords words) {
        return new ScreenView(
                new MapStyle(MapStyle.PLAIN.theme(), facing),
                Optional.ofNullable(chosen),
                width,
                height,
                FINE,
                words,
                true,
                true);
    }

    private static ScreenPicture picture(ScreenKind kind, Facing facing, String chosen) {
        return ScreenPicture.of(kind, begun().coverage(), view(facing, chosen, 125, 150, MapWords.of(Locale.ENGLISH)));
    }

    @ParameterizedTest
    @CsvSource({
        "RINGS,AFT_LOOKING_FORWARD,",
        "RINGS,FORWARD_LOOKING_AFT,r2",
        "STRIPS,AFT_LOOKING_FORWARD,",
        "STRIPS,AFT_LOOKING_FORWARD,r4",
        "ROW,AFT_LOOKING_FORWARD,",
        "ROW,AFT_LOOKING_FORWARD,r4",
        "WHEEL,AFT_LOOKING_FORWARD,",
        "WHEEL,FORWARD_LOOKING_AFT,r5"
    })
    void every_cell_is_drawn_once_and_found_at_its_middle_and_near_its_corners(
            ScreenKind kind, Facing facing, String chosen) {
        ScreenPicture picture = picture(kind, facing, chosen);
        List<Item> cells =
                picture.scene().items().filter(item -> item.cell().isPresent()).toList();
        assertThat(cells.stream().map(item -> item.cell().get()).distinct())
                .hasSameSizeAs(cells)
                .hasSizeGreaterThan(kind == ScreenKind.WHEEL || kind == ScreenKind.ROW ? 50 : 500);
        for (Item item : cells) {
            Patch patch = (Patch) item.shape();
            Cell cell = item.cell().orElseThrow();
            assertThat(picture.patch(cell)).contains(patch);
            for (double along : new double[] {0.001, 0.5, 0.999}) {
                for (double across : new double[] {0.001, 0.5, 0.999}) {
                    assertThat(picture.cellAt(patch.at(along, across))).contains(cell);
                }
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"RINGS", "STRIPS", "WHEEL"})
    void tells_nobody_how_much_is_seen_who_is_not_to_know_yet(ScreenKind kind) {
        ScreenView all = view(Facing.AFT_LOOKING_FORWARD, "r4", 125, 150, MapWords.of(Locale.ENGLISH));
        ScreenView blind = new ScreenView(
                all.style(), all.chosen(), all.width(), all.height(), all.fine(), all.words(), false, true);
        assertThat(told(ScreenPicture.of(kind, begun().coverage(), all))).contains("%");
        assertThat(told(ScreenPicture.of(kind, begun().coverage(), blind))).doesNotContain("%", "not begun");
    }

    private static String told(ScreenPicture picture) {
        return picture.scene().summary()
                + picture.scene()
                        .items()
                        .filter(item -> item.shape() instanceof Text)
                        .map(item -> ((Text) item.shape()).words())
                        .toList();
    }

    @Test
    void between_airfoils_and_beyond_the_rings_there_is_no_cell() {
        ScreenPicture picture = picture(ScreenKind.RINGS, Facing.AFT_LOOKING_FORWARD, "r5");
        Patch first = picture.patch(new Cell("r5", 1, 0)).orElseThrow();
        assertThat(picture.cellAt(((Polar) first.frame()).centre())).isEmpty();
        assertThat(picture.cellAt(new Point(0, 0))).isEmpty();
        double pitch = 360.0 / 29;
        Patch whole = new Patch(first.frame(), 0, pitch, first.low(), first.high());
        long gaps = java.util.stream.IntStream.range(0, 2900)
                .filter(i -> picture.cellAt(whole.at(29.0 * i / 2900, 0.5)).isEmpty())
                .count();
        assertThat(gaps / 2900.0).isBetween(0.05, 0.07);
    }

    /** Eight rows of 13 to 41 airfoils in about the room that the window has for them at 1280 by 800. */
    @Test
    void all_rings_are_equally_deep_and_each_blade_stands_where_it_stands_now() {
        ScreenPicture picture = picture(ScreenKind.RINGS, Facing.AFT_LOOKING_FORWARD, null);
        List<Double> depths = java.util.stream.IntStream.rangeClosed(1, 8)
                .mapToObj(row -> row(picture, "r" + row))
                .toList();
        assertThat(depths).allSatisfy(depth -> assertThat(depth).isEqualTo(depths.get(0), within(1e-9)));

        Patch atTip = picture.patch(new Cell(
                        "r5",
                        begun().coverage()
                                .situation()
                                .airfoilAtReference(seat())
                                .orElseThrow(),
                        0))
                .orElseThrow();
        double off = Math.IEEEremainder((atTip.from() + atTip.to()) / 2 - 200, 360);
        assertThat(Math.abs(off)).isLessThan(360.0 / 29 / 2 + 1e-6);
    }

    private static everyblade.core.turning.Seat seat() {
        return begun().coverage().situation().seat().orElseThrow();
    }

    private static double row(ScreenPicture picture, String row) {
        double low = Double.MAX_VALUE;
        double high = 0;
        for (Item item : picture.scene().items().toList()) {
            if (item.cell().filter(cell -> cell.row().equals(row)).isPresent()) {
                low = Math.min(low, ((Patch) item.shape()).low());
                high = Math.max(high, ((Patch) item.shape()).high());
            }
        }
        return high - low;
    }

    @ParameterizedTest
    @EnumSource(ScreenKind.class)
    void one_changed_cell_leaves_the_groups_of_all_other_airfoils_the_same(ScreenKind kind) {
        Job job = begun();
        ScreenView view = view(Facing.AFT_LOOKING_FORWARD, "r5", 125, 150, MapWords.of(Locale.ENGLISH));
        ScreenPicture before = ScreenPicture.of(kind, job.coverage(), view);
        ScreenPicture after = before.after(
                kind, job.enter("saw root/pressure/leading 20 photo a.jpg").coverage(), view);
        Map<Group, Boolean> known = new IdentityHashMap<>();
        before.scene().groups().forEach(group -> known.put(group, true));
        List<Group> anew = after.scene().groups().stream()
                .filter(group ->
                        group.items().stream().anyMatch(item -> item.cell().isPresent()))
                .filter(group -> !known.containsKey(group))
                .toList();
        assertThat(anew)
                .singleElement()
                .satisfies(group -> assertThat(group.items())
                        .anyMatch(item -> item.cell().equals(Optional.of(new Cell("r5", 20, 0)))));
        assertThat(after.scene().groups())
                .isEqualTo(ScreenPicture.of(kind, job.coverage(), view).scene().groups());
    }

    @Test
    void what_is_damaged_has_one_sign_over_its_state_in_every_layout() {
        for (ScreenKind kind : ScreenKind.values()) {
            ScreenPicture picture = picture(kind, Facing.AFT_LOOKING_FORWARD, "r5");
            Point middle = picture.patch(new Cell("r5", 7, 0)).orElseThrow().middle();
            List<Item> signs = picture.scene()
                    .items()
                    .filter(item -> item.shape() instanceof Polygon lozenge
                            && item.style().fill().equals(Optional.of(Ink.ALERT))
                            && Math.hypot(
                                            lozenge.corners().get(0).x() - middle.x(),
                                            lozenge.corners().get(2).y() - middle.y())
                                    < 2)
                    .toList();
            assertThat(signs).as(kind.name()).hasSize(1);
        }
    }

    @Test
    void a_row_alone_has_the_sign_of_each_finding_beside_its_cell() {
        ScreenPicture picture = picture(ScreenKind.ROW, Facing.AFT_LOOKING_FORWARD, "r5");
        Point middle = picture.patch(new Cell("r5", 7, 0)).orElseThrow().middle();

        assertThat(picture.scene()
                        .items()
                        .map(Item::shape)
                        .filter(Text.class::isInstance)
                        .map(Text.class::cast)
                        .filter(text -> text.words().matches("F\\d+")))
                .singleElement()
                .satisfies(text -> assertThat(
                                Math.hypot(text.at().x() - middle.x(), text.at().y() - middle.y()))
                        .isLessThan(6));
        assertThat(picture.patch(new Cell("r4", 1, 0))).isEmpty();
    }

    private static ScreenPicture rings(int rows, double width, double height) {
        SmallEngines engines = new SmallEngines();
        for (int i = 1; i <= rows; i++) {
            engines.row("r" + i, i % 2 == 0 ? RowKind.STATOR : RowKind.ROTOR, 20, Direction.CW, 1, false, List.of());
        }
        return ScreenPicture.of(
                ScreenKind.RINGS,
                new Job(engines.built()).coverage(),
                view(Facing.AFT_LOOKING_FORWARD, null, width, height, MapWords.of(Locale.ENGLISH)));
    }

    private static List<Point> wheels(ScreenPicture picture) {
        return picture.scene()
                .items()
                .filter(item -> item.cell().isPresent())
                .map(item -> ((Polar) ((Patch) item.shape()).frame()).centre())
                .distinct()
                .toList();
    }

    @ParameterizedTest
    @CsvSource({"164,100", "125,150", "400,300"})
    void thirty_rows_are_a_wheel_of_those_that_turn_and_one_of_those_that_stand(double width, double height) {
        ScreenPicture picture = rings(30, width, height);
        assertThat(wheels(picture)).hasSize(2);
        assertThat(Scenes.words(picture.scene())).contains("turning", "standing");
        assertThat(((Polar) picture.patch(new Cell("r1", 1, 0)).orElseThrow().frame()).centre())
                .isEqualTo(wheels(picture).get(0));
    }

    @Test
    void twenty_rows_are_one_wheel() {
        assertThat(wheels(rings(20, 125, 150))).hasSize(1);
    }

    @ParameterizedTest
    @CsvSource({
        "RINGS,122,148,en",
        "RINGS,122,148,de",
        "RINGS,300,200,en",
        "STRIPS,122,148,de",
        "STRIPS,165,148,en",
        "STRIPS,300,200,de",
        "ROW,210,50,de",
        "ROW,120,40,en",
        "WHEEL,76,76,en",
        "WHEEL,76,76,de",
        "WHEEL,50,50,en",
        "WHEEL,50,50,de",
        "WHEEL,120,90,en"
    })
    void no_words_leave_the_sheet(ScreenKind kind, double width, double height, Locale language) {
        ScreenPicture picture = ScreenPicture.of(
                kind, begun().coverage(), view(Facing.AFT_LOOKING_FORWARD, "r5", width, height, MapWords.of(language)));
        List<Text> texts = picture.scene()
                .items()
                .map(Item::shape)
                .filter(Text.class::isInstance)
                .map(Text.class::cast)
                .filter(text -> text.angle() == 0)
                .toList();
        assertThat(texts).hasSizeGreaterThan(6);
        for (Text text : texts) {
            double length =
                    FONT.deriveFont(100f).getStringBounds(text.words(), EXACT).getWidth() * text.size() / 100;
            double left = text.at().x() - text.anchor().share() * length;
            assertThat(left).as(text.words()).isGreaterThanOrEqualTo(0);
            assertThat(left + length).as(text.words()).isLessThanOrEqualTo(width);
            assertThat(text.at().y()).as(text.words()).isBetween(text.size() * 0.6, height);
        }
    }
}
