package everyblade.core.coverage;

/**
 * How much of the surface of each cell something is true of, mm².
 *
 * @param all of it
 * @param strip of its outermost strip, of a cell at the leading or trailing edge
 */
record CoveredSurface(double[] all, double[] strip) {

    static CoveredSurface none(int cells) {
        return new CoveredSurface(new double[cells], new double[cells]);
    }

    void add(int cell, double area, double ofStrip) {
        all[cell] += area;
        strip[cell] += ofStrip;
    }

    /** Says of so many cells from one on what is said of those from another on. */
    void copy(int from, int to, int cells) {
        System.arraycopy(all, from, all, to, cells);
        System.arraycopy(strip, from, strip, to, cells);
    }
}
