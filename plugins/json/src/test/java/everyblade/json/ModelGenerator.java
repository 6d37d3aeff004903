package everyblade.json;

import everyblade.spi.ChordBand;
import everyblade.spi.Direction;
import everyblade.spi.EngineModel;
import everyblade.spi.Landmark;
import everyblade.spi.MeridionalPoint;
import everyblade.spi.Pad;
import everyblade.spi.Port;
import everyblade.spi.Position;
import everyblade.spi.Ratio;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import everyblade.spi.ScopeTip;
import everyblade.spi.Shape;
import everyblade.spi.Source;
import everyblade.spi.Spool;
import everyblade.spi.Station;
import everyblade.spi.TaskCard;
import everyblade.spi.View;
import everyblade.spi.Wall;
import everyblade.spi.Window;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.DoubleFunction;
import java.util.function.IntFunction;
import java.util.function.Supplier;
import java.util.stream.IntStream;

/** Random models that make sense, with every part, odd names and awkward numbers; the same ones from the same seed. */
final class ModelGenerator {

    private static final List<String> ODD_TEXTS = List.of(
            "plain",
            "quoted \" and \\ and /",
            "größer, dışarı, ﬁ",
            "翼 🜁",
            "tab-free \u00a0 space",
            "null",
            "</script>");

    private final SplittableRandom random;

    ModelGenerator(SplittableRandom random) {
        this.random = random;
    }

    EngineModel model() {
        List<Spool> spools = some(1, 3, i -> spool("spool" + i));
        List<Row> rows = new ArrayList<>(some(1, 6, i -> row("row" + i, spools)));
        if (random.nextBoolean()) {
            rows.addAll(ring(spools));
        }
        List<ScopeTip> tips = some(0, 3, i -> scopeTip("tip" + i));
        List<Port> ports = some(0, 3, i -> port("port" + i));
        return new EngineModel(
                "Model-" + random.nextInt(1000),
                text(),
                maybe(this::text),
                spools,
                List.of(wall("hub", spools, 0), wall("casing", spools, 450)),
                rows,
                tips,
                ports,
                some(0, 6, i -> view("view" + i, one(rows), tips, ports)),
                some(0, 3, i -> card("card" + i, rows)));
    }

    private TaskCard card(String id, List<Row> rows) {
        List<Row> asked = new ArrayList<>(rows);
        Collections.shuffle(asked, new Random(random.nextLong()));
        return new TaskCard(
                id,
                text(),
                asked.subList(0, random.nextInt(1, asked.size() + 1)).stream()
                        .map(row -> new TaskCard.Asked(row.id(), shows(row)))
                        .toList());
    }

    private Spool spool(String id) {
        return new Spool(id, text(), one(Direction.values()), some(1, 3, i -> pad("pad" + i)));
    }

    private Pad pad(String id) {
        long numerator = random.nextInt(8) == 0 ? Long.MAX_VALUE : random.nextLong(1, 500);
        Ratio ratio = new Ratio(random.nextBoolean() ? numerator : -numerator, random.nextLong(1, 500));
        Set<Direction> directions = random.nextBoolean() ? Set.of(Direction.values()) : Set.of(one(Direction.values()));
        return new Pad(id, text(), ratio, directions, number(0, 9), number(0, 9), number(0, 9));
    }

    /** Reaches past all ports, at radii from one to 400 mm more. */
    private Wall wall(String id, List<Spool> spools, double least) {
        List<MeridionalPoint> curve = new ArrayList<>(List.of(new MeridionalPoint(-900, least + 1)));
        curve.addAll(curve(least, least + 400));
        curve.add(new MeridionalPoint(900, least + 1));
        return new Wall(id, maybe(() -> one(spools).id()), curve);
    }

    private List<MeridionalPoint> curve(double least, double most) {
        return some(2, 6, i -> new MeridionalPoint(number(-900, 900), number(least, most)));
    }

    private Row row(String id, List<Spool> spools) {
        RowKind kind = one(RowKind.values());
        return row(id, kind, spools, random.nextInt(1, 1001), Optional.empty(), 0);
    }

    private List<Row> ring(List<Spool> spools) {
        int count = random.nextInt(1, 100);
        Row first = row("imp", RowKind.STATOR, spools, count, Optional.of("ring"), number(-0.9, 0.9));
        Row second = row("imp-s", RowKind.STATOR, spools, count, Optional.of("ring"), number(-0.9, 0.9));
        return List.of(first, second);
    }

    private Row row(String id, RowKind kind, List<Spool> spools, int count, Optional<String> ring, double ringOffset) {
        boolean liner = kind == RowKind.LINER;
        Optional<Shape> shape = maybe(() -> shape(liner));
        List<ChordBand> whole = liner
                ? List.of(ChordBand.FORWARD, ChordBand.AFT)
                : List.of(ChordBand.LEADING, ChordBand.MIDDLE, ChordBand.TRAILING);
        Map<String, Position> positions = new LinkedHashMap<>();
        some(0, 3, i -> positions.put("position" + random.nextInt(99), new Position(number(-90, 90))));
        return new Row(
                id,
                text(),
                kind,
                kind == RowKind.ROTOR ? Optional.of(one(spools).id()) : Optional.empty(),
                count,
                one(Direction.values()),
                number(0, 5),
                random.nextInt(1, liner ? 3 : 11),
                random.nextBoolean() ? whole : List.of(),
                !liner && random.nextBoolean(),
                some(0, 3, i -> new Landmark(random.nextInt(1, count + 1), text())),
                ring,
                ringOffset,
                angle(),
                shape,
                positions,
                maybe(() -> one(Source.values())));
    }

    private Shape shape(boolean liner) {
        if (random.nextInt(4) == 0) {
            return new Shape.Mesh("meshes/" + random.nextInt(99) + ".ply");
        }
        if (liner) {
            return new Shape.Liner(curve(0, 900), curve(0, 900));
        }
        if (random.nextBoolean()) {
            return new Shape.Axial(rising(share -> new Shape.Section(
                    share, number(0.1, 90), number(-80, 80), number(-80, 80), number(0.01, 0.9), number(-900, 900))));
        }
        return new Shape.Radial(
                curve(0, 900),
                curve(0, 900),
                rising(share -> new Shape.WrapPoint(share, number(-90, 90))),
                rising(share -> new Shape.WrapPoint(share, number(-90, 90))),
                number(0.1, 9),
                number(0.1, 9),
                random.nextBoolean() ? OptionalDouble.empty() : OptionalDouble.of(number(0.1, 0.9)));
    }

    private <T> List<T> rising(DoubleFunction<T> at) {
        int count = 2 + random.nextInt(4);
        return IntStream.range(0, count)
                .mapToDouble(i -> (i + number(0, 0.9)) / count)
                .mapToObj(at)
                .toList();
    }

    private ScopeTip scopeTip(String id) {
        double near = number(0, 20);
        return new ScopeTip(
                id,
                number(1, 179),
                number(0, 180),
                near,
                near + number(1, 90),
                random.nextInt(1, 2000),
                number(0.5, 12),
                random.nextBoolean() ? OptionalDouble.empty() : OptionalDouble.of(number(-40, 90)));
    }

    private Port port(String id) {
        return new Port(
                id,
                text(),
                one(Port.Kind.values()),
                angle(),
                maybeNumber(-900, 900),
                some(0, 3, i -> new Port.Opening(text(), number(12, 90))));
    }

    private View view(String id, Row row, List<ScopeTip> tips, List<Port> ports) {
        return new View(
                id,
                ports.isEmpty() ? Optional.empty() : maybe(() -> one(ports).id()),
                row.id(),
                tips.isEmpty() ? Optional.empty() : maybe(() -> one(tips).id()),
                number(-360, 720),
                number(0, 5),
                maybe(() -> new Window(number(0, 180), shows(row))),
                some(0, 4, i -> station("station" + i)),
                random.nextBoolean());
    }

    private List<String> shows(Row row) {
        List<String> words = new ArrayList<>();
        row.chordBands().stream().filter(band -> random.nextBoolean()).forEach(band -> words.add(band.word()));
        if (row.sides() && random.nextBoolean()) {
            words.add(random.nextBoolean() ? "pressure" : "suction");
        }
        if (row.spanBands() > 2 && random.nextBoolean()) {
            words.add("s" + random.nextInt(1, row.spanBands() + 1));
        } else if (row.spanBands() == 2 && random.nextBoolean()) {
            words.add(row.kind() == RowKind.LINER ? "outer" : "tip");
        }
        return words.isEmpty() ? List.of("all") : words;
    }

    private Station station(String id) {
        return new Station(
                id,
                number(-900, 900),
                number(0, 900),
                number(0, 360),
                new Station.Heading(number(0.5, 1), number(-1, 1), number(-0.2, 0.2)),
                new Station.Heading(number(-0.2, 0.2), number(-0.2, 0.2), number(0.5, 1)),
                new Station.Tolerance(number(0, 5), number(0, 30)),
                maybe(() -> new Station.Sector(number(0, 360), number(0, 360))));
    }

    private OptionalDouble angle() {
        return maybeNumber(-360, 720);
    }

    private OptionalDouble maybeNumber(double least, double most) {
        return random.nextBoolean() ? OptionalDouble.empty() : OptionalDouble.of(number(least, most));
    }

    /** Whole, short and full-length numbers, and some very small ones. */
    private double number(double least, double most) {
        double any = random.nextDouble(least, most);
        return switch (random.nextInt(4)) {
            case 0 -> any;
            case 1 -> Math.rint(any) > least && Math.rint(any) < most ? Math.rint(any) : any;
            case 2 -> Math.rint(any * 10) / 10 > least ? Math.min(any, Math.rint(any * 10) / 10) : any;
            default -> least == 0 ? any * 1e-9 : any;
        };
    }

    private String text() {
        return one(ODD_TEXTS) + " " + random.nextInt(100);
    }

    private <T> Optional<T> maybe(Supplier<T> value) {
        return random.nextBoolean() ? Optional.of(value.get()) : Optional.empty();
    }

    private <T> List<T> some(int least, int bound, IntFunction<T> element) {
        return IntStream.range(0, random.nextInt(least, bound))
                .mapToObj(element)
                .toList();
    }

    private <T> T one(List<T> list) {
        return list.get(random.nextInt(list.size()));
    }

    @SafeVarargs
    private <T> T one(T... values) {
        return values[random.nextInt(values.length)];
    }
}
