package everyblade.desktop.command;

import everyblade.core.coverage.Coverage;

/** What it means that nothing is left: seen in part is as far as any view shows, and no more. */
final class NothingLeft {

    private NothingLeft() {}

    static String told(Coverage coverage) {
        int part = coverage.rows().stream()
                .mapToInt(row -> row.tally(row.zoning().all()).part())
                .sum();
        return part == 0
                ? "nothing is left: all that the task asks for is seen, or accepted as not seen"
                : "nothing is left to do, but not all is seen: " + part + (part == 1 ? " cell" : " cells")
                        + " only in part, as far as any view of this engine model shows";
    }
}
