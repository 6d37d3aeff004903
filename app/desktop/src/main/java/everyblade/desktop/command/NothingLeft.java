package everyblade.desktop.command;

import everyblade.core.coverage.Coverage;

/** What it means that nothing is left: seen in part is as far as any view shows, and no more. */
public final class NothingLeft {

    private NothingLeft() {}

    /** Cells that are seen only in part. */
    public static int inPart(Coverage coverage) {
        return coverage.rows().stream()
                .mapToInt(row -> row.tally(row.zoning().all()).part())
                .sum();
    }

    static String told(Coverage coverage) {
        int part = inPart(coverage);
        return part == 0
                ? "nothing is left: all that the task asks for is seen, or accepted as not seen"
                : "nothing is left to do, but not all is seen: " + part + (part == 1 ? " cell" : " cells")
                        + " only in part, as far as any view of this engine model shows";
    }
}
