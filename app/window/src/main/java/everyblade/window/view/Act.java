package everyblade.window.view;

/** The things that make up most of a job, each done by one key or one button. */
public enum Act {
    /** The last move once more. */
    AGAIN,
    /** Turned on by one blade, watching; of a static row, the scope tip is drawn. */
    ONE_ON,
    /** Watched at rest. */
    LOOK,
    /** One full watched turn; needs the airfoil's number. */
    ROUND,
    /** This airfoil is at the reference; needs its number, which is never filled in. */
    HERE,
    WATCH_ROOT,
    WATCH_TIP,
    WATCH_ALL,
    /** Something to come back to, at the number typed or the cell selected. */
    RECHECK,
    /** The rotor may have moved unwatched. */
    SLIP,
    /** The newest picture of the watched folder. */
    PHOTO,
    /** A finding at the cell selected. */
    FIND,
    /** The last entry does not count. */
    UNDO,
    /** What was undone last counts again. */
    REDO
}
