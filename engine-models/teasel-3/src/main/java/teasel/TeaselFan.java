package teasel;

import everyblade.spi.Direction;
import everyblade.spi.EngineModel;
import everyblade.spi.EngineModelSource;
import everyblade.spi.Landmark;
import everyblade.spi.MeridionalPoint;
import everyblade.spi.Pad;
import everyblade.spi.Port;
import everyblade.spi.Port.Opening;
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
import everyblade.spi.ViewBuilder;
import everyblade.spi.Wall;
import java.util.List;
import java.util.OptionalDouble;
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
        return List.of(EngineModel.of("teasel-3", "Teasel 3 fan stage")
                .notice("Invented for training and for demonstration. No such fan exists; counts, angles and sizes are"
                        + " computed for made-up air and must not be used on a real one.")
                .spools(List.of(spool()))
                .walls(List.of(wall("hub", HUB), wall("casing", CASING)))
                .rows(List.of(blades(), vanes()))
                .scopeTips(List.of(ScopeTip.forward("fwd90", 90, 3, 80, 720, 6)))
                .ports(ports())
                .views(views())
                .build());
    }

    private static Spool spool() {
        return new Spool(SHAFT, "Fan", Direction.CW, List.of(Pad.direct("spinner", "Spinner, turned by hand", 0.5)));
    }

    private static Wall wall(String id, double r) {
        return Wall.still(id, List.of(new MeridionalPoint(-20, r), new MeridionalPoint(160, r)));
    }

    private static Row blades() {
        return Row.of("r", RowKind.ROTOR, BLADES.count())
                .name("Fan rotor")
                .spool(SHAFT)
                .landmarks(List.of(new Landmark(1, "blade with two balance weights at its root")))
                .shape(new Shape.Axial(sections(
                        span -> BLADES.section(span, r(span), FLOW.intoRotor(r(span)), FLOW.outOfRotor(r(span))))))
                .source(Source.INVENTED)
                .build();
    }

    private static Row vanes() {
        return Row.of("v", RowKind.STATOR, VANES.count())
                .name("Fan outlet vanes")
                .landmarks(List.of(new Landmark(1, "first vane clockwise of the split line")))
                .shape(new Shape.Axial(
                        sections(span -> VANES.section(span, r(span), FLOW.intoStator(r(span)), FLOW.outOfStator()))))
                .source(Source.INVENTED)
                .build();
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
                Port.at(
                        "p1",
                        "Plug between fan and vanes",
                        Port.Kind.PLUG,
                        100,
                        BLADES.x() + 28,
                        List.of(new Opening("casing plug hole", 9))));
    }

    private static List<View> views() {
        double ahead = BLADES.x() - 40;
        double between = BLADES.x() + 26;
        return List.of(
                view("in-r", "intake", "r")
                        .stations(List.of(
                                station("low", ahead, 0.35, -12, new Heading(0.8, 0.55, 0.1)),
                                station("high", ahead, 0.75, -10, new Heading(0.8, 0.55, 0.1))))
                        .build(),
                view("p1-r", "p1", "r")
                        .reference(100)
                        .stations(List.of(
                                station("low", between, 0.4, 112, new Heading(-0.75, -0.6, -0.1)),
                                station("high", between, 0.85, 110, new Heading(-0.75, -0.6, -0.1))))
                        .build(),
                view("p1-v", "p1", "v")
                        .reference(100)
                        .travelling()
                        .stations(List.of(
                                station("low", between, 0.35, 100, new Heading(0.9, 0.3, 0)),
                                station("mid", between, 0.5, 100, new Heading(0.8, 0.5, 0.2)),
                                station("high", between, 0.8, 100, new Heading(0.9, -0.3, 0))))
                        .build());
    }

    private static ViewBuilder view(String id, String port, String row) {
        return View.of(id, row).port(port).scopeTip("fwd90");
    }

    private static Station station(String id, double x, double span, double clock, Heading forward) {
        return new Station(id, x, r(span), clock, forward, new Heading(0, 0, 1), new Station.Tolerance(1, 3));
    }
}
