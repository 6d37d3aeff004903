package everyblade.window;

import everyblade.core.sight.Progress;
import everyblade.window.author.Attempt;
import everyblade.window.author.AuthorState;
import everyblade.window.author.ModelFolder;
import everyblade.window.author.ReadModel;
import everyblade.window.author.Sight;
import everyblade.window.author.SightShares;
import everyblade.window.author.Stamp;
import everyblade.window.author.Standpoint;
import everyblade.window.author.UnrolledAirfoil;
import everyblade.window.author.Watch;
import everyblade.words.Words;
import java.time.InstantSource;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;

/**
 * Watches a model's folder and keeps what is shown of it up to date: each thing that is worked out is handed through the door,
 * and given up when something newer makes it worthless. To be used on the event thread.
 */
final class AuthorDesk {

    private static final Runnable NOTHING = () -> {};

    private final Door door;
    private final Words words;
    private final InstantSource clock;
    private final Consumer<AuthorState> changed;
    private AuthorState state;
    private Watch watch = Watch.FIRST;
    /** The files that belong to the model as it was read last. */
    private Set<String> named = ModelFolder.files();

    private boolean looking;
    /** Stops what is worked out from a model that was read. */
    private Runnable seeing = NOTHING;

    private Optional<Attempt> viewsChecked = Optional.empty();
    private boolean closed;

    /**
     * @param start what is known already
     * @param changed is told whenever something else is known
     */
    AuthorDesk(AuthorState start, Door door, Words words, InstantSource clock, Consumer<AuthorState> changed) {
        this.state = start;
        this.door = door;
        this.words = words;
        this.clock = clock;
        this.changed = changed;
    }

    AuthorState state() {
        return state;
    }

    private void show(AuthorState next) {
        state = next;
        changed.accept(next);
    }

    /** Looks whether something was saved, and reads it if it was; to be called again and again. */
    void look() {
        if (looking || closed) {
            return;
        }
        looking = true;
        Set<String> names = named;
        ModelFolder folder = state.folder();
        door.latest("author look", () -> folder.stamp(names), this::looked);
    }

    private void looked(Stamp stamp) {
        looking = false;
        watch = watch.looked(stamp);
        if (watch.isDue() && !closed) {
            read();
        }
    }

    /** Reads the folder now. What is being worked out goes on until there is a newer model to work on. */
    void read() {
        ModelFolder folder = state.folder();
        Set<String> names = named;
        Optional<String> row = state.row();
        door.run(
                words.say("author.wait.check"),
                () -> Checked.of(folder.read(names, clock.instant()).checked(words), row, words),
                this::read);
    }

    /** A reading, and the sheet of the model if it gave one. */
    private record Checked(Attempt attempt, Optional<AuthorState.Sheet> sheet) {

        static Checked of(Attempt attempt, Optional<String> row, Words words) {
            return new Checked(attempt, attempt.model().map(read -> AuthorState.sheet(read, row, words)));
        }
    }

    private void read(Checked now) {
        if (closed) {
            return;
        }
        watch = watch.read(now.attempt().stamp());
        named = now.attempt().stamp().names();
        if (now.sheet().isEmpty()) {
            show(state.broken(now.attempt()));
            return;
        }
        seeing.run();
        seeing = NOTHING;
        show(state.read(now.attempt(), now.sheet().get()));
        see();
    }

    /** Shows another row from aft. */
    void row(String id) {
        state.drawn()
                .ifPresent(read ->
                        door.latest("author row", () -> AuthorState.sheet(read, Optional.of(id), words), sheet -> {
                            if (state.drawn().equals(Optional.of(read))) {
                                show(state.with(sheet));
                            }
                        }));
    }

    /** Looks from elsewhere. */
    void from(Standpoint place) {
        if (state.drawn().isPresent() && !state.from().equals(Optional.of(place))) {
            show(state.from(place));
            see();
        }
    }

    /** Works out what is seen from where it is looked; once that is known, what else the views have wrong. */
    void see() {
        seeing.run();
        seeing = NOTHING;
        if (state.drawn().isEmpty() || state.from().isEmpty()) {
            return;
        }
        Optional<String> why = state.whyNoSight();
        if (why.isPresent()) {
            show(state.with(new Sight.Impossible(why.get())));
            checkViews();
            return;
        }
        ReadModel read = state.drawn().get();
        Standpoint from = state.from().get();
        show(state.with(new Sight.Computing()));
        seeing = door.watched(
                words.say("author.wait.sight", from.toString()), progress -> shares(read, from, progress), known -> {
                    seeing = NOTHING;
                    show(state.with(known.orElseGet(Sight.Stopped::new)));
                    if (state.sight() instanceof Sight.Known shares) {
                        unroll(read, from, shares);
                    }
                });
    }

    private static Sight shares(ReadModel read, Standpoint from, Progress progress) {
        try {
            return new Sight.Known(SightShares.of(read, from, progress), Optional.empty());
        } catch (CancellationException stopped) {
            throw stopped;
        } catch (IllegalStateException unusableShape) {
            return new Sight.Impossible("author.sight.badShape");
        }
    }

    private void unroll(ReadModel read, Standpoint from, Sight.Known shares) {
        seeing = door.watched(
                words.say("author.wait.unrolled"), progress -> UnrolledAirfoil.of(read, from, words), drawn -> {
                    seeing = NOTHING;
                    drawn.ifPresent(scene -> {
                        show(state.with(new Sight.Known(shares.shares(), scene)));
                        checkViews();
                    });
                });
    }

    private void checkViews() {
        Optional<Attempt> last = state.last().filter(one -> one.model().isPresent());
        if (last.isEmpty() || viewsChecked.equals(last)) {
            return;
        }
        seeing = door.watched(
                words.say("author.wait.views"), progress -> last.get().checkedViews(progress, words), checked -> {
                    seeing = NOTHING;
                    if (checked.isPresent() && state.last().equals(last)) {
                        viewsChecked = checked;
                        show(state.told(checked.get()));
                    }
                });
    }

    /** Stops what is being worked out. */
    void stop() {
        seeing.run();
        seeing = NOTHING;
        if (state.sight() instanceof Sight.Computing) {
            show(state.with(new Sight.Stopped()));
        }
    }

    /** Works on nothing more. */
    void close() {
        closed = true;
        seeing.run();
    }
}
