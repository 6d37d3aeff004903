package everyblade.core.check;

import static everyblade.core.check.CheckedModel.at;
import static everyblade.core.check.CheckedModel.plate;
import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.English;
import everyblade.spi.MeridionalPoint;
import everyblade.spi.Shape;
import everyblade.spi.Station;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ModelCheckTest {

    private static Shape.Radial impeller(double shroudAtExit, OptionalDouble splitterFrom) {
        return new Shape.Radial(
                points(0, 40, 40, 60, 50, 120),
                points(0, 80, 25, 90, shroudAtExit, 120),
                List.of(new Shape.WrapPoint(0, 0), new Shape.WrapPoint(1, -40)),
                List.of(new Shape.WrapPoint(0, 0), new Shape.WrapPoint(1, -44)),
                2,
                1,
                splitterFrom);
    }

    private static List<MeridionalPoint> points(double... xr) {
        return java.util.stream.IntStream.range(0, xr.length / 2)
                .mapToObj(i -> new MeridionalPoint(xr[2 * i], xr[2 * i + 1]))
                .toList();
    }

    @Test
    void finds_nothing_wrong_with_a_sound_stage() {
        CheckedModel stage = new CheckedModel()
                .rotor("r", 24, plate(0, 40, 0.1))
                .stator("s", 30, plate(60, -10, 0.1))
                .view("r", at(-20, 125, 1));

        assertThat(stage.flaws()).isEmpty();
        assertThat(stage.blindness()).isEmpty();
    }

    @Nested
    class Neighbours {

        /** Plates 4 mm thick at a radius of 100 mm touch where the pitch is 4 mm: at 2π · 100 / 4 = 157.1 of them. */
        @ParameterizedTest
        @CsvSource({"150, false", "165, true"})
        void cut_each_other_once_their_pitch_is_less_than_they_are_thick(int count, boolean cut) {
            List<Flaw.Kind> kinds =
                    new CheckedModel().rotor("r", count, plate(0, 0, 0.1)).kinds();

            assertThat(kinds.contains(Flaw.Kind.BLADES_CUT)).isEqualTo(cut);
        }

        @Test
        void may_cut_each_other_at_a_position_only() {
            CheckedModel vanes = new CheckedModel().vanes("v", 40, plate(0, 10, 0.1), "shut", 78);

            assertThat(vanes.flaws()).singleElement().satisfies(flaw -> {
                assertThat(flaw.kind()).isEqualTo(Flaw.Kind.VANES_CUT);
                assertThat(flaw.part()).isEqualTo(new CheckedPart.PositionOf(0, "shut"));
                assertThat(flaw.kind().refuses()).isFalse();
            });
        }
    }

    @Nested
    class Ring_mates {

        @ParameterizedTest
        @CsvSource({"0.5, false", "0.03, true", "-0.97, true", "-0.5, false"})
        void cut_each_other_where_one_stands_too_close_beside_the_other(double offset, boolean cut) {
            List<Flaw.Kind> kinds = new CheckedModel()
                    .inRing("full", 12, 0, impeller(40, OptionalDouble.empty()))
                    .inRing("split", 12, offset, impeller(40, OptionalDouble.of(0.4)))
                    .wall("hub", -500, 10, 500, 10)
                    .wall("casing", -500, 200, 500, 200)
                    .kinds();

            assertThat(kinds).isEqualTo(cut ? List.of(Flaw.Kind.RING_MATES_CUT) : List.of());
        }
    }

    @Nested
    class Rows {

        @ParameterizedTest
        @CsvSource({"39.9, true", "40.1, false"})
        void cut_each_other_if_one_stands_in_what_the_other_sweeps(double x, boolean cut) {
            List<Flaw> flaws = new CheckedModel()
                    .rotor("r", 20, plate(0, 0, 0.1))
                    .stator("s", 20, plate(x, 0, 0.1))
                    .flaws();

            assertThat(flaws).extracting(Flaw::kind).isEqualTo(cut ? List.of(Flaw.Kind.ROWS_CUT) : List.of());
            assertThat(flaws).extracting(Flaw::part).allMatch(new CheckedPart.ShapeOf(1)::equals);
        }

        @Test
        void that_stand_still_may_reach_between_each_other() {
            assertThat(new CheckedModel()
                            .stator("a", 20, plate(0, 0, 0.1))
                            .stator("b", 20, plate(20, 0, 0.1))
                            .kinds())
                    .isEmpty();
        }
    }

    @Nested
    class A_wall {

        @Test
        void is_cut_by_a_blade_that_reaches_beyond_it() {
            CheckedModel model = new CheckedModel()
                    .rotor("imp", 12, impeller(35, OptionalDouble.empty()))
                    .wall("hub", 0, 40, 40, 60, 50, 120)
                    .wall("casing", 0, 80.5, 24.5, 85, 34, 120);

            assertThat(model.flaws())
                    .singleElement()
                    .satisfies(flaw -> assertThat(English.say(flaw.what()))
                            .isEqualTo("the row imp passes through the wall casing"));
        }

        @Test
        void may_be_met_exactly_by_a_root_and_be_drawn_with_other_points() {
            assertThat(new CheckedModel()
                            .rotor("imp", 12, impeller(35, OptionalDouble.empty()))
                            .wall("hub", 0, 40, 20, 50, 40, 60, 45, 90, 50, 120)
                            .wall("casing", 0, 80.5, 24.5, 90.4, 34.4, 120)
                            .kinds())
                    .isEmpty();
        }

        @Test
        void that_leaves_no_room_is_told_with_the_place() {
            assertThat(new CheckedModel()
                            .wall("casing", -500, 100.4, 500, 100.4)
                            .rotor("r", 20, plate(0, 0, 0.1))
                            .flaws())
                    .singleElement()
                    .satisfies(flaw -> {
                        assertThat(flaw.kind()).isEqualTo(Flaw.Kind.NO_SURFACE);
                        assertThat(English.say(flaw.why()))
                                .startsWith("at x = ")
                                .contains("leaves no room");
                        assertThat(English.say(flaw.mend())).isEqualTo("correct the walls or the sections' x");
                    });
        }
    }

    @Nested
    class A_station {

        @ParameterizedTest
        @CsvSource({"125, false", "101.9, false", "101.7, true", "148.6, false", "148.8, true", "99, true", "160, true"
        })
        void needs_room_for_the_scope_tip_between_the_walls(double r, boolean outside) {
            List<Flaw.Kind> kinds = new CheckedModel()
                    .rotor("r", 20, plate(0, 0, 0.1))
                    .view("r", at(-20, r, 1))
                    .kinds();

            assertThat(kinds).isEqualTo(outside ? List.of(Flaw.Kind.STATION_OUTSIDE_WALLS) : List.of());
        }

        /**
         * Twenty plates 0.8 mm thick leave between them, at a radius of 125 mm, a ball of radius 125 · sin 9° − 0.4 =
         * 19.15 mm.
         */
        @ParameterizedTest
        @CsvSource({"37.8, false", "38.8, true"})
        void needs_room_between_two_airfoils_however_they_stand(double diameter, boolean in) {
            List<Flaw.Kind> kinds = new CheckedModel()
                    .rotor("r", 20, plate(0, 0, 0.02))
                    .scopeTip(diameter)
                    .view("r", at(12, 125, 1))
                    .kinds();

            assertThat(kinds).isEqualTo(in ? List.of(Flaw.Kind.STATION_IN_BLADES) : List.of());
        }

        @ParameterizedTest
        @CsvSource({"-20, in the opening of its port", "-24, there is metal"})
        void in_the_opening_of_its_port_is_told_to_stand_where_that_ends(double x, String why) {
            assertThat(new CheckedModel()
                            .rotor("r", 20, plate(0, 0, 0.1))
                            .port(-20, 6)
                            .view("r", at(x, 156, 1))
                            .flaws())
                    .singleElement()
                    .satisfies(flaw -> {
                        assertThat(flaw.kind()).isEqualTo(Flaw.Kind.STATION_OUTSIDE_WALLS);
                        assertThat(English.say(flaw.why())).contains(why);
                    });
        }

        @Test
        void ahead_of_the_walls_is_in_the_open() {
            assertThat(new CheckedModel()
                            .rotor("r", 20, plate(0, 0, 0.1))
                            .view("r", at(-600, 300, 1))
                            .kinds())
                    .isEmpty();
        }
    }

    @Nested
    class A_view {

        @Test
        void that_looks_away_sees_nothing() {
            assertThat(new CheckedModel()
                            .rotor("r", 20, plate(0, 40, 0.1))
                            .view("r", at(-20, 125, -1), at(-25, 125, -1))
                            .blindness())
                    .singleElement()
                    .satisfies(flaw -> {
                        assertThat(flaw.kind()).isEqualTo(Flaw.Kind.SEES_NOTHING);
                        assertThat(flaw.part()).isEqualTo(new CheckedPart.ViewAt(0));
                    });
        }

        @Test
        void is_told_of_a_single_station_that_sees_nothing() {
            assertThat(new CheckedModel()
                            .rotor("r", 20, plate(0, 40, 0.1))
                            .view("r", at(-20, 125, 1), at(-25, 125, -1))
                            .blindness())
                    .singleElement()
                    .satisfies(flaw -> assertThat(flaw.part()).isEqualTo(new CheckedPart.StationAt(0, 1)));
        }
    }

    @Nested
    class An_aim {

        /** 20 mm before the plates, turned by 2° from 21.8° aside: 125 mm out the middle of the picture moves by 0.37°. */
        private List<Flaw> flaws(double aim, double tilt) {
            Station exact = at(-20, 125, 1);
            Station loose = new Station(
                    "loose",
                    exact.x(),
                    exact.r(),
                    exact.clock(),
                    exact.forward(),
                    exact.up(),
                    new Station.Tolerance(0, tilt),
                    Optional.empty());
            return new CheckedModel()
                    .rotor("r", 20, plate(0, 0, 0.1))
                    .view("r", aim, exact, loose)
                    .flaws();
        }

        @Test
        void that_the_tolerance_of_a_station_does_not_allow_is_told_with_both_angles() {
            assertThat(flaws(0.3, 2)).singleElement().satisfies(flaw -> {
                assertThat(flaw.kind()).isEqualTo(Flaw.Kind.AIM_WITHIN_TOLERANCE);
                assertThat(flaw.part()).isEqualTo(new CheckedPart.AimOf(0));
                assertThat(English.say(flaw.what())).contains("view-r", "0.3°", "loose", "0.4°");
            });
        }

        @Test
        void that_follows_from_a_tolerance_of_half_a_pitch_is_told_at_the_station() {
            assertThat(flaws(0, 40)).singleElement().satisfies(flaw -> {
                assertThat(flaw.kind()).isEqualTo(Flaw.Kind.TOLERANCE_OF_HALF_A_PITCH);
                assertThat(flaw.part()).isEqualTo(new CheckedPart.StationAt(0, 1));
                assertThat(English.say(flaw.what())).contains("loose", "view-r", "half a pitch of the row r is 9.0°");
            });
        }

        @ParameterizedTest
        @CsvSource({"0.4, 2", "0, 2", "0.3, 0"})
        void that_it_allows_or_that_is_not_stated_is_none(double aim, double tilt) {
            assertThat(flaws(aim, tilt)).isEmpty();
        }
    }

    @Nested
    class A_mesh_file {

        /** A wedge from 110 to 140 mm, 10 mm long and up to 2 mm thick, its four faces looking out. */
        private static final String WEDGE = """
                ply
                format ascii 1.0
                element vertex 6
                property double x
                property double y
                property double z
                element face 4
                property list uchar int vertex_indices
                end_header
                0 0 110
                5 1 110
                5 -1 110
                0 0 140
                5 1 140
                5 -1 140
                4 0 3 4 1
                4 0 2 5 3
                3 1 4 5
                3 1 5 2
                """;

        private List<Flaw> flaws(String content) {
            CheckedModel model = new CheckedModel();
            model.rotor("m", 20, new Shape.Mesh("m.ply"));
            return model.flaws(content == null ? Map.of() : Map.of("m.ply", content.getBytes(StandardCharsets.UTF_8)));
        }

        @Test
        void that_is_not_there_is_missing() {
            assertThat(flaws(null)).extracting(Flaw::kind).containsExactly(Flaw.Kind.MISSING_MESH);
        }

        @Test
        void that_is_no_mesh_is_told_with_the_reason() {
            assertThat(flaws("nonsense")).extracting(Flaw::kind).containsExactly(Flaw.Kind.BAD_MESH);
        }

        @Test
        void without_facets_in_some_zone_is_told_with_the_zone() {
            assertThat(flaws(WEDGE))
                    .singleElement()
                    .satisfies(flaw -> assertThat(English.say(flaw.why())).contains("no facet in the zone"));
        }
    }

    @Test
    void codes_have_the_form_of_all_others() {
        assertThat(Flaw.Kind.values()).extracting(Flaw.Kind::code).allMatch(code -> code.matches("[a-z]+(-[a-z]+)+"));
    }
}
