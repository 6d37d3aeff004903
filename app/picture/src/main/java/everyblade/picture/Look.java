package everyblade.picture;

import everyblade.core.coverage.RowCoverage;
import everyblade.core.coverage.Why;
import everyblade.core.turning.Remark;
import everyblade.picture.scene.Ink;

/** How the state of a cell looks: a pattern, the ink that makes it, and the ink under it. */
enum Look {
    SEEN("inspected", "surely in sight and watched", Pattern.SOLID, Ink.SEEN, Ink.PAPER),
    PART("inspected in part", "as far as it can be", Pattern.FILLED_UP, Ink.PART, Ink.PART_WASH),
    MAYBE("maybe", "only if count and placing were right", Pattern.HATCH, Ink.MAYBE, Ink.MAYBE_WASH),
    UNSEEN("not inspected", "still to do", Pattern.EMPTY, Ink.LINE, Ink.PAPER),
    NO_ACCESS("not accessible", "no view shows it well enough", Pattern.CROSS, Ink.NO_ACCESS, Ink.NO_ACCESS_WASH),
    FAST("too fast", "in view, but not long enough", Pattern.DOTS, Ink.FAST, Ink.FAST_WASH),
    STATED("stated with a picture", "someone says so; not counted", Pattern.BARS, Ink.STATED, Ink.STATED_WASH);

    private final String words;
    private final String meaning;
    private final Pattern pattern;
    private final Ink mark;
    private final Ink wash;

    Look(String words, String meaning, Pattern pattern, Ink mark, Ink wash) {
        this.words = words;
        this.meaning = meaning;
        this.pattern = pattern;
        this.mark = mark;
        this.wash = wash;
    }

    /** How a cell of this row looks. */
    static Look of(RowCoverage coverage, int airfoil, int zone) {
        return of(coverage, airfoil, zone, coverage.remarked(Remark.What.STATED, airfoil, zone));
    }

    /** How a cell looks of which it is known whether someone states that it was seen. */
    static Look of(RowCoverage coverage, int airfoil, int zone, boolean stated) {
        return switch (coverage.state(airfoil, zone)) {
            case SEEN -> SEEN;
            case PART -> PART;
            case MAYBE -> MAYBE;
            case UNSEEN -> stated ? STATED : unseen(coverage, airfoil, zone);
        };
    }

    private static Look unseen(RowCoverage coverage, int airfoil, int zone) {
        return coverage.why(airfoil, zone)
                .map(why -> why == Why.NO_ACCESS || why == Why.COARSE ? NO_ACCESS : why == Why.FAST ? FAST : UNSEEN)
                .orElse(UNSEEN);
    }

    /** What it is called on the map. */
    String words() {
        return words;
    }

    /** What that means. */
    String meaning() {
        return meaning;
    }

    Pattern pattern() {
        return pattern;
    }

    /** The ink of the pattern. */
    Ink mark() {
        return mark;
    }

    /** The ink under the pattern. */
    Ink wash() {
        return wash;
    }
}
