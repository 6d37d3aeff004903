package everyblade.window.view;

import everyblade.core.entry.EntryKind;
import everyblade.core.entry.EntryText;
import everyblade.core.entry.RecordEntry;
import everyblade.core.entry.Zoning;
import everyblade.core.turning.Logged;
import everyblade.core.turning.Seat;
import everyblade.session.JobState;
import everyblade.spi.RowKind;
import everyblade.window.map.CellAt;
import everyblade.words.Words;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The entry that an act makes in a situation.
 *
 * @param state of the job
 * @param typed what stands in the entry line
 * @param selected the cell selected on the map
 * @param picture name of the newest picture of the watched folder
 * @param words in which reasons are told
 */
public record ActLine(JobState state, String typed, Optional<CellAt> selected, Optional<String> picture, Words words) {

    /** Acts that a number in the line belongs to, and the one that leaves the line alone. */
    private static final Set<Act> TAKES_TEXT = EnumSet.of(Act.ROUND, Act.HERE, Act.RECHECK, Act.FIND);

    /** What an act comes to. */
    public sealed interface Outcome {}

    /** An entry to be said now. */
    public record Line(String text) implements Outcome {}

    /** Text to go on with in the entry line. */
    public record Begin(String text) implements Outcome {}

    /** Nothing, and why. */
    public record Not(String reason) implements Outcome {}

    /** What this act comes to. */
    public Outcome of(Act act) {
        if (!typed.isBlank() && !TAKES_TEXT.contains(act)) {
            return new Not(words.say("act.typed"));
        }
        return switch (act) {
            case AGAIN -> again();
            case ONE_ON -> inView(seat -> seat.row().kind() == RowKind.ROTOR ? "turn on 1 blades" : "draw 1 blades");
            case LOOK -> inView(seat -> "look");
            case ROUND -> numbered("round");
            case HERE -> numbered("here");
            case WATCH_ROOT -> watch(true);
            case WATCH_TIP -> watch(false);
            case WATCH_ALL -> inView(seat -> "watch all");
            case RECHECK -> recheck();
            case SLIP -> new Line("slip");
            case PHOTO -> photo();
            case FIND -> new Begin("");
            case UNDO -> undo();
            case REDO -> redo();
        };
    }

    private Outcome inView(java.util.function.Function<Seat, String> line) {
        return state.seat().map(line).<Outcome>map(Line::new).orElseGet(() -> new Not(words.say("act.noView")));
    }

    /** Only a move that went without a word is repeated blindly; what checks or breaks the count never is. */
    private Outcome again() {
        Optional<Logged> last = state.last();
        boolean move = last.map(Logged::entry)
                .filter(entry -> EntryKind.of(entry).repeats())
                .isPresent();
        if (!move || state.fold().isVoid(last.get().number())) {
            return new Not(words.say("act.noAgain"));
        }
        return state.fold().warnings().isEmpty() ? new Line(last.get().text()) : new Not(words.say("act.againWarned"));
    }

    private Outcome numbered(String verb) {
        String number = typed.strip();
        return number.matches("[0-9]{1,6}") ? new Line(verb + " " + number) : new Not(words.say("act.number", verb));
    }

    private Outcome watch(boolean first) {
        if (state.seat().isEmpty()) {
            return new Not(words.say("act.noView"));
        }
        Zoning zoning = state.situation()
                .engine()
                .zonings()
                .get(state.seat().get().row().id());
        List<String> spans = zoning.spans();
        return spans.isEmpty()
                ? new Not(words.say("act.undivided"))
                : new Line("watch " + spans.get(first ? 0 : spans.size() - 1));
    }

    private Outcome recheck() {
        String number = typed.strip();
        if (number.matches("[0-9]{1,6}")) {
            return new Begin("recheck " + number + " ");
        }
        if (!number.isEmpty()) {
            return new Not(words.say("act.typed"));
        }
        return selected.<Outcome>map(cell ->
                        new Begin("recheck " + CellWords.row(state, cell) + cell.airfoil() + " " + zone(cell) + " "))
                .orElseGet(() -> new Not(words.say("act.where")));
    }

    private String zone(CellAt cell) {
        return CellWords.zone(state, cell);
    }

    private Outcome photo() {
        if (picture.isEmpty()) {
            return new Not(words.say("act.noPicture"));
        }
        String file = EntryText.name(picture.get());
        boolean ofRowInView = selected.isPresent()
                && state.seat()
                        .filter(seat -> seat.row().id().equals(selected.get().row()))
                        .isPresent();
        return new Line(
                ofRowInView
                        ? "photo " + file + " of " + selected.get().airfoil() + " " + zone(selected.get())
                        : "photo " + file);
    }

    private Outcome undo() {
        List<Logged> entries = state.fold().entries();
        for (int i = entries.size() - 1; i >= 0; i--) {
            Logged logged = entries.get(i);
            if (!(logged.entry() instanceof RecordEntry.Void) && !state.fold().isVoid(logged.number())) {
                return new Line("void " + logged.number() + " because " + words.say("act.takenBack"));
            }
        }
        return new Not(words.say("act.nothingToUndo"));
    }

    /** Only directly after undoing: an entry made since then would stand on what was taken back. */
    private Outcome redo() {
        List<Logged> entries = state.fold().entries();
        for (int i = entries.size() - 1; i >= 0 && entries.get(i).entry() instanceof RecordEntry.Void struck; i--) {
            boolean strikesEntry = !(entries.get(struck.entry().value() - 1).entry() instanceof RecordEntry.Void);
            if (strikesEntry && !state.fold().isVoid(entries.get(i).number())) {
                return new Line("void " + entries.get(i).number() + " because " + words.say("act.wantedAfterAll"));
            }
        }
        return new Not(words.say("act.nothingToRedo"));
    }
}
