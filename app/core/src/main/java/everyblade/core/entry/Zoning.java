package everyblade.core.entry;

import everyblade.spi.ChordBand;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * How the airfoils of one row are divided into zones: every combination of one span band, one side and one chord band,
 * of the kinds that the row divides; one zone {@code all} if it divides nothing. Span bands vary slowest, chord bands
 * fastest; at most 60 zones.
 *
 * @param spans names of the span bands from root to tip, of a liner outer before inner; empty if undivided
 * @param sides pressure before suction; empty if undivided
 * @param chords leading before trailing, forward before aft; empty if undivided
 */
public record Zoning(List<String> spans, List<String> sides, List<String> chords) {

    private static final Set<String> EDGES = Set.of(ChordBand.LEADING.word(), ChordBand.TRAILING.word());

    public Zoning {
        spans = List.copyOf(spans);
        sides = List.copyOf(sides);
        chords = List.copyOf(chords);
    }

    /** The division of this row. */
    public static Zoning of(Row row) {
        List<String> spans = new ArrayList<>();
        if (row.spanBands() == 2) {
            spans.addAll(row.kind() == RowKind.LINER ? List.of("outer", "inner") : List.of("root", "tip"));
        } else if (row.spanBands() > 2) {
            for (int band = 1; band <= row.spanBands(); band++) {
                spans.add("s" + band);
            }
        }
        return new Zoning(
                spans,
                row.sides() ? List.of("pressure", "suction") : List.of(),
                row.chordBands().stream().map(ChordBand::word).toList());
    }

    /** How many zones each airfoil has, at least one. */
    public int size() {
        return Math.max(1, spans.size()) * Math.max(1, sides.size()) * Math.max(1, chords.size());
    }

    /** Every zone. */
    public ZoneSet all() {
        return new ZoneSet(-1L >>> (Long.SIZE - size()));
    }

    /** Names such as {@code tip/pressure/leading}, in order. */
    public List<String> names() {
        List<String> names = List.of("");
        for (List<String> kind : List.of(spans, sides, chords)) {
            if (!kind.isEmpty()) {
                names = names.stream()
                        .flatMap(head -> kind.stream().map(word -> head.isEmpty() ? word : head + "/" + word))
                        .toList();
            }
        }
        return names.equals(List.of("")) ? List.of("all") : names;
    }

    /** The zones of one span band. */
    public ZoneSet span(int band) {
        return where(band, -1, -1);
    }

    /** The zones of one side. */
    public ZoneSet side(int side) {
        return where(-1, side, -1);
    }

    /** The zones of one chord band. */
    public ZoneSet chord(int band) {
        return where(-1, -1, band);
    }

    /** Whether a zone lies at the leading or trailing edge. */
    public boolean atEdge(int zone) {
        return !chords.isEmpty() && EDGES.contains(chords.get(zone % chords.size()));
    }

    /** The zones behind these on the other side; the same ones of a row without sides. */
    public ZoneSet opposite(ZoneSet zones) {
        if (sides.isEmpty()) {
            return zones;
        }
        int chordCount = Math.max(1, chords.size());
        ZoneSet pressure = zones.intersection(side(0));
        ZoneSet suction = zones.intersection(side(1));
        return new ZoneSet(pressure.bits() << chordCount | suction.bits() >>> chordCount);
    }

    private ZoneSet where(int span, int side, int chord) {
        int sideCount = Math.max(1, sides.size());
        int chordCount = Math.max(1, chords.size());
        long bits = 0;
        for (int zone = 0; zone < size(); zone++) {
            boolean in = (span < 0 || zone / chordCount / sideCount == span)
                    && (side < 0 || zone / chordCount % sideCount == side)
                    && (chord < 0 || zone % chordCount == chord);
            bits |= in ? 1L << zone : 0;
        }
        return new ZoneSet(bits);
    }
}
