package everyblade.picture.scene;

/** The named inks of a picture; a theme says which colour each has. */
public enum Ink {
    /** The sheet itself. */
    PAPER,
    /** Lines and words. */
    LINE,
    /** Lines and words of less weight. */
    FAINT,
    /** What must not be overlooked. */
    ALERT,
    SEEN,
    PART,
    PART_WASH,
    /** On {@link #PART_WASH}. */
    GLIMPSED,
    MAYBE,
    MAYBE_WASH,
    NO_ACCESS,
    NO_ACCESS_WASH,
    FAST,
    FAST_WASH,
    STATED,
    STATED_WASH,
    /** The first of five steps from a little to much; words on this and the next two are in {@link #LINE}. */
    STEP_1,
    STEP_2,
    STEP_3,
    /** Words on this and the last one are in {@link #PAPER}. */
    STEP_4,
    STEP_5
}
