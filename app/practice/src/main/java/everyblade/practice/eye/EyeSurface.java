package everyblade.practice.eye;

/**
 * One spot of a surface while it is being lit: where it is, which way it faces, and how it looks. What lies on a surface
 * changes this in turn. Used again for the next spot, by one thread.
 */
public final class EyeSurface {

    /** Place in the solid's frame, standing at clock 0, mm. */
    public float x;

    public float y;
    public float z;

    /** Which way it faces, of unit length. */
    public float nx;

    public float ny;
    public float nz;

    /** Whether its inner side shows, where the surface is cut open. */
    public boolean inner;

    /** How much red, green and blue light it throws back in all directions, 0 to 1. */
    public float red;

    public float green;
    public float blue;

    /** How much it throws back as a mirror does, 0 to 1. */
    public float gloss;

    /** How narrow that is: 5 is dull, 100 polished. */
    public float polish;

    /** How much of the spot a picture element covers, mm. */
    public float grain;

    /** Its colour. */
    public void colour(float newRed, float newGreen, float newBlue) {
        red = newRed;
        green = newGreen;
        blue = newBlue;
    }

    /** Goes a share of the way to another colour. */
    public void towards(float share, float toRed, float toGreen, float toBlue) {
        red += share * (toRed - red);
        green += share * (toGreen - green);
        blue += share * (toBlue - blue);
    }

    /** Tilts the normal; it stays of unit length. */
    public void tilt(float dx, float dy, float dz) {
        nx += dx;
        ny += dy;
        nz += dz;
        float one = 1 / (float) Math.sqrt(nx * nx + ny * ny + nz * nz);
        nx *= one;
        ny *= one;
        nz *= one;
    }
}
