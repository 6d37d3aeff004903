package everyblade.core.surface;

import java.math.BigDecimal;
import java.math.MathContext;

/** Meshes as ascii PLY, version 1.0: points in order, then faces in the order of the facets; lengths are mm. */
public final class PlyText {

    /** So many significant digits tell every double from every other. */
    private static final MathContext DIGITS = new MathContext(17);

    private PlyText() {}

    /** The mesh as text, the same for the same mesh; every number reads back as it was. */
    public static String write(Mesh mesh) {
        StringBuilder text = new StringBuilder();
        text.append("ply\nformat ascii 1.0\n")
                .append("comment lengths in mm; x aft, y towards 3 o'clock, z towards 12 o'clock seen from aft\n")
                .append("element vertex ")
                .append(mesh.pointCount())
                .append('\n')
                .append("property double x\nproperty double y\nproperty double z\n")
                .append("element face ")
                .append(mesh.faceCount())
                .append('\n')
                .append("property list uchar int vertex_indices\nend_header\n");
        for (int point = 0; point < mesh.pointCount(); point++) {
            text.append(number(mesh.x(point)))
                    .append(' ')
                    .append(number(mesh.y(point)))
                    .append(' ')
                    .append(number(mesh.z(point)))
                    .append('\n');
        }
        for (int face = 0; face < mesh.faceCount(); face++) {
            text.append(mesh.cornerCount(face));
            for (int k = 0; k < mesh.cornerCount(face); k++) {
                text.append(' ').append(mesh.corner(face, k));
            }
            text.append('\n');
        }
        return text.toString();
    }

    /** The same on every Java version, which a double's own text is not. */
    private static String number(double value) {
        return new BigDecimal(value).round(DIGITS).stripTrailingZeros().toPlainString();
    }
}
