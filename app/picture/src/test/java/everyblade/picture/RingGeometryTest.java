package everyblade.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.coverage.RowCoverage;
import everyblade.picture.scene.Cell;
import everyblade.picture.scene.DrawnShape.Patch;
import everyblade.picture.scene.Item;
import everyblade.picture.scene.Point;
import everyblade.picture.scene.Scene;
import everyblade.spi.Direction;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class RingGeometryTest {

    private static Set<Cell> cells(RowCoverage row) {
        List<Cell> cells = new ArrayList<>();
        for (int n = 1; n <= row.row().count(); n++) {
            for (int zone = 0; zone < row.zoning().size(); zone++) {
                cells.add(new Cell(row.row().id(), n, zone));
            }
        }
        return Set.copyOf(cells);
    }

    private static double area(Patch patch) {
        double low = patch.low();
        double high = patch.high();
        return Math.toRadians(patch.to() - patch.from()) * (high * high - low * low) / 2;
    }

    @Nested
    class Cells {

        @ParameterizedTest
        @ValueSource(strings = {"larkspur-4", "corncrake-12", "tansy-a1"})
        void each_is_drawn_exactly_once_on_the_map_of_all_rows(String model) {
            Job job = Job.on(model);
            List<Cell> drawn = Scenes.cells(Scenes.of(job), true).stream()
                    .map(item -> item.cell().orElseThrow())
                    .toList();
            Set<Cell> all = job.coverage().rows().stream()
                    .flatMap(row -> cells(row).stream())
                    .collect(Collectors.toSet());
            assertThat(drawn).hasSameSizeAs(all);
            assertThat(Set.copyOf(drawn)).isEqualTo(all);
        }

        @ParameterizedTest
        @ValueSource(strings = {"c1", "comb", "pt"})
        void each_is_drawn_once_in_the_ring_and_once_in_the_strip_of_its_row(String row) {
            Job job = Job.on("larkspur-4");
            Set<Cell> all = cells(job.coverage().row(row));
            for (boolean ring : new boolean[] {true, false}) {
                List<Cell> drawn = Scenes.cells(Scenes.of(job, row), ring).stream()
                        .map(item -> item.cell().orElseThrow())
                        .toList();
                assertThat(drawn).hasSameSizeAs(all);
                assertThat(Set.copyOf(drawn)).isEqualTo(all);
            }
        }

        @Test
        void of_one_airfoil_fill_its_sector_and_those_of_one_ring_share_it_evenly() {
            SplittableRandom random = new SplittableRandom(4);
            for (int trial = 0; trial < 12; trial++) {
                int count = random.nextInt(1, 121);
                int spans = random.nextInt(1, 11);
                Job job = new Job(SmallEngines.divided(count, spans));
                Scene scene = Scenes.of(job);
                Map<Integer, Double> areas = new HashMap<>();
                for (Item item : Scenes.cells(scene, true)) {
                    areas.merge(item.cell().orElseThrow().airfoil(), area(Scenes.patch(item)), Double::sum);
                }
                double low = Scenes.cells(scene, true).stream()
                        .mapToDouble(item -> Scenes.patch(item).low())
                        .min()
                        .orElseThrow();
                double high = Scenes.cells(scene, true).stream()
                        .mapToDouble(item -> Scenes.patch(item).high())
                        .max()
                        .orElseThrow();
                double gap = Math.min(MapRing.GAP * 360 / count, MapRing.GAP_MOST);
                double ring = Math.PI * (high * high - low * low) * (1 - count * gap / 360);
                assertThat(areas.values())
                        .hasSize(count)
                        .allSatisfy(area -> assertThat(area).isCloseTo(ring / count, within(1e-6)));
            }
        }

        @Test
        void of_one_ring_never_overlap() {
            SplittableRandom random = new SplittableRandom(5);
            List<Item> items = Scenes.cells(Scenes.of(Jobs.larkspur()), true);
            Map<String, List<Patch>> byRow = items.stream()
                    .collect(Collectors.groupingBy(
                            item -> item.cell().orElseThrow().row(),
                            Collectors.mapping(Scenes::patch, Collectors.toList())));
            byRow.forEach((row, patches) -> {
                for (int trial = 0; trial < 200; trial++) {
                    Patch any = patches.get(random.nextInt(patches.size()));
                    double along = any.from() + random.nextDouble(0.01, 0.99) * (any.to() - any.from());
                    double across = any.low() + random.nextDouble(0.01, 0.99) * any.height();
                    assertThat(patches.stream()
                                    .filter(patch -> patch.low() < across && across < patch.high())
                                    .filter(patch ->
                                            CurvedText.wrapped(along - patch.from()) < patch.to() - patch.from()))
                            .as(row)
                            .containsExactly(any);
                }
            });
        }
    }

    @Nested
    class Airfoils {

        private double middle(Patch patch) {
            return (patch.from() + patch.to()) / 2;
        }

        @ParameterizedTest
        @EnumSource(Direction.class)
        void stand_where_the_count_says(Direction numbering) {
            SplittableRandom random = new SplittableRandom(6);
            for (int trial = 0; trial < 40; trial++) {
                int count = random.nextInt(2, 121);
                int known = random.nextInt(1, count + 1);
                int reference = random.nextInt(360);
                int turned = random.nextInt(-300, 300);
                Job job = new Job(SmallEngines.rotor(count, numbering, reference))
                        .enter("view v", "datum c1 " + known, "skip " + turned);
                Scene scene = Scenes.of(job);
                int n = random.nextInt(1, count + 1);
                double sign = numbering == Direction.CW ? 1 : -1;
                double expected = reference + sign * (n - known) * 360.0 / count + turned;
                assertThat(CurvedText.apart(middle(Scenes.patch(scene, "c1", n, 0)), expected))
                        .isLessThan(1e-5);
            }
        }

        @Test
        void of_a_row_that_was_never_identified_begin_at_12_o_clock_and_the_ring_says_so() {
            Scene scene = Scenes.of(new Job(SmallEngines.rotor(20, Direction.CW, 90)), "c1");
            assertThat(CurvedText.apart(middle(Scenes.patch(scene, "c1", 1, 0)), 0))
                    .isLessThan(1e-9);
            assertThat(Scenes.words(scene)).contains("no datum");
        }

        @Test
        void may_stand_anywhere_after_a_slip_and_the_ring_says_so() {
            Job job = new Job(SmallEngines.rotor(20, Direction.CW, 90)).enter("view v", "datum c1 1", "slip");
            assertThat(Scenes.words(Scenes.of(job, "c1"))).contains("place not known");
        }

        @Test
        void of_a_static_row_stay_while_the_scope_tip_is_drawn_round() {
            Job job = Job.on("larkspur-4").enter("heat 20 C", "view p1-s1", "datum s1 1");
            double before = Scenes.patch(Scenes.of(job, "s1"), "s1", 1, 0).to();
            job.enter("draw 130");
            double after = Scenes.patch(Scenes.of(job, "s1"), "s1", 1, 0).to();
            // The pressure side's leading zone ends in the middle of the airfoil, which stands at the view's reference.
            assertThat(before).isCloseTo(112, within(1e-6));
            assertThat(CurvedText.apart(after, before)).isLessThan(1e-6);
        }
    }

    @Nested
    class Seen_from_ahead {

        private final MapStyle ahead = new MapStyle(MapStyle.PLAIN.theme(), Facing.FORWARD_LOOKING_AFT);

        @Test
        void every_cell_is_mirrored_about_the_axis_of_its_wheel() {
            Job job = Jobs.tansy();
            List<Item> aft = Scenes.cells(Scenes.of(job), true);
            List<Item> fore = Scenes.cells(MapScene.of(job.coverage(), job.facts(), Optional.empty(), ahead), true);
            for (int i = 0; i < aft.size(); i++) {
                Point centre = ((everyblade.picture.scene.Polar)
                                Scenes.patch(aft.get(i)).frame())
                        .centre();
                Point one = Scenes.patch(aft.get(i)).middle();
                Point other = Scenes.patch(fore.get(i)).middle();
                assertThat(other.x() - centre.x()).isCloseTo(centre.x() - one.x(), within(1e-9));
                assertThat(other.y()).isCloseTo(one.y(), within(1e-9));
            }
        }

        @Test
        void words_are_written_as_ever_and_name_the_direction_of_view() {
            Job job = Jobs.tansy();
            Scene scene = MapScene.of(job.coverage(), job.facts(), Optional.of("t"), ahead);
            assertThat(Scenes.words(scene)).contains("seen from ahead looking aft");
            assertThat(Scenes.texts(scene))
                    .allSatisfy(text -> assertThat(Math.abs(CurvedText.wrapped(text.angle() + 180) - 180))
                            .isLessThanOrEqualTo(110));
        }
    }
}
