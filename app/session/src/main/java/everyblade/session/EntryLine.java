package everyblade.session;

import everyblade.core.entry.Entry;
import everyblade.core.entry.Movement;
import everyblade.core.entry.Stated;
import everyblade.core.entry.TurnEntry;
import everyblade.core.entry.Unit;
import everyblade.core.turning.Logged;
import everyblade.spi.RowKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the entry line remembers between two strokes of Enter: what was typed before, and which doubtful entry it has
 * asked about. A doubtful entry is said only if the same text is entered again.
 */
public final class EntryLine {

    private static final Pattern NUMBER_ALONE = Pattern.compile("(-?)([0-9]{1,9}(?:[.,][0-9]{1,9})?)");
    private static final int REMEMBERED = 200;

    private final List<String> history = new ArrayList<>();
    private int at;
    private String draft = "";
    private Optional<String> asked = Optional.empty();

    /** Enter was struck on this text, which is not blank: whether it was asked about, and is meant. */
    public boolean entered(String typed) {
        boolean meant = asked.filter(typed::equals).isPresent();
        asked = Optional.empty();
        remember(typed);
        return meant;
    }

    /** It was not kept yet, but asked about. */
    public void asked(String line) {
        asked = Optional.of(line);
    }

    /** The text was changed: what was asked is asked again next time. */
    public void changed() {
        asked = Optional.empty();
    }

    private void remember(String text) {
        history.remove(text);
        history.add(text);
        if (history.size() > REMEMBERED) {
            history.remove(0);
        }
        at = history.size();
        draft = "";
    }

    /** The text entered before the one that stands there. */
    public Optional<String> older(String standing) {
        if (at == history.size()) {
            draft = standing;
        }
        if (at == 0) {
            return Optional.empty();
        }
        at--;
        return Optional.of(history.get(at));
    }

    /** The text entered after the one that stands there; at the end what was being typed. */
    public Optional<String> newer() {
        if (at >= history.size()) {
            return Optional.empty();
        }
        at++;
        return Optional.of(at == history.size() ? draft : history.get(at));
    }

    /**
     * A number alone is an amount of turning, of the scope tip's way round if the row in view stands still: in the
     * normal direction, or back if it has a minus; in the unit of the last such amount.
     */
    public static String expand(JobState state, String typed) {
        Matcher number = NUMBER_ALONE.matcher(typed);
        if (!number.matches()) {
            return typed;
        }
        boolean stands =
                state.seat().filter(seat -> seat.row().kind() != RowKind.ROTOR).isPresent();
        String sense = number.group(1).isEmpty() ? "on" : "back";
        return (stands ? "draw " : "turn ") + sense + " " + number.group(2) + " " + unit(state, stands);
    }

    private static String unit(JobState state, boolean stands) {
        List<Logged> entries = state.fold().entries();
        for (int i = entries.size() - 1; i >= 0; i--) {
            Entry entry = entries.get(i).entry();
            Optional<Unit> unit = movement(entry, stands)
                    .filter(Movement.By.class::isInstance)
                    .map(by -> ((Movement.By) by).unit());
            if (unit.isPresent() && !state.fold().isVoid(entries.get(i).number())) {
                return unit.get().name().toLowerCase(java.util.Locale.ROOT);
            }
        }
        return "deg";
    }

    /** Of moves of the scope tip only those that were watched say what is usual. */
    private static Optional<Movement> movement(Entry entry, boolean drawn) {
        boolean counts = drawn
                ? entry instanceof TurnEntry.Draw
                : entry instanceof TurnEntry.Turn || entry instanceof TurnEntry.Skip;
        return counts ? Stated.movement(entry) : Optional.empty();
    }
}
