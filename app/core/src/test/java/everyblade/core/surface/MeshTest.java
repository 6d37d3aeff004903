package everyblade.core.surface;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class MeshTest {

    /** A unit square in the plane x = 0 that looks forward, and a triangle beside it. */
    private static Mesh house() {
        return new Mesh(
                new double[] {0, 0, 0, 0, 0, 1, 0, 1, 1, 0, 1, 0, 0, 0.5, 2},
                new int[] {0, 1, 2, 3, 1, 4, 2},
                new int[] {0, 4, 7},
                new int[] {0, 1});
    }

    @Test
    void aFaceIsTheFanOfTrianglesFromItsFirstCorner() {
        assertThat(house().triangles()).containsExactly(0, 1, 2, 0, 2, 3, 1, 4, 2);
        assertThat(house().triangleFaces()).containsExactly(0, 0, 1);
        assertThat(house().triangleCount()).isEqualTo(3);
    }

    @Test
    void aFacetHasAnAreaACentroidAndANormalTowardsWhoSeesItsCornersAnticlockwise() {
        Facets facets = Facets.of(house());

        assertThat(facets.area(0)).isEqualTo(1);
        assertThat(facets.area(1)).isEqualTo(0.5);
        assertThat(facets.area()).isEqualTo(1.5);
        assertThat(facets.centroid(0, 1)).isCloseTo(0.5, within(1e-12));
        assertThat(facets.centroid(0, 2)).isCloseTo(0.5, within(1e-12));
        assertThat(facets.centroid(1, 2)).isCloseTo(4.0 / 3, within(1e-12));
        assertThat(new double[] {facets.normal(0, 0), facets.normal(0, 1), facets.normal(0, 2)})
                .containsExactly(-1, 0, 0);
    }

    @Test
    void theCentroidOfAnUnevenFaceIsWeightedByTheAreasOfItsTriangles() {
        Mesh kite = new Mesh(
                new double[] {0, 0, 0, 0, 0, 1, 0, 1, 0, 0, 0, -3},
                new int[] {0, 1, 2, 3},
                new int[] {0, 4},
                new int[] {0});

        assertThat(Facets.of(kite).area(0)).isEqualTo(2);
        assertThat(Facets.of(kite).centroid(0, 2)).isCloseTo((0.5 / 3 - 1.5) / 2, within(1e-12));
    }

    @Test
    void aFaceWithoutAreaHasNoFacet() {
        Mesh flat = new Mesh(
                new double[] {0, 0, 0, 1, 0, 0, 2, 0, 0}, new int[] {0, 1, 2}, new int[] {0, 3}, new int[] {0});

        assertThatThrownBy(() -> Facets.of(flat)).hasMessage("face 0 of the mesh has no area");
    }

    @Test
    void whatIsHandedInOrOutDoesNotChangeTheMesh() {
        double[] points = {0, 0, 0, 1, 0, 0, 0, 1, 0};
        Mesh mesh = new Mesh(points, new int[] {0, 1, 2}, new int[] {0, 3}, new int[] {0});
        points[0] = 7;
        mesh.points()[1] = 8;

        assertThat(mesh.points()).containsExactly(0, 0, 0, 1, 0, 0, 0, 1, 0);
        assertThat(mesh)
                .isEqualTo(new Mesh(
                        new double[] {0, 0, 0, 1, 0, 0, 0, 1, 0}, new int[] {0, 1, 2}, new int[] {0, 3}, new int[] {0
                        }));
    }

    @Test
    void whatIsNoMeshIsRefused() {
        double[] three = {0, 0, 0, 1, 0, 0, 0, 1, 0};

        assertThatThrownBy(() -> new Mesh(three, new int[] {0, 1, 3}, new int[] {0, 3}, new int[] {0}))
                .hasMessage("not a mesh: every corner is a point");
        assertThatThrownBy(() -> new Mesh(three, new int[] {0, 1}, new int[] {0, 2}, new int[] {0}))
                .hasMessage("not a mesh: every face has at least three corners");
        assertThatThrownBy(() -> new Mesh(three, new int[] {0, 1, 2}, new int[] {0, 2}, new int[] {0}))
                .hasMessage("not a mesh: faces use every corner");
        assertThatThrownBy(() -> new Mesh(new double[] {0, Double.NaN, 0}, new int[0], new int[] {0}, new int[0]))
                .hasMessage("not a mesh: every coordinate is finite");
    }
}
