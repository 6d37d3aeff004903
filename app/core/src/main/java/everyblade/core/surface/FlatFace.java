package everyblade.core.surface;

/** A face of a mesh that has no area. */
final class FlatFace extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    private final int face;

    FlatFace(int face) {
        super("face " + face + " of the mesh has no area");
        this.face = face;
    }

    int face() {
        return face;
    }
}
