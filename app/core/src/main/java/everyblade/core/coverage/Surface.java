package everyblade.core.coverage;

/**
 * How much of the surface of each cell something is true of, mm².
 *
 * @param all of it
 * @param strip of its outermost strip, of a cell at the leading or trailing edge
 */
record Surface(double[] all, double[] strip) {

    static Surface none(int cells) {
        return new Surface(new double[cells], new double[cells]);
    }

    void addIf(boolean holds, int cell, double area, double ofStrip) {
        if (holds) {
            add(cell, area, ofStrip);
        }
    }

    void add(int cell, double area, double ofStrip) {
        all[cell] += area;
        strip[cell] += ofStrip;
    }
}
