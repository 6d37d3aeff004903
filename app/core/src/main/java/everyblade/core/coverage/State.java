package everyblade.core.coverage;

import everyblade.fact.Fact;

/** What is known of a cell. Whoever only asks whether it is done, or may be, asks its {@link Grade}. */
public enum State implements Fact {
    /** Surely in sight and watched, nearly all of it. */
    SEEN(Grade.DONE),
    /** As far as it can be seen. */
    PART(Grade.DONE),
    /** Only if the count and the scope tip were where they were thought to be. */
    MAYBE(Grade.DOUBTFUL),
    /** Not seen. */
    UNSEEN(Grade.LEFT);

    private final Grade grade;

    State(Grade grade) {
        this.grade = grade;
    }

    /** What a state leaves to do. */
    public enum Grade {
        /** Nothing. */
        DONE,
        /** Nothing, if the count and the scope tip were where they were thought to be. */
        DOUBTFUL,
        /** All. */
        LEFT
    }

    public Grade grade() {
        return grade;
    }

    /** Whether it leaves nothing to do. */
    public boolean isDone() {
        return grade == Grade.DONE;
    }

    /** The word in files. */
    public String word() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }
}
