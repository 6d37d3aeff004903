package everyblade.spi;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Makes a row step by step. What is not said is as an {@code engine.json} that leaves it out has it: two bands from root to
 * tip, numbers rising clockwise, nothing loose; once there is a shape, the bands along it and the sides too.
 */
public final class RowBuilder {

    private static final List<ChordBand> ALONG_CHORD = List.of(ChordBand.LEADING, ChordBand.MIDDLE, ChordBand.TRAILING);
    private static final List<ChordBand> ALONG_LINER = List.of(ChordBand.FORWARD, ChordBand.AFT);

    private final String id;
    private final RowKind kind;
    private final int count;
    private String name;
    private Optional<String> spool = Optional.empty();
    private Direction numbering = Direction.CW;
    private double rock;
    private int spanBands = 2;
    private Optional<List<ChordBand>> chordBands = Optional.empty();
    private Optional<Boolean> sides = Optional.empty();
    private List<Landmark> landmarks = List.of();
    private Optional<String> ring = Optional.empty();
    private double ringOffset;
    private OptionalDouble phase = OptionalDouble.empty();
    private Optional<Shape> shape = Optional.empty();
    private Map<String, Position> positions = Map.of();
    private Optional<Source> source = Optional.empty();

    RowBuilder(String id, RowKind kind, int count) {
        this.id = id;
        this.kind = kind;
        this.count = count;
        this.name = id;
    }

    /** What people call it; its id unless said. */
    public RowBuilder name(String words) {
        name = words;
        return this;
    }

    /** The spool it turns with. */
    public RowBuilder spool(String spoolId) {
        spool = Optional.of(spoolId);
        return this;
    }

    /** Which way airfoil numbers rise. */
    public RowBuilder numbering(Direction way) {
        numbering = way;
        return this;
    }

    /** By how much a loose blade may lean either way, degrees. */
    public RowBuilder rock(double degrees) {
        rock = degrees;
        return this;
    }

    /** How many equal bands from root to tip, 1 to 10. */
    public RowBuilder spanBands(int bands) {
        spanBands = bands;
        return this;
    }

    /** Bands along the chord, leading edge first; none if undivided. */
    public RowBuilder chordBands(List<ChordBand> bands) {
        chordBands = Optional.of(List.copyOf(bands));
        return this;
    }

    /** Whether the pressure and the suction side are told apart. */
    public RowBuilder sides(boolean told) {
        sides = Optional.of(told);
        return this;
    }

    /** Airfoils that can be told from the others. */
    public RowBuilder landmarks(List<Landmark> all) {
        landmarks = List.copyOf(all);
        return this;
    }

    /**
     * The ring in which it stands with others.
     *
     * @param offset share of a pitch by which it stands clockwise of its ring mate
     */
    public RowBuilder ring(String named, double offset) {
        ring = Optional.of(named);
        ringOffset = offset;
        return this;
    }

    /** Clock angle of airfoil 1 at shaft angle zero, degrees. */
    public RowBuilder phase(double degrees) {
        phase = OptionalDouble.of(degrees);
        return this;
    }

    /** Its surface. */
    public RowBuilder shape(Shape surface) {
        shape = Optional.of(surface);
        return this;
    }

    /** Settings of movable vanes by name. */
    public RowBuilder positions(Map<String, Position> all) {
        positions = Map.copyOf(all);
        return this;
    }

    /** Where the shape comes from. */
    public RowBuilder source(Source origin) {
        source = Optional.of(origin);
        return this;
    }

    public Row build() {
        boolean isLiner = kind == RowKind.LINER;
        return new Row(
                id,
                name,
                kind,
                spool,
                count,
                numbering,
                rock,
                spanBands,
                chordBands.orElse(shape.isPresent() ? (isLiner ? ALONG_LINER : ALONG_CHORD) : List.of()),
                sides.orElse(shape.isPresent() && !isLiner),
                landmarks,
                ring,
                ringOffset,
                phase,
                shape,
                positions,
                source);
    }
}
