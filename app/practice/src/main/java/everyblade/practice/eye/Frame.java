package everyblade.practice.eye;

import java.util.List;

/**
 * Which face of which solid is nearest at the middle of each picture element, and how far it is. Picture elements outside the
 * round field hold nothing.
 */
public final class Frame {

    /** Where there is nothing. */
    public static final int NOTHING = -1;

    final Camera camera;
    final List<Placed> placed;
    final float[][] matrices;
    final int[] slots;
    final float[] nearness;
    final int[] ofPlaced;
    final int[] ofTriangle;

    Frame(
            Camera camera,
            List<Placed> placed,
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
    public List<Placed> drawn() {
        return placed;
    }

    /** How far ahead it lies, mm along the optical axis. */
    public float ahead(int element) {
        return 1 / nearness[element];
    }

    /** Writes x, y and z of what is seen at an element, in the frame of its solid standing at clock 0. */
    public void place(int element, float[] into) {
        int slot = slots[element];
        float ahead = 1 / nearness[element];
        float across = (element % camera.size + 0.5f - camera.radius) / camera.scale * ahead;
        float up = (camera.radius - element / camera.size - 0.5f) / camera.scale * ahead;
        back(matrices[ofPlaced[slot]], across, up, ahead, into);
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
