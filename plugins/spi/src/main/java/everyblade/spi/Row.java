package everyblade.spi;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One ring of like parts.
 *
 * @param id unique within the engine model
 * @param name what people call it
 * @param kind blades, vanes or liner sectors
 * @param spool the spool it turns with; empty for what stands still
 * @param count how many airfoils, at least one
 * @param numbering whether airfoil numbers rise clockwise or not
 * @param rock by how much a loose blade may lean either way, degrees, not negative
 * @param spanBands how many equal bands from root to tip; of a liner, two are its outer and inner wall; 1 to 10
 * @param chordBands along the chord, leading edge first; empty if undivided
 * @param sides whether the pressure and the suction side are told apart
 * @param landmarks airfoils that can be told from the others
 * @param ring name shared by rows that stand in one ring, such as an impeller and its splitters
 * @param ringOffset share of a pitch by which this row stands clockwise of its ring mate; 0 in
 *     no ring
 * @param phase clock angle of airfoil 1 at shaft angle zero, degrees, where the maker fixes it
 * @param shape the surface; empty if only the count is known
 * @param positions settings of movable vanes by name
 * @param source where the shape comes from
 */
public record Row(
        String id,
        String name,
        RowKind kind,
        Optional<String> spool,
        int count,
        Direction numbering,
        double rock,
        int spanBands,
        List<ChordBand> chordBands,
        boolean sides,
        List<Landmark> landmarks,
        Optional<String> ring,
        double ringOffset,
        OptionalDouble phase,
        Optional<Shape> shape,
        Map<String, Position> positions,
        Optional<Source> source) {

    public Row {
        chordBands = List.copyOf(chordBands);
        landmarks = List.copyOf(landmarks);
        positions = Map.copyOf(positions);
    }

    /** Begins a row of this id. */
    public static RowBuilder of(String id, RowKind kind, int count) {
        return new RowBuilder(id, kind, count);
    }
}
