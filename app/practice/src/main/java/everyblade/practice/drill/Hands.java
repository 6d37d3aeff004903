package everyblade.practice.drill;

import everyblade.core.angle.Turn;
import everyblade.core.sight.Pose;
import everyblade.core.sight.ViewScene;
import everyblade.core.surface.Meridian;
import everyblade.core.surface.UnusableShape;
import everyblade.practice.eye.Optics;
import everyblade.practice.eye.PlacedMesh;
import everyblade.spi.EngineModel;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import everyblade.spi.ScopeTip;
import everyblade.spi.Station;
import everyblade.spi.Station.Heading;
import everyblade.spi.View;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What becomes of a scope tip and of the rotors when hands move them. The scope is stiff up to a bending part of
 * {@value #BENDING} mm, which bends as an arc of a circle; at a station it is straight. Metal stops the tip; a rotor that is
 * turned while the tip is among its blades takes it off.
 */
public final class Hands {

    /** Length of the part that bends, mm. */
    static final double BENDING = 18;

    private static final double MOST_PUSH = 60;
    private static final double MOST_BEND = 120;

    private final EngineModel model;
    private final Mockup mockup;
    private final Map<String, Meridian> swept = new HashMap<>();

    /**
     * A moment of a drill.
     *
     * @param tip where the scope tip is
     * @param shafts reading of each spool since the drill began, degrees
     */
    public record Moment(Tip tip, Map<String, Double> shafts) {

        public Moment {
            shafts = Map.copyOf(shafts);
        }

        Moment with(Tip moved) {
            return new Moment(moved, shafts);
        }
    }

    /** What came of a movement. */
    public sealed interface Outcome {}

    /** It was done. */
    public record Moved(Moment moment) implements Outcome {}

    /** Metal is in the way, or the scope reaches no further; nothing has moved. */
    public record Stopped() implements Outcome {}

    /** A blade has taken the tip off. */
    public record Struck(String row) implements Outcome {}

    /**
     * Hands in an engine.
     *
     * @throws UnusableShape if a shape gives no surface
     */
    public Hands(ViewScene engine, Mockup mockup) throws UnusableShape {
        this.model = engine.model();
        this.mockup = mockup;
        for (Row row : model.rows()) {
            if (row.kind() == RowKind.ROTOR && engine.airfoil(row).isPresent()) {
                swept.put(row.id(), Meridian.of(engine.airfoil(row).get()));
            }
        }
    }

    /** At a station of a view, the rotors as they stand. */
    public Moment seated(String view, String station, Map<String, Double> shafts) {
        return new Moment(Tip.at(view, station), shafts);
    }

    /** Moves the scope tip. */
    public Outcome move(Moment moment, Tip to) {
        boolean reaches = Math.abs(to.push()) <= MOST_PUSH && Math.hypot(to.up(), to.right()) <= MOST_BEND;
        return reaches && isFree(moment.tip(), to, moment.shafts()) ? new Moved(moment.with(to)) : new Stopped();
    }

    /** Turns a rotor, clockwise positive. */
    public Outcome turn(Moment moment, String spool, double degrees) {
        Optional<String> among = among(moment, spool);
        if (among.isPresent()) {
            return new Struck(among.get());
        }
        Map<String, Double> shafts = new HashMap<>(moment.shafts());
        shafts.merge(spool, degrees, Double::sum);
        return new Moved(new Moment(moment.tip(), shafts));
    }

    /** The row of a spool among whose blades the scope tip is; its radius counts. */
    Optional<String> among(Moment moment, String spool) {
        Pose pose = pose(moment.tip());
        double radius = tipOf(moment.tip()).diameter() / 2;
        return model.rows().stream()
                .filter(row -> swept.containsKey(row.id()) && row.spool().equals(Optional.of(spool)))
                .filter(row -> swept.get(row.id()).distance(pose.x(), pose.r()) < radius)
                .map(Row::id)
                .findFirst();
    }

    /** Whether there is room for the tip; where it touches already, whether it comes no nearer. */
    private boolean isFree(Tip from, Tip to, Map<String, Double> shafts) {
        double radius = tipOf(to).diameter() / 2;
        List<PlacedMesh> stage = mockup.at(shafts);
        double room = room(to, stage, radius);
        return room >= radius || room >= room(from, stage, radius);
    }

    /** How far metal is from the middle of the tip, mm; its radius if it is at least that. */
    private double room(Tip tip, List<PlacedMesh> stage, double radius) {
        Pose pose = pose(tip);
        double clock = Math.toRadians(pose.clock().degrees());
        double y = pose.r() * StrictMath.sin(clock);
        double z = pose.r() * StrictMath.cos(clock);
        double room = radius;
        for (PlacedMesh one : stage) {
            room = Math.min(room, one.distance(pose.x(), y, z, room));
        }
        return room;
    }

    private View viewOf(Tip tip) {
        return model.views().stream()
                .filter(view -> view.id().equals(tip.view()))
                .findFirst()
                .orElseThrow();
    }

    /** The scope tip in use. */
    ScopeTip tipOf(Tip tip) {
        return model.scopeTip(viewOf(tip).scopeTip().orElseThrow()).orElseThrow();
    }

    /** What its lens does. */
    public Optics optics(Tip tip) {
        ScopeTip scope = tipOf(tip);
        return new Optics(scope.near(), scope.far(), scope.diameter() / 4);
    }

    /** Where the scope tip is and looks. */
    public Pose pose(Tip tip) {
        View view = viewOf(tip);
        Station station = view.stations().stream()
                .filter(each -> each.id().equals(tip.station()))
                .findFirst()
                .orElseThrow();
        Pose seated = Pose.of(station, tipOf(tip));
        Bent bent = Bent.of(seated, Math.toRadians(tipOf(tip).lookAngle()), tip);
        double out = seated.r() + bent.offset().radial();
        double aside = bent.offset().tangential();
        double turned = StrictMath.atan2(aside, out);
        return new Pose(
                seated.x() + bent.offset().axial(),
                StrictMath.hypot(aside, out),
                seated.clock().plus(Turn.ofDegrees(Math.toDegrees(turned) + tip.round())),
                seenFrom(turned, bent.forward()),
                seenFrom(turned, bent.up()),
                seated.cone(),
                seated.near(),
                seated.far(),
                seated.pixels());
    }

    /** The parts of a heading at a clock angle further on. */
    private static Heading seenFrom(double turned, Heading heading) {
        double sine = StrictMath.sin(turned);
        double cosine = StrictMath.cos(turned);
        return new Heading(
                heading.axial(),
                heading.tangential() * cosine - heading.radial() * sine,
                heading.radial() * cosine + heading.tangential() * sine);
    }
}
