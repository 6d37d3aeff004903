package everyblade.desktop.view;

import everyblade.core.entry.Kind;
import everyblade.desktop.map.CellAt;
import java.util.ArrayList;
import java.util.List;

/**
 * What the form for a finding says, as typed; blank sizes are not said.
 *
 * @param state of the job
 * @param cell where it was found
 * @param kind what was found
 * @param length mm
 * @param depth mm
 * @param plusMinus of the sizes, mm
 * @param picture a file
 */
public record FindingForm(
        JobState state, CellAt cell, Kind kind, String length, String depth, String plusMinus, String picture) {

    /** The cell's zone as entries name it. */
    public String zone() {
        return CellWords.zone(state, cell);
    }

    /** The finding, and its picture if there is one. */
    public List<String> entries() {
        List<String> entries = new ArrayList<>();
        StringBuilder finding =
                new StringBuilder(CellWords.row(state, cell) + kind.word() + " " + cell.airfoil() + " " + zone());
        said(finding, "length", length);
        said(finding, "depth", depth);
        said(finding, "±", plusMinus);
        entries.add(finding.toString());
        if (!picture.isBlank()) {
            boolean inView = CellWords.row(state, cell).isEmpty();
            entries.add("photo " + EntryWords.quoted(picture.strip())
                    + (inView ? " of " + cell.airfoil() + " " + zone() : ""));
        }
        return entries;
    }

    private static void said(StringBuilder finding, String word, String size) {
        if (!size.isBlank()) {
            finding.append(' ').append(word).append(' ').append(size.strip());
        }
    }
}
