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
    MAYBE,
    MAYBE_WASH,
    NO_ACCESS,
    NO_ACCESS_WASH,
    FAST,
    FAST_WASH,
    STATED,
    STATED_WASH
}
