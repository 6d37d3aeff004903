package everyblade.picture.sight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.sight.Criteria;
import everyblade.core.surface.Facets;
import everyblade.core.surface.Mesh;
import everyblade.picture.scene.DrawnShape.Patch;
import everyblade.picture.scene.DrawnShape.Polygon;
import everyblade.picture.scene.Point;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UnrollingTest {

    private static final List<String> CHORD = List.of("leading", "middle", "trailing");
    private static final double MIDDLE = 112.5;

    private static Vantage vantage(String model, String view, String station) {
        return Vantages.of(model, view, station, Criteria.USUAL);
    }

    private static BothSides unrolled(Vantage vantage) {
        return BothSides.of(vantage.scene().row().airfoil(), vantage.row(), new Point(10, 20), 100, 60, 5);
    }

    @ParameterizedTest
    @CsvSource({
        "larkspur-4, p1-c2, high",
        "larkspur-4, p4-imp, low",
        "larkspur-4, ig1-comb, low",
        "tansy-a1, ig-comb, low"
    })
    void facets_fill_both_boxes_without_overlap(String model, String view, String station) {
        Vantage vantage = vantage(model, view, station);
        BothSides sides = unrolled(vantage);

        assertThat(sides.inStrips()).isTrue();
        for (int side = 0; side < 2; side++) {
            int of = side;
            List<Patch> patches = IntStream.range(0, sides.shapes().size())
                    .filter(facet -> sides.sides()[facet] == of)
                    .mapToObj(facet -> (Patch) sides.shapes().get(facet))
                    .toList();
            double area = patches.stream()
                    .mapToDouble(patch -> patch.length() * patch.height())
                    .sum();
            assertThat(area).isCloseTo(6000, within(1e-6));
            for (Patch a : patches) {
                assertThat(a.from()).isBetween(-1e-9, 100.0);
                assertThat(a.high()).isBetween(0.0, 60 + 1e-9);
                assertThat(patches.stream().filter(b -> overlap(a, b))).containsExactly(a);
            }
        }
    }

    private static boolean overlap(Patch a, Patch b) {
        return a.from() < b.to() - 1e-9
                && b.from() < a.to() - 1e-9
                && a.low() < b.high() - 1e-9
                && b.low() < a.high() - 1e-9;
    }

    @ParameterizedTest
    @CsvSource({"larkspur-4, p1-c2, high", "larkspur-4, ig1-comb, low"})
    void equal_areas_are_about_equal_areas_of_the_surface(String model, String view, String station) {
        Vantage vantage = vantage(model, view, station);
        BothSides sides = unrolled(vantage);
        Facets facets = vantage.scene().facets();
        double[] whole = new double[2];
        for (int facet = 0; facet < facets.count(); facet++) {
            whole[sides.sides()[facet]] += facets.area(facet);
        }
        for (int facet = 0; facet < facets.count(); facet++) {
            Patch patch = (Patch) sides.shapes().get(facet);
            double drawn = patch.length() * patch.height() / 6000;
            assertThat(drawn).isCloseTo(facets.area(facet) / whole[sides.sides()[facet]], within(0.2 * drawn));
        }
    }

    @Test
    void leading_edges_meet_in_the_middle_and_the_root_is_below() {
        Vantage vantage = vantage("larkspur-4", "p1-c2", "high");
        BothSides sides = unrolled(vantage);
        List<List<Double>> heights = List.of(new ArrayList<>(), new ArrayList<>());
        List<List<Double>> distances = List.of(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
        for (int facet = 0; facet < sides.shapes().size(); facet++) {
            String zone = vantage.scene()
                    .zoning()
                    .names()
                    .get(vantage.scene().row().airfoil().zone(facet));
            Patch patch = (Patch) sides.shapes().get(facet);
            assertThat(sides.sides()[facet]).isEqualTo(zone.contains("/suction/") ? 1 : 0);
            heights.get(zone.startsWith("root/") ? 0 : 1).add(-patch.middle().y());
            String band = zone.substring(zone.lastIndexOf('/') + 1);
            distances.get(CHORD.indexOf(band)).add(Math.abs(patch.middle().x() - MIDDLE));
        }
        assertThat(Collections.max(heights.get(0))).isLessThan(Collections.min(heights.get(1)));
        assertThat(Collections.max(distances.get(0))).isLessThan(Collections.min(distances.get(1)));
        assertThat(Collections.max(distances.get(1))).isLessThan(Collections.min(distances.get(2)));
    }

    @Test
    void facets_in_no_order_are_drawn_as_seen_from_the_side() {
        Vantage vantage = vantage("larkspur-4", "p1-c2", "high");
        Mesh mesh = shuffled(vantage.scene().row().airfoil());

        BothSides sides = BothSides.of(mesh, vantage.row(), new Point(10, 20), 100, 60, 5);

        assertThat(sides.inStrips()).isFalse();
        for (int facet = 0; facet < mesh.faceCount(); facet++) {
            Polygon outline = (Polygon) sides.shapes().get(facet);
            double left = sides.sides()[facet] == 0 ? 10 : 115;
            assertThat(outline.corners())
                    .hasSize(4)
                    .allMatch(at -> at.x() > left - 1e-9 && at.x() < left + 100 + 1e-9)
                    .allMatch(at -> at.y() > 20 - 1e-9 && at.y() < 80 + 1e-9);
        }
    }

    private static Mesh shuffled(Mesh mesh) {
        List<Integer> order =
                new ArrayList<>(IntStream.range(0, mesh.faceCount()).boxed().toList());
        Collections.shuffle(order, new Random(4));
        int[] corners = order.stream()
                .flatMapToInt(face -> IntStream.range(0, 4).map(k -> mesh.corner(face, k)))
                .toArray();
        return new Mesh(
                mesh.points(),
                corners,
                IntStream.rangeClosed(0, mesh.faceCount()).map(i -> 4 * i).toArray(),
                order.stream().mapToInt(mesh::zone).toArray());
    }
}
