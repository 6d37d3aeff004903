package everyblade.core.surface;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.ShapedEngine;
import everyblade.core.entry.Zoning;
import everyblade.spi.EngineModel;
import everyblade.spi.Row;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PatchesTest {

    private final EngineModel model =
            new ShapedEngine().twisted("r", 20, 0).liner("l", 12).model();

    private Patches patches(int row) throws UnusableShape {
        return Surfaces.patches(model, model.rows().get(row), Optional.empty(), Map.of())
                .orElseThrow();
    }

    private Mesh mesh(int row) throws UnusableShape {
        return Surfaces.of(model, model.rows().get(row), Optional.empty()).orElseThrow();
    }

    @Test
    void divideEachFacetOfItsZoneIntoSixteenWhereItLies() throws UnusableShape {
        for (int row = 0; row < 2; row++) {
            Patches patches = patches(row);
            Mesh mesh = mesh(row);
            Facets facets = Facets.of(mesh);
            assertThat(patches.facetCount()).isEqualTo(mesh.faceCount());
            for (int facet = 0; facet < mesh.faceCount(); facet++) {
                assertThat(patches.count(facet)).isEqualTo(16);
                assertThat(patches.area(facet, patch -> true))
                        .isCloseTo(facets.area(facet), within(0.05 * facets.area(facet)));
                double[] middle = new double[3];
                for (int i = 0; i < 16; i++) {
                    int patch = patches.first(facet) + i;
                    assertThat(patches.facet(patch)).isEqualTo(facet);
                    assertThat(patches.zone(patch)).isEqualTo(mesh.zone(facet));
                    for (int axis = 0; axis < 3; axis++) {
                        middle[axis] += patches.facets().centroid(patch, axis) / 16;
                    }
                }
                for (int axis = 0; axis < 3; axis++) {
                    assertThat(middle[axis]).isCloseTo(facets.centroid(facet, axis), within(0.5));
                }
            }
        }
    }

    @Test
    void lieBesideOneAnotherAcrossFacetsAndEndAtRootAndTip() throws UnusableShape {
        Patches patches = patches(0);
        int ends = 0;
        for (int patch = 0; patch < patches.count(); patch++) {
            for (int edge = 0; edge < patches.edges(patch); edge++) {
                int beyond = patches.beyond(patch, edge);
                ends += beyond < 0 ? 1 : 0;
                if (beyond >= 0) {
                    int back = patch;
                    assertThat(java.util.stream.IntStream.range(0, patches.edges(beyond))
                                    .map(other -> patches.beyond(beyond, other)))
                            .contains(back);
                }
            }
        }
        // Two sides of 64 columns, at root and tip.
        assertThat(ends).isEqualTo(2 * 2 * 64);
    }

    /** The first and the last sixteenth of an edge band, 1.25 % of the chord. */
    @Test
    void haveAStripAtTheVeryEdge() throws UnusableShape {
        Patches patches = patches(0);
        Row row = model.rows().get(0);
        for (int patch = 0; patch < patches.count(); patch++) {
            if (patches.atEdge(patch)) {
                assertThat(Zoning.of(row).atEdge(patches.zone(patch))).isTrue();
            }
        }
        assertThat(java.util.stream.IntStream.range(0, patches.count()).filter(patches::atEdge))
                .hasSize(2 * 2 * 8 * 16);
    }

    @Test
    void ofAFileLieOnItsFaces() throws UnusableShape {
        Mesh mesh = mesh(0);
        Patches patches = Patches.of(mesh, Zoning.of(model.rows().get(0)));
        Facets facets = Facets.of(mesh);
        for (int face = 0; face < mesh.faceCount(); face++) {
            assertThat(patches.area(face, patch -> true)).isCloseTo(facets.area(face), within(1e-9));
        }
        for (int zone = 0; zone < 12; zone++) {
            assertThat(patches.ofZone(zone)).hasSizeGreaterThanOrEqualTo(256);
        }
    }
}
