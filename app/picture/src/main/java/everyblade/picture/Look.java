package everyblade.picture;

import everyblade.core.coverage.RowCoverage;
import everyblade.core.coverage.Why;
import everyblade.core.turning.Remark;
import everyblade.picture.scene.Ink;

/** How the state of a cell looks: a pattern, the ink that makes it, and the ink under it. */
enum Look {
    SEEN(Pattern.SOLID, Ink.SEEN, Ink.PAPER),
    PART(Pattern.FILLED_UP, Ink.PART, Ink.PART_WASH),
    /** Seen as far as it can be, which is less than half of it. */
    GLIMPSED(Pattern.SLITS, Ink.GLIMPSED, Ink.PART_WASH),
    MAYBE(Pattern.HATCH, Ink.MAYBE, Ink.MAYBE_WASH),
    UNSEEN(Pattern.EMPTY, Ink.LINE, Ink.PAPER),
    /** No view shows it, or none finely enough. */
    OUT_OF_REACH(Pattern.CROSS, Ink.NO_ACCESS, Ink.NO_ACCESS_WASH),
    FAST(Pattern.DOTS, Ink.FAST, Ink.FAST_WASH),
    STATED(Pattern.BARS, Ink.STATED, Ink.STATED_WASH);

    private final Pattern pattern;
    private final Ink mark;
    private final Ink wash;

    Look(Pattern pattern, Ink mark, Ink wash) {
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
            case PART -> coverage.glimpsed(airfoil, zone) ? GLIMPSED : PART;
            case MAYBE -> MAYBE;
            case UNSEEN -> stated ? STATED : unseen(coverage, airfoil, zone);
        };
    }

    private static Look unseen(RowCoverage coverage, int airfoil, int zone) {
        return coverage.why(airfoil, zone)
                .map(why -> why.outOfReach() ? OUT_OF_REACH : why == Why.FAST ? FAST : UNSEEN)
                .orElse(UNSEEN);
    }

    /** What it is called on the map. */
    String words(MapWords words) {
        return words.say("look.", this);
    }

    /** What that means. */
    String meaning(MapWords words) {
        return words.say("meaning.", this);
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
