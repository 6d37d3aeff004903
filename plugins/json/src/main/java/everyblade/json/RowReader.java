package everyblade.json;

import everyblade.spi.ChordBand;
import everyblade.spi.Direction;
import everyblade.spi.Landmark;
import everyblade.spi.Position;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import everyblade.spi.Shape;
import everyblade.spi.Source;
import everyblade.spi.Spool;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reads the rows; what a row leaves out follows from its kind and from whether it has a shape. */
final class RowReader {

    private static final Range COUNT = Range.closed(1, 1000);
    private static final Range SPAN_BANDS = Range.closed(1, 10);
    private static final Range LINER_SPAN_BANDS = Range.closed(1, 2);
    private static final Range RING_OFFSET = new Range(-1, 1, true, "above -1 and below 1");
    private static final List<ChordBand> ALONG_CHORD = List.of(ChordBand.LEADING, ChordBand.MIDDLE, ChordBand.TRAILING);
    private static final List<ChordBand> ALONG_LINER = List.of(ChordBand.FORWARD, ChordBand.AFT);

    private final References<Spool> spools;
    private final Set<String> rings = new HashSet<>();

    private RowReader(References<Spool> spools) {
        this.spools = spools;
    }

    static List<Located<Row>> rows(Fields model, References<Spool> spools) {
        Ids ids = new Ids("row", Ids.OPENING);
        RowReader reader = new RowReader(spools);
        List<Located<Row>> rows = new ArrayList<>();
        if (model.required("rows").isEmpty()) {
            return rows;
        }
        List<Fields> objects = model.objects(
                "rows",
                "row",
                "id",
                "name",
                "kind",
                "spool",
                "count",
                "numbering",
                "rock",
                "spanBands",
                "chordBands",
                "sides",
                "landmarks",
                "ring",
                "ringOffset",
                "phase",
                "shape",
                "positions",
                "source");
        for (Fields fields : objects) {
            long errors = model.log().errorCount();
            Row row = reader.row(fields, ids);
            rows.add(new Located<>(row, fields.object(), model.log().errorCount() == errors));
        }
        model.refuseEmpty("rows", "there is nothing to look at", "add a row");
        return rows;
    }

    private Row row(Fields fields, Ids ids) {
        String id = ids.required(fields);
        RowKind kind = fields.requiredWord("kind", RowKind.values(), RowKind::word);
        boolean liner = kind == RowKind.LINER;
        int count = fields.requiredWhole("count", COUNT);
        Optional<Shape> shape = ShapeReader.shape(fields);
        shape.ifPresent(one -> refuseShapeOfOtherKind(fields, one, liner));
        Optional<String> ring = fields.textIfStated("ring");
        return new Row(
                id,
                fields.text("name", id),
                kind,
                spool(fields, kind),
                count,
                fields.word("numbering", Direction.CW, Direction.values(), Direction::word),
                fields.number("rock", 0, Range.ANGLE_ERROR),
                fields.whole("spanBands", 2, liner ? LINER_SPAN_BANDS : SPAN_BANDS),
                chordBands(fields, liner, shape.isPresent()),
                sides(fields, liner, shape.isPresent()),
                landmarks(fields, count),
                ring,
                ringOffset(fields, ring),
                fields.numberIfStated("phase", Range.ANGLE),
                shape,
                positions(fields),
                fields.wordIfStated("source", Source.values(), Source::word));
    }

    private Optional<String> spool(Fields fields, RowKind kind) {
        Optional<String> stated = spools.ifStated(fields, "spool");
        if (kind == RowKind.ROTOR) {
            return stated.or(spools::first);
        }
        if (stated.isPresent()) {
            fields.log()
                    .error(
                            "spool-of-static-row",
                            fields.place("spool"),
                            fields.subject() + " has a spool",
                            "a " + kind.word() + " stands still",
                            "delete the key or make the row a rotor");
        }
        return Optional.empty();
    }

    private static List<ChordBand> chordBands(Fields fields, boolean liner, boolean hasShape) {
        List<ChordBand> whole = liner ? ALONG_LINER : ALONG_CHORD;
        List<ChordBand> bands =
                fields.words("chordBands", whole, ChordBand::word).orElse(hasShape ? whole : List.of());
        if (!bands.equals(bands.stream().sorted().toList())) {
            fields.log()
                    .error(
                            "bands-out-of-order",
                            fields.place("chordBands"),
                            "\"chordBands\" of " + fields.subject() + " are not in order",
                            "they go from front to rear",
                            "put them in order");
        }
        if (hasShape && !bands.isEmpty() && bands.size() < whole.size()) {
            fields.log()
                    .error(
                            "bands-not-whole",
                            fields.place("chordBands"),
                            "\"chordBands\" of " + fields.subject() + " leave out a part of the shape",
                            "what lies there would never be accounted for",
                            "name all of them or none");
        }
        return bands;
    }

    private static boolean sides(Fields fields, boolean liner, boolean hasShape) {
        boolean sides = fields.flag("sides", hasShape && !liner);
        if (sides && liner) {
            fields.log()
                    .error(
                            "sides-of-liner",
                            fields.place("sides"),
                            fields.subject() + " has sides",
                            "a liner has no pressure and suction side",
                            "delete the key");
        }
        return sides;
    }

    private static List<Landmark> landmarks(Fields row, int count) {
        List<Landmark> landmarks = new ArrayList<>();
        for (Fields fields : row.objects("landmarks", "landmark of " + row.subject(), "airfoil", "what")) {
            long errors = fields.log().errorCount();
            Landmark landmark = new Landmark(fields.requiredWhole("airfoil", COUNT), fields.requiredText("what"));
            if (landmark.airfoil() > count && fields.log().errorCount() == errors) {
                fields.log()
                        .error(
                                "no-such-airfoil",
                                fields.place("airfoil"),
                                fields.subject() + " is airfoil " + landmark.airfoil(),
                                "the row has only " + count,
                                "correct the number or the row's \"count\"");
            }
            landmarks.add(landmark);
        }
        return landmarks;
    }

    /** The first row of a ring sets where it stands, the next ones stand half a pitch on unless they say otherwise. */
    private double ringOffset(Fields fields, Optional<String> ring) {
        boolean first = ring.isPresent() && rings.add(ring.get());
        double offset = fields.number("ringOffset", ring.isEmpty() || first ? 0 : 0.5, RING_OFFSET);
        if (ring.isEmpty() && offset != 0) {
            fields.log()
                    .error(
                            "offset-without-ring",
                            fields.place("ringOffset"),
                            fields.subject() + " has a ringOffset but no ring",
                            "it says how two rows of one ring stand",
                            "give both rows the same \"ring\" or delete the key");
        }
        return offset;
    }

    private static Map<String, Position> positions(Fields row) {
        Map<String, Position> positions = new LinkedHashMap<>();
        row.present("positions").ifPresent(json -> {
            if (!(json instanceof Json.Obj object)) {
                row.wrongType("positions", json, "an object");
                return;
            }
            Ids ids = new Ids("position", Set.of());
            object.members().forEach((name, member) -> {
                ids.checked(row.log(), member.key(), name);
                row.object("position " + Wording.plain(name), member.value(), "stagger")
                        .ifPresent(fields ->
                                positions.put(name, new Position(fields.requiredNumber("stagger", Range.ANGLE))));
            });
        });
        return positions;
    }

    private static void refuseShapeOfOtherKind(Fields fields, Shape shape, boolean liner) {
        boolean fits = shape instanceof Shape.Mesh || liner == shape instanceof Shape.Liner;
        if (!fits) {
            fields.log()
                    .error(
                            "shape-of-other-kind",
                            fields.place("shape"),
                            fields.subject() + " is " + (liner ? "a liner" : "no liner") + " but its shape is "
                                    + (liner ? "an airfoil" : "a liner"),
                            "they go together",
                            "correct \"kind\" or the shape's \"type\"");
        }
    }
}
