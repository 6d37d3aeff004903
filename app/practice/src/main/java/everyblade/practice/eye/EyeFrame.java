package everyblade.practice.eye;

import java.util.List;

/**
 * Which face of which solid is nearest at the middle of each picture element, and how far it is. Picture elements outside the
 * round field hold nothing.
 */
public final class EyeFrame {

    /** Where there is nothing. */
    public static final int NOTHING = -1;

    final Camera camera;
    final List<PlacedMesh> placed;
    final float[][] matrices;
    final int[] slots;
    final float[] nearness;
    final int[] ofPlaced;
    final int[] ofTriangle;

    EyeFrame(
            Camera camera,
            List<PlacedMesh> placed,
            float[][] matrices,
            int[] slots,
            float[] nearness,
            int[] ofPlaced,
            int[] ofTriangle) {
        this.camera = camera;
        this.placed = placed;
        this.matrices = matrices;
        this.slots = slots;
        this.nearness = nearness;
        this.ofPlaced = ofPlaced;
        this.ofTriangle = ofTriangle;
    }

    /** How many picture elements lie across it. */
    public int size() {
        return camera.size;
    }

    /** Index, among those drawn, of what is nearest at a picture element (counted line by line), or {@link #NOTHING}. */
    public int placed(int element) {
        return slots[element] < 0 ? NOTHING : ofPlaced[slots[element]];
    }

    /** The face of its mesh. */
    public int face(int element) {
        int slot = slots[element];
        return placed.get(ofPlaced[slot]).solid().faces[ofTriangle[slot]];
    }

    /** What was drawn. */
    public List<PlacedMesh> drawn() {
        return placed;
    }

    /** How far ahead it lies, mm along the optical axis. */
    float ahead(int element) {
        return 1 / nearness[element];
    }

    /** How far it lies from the scope tip, mm. */
    public double distance(int element) {
        return ahead(element) * Math.sqrt(1 + across(element) * across(element) + up(element) * up(element));
    }

    /** The sine of the angle between the line of sight and the face there; 1 square on. */
    public double slant(int element) {
        int slot = slots[element];
        PlacedMesh one = placed.get(ofPlaced[slot]);
        float[] m = matrices[ofPlaced[slot]];
        float[] p = one.solid().points;
        int a = 3 * one.solid().triangles[3 * ofTriangle[slot]];
        int b = 3 * one.solid().triangles[3 * ofTriangle[slot] + 1];
        int c = 3 * one.solid().triangles[3 * ofTriangle[slot] + 2];
        float ux = p[b] - p[a];
        float uy = p[b + 1] - p[a + 1];
        float uz = p[b + 2] - p[a + 2];
        float vx = p[c] - p[a];
        float vy = p[c + 1] - p[a + 1];
        float vz = p[c + 2] - p[a + 2];
        float nx = uy * vz - uz * vy;
        float ny = uz * vx - ux * vz;
        float nz = ux * vy - uy * vx;
        double x = across(element);
        double y = up(element);
        double along = x * (m[0] * nx + m[1] * ny + m[2] * nz)
                + y * (m[4] * nx + m[5] * ny + m[6] * nz)
                + m[8] * nx
                + m[9] * ny
                + m[10] * nz;
        return Math.abs(along) / Math.sqrt((1 + x * x + y * y) * (nx * nx + ny * ny + nz * nz));
    }

    private float across(int element) {
        return (element % camera.size + 0.5f - camera.radius) / camera.scale;
    }

    private float up(int element) {
        return (camera.radius - element / camera.size - 0.5f) / camera.scale;
    }

    /** Writes x, y and z of what is seen at an element, in the frame of its solid standing at clock 0. */
    public void place(int element, float[] into) {
        int slot = slots[element];
        float ahead = 1 / nearness[element];
        back(matrices[ofPlaced[slot]], across(element) * ahead, up(element) * ahead, ahead, into);
    }

    /** From right, up and ahead into the frame of a solid. */
    static void back(float[] m, float across, float up, float ahead, float[] into) {
        float a = across - m[3];
        float b = up - m[7];
        float c = ahead - m[11];
        into[0] = m[0] * a + m[4] * b + m[8] * c;
        into[1] = m[1] * a + m[5] * b + m[9] * c;
        into[2] = m[2] * a + m[6] * b + m[10] * c;
    }
}
