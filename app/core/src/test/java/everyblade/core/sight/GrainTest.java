package everyblade.core.sight;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.surface.Facets;
import everyblade.core.surface.Mesh;
import everyblade.core.surface.Patches;
import everyblade.core.surface.UnusableShape;
import everyblade.spi.RowKind;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How finely surfaces of squares are judged, each of which has 32 patches. */
class GrainTest {

    private static Grain grain(Mesh mesh) {
        try {
            ViewScene engine =
                    new Blocks().row("own", RowKind.ROTOR, 6, row -> row, mesh).scene();
            return engine.grain(engine.model().rows().get(0)).orElseThrow();
        } catch (UnusableShape unusable) {
            throw new AssertionError(unusable);
        }
    }

    private static double apart(Mesh mesh, int point, Facets places, int place) {
        return Math.hypot(
                Math.hypot(places.centroid(place, 0) - mesh.x(point), places.centroid(place, 1) - mesh.y(point)),
                places.centroid(place, 2) - mesh.z(point));
    }

    private static void assertCornersAreNearest(Mesh mesh, Grain grain) {
        Patches patches = grain.patches();
        for (int facet = 0; facet < mesh.faceCount(); facet++) {
            assertThat(grain.corners()[facet]).hasSize(4).doesNotHaveDuplicates();
            for (int k = 0; k < 4; k++) {
                double corner = apart(
                        mesh,
                        mesh.corner(facet, k),
                        patches.facets(),
                        patches.first(facet) + grain.corners()[facet][k]);
                for (int patch = 0; patch < patches.count(facet); patch++) {
                    assertThat(apart(mesh, mesh.corner(facet, k), patches.facets(), patches.first(facet) + patch))
                            .isGreaterThanOrEqualTo(corner - 1e-12);
                }
            }
        }
    }

    /** It bends by 90° at every edge. */
    @Nested
    class ABox {

        private final Mesh box = Blocks.box(0, 10, 3, 20, 32);
        private final Grain grain = grain(box);

        @Test
        void hasFacetsBesideAllButTheOneBehind() {
            for (int facet = 0; facet < 6; facet++) {
                assertThat(grain.around()[facet]).hasSize(4).doesNotContain(facet, facet ^ 1);
            }
        }

        @Test
        void goesOnWithoutASharpBendNowhere() {
            assertThat(grain.smooth()).hasDimensions(6, 0);
        }

        @Test
        void hasItsCornersInThePatchesNearestToThem() {
            assertCornersAreNearest(box, grain);
        }

        @Test
        void bendsAtEveryCorner() {
            assertThat(grain.rim()).isDeepEqualTo(grain.corners());
        }
    }

    /** Three by three squares of 2 mm, the last row of them bent up. */
    @Nested
    class ASheet {

        private Mesh sheet(double bend) {
            double[] points = new double[48];
            int[] corners = new int[36];
            int[] start = new int[10];
            double up = Math.toRadians(bend);
            for (int i = 0; i < 16; i++) {
                int row = i / 4;
                points[3 * i] = row < 3 ? 2 * row : 4 + 2 * Math.cos(up);
                points[3 * i + 1] = 2 * (i % 4);
                points[3 * i + 2] = 20 + (row < 3 ? 0 : 2 * Math.sin(up));
            }
            for (int face = 0; face < 9; face++) {
                int a = face / 3 * 4 + face % 3;
                System.arraycopy(new int[] {a, a + 4, a + 5, a + 1}, 0, corners, 4 * face, 4);
                start[face + 1] = 4 * (face + 1);
            }
            return new Mesh(points, corners, start, new int[9]);
        }

        @Test
        void goesOnBeyondEveryEdgeWhereItDoesNotEnd() {
            Grain grain = grain(sheet(0));

            assertThat(grain.smooth()[4]).containsExactlyInAnyOrder(1, 3, 5, 7);
            assertThat(grain.smooth()[0]).containsExactlyInAnyOrder(1, 3);
            assertThat(grain.smooth()[1]).containsExactlyInAnyOrder(0, 2, 4);
            assertThat(grain.around()[0]).containsExactlyInAnyOrder(1, 3, 4);
        }

        @ParameterizedTest
        @ValueSource(doubles = {-59, 59})
        void goesOnBeyondABendOfLessThan60Degrees(double bend) {
            Grain grain = grain(sheet(bend));

            assertThat(grain.smooth()[4]).containsExactlyInAnyOrder(1, 3, 5, 7);
            assertThat(grain.rim()[4]).isEmpty();
        }

        @ParameterizedTest
        @ValueSource(doubles = {-61, 61})
        void endsAtASharperBend(double bend) {
            Grain grain = grain(sheet(bend));

            assertThat(grain.smooth()[4]).containsExactlyInAnyOrder(1, 3, 5);
            assertThat(grain.smooth()[7]).containsExactlyInAnyOrder(6, 8);
            assertThat(grain.rim()[4]).as("at two of its corners").hasSize(2);
        }

        /** Turned so that the sheet lies in the plane of x and z and bends towards y, which changes nothing. */
        @ParameterizedTest
        @ValueSource(doubles = {-59, 59, 61})
        void bendsAlikeWhicheverWayItLies(double bend) {
            Mesh sheet = sheet(bend);
            double[] turned = new double[48];
            for (int i = 0; i < 16; i++) {
                turned[3 * i] = sheet.x(i);
                turned[3 * i + 1] = sheet.z(i) - 20;
                turned[3 * i + 2] = 20 - sheet.y(i);
            }
            int[] corners = new int[36];
            int[] start = new int[10];
            for (int face = 0; face < 9; face++) {
                for (int k = 0; k < 4; k++) {
                    corners[4 * face + k] = sheet.corner(face, k);
                }
                start[face + 1] = 4 * (face + 1);
            }

            Grain grain = grain(new Mesh(turned, corners, start, new int[9]));

            assertThat(grain.smooth()).isDeepEqualTo(grain(sheet).smooth());
            assertThat(grain.rim()[4]).hasSameSizeAs(grain(sheet).rim()[4]);
        }

        /** The middle one of its squares first: nothing ends beside the first patch of all. */
        @Test
        void hasNoRimInItsMiddleAlsoIfThatComesFirst() {
            Mesh sheet = sheet(0);
            int[] order = {4, 0, 1, 2, 3, 5, 6, 7, 8};
            double[] points = new double[48];
            int[] corners = new int[36];
            int[] start = new int[10];
            for (int i = 0; i < 16; i++) {
                points[3 * i] = sheet.x(i);
                points[3 * i + 1] = sheet.y(i);
                points[3 * i + 2] = sheet.z(i);
            }
            for (int face = 0; face < 9; face++) {
                for (int k = 0; k < 4; k++) {
                    corners[4 * face + k] = sheet.corner(order[face], k);
                }
                start[face + 1] = 4 * (face + 1);
            }
            Grain grain = grain(new Mesh(points, corners, start, new int[9]));

            assertThat(grain.smooth()[0]).hasSize(4);
            assertThat(grain.rim()[0]).isEmpty();
        }

        /** Where two patches meet in a corner, each of them lies along one of its edges. */
        @Test
        void hasARimWhereItEnds() {
            Mesh sheet = sheet(0);
            Grain grain = grain(sheet);

            assertCornersAreNearest(sheet, grain);
            assertThat(grain.rim()[4]).isEmpty();
            assertThat(grain.rim()[0]).hasSize(3);
            assertThat(grain.corners()[0]).contains(grain.rim()[0]);
            assertThat(grain.rim()[1]).hasSize(2);
        }
    }
}
