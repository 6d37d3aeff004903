package everyblade.json;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.spi.EngineModel;
import everyblade.spi.MeridionalPoint;
import everyblade.spi.Port;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import everyblade.spi.Shape;
import everyblade.spi.Shape.Section;
import everyblade.spi.Source;
import everyblade.spi.Station;
import everyblade.spi.View;
import java.util.List;
import java.util.function.BiConsumer;
import org.junit.jupiter.api.Test;

/** The invented shapes of the engine models that come with the program, held against published ones. */
class ShippedShapesTest {

    private static final double TIP_CLEARANCE = 0.5;
    private static final double MARGIN = 2;

    private final List<EngineModel> models =
            ModelShelf.of(List.of(ShippedModelsTest.FOLDER)).models();

    @Test
    void say_that_they_are_invented() {
        assertThat(models)
                .flatExtracting(EngineModel::rows)
                .filteredOn(row -> row.shape().isPresent())
                .hasSizeGreaterThan(50)
                .allSatisfy(row -> assertThat(row.source()).contains(Source.INVENTED));
    }

    /**
     * Rotors 1 to 10 of the NASA/GE Energy Efficient Engine compressor: E³ High Pressure Compressor Detail Design Report
     * (NTRS 19850002690), tables X and XXII: root radius over tip radius from 19.068/34.725 to 27.343/29.437, printed tip
     * solidity from 1.164 to 1.318 (good to 0.3 %), tip stagger from 54.07° to 65.21°, root stagger from 23.18° to 47.65°.
     */
    @Test
    void have_compressor_rotors_within_the_range_of_published_ones() {
        eachCompressorRotor((model, row) -> {
            List<Section> sections = ((Shape.Axial) row.shape().orElseThrow()).sections();
            Section root = sections.get(0);
            Section tip = sections.get(sections.size() - 1);
            double middle = tip.x() + tip.chord() / 2 * Math.cos(Math.toRadians(tip.stagger()));
            double hubRadius = radius(model, "hub", middle);
            double tipRadius = radius(model, "casing", middle) - TIP_CLEARANCE;

            assertThat(hubRadius / tipRadius).isBetween(0.549, 0.929);
            assertThat(row.count() * tip.chord() / (2 * Math.PI * tipRadius)).isBetween(1.164 * 0.997, 1.318 * 1.003);
            assertThat(Math.abs(tip.stagger())).isBetween(54.07, 65.21);
            assertThat(Math.abs(root.stagger())).isBetween(23.18, 47.65);
        });
    }

    /**
     * The fewest blades are those of the NASA CC3 impeller (15 and 15 splitters), the most those of rotor 10 of the
     * Energy Efficient Engine compressor (94; report as above).
     */
    @Test
    void have_rotors_with_as_many_blades_as_published_ones_have() {
        assertThat(models)
                .flatExtracting(EngineModel::rows)
                .filteredOn(row -> row.kind() == RowKind.ROTOR)
                .allSatisfy(row -> assertThat(row.count()).isBetween(15, 94));
    }

    /** A compressor blade meets the air that it overtakes, so that it leans against the way it turns. */
    @Test
    void lean_compressor_blades_against_the_way_they_turn() {
        eachCompressorRotor((model, row) -> {
            int turning = model.spool(row.spool().orElseThrow())
                    .orElseThrow()
                    .normal()
                    .sign();

            assertThat(((Shape.Axial) row.shape().orElseThrow()).sections())
                    .allSatisfy(
                            section -> assertThat(section.stagger() * turning).isNegative());
        });
    }

    @Test
    void put_stations_between_the_walls_with_room_for_the_scope_tip() {
        eachStation((view, station) -> {
            double half = tip(view) / 2;

            assertThat(station.r() - half).isGreaterThan(radius(modelOf(view), "hub", station.x()));
            assertThat(station.r() + half).isLessThan(radius(modelOf(view), "casing", station.x()));
        });
    }

    @Test
    void put_stations_at_axial_rotors_ahead_of_or_behind_all_that_turns_by_the_margin() {
        eachStation((view, station) -> {
            double clear = tip(view) / 2 + station.within().mm() + MARGIN;

            assertThat(modelOf(view).rows())
                    .filteredOn(row -> row.kind() == RowKind.ROTOR
                            && row.shape().filter(Shape.Axial.class::isInstance).isPresent())
                    .allSatisfy(
                            row -> assertThat(axialDistance(row, station.x())).isGreaterThanOrEqualTo(clear));
        });
    }

    @Test
    void put_stations_within_a_few_centimetres_of_their_port_round_the_annulus() {
        eachStation((view, station) -> {
            Port port = modelOf(view).port(view.port().orElseThrow()).orElseThrow();
            boolean reachedByHand = port.kind() == Port.Kind.INLET || port.kind() == Port.Kind.PANEL;
            if (port.clock().isPresent() && !reachedByHand) {
                double off = Math.IEEEremainder(station.clock() - port.clock().getAsDouble(), 360);

                assertThat(Math.abs(Math.toRadians(off)) * station.r()).isLessThan(30);
            }
        });
    }

    private void eachCompressorRotor(BiConsumer<EngineModel, Row> check) {
        for (EngineModel model : models) {
            model.rows().stream()
                    .filter(row -> row.id().matches("c[0-9]+")
                            && row.shape().filter(Shape.Axial.class::isInstance).isPresent())
                    .forEach(row -> check.accept(model, row));
        }
        assertThat(models).flatExtracting(EngineModel::rows).extracting(Row::id).contains("c1", "c12");
    }

    private void eachStation(BiConsumer<View, Station> check) {
        List<View> views =
                models.stream().flatMap(model -> model.views().stream()).toList();

        assertThat(views).flatExtracting(View::stations).hasSizeGreaterThan(150);
        assertThat(views)
                .allSatisfy(view -> assertThat(view.stations()).allSatisfy(station -> check.accept(view, station)));
    }

    private EngineModel modelOf(View view) {
        return models.stream()
                .filter(model -> model.views().contains(view))
                .findFirst()
                .orElseThrow();
    }

    private double tip(View view) {
        return modelOf(view)
                .scopeTip(view.scopeTip().orElseThrow())
                .orElseThrow()
                .diameter();
    }

    private static double axialDistance(Row row, double x) {
        double least = Double.POSITIVE_INFINITY;
        for (Section section : ((Shape.Axial) row.shape().orElseThrow()).sections()) {
            double end = section.x() + section.chord() * Math.cos(Math.toRadians(section.stagger()));
            least = Math.min(least, Math.max(section.x() - x, x - end));
        }
        return least;
    }

    /** Where the wall first comes to this x. */
    private static double radius(EngineModel model, String wall, double x) {
        List<MeridionalPoint> curve = model.walls().stream()
                .filter(one -> one.id().equals(wall))
                .findFirst()
                .orElseThrow()
                .curve();
        for (int i = 1; i < curve.size(); i++) {
            MeridionalPoint a = curve.get(i - 1);
            MeridionalPoint b = curve.get(i);
            if (x >= a.x() && x <= b.x() && b.x() > a.x()) {
                return a.r() + (b.r() - a.r()) * (x - a.x()) / (b.x() - a.x());
            }
        }
        throw new AssertionError("the wall " + wall + " of " + model.id() + " does not reach x = " + x);
    }
}
