package everyblade.picture.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.syntax.ArchRuleDefinition;
import everyblade.picture.scene.DrawnShape;
import everyblade.picture.scene.Group;
import everyblade.picture.scene.Item;
import everyblade.picture.scene.Point;
import everyblade.picture.scene.Scene;
import everyblade.picture.scene.Theme;
import everyblade.picture.svg.SvgWriter;
import everyblade.spi.EngineModel;
import everyblade.words.Words;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ModelSheetTest {

    private static final EngineModel COUNTS = Models.of("""
            { "schema": "everyblade/engine-model/1", "id": "c", "name": "Counts",
              "rows": [ { "id": "r1", "kind": "rotor", "count": 23, "numbering": "ccw", "phase": 30,
                          "landmarks": [{ "airfoil": 5, "what": "etched" }] },
                        { "id": "s1", "kind": "stator", "count": 90 } ],
              "ports": [ { "id": "p1", "clock": 100 } ],
              "views": [ { "id": "v", "row": "r1", "port": "p1", "window": { "halfWidth": 4, "shows": ["all"] } } ] }
            """);

    private static Scene sheet(EngineModel model, String... row) {
        return ModelSheet.of(model, Stream.of(row).findFirst(), Map.of(), Words.of(Locale.ENGLISH));
    }

    private static List<String> words(Scene scene) {
        return scene.items()
                .filter(item -> item.shape() instanceof DrawnShape.Text)
                .map(item -> ((DrawnShape.Text) item.shape()).words())
                .toList();
    }

    private static List<Group> titled(Scene scene, String start) {
        return scene.groups().stream()
                .filter(group -> group.title().startsWith(start))
                .toList();
    }

    private static Stream<Point> points(Item item) {
        DrawnShape shape = item.shape();
        if (shape instanceof DrawnShape.Strokes strokes) {
            return strokes.lines().stream().flatMap(List::stream);
        } else if (shape instanceof DrawnShape.Polygon polygon) {
            return polygon.corners().stream();
        } else if (shape instanceof DrawnShape.Dots dots) {
            return dots.centres().stream();
        } else if (shape instanceof DrawnShape.Text text) {
            return Stream.of(text.at());
        } else {
            return Stream.of(((DrawnShape.Patch) shape).middle());
        }
    }

    @Nested
    class A_model_with_shapes {

        private final Scene scene = sheet(Models.rotor37());

        @Test
        void shows_walls_rows_ports_and_stations_by_name() {
            assertThat(scene.groups())
                    .extracting(Group::title)
                    .contains(
                            "wall hub",
                            "wall casing",
                            "Rotor 37 (r37), rotor of 36",
                            "port p1, Plug ahead of the rotor",
                            "station mid of view p1-r37, looks at r37");
            assertThat(words(scene)).contains("r37 · 36", "p1 · 90°", "pitch 37.5 mm");
        }

        @Test
        void shows_every_blade_of_the_row_from_aft() {
            assertThat(titled(scene, "blade ")).hasSize(36);
        }

        @Test
        void puts_a_station_where_it_stands_between_the_walls() {
            double hub = height("wall hub");
            double casing = height("wall casing");
            double station = height("station mid");

            assertThat((hub - station) / (hub - casing)).isCloseTo((225 - 177.8) / (252.5 - 177.8), within(1e-3));
        }

        private double height(String title) {
            List<Item> items = titled(scene, title).get(0).items();
            return points(items.get(items.size() - 1)).findFirst().orElseThrow().y();
        }

        @Test
        void draws_nothing_outside_the_sheet() {
            assertThat(scene.items().flatMap(ModelSheetTest::points)).allSatisfy(point -> {
                assertThat(point.x()).isBetween(0.0, scene.width());
                assertThat(point.y()).isBetween(0.0, scene.height());
            });
        }

        @Test
        void says_where_the_axis_is_if_it_is_not_shown() {
            assertThat(words(scene)).contains("the axis lies 178 mm below the lower edge");
        }
    }

    @Nested
    class A_model_of_counts {

        private final Scene scene = sheet(COUNTS);

        @Test
        void shows_its_rows_in_order_and_says_so() {
            assertThat(words(scene))
                    .contains("r1 · 23", "s1 · 90")
                    .anyMatch(words -> words.contains("they stand in order"))
                    .anyMatch(words -> words.startsWith("No sections: "));
        }

        @Test
        void counts_airfoils_from_the_phase_and_in_the_direction_that_it_states() {
            Point middle = middle(titled(scene, "clock angles").get(0));
            for (int blade = 1; blade <= 23; blade++) {
                Point at = middle(titled(scene, "blade " + blade).stream()
                        .filter(group -> group.title().matches("blade [0-9]+"))
                        .findFirst()
                        .orElseThrow());
                double clock = Math.toDegrees(Math.atan2(at.x() - middle.x(), middle.y() - at.y()));
                double expected = 30 - (blade - 1) * 360.0 / 23;
                assertThat(Math.IEEEremainder(clock - expected, 360)).isCloseTo(0, within(0.01));
            }
        }

        private Point middle(Group group) {
            List<Point> points = points(group.items().get(0)).toList();
            if (group.items().get(0).shape() instanceof DrawnShape.Patch patch) {
                return ((everyblade.picture.scene.Polar) patch.frame()).centre();
            }
            return new Point(
                    points.stream().mapToDouble(Point::x).average().orElseThrow(),
                    points.stream().mapToDouble(Point::y).average().orElseThrow());
        }

        @Test
        void numbers_the_landmark_and_the_first_airfoil_however_many_there_are() {
            assertThat(words(scene)).contains("1", "5");
            assertThat(words(sheet(COUNTS, "s1"))).contains("1").doesNotContain("2");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"de-DE", "tr-TR", "ar-EG-u-nu-arab"})
    void is_the_same_in_every_locale(String locale) {
        String usual = SvgWriter.write(sheet(Models.rotor37()), Theme.LIGHT);
        Locale before = Locale.getDefault();
        Locale.setDefault(Locale.forLanguageTag(locale));
        try {
            assertThat(SvgWriter.write(sheet(Models.rotor37()), Theme.LIGHT)).isEqualTo(usual);
        } finally {
            Locale.setDefault(before);
        }
    }

    @Nested
    class Labels_in_a_line {

        private final SplittableRandom random = new SplittableRandom(7);

        @Test
        void stand_where_they_want_to_if_there_is_room() {
            assertThat(Labels.spread(List.of(10.0, 40.0, 25.0), 5, 0, 100)).containsExactly(10.0, 40.0, 25.0);
        }

        @Test
        void keep_their_order_and_their_distance_and_stay_within_the_ends() {
            for (int round = 0; round < 500; round++) {
                List<Double> wanted = IntStream.range(0, 1 + random.nextInt(20))
                        .mapToObj(i -> random.nextDouble(100))
                        .toList();
                List<Double> placed = Labels.spread(wanted, 4, 0, 100);
                List<Integer> order = IntStream.range(0, wanted.size())
                        .boxed()
                        .sorted(java.util.Comparator.comparingDouble(wanted::get))
                        .toList();
                for (int i = 1; i < order.size(); i++) {
                    assertThat(placed.get(order.get(i)) - placed.get(order.get(i - 1)))
                            .isGreaterThan(4 - 1e-9);
                }
                assertThat(placed).allSatisfy(place -> assertThat(place).isBetween(-1e-9, 100 + 1e-9));
            }
        }
    }

    @Test
    void is_made_without_awt_files_or_a_clock() {
        ArchRuleDefinition.noClasses()
                .that()
                .resideInAPackage("everyblade.picture.section")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.awt..", "javax..", "java.nio.file..", "java.time..")
                .because("the same model gives the same scene everywhere")
                .check(new ClassFileImporter()
                        .withImportOption(new ImportOption.DoNotIncludeTests())
                        .importPackages("everyblade.picture.section"));
    }

    @Test
    void takes_the_row_that_is_asked_for() {
        assertThat(words(sheet(COUNTS, "s1"))).anyMatch(words -> words.startsWith("s1 (s1), stator of 90"));
        assertThat(ModelSheet.of(COUNTS, Optional.of("none"), Map.of(), Words.of(Locale.ENGLISH))
                        .summary())
                .contains("r1 (r1)");
    }
}
