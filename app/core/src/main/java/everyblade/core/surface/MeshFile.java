package everyblade.core.surface;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * Reads the contents of a mesh file: PLY 1.0 (ascii or binary of either byte order) or STL (ascii or binary), told apart
 * by what they begin with. Lengths are mm in the frame of the package, the airfoil stands at clock 0, and faces run
 * anticlockwise seen from outside.
 *
 * <p>Faces without area are left out; STL points in one place become one point. All faces have zone 0.
 */
final class MeshFile {

    private static final int STL_HEADER = 80;
    private static final int STL_TRIANGLE = 50;

    private MeshFile() {}

    /**
     * The mesh in a file.
     *
     * @param name of the file, for messages
     * @throws UnusableShape if it is none of these formats, is damaged or has no face with an area
     */
    static Mesh read(byte[] content, String name) throws UnusableShape {
        try {
            return mesh(content);
        } catch (Damaged e) {
            throw new UnusableShape(new ShapeFault.DamagedFile(name, e.damage()));
        }
    }

    private static Mesh mesh(byte[] content) throws Damaged, UnusableShape {
        if (beginsWith(content, "ply\n") || beginsWith(content, "ply\r")) {
            return new PlyReader(content).mesh();
        }
        if (isBinaryStl(content)) {
            return StlReader.binary(content);
        }
        if (beginsWith(content, "solid")) {
            return StlReader.ascii(new String(content, StandardCharsets.ISO_8859_1));
        }
        throw new Damaged(FileDamage.Plain.UNKNOWN_BEGINNING);
    }

    private static boolean beginsWith(byte[] content, String word) {
        byte[] bytes = word.getBytes(StandardCharsets.US_ASCII);
        return content.length >= bytes.length && Arrays.equals(content, 0, bytes.length, bytes, 0, bytes.length);
    }

    /** Judged by its length, since binary files may begin with "solid" too. */
    private static boolean isBinaryStl(byte[] content) {
        if (content.length < STL_HEADER + Integer.BYTES) {
            return false;
        }
        long count = Integer.toUnsignedLong(
                ByteBuffer.wrap(content).order(ByteOrder.LITTLE_ENDIAN).getInt(STL_HEADER));
        return content.length == STL_HEADER + Integer.BYTES + STL_TRIANGLE * count;
    }

    /** What is wrong with the content. */
    static final class Damaged extends Exception {

        private static final long serialVersionUID = 1L;

        private final transient FileDamage damage;

        Damaged(FileDamage damage) {
            super(damage.toString(), null, false, false);
            this.damage = damage;
        }

        FileDamage damage() {
            return damage;
        }
    }
}
