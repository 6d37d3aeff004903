package everyblade.window.view;

import everyblade.core.entry.Entry.LengthUnit;
import everyblade.core.entry.EntryText;
import everyblade.core.entry.Kind;
import everyblade.session.JobState;
import everyblade.window.map.CellAt;
import java.util.ArrayList;
import java.util.List;

/**
 * What the form for a finding says, as typed; blank sizes are not said.
 *
 * @param state of the job
 * @param cell where it was found
 * @param kind what was found
 * @param sizes how large it is
 * @param picture a file
 */
public record FindingForm(JobState state, CellAt cell, Kind kind, Sizes sizes, String picture) {

    /**
     * Sizes as typed, all in the same unit.
     *
     * @param plusMinus of each of them
     */
    public record Sizes(String length, String depth, String width, String plusMinus, LengthUnit unit) {

        /** None. */
        public static final Sizes NONE = new Sizes("", "", "", "", LengthUnit.MM);
    }

    /** The cell's zone as entries name it. */
    public String zone() {
        return CellWords.zone(state, cell);
    }

    /** The finding as an entry. */
    public String finding() {
        StringBuilder finding =
                new StringBuilder(CellWords.row(state, cell) + kind.word() + " " + cell.airfoil() + " " + zone());
        int bare = finding.length();
        said(finding, "length", sizes.length());
        said(finding, "depth", sizes.depth());
        said(finding, "width", sizes.width());
        said(finding, "±", sizes.plusMinus());
        if (sizes.unit() != LengthUnit.MM && finding.length() > bare) {
            finding.append(" ").append(sizes.unit().word());
        }
        return finding.toString();
    }

    /** The finding, and its picture if there is one. */
    public List<String> entries() {
        List<String> entries = new ArrayList<>();
        entries.add(finding());
        if (!picture.isBlank()) {
            boolean inView = CellWords.row(state, cell).isEmpty();
            entries.add("photo " + EntryText.name(picture.strip())
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
