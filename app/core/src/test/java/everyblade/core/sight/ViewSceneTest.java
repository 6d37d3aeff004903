package everyblade.core.sight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.ShapedEngine;
import everyblade.core.angle.Turn;
import everyblade.core.surface.Mesh;
import everyblade.core.surface.UnusableShape;
import everyblade.core.turning.Engine.Standing;
import everyblade.spi.EngineModel;
import everyblade.spi.MeridionalPoint;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import everyblade.spi.Station;
import everyblade.spi.Station.Heading;
import everyblade.spi.Wall;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What surrounds a row of boxes. */
class ViewSceneTest {

    private static SightScene ring(Blocks blocks, String row) throws UnusableShape {
        ViewScene engine = blocks.scene();
        return engine.ring(engine.model().row(row).orElseThrow()).orElseThrow();
    }

    private static void same(SightScene one, SightScene other) {
        Pose pose = Plates.cone(Plates.pose(-30, 26, 10, 1, 0, 0), 150);
        SightArcs seen = Plates.sight(one, pose, Plates.FACING);
        SightArcs expected = Plates.sight(other, pose, Plates.FACING);
        assertThat(seen.arcs(Blocks.FRONT).isEmpty()).isFalse();
        for (int facet = 0; facet < expected.facetCount(); facet++) {
            long apart = seen.arcs(facet).difference(expected.arcs(facet)).measure()
                    + expected.arcs(facet).difference(seen.arcs(facet)).measure();
            assertThat(apart).as("facet %d", facet).isLessThan(100);
        }
    }

    @Nested
    class ARing {

        private final Mesh full = Blocks.box(0, 10, 2, 20, 30);
        private final Mesh part = Blocks.box(-6, 4, 1, 20, 30);
        private final Mesh third = Blocks.box(-8, -4, 1, 20, 24);

        private Blocks blocks() {
            return new Blocks()
                    .row("other", RowKind.ROTOR, 6, 0, 10, 2, 20, 30)
                    .row("full", RowKind.ROTOR, 6, row -> row.ring("stage", 0.9), 0, 10, 2, 20, 30)
                    .row("part", RowKind.ROTOR, 6, row -> row.ring("stage", 0.25), -6, 4, 1, 20, 30)
                    .row("third", RowKind.ROTOR, 3, row -> row.ring("stage", 0.125), -8, -4, 1, 20, 24)
                    .row("elsewhere", RowKind.ROTOR, 6, row -> row.ring("other stage", 0.5), -6, 4, 1, 20, 30);
        }

        private SightScene of(Mesh airfoil, int count) {
            return SightScene.of(airfoil, count, Plates.UNDIVIDED);
        }

        private Ring ring(Mesh airfoil, int count, double clock) {
            return new Ring(airfoil, count, Turn.ofDegrees(clock).wrapped());
        }

        /** A share of a quarter of 60° is 15°, an eighth of 120° too. The first row stands where it stands, whatever its share. */
        @Test
        void holdsItsMatesAtTheirShareOfAPitch() throws UnusableShape {
            same(
                    ViewSceneTest.ring(blocks(), "full"),
                    of(full, 6).withMate(ring(part, 6, 15)).withMate(ring(third, 3, 15)));
        }

        @Test
        void isTheSameRingForEachOfThem() throws UnusableShape {
            same(
                    ViewSceneTest.ring(blocks(), "part"),
                    of(part, 6).withMate(ring(full, 6, -15)).withMate(ring(third, 3, 0)));
            same(
                    ViewSceneTest.ring(blocks(), "third"),
                    of(third, 3).withMate(ring(full, 6, -15)).withMate(ring(part, 6, 0)));
        }

        @Test
        void isARowAloneIfItStandsInNone() throws UnusableShape {
            same(ViewSceneTest.ring(blocks(), "other"), of(full, 6));
        }

        @Test
        void isNoneOfARowWithoutAShape() throws UnusableShape {
            ViewScene engine =
                    new Blocks().shapeless("counted", RowKind.ROTOR, 6).scene();
            Row row = engine.model().rows().get(0);

            assertThat(engine.ring(row)).isEmpty();
            assertThat(engine.airfoil(row)).isEmpty();
            assertThat(engine.grain(row)).isEmpty();
            assertThat(engine.swept(row)).isEmpty();
        }
    }

    @Nested
    class RowsBetween {

        /** The row reaches from x = 0 to 10, the scope tip stands at x. */
        private List<String> between(double x, double reach, double front, double rear) throws UnusableShape {
            Blocks blocks = new Blocks()
                    .row("own", RowKind.ROTOR, 6, row -> row.ring("stage", 0), 0, 10, 3, 20, 30)
                    .row("mate", RowKind.ROTOR, 6, row -> row.ring("stage", 0.5), 0, 10, 3, 20, 30)
                    .row("other", RowKind.ROTOR, 6, front, rear, 3, 20, 30)
                    .shapeless("counted", RowKind.ROTOR, 5);
            ViewScene engine = blocks.scene();
            Row own = engine.model().row("own").orElseThrow();
            Pose pose = Plates.pose(x, 25, 0, 1, 0, 0);
            return engine.between(engine.ring(own).orElseThrow(), own, pose, reach).stream()
                    .map(Row::id)
                    .toList();
        }

        @ParameterizedTest
        @CsvSource({
            "-30, 0, -25, -20, true",
            "-30, 0, -35, -29, true",
            "-30, 0, -35, -31, false",
            "-30, 2, -35, -31, true",
            "-30, 0, 9, 20, true",
            "-30, 0, 11, 20, false",
            "30, 0, 20, 25, true",
            "30, 0, 31, 40, false",
            "30, 2, 31, 40, true",
            "30, 0, -20, -1, false",
            "30, 0, -20, 1, true",
            "-30, 0, -35, -30, false",
            "30, 0, 30, 40, false"
        })
        void areThoseWhoseExtentMeetsTheStretchFromRowToScopeTip(
                double x, double reach, double front, double rear, boolean is) throws UnusableShape {
            assertThat(between(x, reach, front, rear)).isEqualTo(is ? List.of("other") : List.of());
        }

        @Test
        void areNotAskedOfARowWithoutAShape() {
            ViewScene engine =
                    new Blocks().shapeless("counted", RowKind.ROTOR, 5).scene();
            Row counted = engine.model().rows().get(0);

            assertThatThrownBy(() -> new Rings().between(engine, counted, Plates.pose(0, 25, 0, 1, 0, 0), 0))
                    .isInstanceOf(IllegalStateException.class)
                    .hasMessageContaining("counted");
        }

        /** It sweeps x from −10 to −5 between radii of 20 and 32.1 mm. */
        @ParameterizedTest
        @CsvSource({"-8, 25, 0, true", "-13, 25, 0, false", "-13, 25, 2.9, false", "-13, 25, 3, true", "-8, 35, 4, true"
        })
        void holdTheScopeTipIfItMayStandInWhatTheySweep(double x, double r, double reach, boolean among)
                throws UnusableShape {
            Blocks blocks = new Blocks()
                    .row("own", RowKind.ROTOR, 6, 0, 10, 3, 20, 30)
                    .row("other", RowKind.STATOR, 6, -10, -5, 3, 20, 32);
            ViewScene engine = blocks.scene();
            Row own = engine.model().row("own").orElseThrow();

            List<Neighbour> found = new Rings().between(engine, own, Plates.pose(x, r, 0, 1, 0, 0), reach);

            assertThat(found).singleElement().satisfies(other -> {
                assertThat(other.among()).isEqualTo(among);
                assertThat(other.isDoubtful()).isTrue();
                assertThat(other.isExact()).isFalse();
            });
        }
    }

    @Nested
    class Walls {

        private static Wall wall(String id, double r) {
            return new Wall(id, Optional.empty(), List.of(new MeridionalPoint(-200, r), new MeridionalPoint(300, r)));
        }

        private EngineModel with(RowKind kind, Wall... walls) {
            EngineModel model =
                    new Blocks().row("own", kind, 6, 0, 10, 3, 20, 30).model();
            return EngineModel.of("walled", "walled")
                    .rows(model.rows())
                    .walls(List.of(walls))
                    .build();
        }

        /** From below, at a radius of 10 mm, the lower face at a radius of 20 mm. */
        private boolean sees(EngineModel model) throws UnusableShape {
            Map<String, byte[]> files = new Blocks()
                    .row("own", RowKind.ROTOR, 6, 0, 10, 3, 20, 30)
                    .scene()
                    .files();
            ViewScene engine = new ViewScene(model, files, Map.of());
            SightScene ring = engine.ring(model.rows().get(0)).orElseThrow();
            return !Plates.sight(ring, Plates.pose(5, 10, 0, 0, 0, 1), Plates.FACING)
                    .arcs(4)
                    .isEmpty();
        }

        @Test
        void hide() throws UnusableShape {
            assertThat(sees(with(RowKind.ROTOR))).isTrue();
            assertThat(sees(with(RowKind.ROTOR, wall("far", 50)))).isTrue();
            assertThat(sees(with(RowKind.ROTOR, wall("far", 50), wall("near", 19))))
                    .isFalse();
        }

        /** The middle of the lower face lies on a wall of 20 mm radius. */
        @Test
        void thatAreALinerItselfDoNotHideIt() throws UnusableShape {
            assertThat(sees(with(RowKind.ROTOR, wall("same", 19.6)))).isFalse();
            assertThat(sees(with(RowKind.LINER, wall("same", 19.6)))).isTrue();
            assertThat(sees(with(RowKind.LINER, wall("before", 19.4)))).isFalse();
        }

        /** The faces at the sides have their middles off the plane of clock 0, at a radius of √(25² + 3²). */
        @Test
        void areTheLinerItselfByItsMiddlesRadius() throws UnusableShape {
            double side = Math.hypot(25, 3);
            assertThat(sees(with(RowKind.LINER, wall("side", side), wall("near", 19))))
                    .isFalse();
            EngineModel through = with(RowKind.LINER, wall("through", side - 0.4));
            Map<String, byte[]> files = new Blocks()
                    .row("own", RowKind.ROTOR, 6, 0, 10, 3, 20, 30)
                    .scene()
                    .files();
            ViewScene engine = new ViewScene(through, files, Map.of());
            SightScene ring = engine.ring(through.rows().get(0)).orElseThrow();
            assertThat(Plates.sight(ring, Plates.pose(5, 10, 0, 0, 0, 1), Plates.FACING)
                            .arcs(2))
                    .isEqualTo(Plates.sight(
                                    SightScene.of(Blocks.box(0, 10, 3, 20, 30), 6, Plates.UNDIVIDED),
                                    Plates.pose(5, 10, 0, 0, 0, 1),
                                    Plates.FACING)
                            .arcs(2));
        }
    }

    @Nested
    class MovableVanes {

        @Test
        void standAtTheirPosition() throws UnusableShape {
            EngineModel model =
                    new ShapedEngine().row("s", RowKind.STATOR, 20, 10, 0).model();
            EngineModel turned =
                    new ShapedEngine().row("s", RowKind.STATOR, 20, 35, 0).model();
            Row row = model.rows().get(0);

            Mesh open = new ViewScene(model, Map.of(), Map.of("s", "open"))
                    .airfoil(row)
                    .orElseThrow();
            assertThat(open)
                    .isEqualTo(new ViewScene(turned, Map.of(), Map.of())
                            .airfoil(turned.rows().get(0))
                            .orElseThrow());
            Grain grain = new ViewScene(model, Map.of(), Map.of("s", "open"))
                    .grain(row)
                    .orElseThrow();
            Grain usual = new ViewScene(model, Map.of(), Map.of()).grain(row).orElseThrow();
            Grain expected = new ViewScene(turned, Map.of(), Map.of())
                    .grain(turned.rows().get(0))
                    .orElseThrow();
            assertThat(grain.patches().facets().centroid(7, 1))
                    .isEqualTo(expected.patches().facets().centroid(7, 1))
                    .isNotEqualTo(usual.patches().facets().centroid(7, 1));
            assertThat(open)
                    .isNotEqualTo(new ViewScene(model, Map.of(), Map.of())
                            .airfoil(row)
                            .orElseThrow());
        }
    }

    @Nested
    class ClearancesOfStations {

        private static Station station(String id, double x, double r) {
            return new Station(id, x, r, 0, new Heading(1, 0, 0), new Heading(0, 0, 1), new Station.Tolerance(0, 0));
        }

        /** A box sweeps from its foot at 20 mm to its corners at √(30² + 3²) mm. */
        @Test
        void areTheWayToTheNearestRotorOfTheSpool() throws UnusableShape {
            Blocks blocks = new Blocks()
                    .row("near", RowKind.ROTOR, 6, 0, 10, 3, 20, 30)
                    .row("far", RowKind.ROTOR, 6, 100, 110, 3, 20, 30)
                    .row("vanes", RowKind.STATOR, 6, -20, -10, 3, 20, 30)
                    .row("other", RowKind.ROTOR, 6, row -> row.phase(0), 40, 50, 3, 20, 30)
                    .shapeless("counted", RowKind.ROTOR, 5)
                    .view("v", "near", station("ahead", -15, 25), station("between", 30, 25))
                    .view("w", "vanes", station("in", 105, 25));

            Map<Standing, Double> clearances = Clearances.of(blocks.scene());

            assertThat(clearances).hasSize(3);
            assertThat(clearances.get(new Standing("v", "ahead", "shaft"))).isCloseTo(15, within(1e-9));
            assertThat(clearances.get(new Standing("v", "between", "shaft"))).isCloseTo(10, within(1e-9));
            assertThat(clearances.get(new Standing("w", "in", "shaft"))).isZero();
        }
    }
}
