package teasel;

import everyblade.spi.ChordBand;
import everyblade.spi.Direction;
import everyblade.spi.EngineModel;
import everyblade.spi.EngineModelSource;
import everyblade.spi.Landmark;
import everyblade.spi.MeridionalPoint;
import everyblade.spi.Pad;
import everyblade.spi.Port;
import everyblade.spi.Port.Opening;
import everyblade.spi.Ratio;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import everyblade.spi.ScopeTip;
import everyblade.spi.Shape;
import everyblade.spi.Shape.Section;
import everyblade.spi.Source;
import everyblade.spi.Spool;
import everyblade.spi.Station;
import everyblade.spi.Station.Heading;
import everyblade.spi.View;
import everyblade.spi.Wall;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.DoubleFunction;
import java.util.stream.DoubleStream;

/** An invented fan stage: a rotor and a row of vanes behind it, computed for the same work at every radius. */
public final class TeaselFan implements EngineModelSource {

    private static final double HUB = 70;
    private static final double CASING = 140;
    private static final String SHAFT = "fan";

    private static final FreeVortex FLOW = new FreeVortex(140, 1885, 12_000);
    private static final Cascade BLADES = new Cascade(17, 42, 60, 0.10, 0.04);
    private static final Cascade VANES = new Cascade(23, 36, 112, 0.09, 0.09);

    @Override
    public String id() {
        return "teasel-3";
    }

    @Override
    public List<EngineModel> models() {
        return List.of(new EngineModel(
                "teasel-3",
                "Teasel 3 fan stage",
                Optional.of(
                        "Invented for training and for demonstration. No such fan exists; counts, angles and sizes are"
                                + " computed for made-up air and must not be used on a real one."),
                List.of(spool()),
                List.of(wall("hub", HUB), wall("casing", CASING)),
                List.of(blades(), vanes()),
                List.of(new ScopeTip("fwd90", 90, 0, 3, 80, 720, 6, OptionalDouble.empty())),
                ports(),
                views()));
    }

    private static Spool spool() {
        Pad pad = new Pad(
                "spinner", "Spinner, turned by hand", Ratio.ONE, Set.of(Direction.CW, Direction.CCW), 0.5, 0, 0);
        return new Spool(SHAFT, "Fan", Direction.CW, List.of(pad));
    }

    private static Wall wall(String id, double r) {
        return new Wall(id, Optional.empty(), List.of(new MeridionalPoint(-20, r), new MeridionalPoint(160, r)));
    }

    private static Row blades() {
        return row(
                "r",
                "Fan rotor",
                RowKind.ROTOR,
                BLADES.count(),
                List.of(new Landmark(1, "blade with two balance weights at its root")),
                sections(span -> BLADES.section(span, r(span), FLOW.intoRotor(r(span)), FLOW.outOfRotor(r(span)))));
    }

    private static Row vanes() {
        return row(
                "v",
                "Fan outlet vanes",
                RowKind.STATOR,
                VANES.count(),
                List.of(new Landmark(1, "first vane clockwise of the split line")),
                sections(span -> VANES.section(span, r(span), FLOW.intoStator(r(span)), FLOW.outOfStator())));
    }

    private static Row row(
            String id, String name, RowKind kind, int count, List<Landmark> landmarks, List<Section> sections) {
        return new Row(
                id,
                name,
                kind,
                kind == RowKind.ROTOR ? Optional.of(SHAFT) : Optional.empty(),
                count,
                Direction.CW,
                0,
                2,
                List.of(ChordBand.LEADING, ChordBand.MIDDLE, ChordBand.TRAILING),
                true,
                landmarks,
                Optional.empty(),
                0,
                OptionalDouble.empty(),
                Optional.of(new Shape.Axial(sections)),
                Map.of(),
                Optional.of(Source.INVENTED));
    }

    private static List<Section> sections(DoubleFunction<Section> at) {
        return DoubleStream.of(0, 0.25, 0.5, 0.75, 1).mapToObj(at).toList();
    }

    private static double r(double span) {
        return HUB + span * (CASING - HUB);
    }

    private static List<Port> ports() {
        return List.of(
                new Port(
                        "intake",
                        "Fan intake",
                        Port.Kind.INLET,
                        OptionalDouble.empty(),
                        OptionalDouble.of(-20),
                        List.of(new Opening("annulus ahead of the fan", CASING - HUB))),
                new Port(
                        "p1",
                        "Plug between fan and vanes",
                        Port.Kind.PLUG,
                        OptionalDouble.of(100),
                        OptionalDouble.of(BLADES.x() + 28),
                        List.of(new Opening("casing plug hole", 9))));
    }

    private static List<View> views() {
        double ahead = BLADES.x() - 40;
        double between = BLADES.x() + 26;
        return List.of(
                view(
                        "in-r",
                        "intake",
                        "r",
                        0,
                        false,
                        List.of(
                                station("low", ahead, 0.35, -12, new Heading(0.8, 0.55, 0.1)),
                                station("high", ahead, 0.75, -10, new Heading(0.8, 0.55, 0.1)))),
                view(
                        "p1-r",
                        "p1",
                        "r",
                        100,
                        false,
                        List.of(
                                station("low", between, 0.4, 112, new Heading(-0.75, -0.6, -0.1)),
                                station("high", between, 0.85, 110, new Heading(-0.75, -0.6, -0.1)))),
                view(
                        "p1-v",
                        "p1",
                        "v",
                        100,
                        true,
                        List.of(
                                station("low", between, 0.35, 100, new Heading(0.9, 0.3, 0)),
                                station("mid", between, 0.5, 100, new Heading(0.8, 0.5, 0.2)),
                                station("high", between, 0.8, 100, new Heading(0.9, -0.3, 0)))));
    }

    private static View view(
            String id, String port, String row, double reference, boolean travels, List<Station> stations) {
        return new View(
                id, Optional.of(port), row, Optional.of("fwd90"), reference, 0, Optional.empty(), stations, travels);
    }

    private static Station station(String id, double x, double span, double clock, Heading forward) {
        return new Station(
                id, x, r(span), clock, forward, new Heading(0, 0, 1), new Station.Tolerance(1, 3), Optional.empty());
    }
}
