package everyblade.practice.eye;

/** Fills triangles into some columns of a frame. */
final class TileFiller {

    private final EyeFrame frame;
    private final float[] corners;
    private final int left;
    private final int right;
    private final int size;
    private final float[] local = new float[3];

    TileFiller(EyeFrame frame, float[] corners, int left, int right) {
        this.frame = frame;
        this.corners = corners;
        this.left = left;
        this.right = right;
        this.size = frame.size();
    }

    /** In the picture plane it is the inverse of the depth that is linear. */
    void triangle(int slot, boolean cut, int top, int bottom) {
        int at = 9 * slot;
        double x0 = corners[at];
        double y0 = corners[at + 1];
        double x1 = corners[at + 3];
        double y1 = corners[at + 4];
        double x2 = corners[at + 6];
        double y2 = corners[at + 7];
        double area = (x1 - x0) * (y2 - y0) - (y1 - y0) * (x2 - x0);
        if (area == 0) {
            return;
        }
        double n0 = corners[at + 2] / area;
        double n1 = corners[at + 5] / area;
        double n2 = corners[at + 8] / area;
        int from = Math.max(top, (int) Math.ceil(Math.min(y0, Math.min(y1, y2)) - 0.5));
        int to = Math.min(bottom, (int) Math.floor(Math.max(y0, Math.max(y1, y2)) - 0.5));
        double sense = area > 0 ? 1 : -1;
        double slope = (y1 - y2) * n0 + (y2 - y0) * n1 + (y0 - y1) * n2;
        for (int line = from; line <= to; line++) {
            double down = line + 0.5;
            double s0 = x1 * (y2 - down) - x2 * (y1 - down);
            double s1 = x2 * (y0 - down) - x0 * (y2 - down);
            double s2 = x0 * (y1 - down) - x1 * (y0 - down);
            double low = left + 0.5;
            double high = right + 0.5;
            double rise = (y1 - y2) * sense;
            low = rise > 0 ? Math.max(low, -s0 * sense / rise) : low;
            high = rise < 0 ? Math.min(high, -s0 * sense / rise) : rise == 0 && s0 * sense < 0 ? -1 : high;
            rise = (y2 - y0) * sense;
            low = rise > 0 ? Math.max(low, -s1 * sense / rise) : low;
            high = rise < 0 ? Math.min(high, -s1 * sense / rise) : rise == 0 && s1 * sense < 0 ? -1 : high;
            rise = (y0 - y1) * sense;
            low = rise > 0 ? Math.max(low, -s2 * sense / rise) : low;
            high = rise < 0 ? Math.min(high, -s2 * sense / rise) : rise == 0 && s2 * sense < 0 ? -1 : high;
            line(slot, cut, line, low, high, s0 * n0 + s1 * n1 + s2 * n2, slope);
        }
    }

    private void line(int slot, boolean cut, int line, double low, double high, double constant, double slope) {
        int last = (int) Math.floor(high - 0.5);
        double half = size / 2.0;
        double reach = Math.sqrt(Math.max(0, half * half - (line + 0.5 - half) * (line + 0.5 - half)));
        last = Math.min(last, (int) Math.floor(half + reach - 0.5));
        int first = Math.max((int) Math.ceil(low - 0.5), (int) Math.ceil(half - reach - 0.5));
        for (int column = first; column <= last; column++) {
            float nearer = (float) (constant + slope * (column + 0.5));
            int element = line * size + column;
            if (nearer > frame.nearness[element] && !(cut && gone(slot, column, line, nearer))) {
                frame.nearness[element] = nearer;
                frame.slots[element] = slot;
            }
        }
    }

    private boolean gone(int slot, int column, int line, float nearness) {
        Camera camera = frame.camera;
        float ahead = 1 / nearness;
        float across = (column + 0.5f - camera.radius) / camera.scale * ahead;
        float up = (camera.radius - line - 0.5f) / camera.scale * ahead;
        int placed = frame.ofPlaced[slot];
        EyeFrame.back(frame.matrices[placed], across, up, ahead, local);
        for (Trace trace : frame.placed.get(placed).traces()) {
            if (trace.gone(local[0], local[1], local[2])) {
                return true;
            }
        }
        return false;
    }
}
