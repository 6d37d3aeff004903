package everyblade.practice.eye;

/**
 * A triangle of a solid and the smooth normals at its corners, made ready once for the many picture elements that lie on it. Used
 * again for the next triangle, by one thread.
 */
final class Corners {

    private float[] normals = new float[0];
    private int a;
    private int b;
    private int c;
    private float x;
    private float y;
    private float z;
    private float ux;
    private float uy;
    private float uz;
    private float vx;
    private float vy;
    private float vz;
    private float uu;
    private float uv;
    private float vv;
    private float whole;

    /** Takes up a triangle, by its number. */
    void take(Solid solid, int triangle) {
        float[] p = solid.points;
        normals = solid.normals;
        a = 3 * solid.triangles[3 * triangle];
        b = 3 * solid.triangles[3 * triangle + 1];
        c = 3 * solid.triangles[3 * triangle + 2];
        x = p[a];
        y = p[a + 1];
        z = p[a + 2];
        ux = p[b] - x;
        uy = p[b + 1] - y;
        uz = p[b + 2] - z;
        vx = p[c] - x;
        vy = p[c + 1] - y;
        vz = p[c + 2] - z;
        uu = ux * ux + uy * uy + uz * uz;
        uv = ux * vx + uy * vy + uz * vz;
        vv = vx * vx + vy * vy + vz * vz;
        float square = uu * vv - uv * uv;
        whole = square == 0 ? 0 : 1 / square;
    }

    /** Turns a spot of the triangle as the smooth surface faces there: by its shares of the corners. */
    void facing(EyeSurface spot) {
        float wx = spot.x - x;
        float wy = spot.y - y;
        float wz = spot.z - z;
        float wu = wx * ux + wy * uy + wz * uz;
        float wv = wx * vx + wy * vy + wz * vz;
        float shareB = (vv * wu - uv * wv) * whole;
        float shareC = (uu * wv - uv * wu) * whole;
        float shareA = 1 - shareB - shareC;
        float[] n = normals;
        spot.nx = shareA * n[a] + shareB * n[b] + shareC * n[c];
        spot.ny = shareA * n[a + 1] + shareB * n[b + 1] + shareC * n[c + 1];
        spot.nz = shareA * n[a + 2] + shareB * n[b + 2] + shareC * n[c + 2];
        spot.tilt(0, 0, 0);
    }
}
