package everyblade.window.view;

import everyblade.core.entry.EntryText;
import everyblade.session.JobState;
import everyblade.window.map.CellAt;

/** How a cell is named in an entry. */
final class CellWords {

    private CellWords() {}

    /** The row's id and a space where the entry would otherwise mean another row; else nothing. */
    public static String row(JobState state, CellAt cell) {
        boolean inView =
                state.seat().filter(seat -> seat.row().id().equals(cell.row())).isPresent();
        return inView ? "" : EntryText.name(cell.row()) + " ";
    }

    /** The cell's zone, such as {@code tip/pressure/leading}. */
    static String zone(JobState state, CellAt cell) {
        return state.situation().engine().zonings().get(cell.row()).names().get(cell.zone());
    }
}
