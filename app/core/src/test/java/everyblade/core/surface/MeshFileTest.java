package everyblade.core.surface;

import static everyblade.core.surface.Shapes.annulus;
import static everyblade.core.surface.Shapes.prism;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.InstanceOfAssertFactories.STRING;

import everyblade.spi.Shape;
import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MeshFileTest {

    private static final String TRIANGLE = """
            ply
            format ascii 1.0
            comment one triangle
            element vertex 3
            property float x
            property float y
            property float z
            property uchar red
            element face 1
            property list uchar int vertex_indices
            end_header
            0 0 100 255
            10 0 100 255
            0 0 110 255
            3 0 1 2
            """;

    private static Mesh read(String text) throws UnusableShape {
        return MeshFile.read(text.getBytes(StandardCharsets.UTF_8), "blade.ply");
    }

    private static Mesh undivided(Mesh mesh) throws UnusableShape {
        return read(PlyText.write(mesh));
    }

    @Test
    void whatIsWrittenAsPlyReadsBackToTheLastBit() throws UnusableShape {
        Mesh blade = annulus().solid(prism(40, 30, 25, 0.1, 0)).mesh();
        Mesh back = undivided(blade);

        assertThat(back.points()).containsExactly(blade.points());
        assertThat(back.triangles()).containsExactly(blade.triangles());
        assertThat(back.faceCount()).isEqualTo(blade.faceCount());
    }

    @Test
    void thePlyOfAMeshIsTheSameEveryTimeAndSaysPointsThenFaces() throws UnusableShape {
        Mesh square = new Mesh(
                new double[] {0, 0, 1, 2.5, 0, 1, 2.5, 1, 1, 0, 1, 1},
                new int[] {0, 1, 2, 3},
                new int[] {0, 4},
                new int[] {0});

        assertThat(PlyText.write(square)).isEqualTo("""
                        ply
                        format ascii 1.0
                        comment lengths in mm; x aft, y towards 3 o'clock, z towards 12 o'clock seen from aft
                        element vertex 4
                        property double x
                        property double y
                        property double z
                        element face 1
                        property list uchar int vertex_indices
                        end_header
                        0 0 1
                        2.5 0 1
                        2.5 1 1
                        0 1 1
                        4 0 1 2 3
                        """);
    }

    @Test
    void propertiesThatAMeshDoesNotNeedArePassedOver() throws UnusableShape {
        assertThat(read(TRIANGLE).points()).containsExactly(0, 0, 100, 10, 0, 100, 0, 0, 110);
    }

    @Test
    void linesMayEndTheWayOfOtherSystems() throws UnusableShape {
        assertThat(read(TRIANGLE.replace("\n", "\r\n"))).isEqualTo(read(TRIANGLE));
    }

    @ParameterizedTest
    @ValueSource(strings = {"binary_little_endian", "binary_big_endian"})
    void binaryPlyReadsTheSame(String format) throws UnusableShape {
        ByteBuffer body = ByteBuffer.allocate(3 * 13 + 1 + 12)
                .order(format.contains("little") ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
        for (float[] p : new float[][] {{0, 0, 100}, {10, 0, 100}, {0, 0, 110}}) {
            body.putFloat(p[0]).putFloat(p[1]).putFloat(p[2]).put((byte) 255);
        }
        body.put((byte) 3).putInt(0).putInt(1).putInt(2);
        String header = TRIANGLE.substring(0, TRIANGLE.indexOf("0 0 100 255")).replace("ascii", format);
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        file.writeBytes(header.getBytes(StandardCharsets.US_ASCII));
        file.writeBytes(body.array());

        assertThat(MeshFile.read(file.toByteArray(), "blade.ply")).isEqualTo(read(TRIANGLE));
    }

    @Test
    void stlJoinsPointsInOnePlaceAndReadsTheSameAsTextAndAsBytes() throws UnusableShape {
        String text = """
                solid blade
                facet normal 0 0 0
                outer loop
                vertex 0 0 100
                vertex 10 0 100
                vertex 0 0 110
                endloop
                endfacet
                facet normal 0 0 0
                outer loop
                vertex 10 0 100
                vertex 10 0 110
                vertex 0 0 110
                endloop
                endfacet
                endsolid blade
                """;
        ByteBuffer bytes = ByteBuffer.allocate(84 + 2 * 50).order(ByteOrder.LITTLE_ENDIAN);
        bytes.put("solid in name only".getBytes(StandardCharsets.US_ASCII))
                .position(80)
                .putInt(2);
        for (float[] t : new float[][] {{0, 0, 100, 10, 0, 100, 0, 0, 110}, {10, 0, 100, 10, 0, 110, 0, 0, 110}}) {
            bytes.putFloat(0).putFloat(0).putFloat(0);
            for (float value : t) {
                bytes.putFloat(value);
            }
            bytes.putShort((short) 0);
        }
        Mesh mesh = read(text);

        assertThat(mesh.pointCount()).isEqualTo(4);
        assertThat(mesh.triangles()).containsExactly(0, 1, 2, 1, 3, 2);
        assertThat(MeshFile.read(bytes.array(), "blade.stl")).isEqualTo(mesh);
    }

    @Test
    void facesWithoutAreaAreLeftOut() throws UnusableShape {
        String two = TRIANGLE.replace("element face 1", "element face 2") + "3 0 1 1\n";

        assertThat(read(two)).isEqualTo(read(TRIANGLE));
    }

    @Nested
    class Damaged {

        private void refuses(UnaryOperator<String> damage, String why) {
            assertThatThrownBy(() -> read(damage.apply(TRIANGLE)))
                    .extracting(Shapes::told, STRING)
                    .isEqualTo("the mesh file blade.ply cannot be used: " + why + "; save it again as PLY 1.0 or STL");
        }

        @Test
        void isRefusedWithWhatIsWrong() {
            refuses(t -> "nothing of the kind", "it begins neither like PLY nor like STL");
            refuses(t -> t.substring(0, t.length() - 4), "it ends too early");
            refuses(t -> t.replace("3 0 1 2", "3 0 1 3"), "a face names the point 3 of 3");
            refuses(t -> t.replace("3 0 1 2", "2 0 1"), "a face has fewer than three corners");
            refuses(t -> t.replace("10 0 100", "ten 0 100"), "a number is expected instead of \"ten\"");
            refuses(t -> t.replace("10 0 100", "NaN 0 100"), "point 1 lies nowhere");
            refuses(t -> t.replace("ascii", "spoken"), "its format \"spoken\" is not known");
            refuses(t -> t.replace("float", "real"), "its number type \"real\" is not known");
            refuses(t -> t.replace("vertex 3", "vertex 3000000000"), "it cannot have 3000000000 items of a kind");
            refuses(t -> t.replace("vertex_indices", "corners"), "its faces have no vertex_indices");
            refuses(t -> t.replace("3 0 1 2", "3 0 1 1"), "it has no face with an area");
            refuses(t -> "solid x\nouter loop\nvertex 0 0 0\nendloop\n", "a facet has fewer than three corners");
        }

        @Test
        void cutAnywhereOrWithAnyByteChangedItIsReadOrRefusedButNeverWorse() {
            byte[] whole = TRIANGLE.getBytes(StandardCharsets.US_ASCII);
            int outcomes = 0;
            for (int i = 0; i < whole.length; i++) {
                byte[] changed = whole.clone();
                changed[i] ^= 0x15;
                outcomes += outcome(changed) + outcome(Arrays.copyOf(whole, i));
            }

            assertThat(outcomes).isEqualTo(2 * whole.length);
        }

        private int outcome(byte[] content) {
            try {
                return MeshFile.read(content, "x").faceCount() > 0 ? 1 : 0;
            } catch (UnusableShape e) {
                return 1;
            }
        }
    }

    @Nested
    class DividedIntoZones {

        @Test
        void aFileOfABladeIsDividedLikeTheBladeItself() throws UnusableShape {
            for (double camber : new double[] {25, -25, 0}) {
                Mesh blade = annulus().solid(prism(40, 10, camber, 0.1, 0)).mesh();
                byte[] file = PlyText.write(blade).getBytes(StandardCharsets.US_ASCII);
                Mesh read = annulus()
                        .solid(new Shape.Mesh("blade.ply"), Map.of("blade.ply", file))
                        .mesh();
                int alike = 0;
                for (int face = 0; face < blade.faceCount(); face++) {
                    alike += read.zone(face) == blade.zone(face) ? 1 : 0;
                }

                assertThat(alike).as("camber %s", camber).isGreaterThan(blade.faceCount() * 95 / 100);
            }
        }

        @Test
        void aZoneThatWouldStayEmptyIsRefused() {
            assertThatThrownBy(() -> annulus()
                            .solid(
                                    new Shape.Mesh("blade.ply"),
                                    Map.of("blade.ply", TRIANGLE.getBytes(StandardCharsets.US_ASCII))))
                    .extracting(Shapes::told, STRING)
                    .matches("row c1: the mesh file blade.ply has no facet in the zone root/.*; make it finer or"
                            + " divide the row less");
        }

        @Test
        void aFileThatIsNotThereIsNamed() {
            assertThatThrownBy(() -> annulus().solid(new Shape.Mesh("blade.ply")))
                    .extracting(Shapes::told, STRING)
                    .startsWith("row c1: the mesh file blade.ply is not there");
        }
    }
}
