package everyblade.window;

import everyblade.core.sight.Progress;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Consumer;

/** A door without threads: what is handed in is done before the call returns. */
final class DirectDoor implements Door {

    final List<String> failures = new ArrayList<>();
    private final boolean plans;

    DirectDoor() {
        this(true);
    }

    private DirectDoor(boolean plans) {
        this.plans = plans;
    }

    /** One behind which nobody ever knows what is next: for whoever only asks where things stand. */
    static DirectDoor withoutPlans() {
        return new DirectDoor(false);
    }

    @Override
    public <T> void run(String what, Callable<T> work, Consumer<T> then) {
        T value;
        try {
            value = work.call();
        } catch (Exception failure) {
            failures.add(failure.getMessage());
            return;
        }
        then.accept(value);
    }

    @Override
    public <T> void latest(String kind, Callable<T> work, Consumer<T> then) {
        run(kind, work, then);
    }

    @Override
    public <T> void aside(String what, Callable<T> work, Consumer<T> then) {
        run(what, work, then);
    }

    @Override
    public <T> Runnable watched(String what, Watched<T> work, Consumer<Optional<T>> then) {
        if (!plans) {
            return () -> {};
        }
        run(what, () -> work.done(Progress.NONE), value -> then.accept(Optional.of(value)));
        return () -> {};
    }

    @Override
    public void fault(Throwable fault) {
        failures.add(fault.toString());
    }

    @Override
    public void close() {}
}
