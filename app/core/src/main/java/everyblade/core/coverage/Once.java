package everyblade.core.coverage;

import java.util.function.Supplier;

/** What is made when it is first asked for, and then the same for every thread. */
final class Once<T> {

    /** Null once it is made: what it was made of is not held on to. */
    private Supplier<T> how;

    private T made;

    Once(Supplier<T> how) {
        this.how = how;
    }

    synchronized T get() {
        if (how != null) {
            made = how.get();
            how = null;
        }
        return made;
    }
}
