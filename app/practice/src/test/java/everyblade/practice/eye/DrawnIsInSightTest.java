package everyblade.practice.eye;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.angle.Turn;
import everyblade.core.entry.Zoning;
import everyblade.core.sight.Criteria;
import everyblade.core.sight.Lens;
import everyblade.core.sight.Pose;
import everyblade.core.sight.Progress;
import everyblade.core.sight.Ring;
import everyblade.core.sight.SightArcs;
import everyblade.core.sight.SightScene;
import everyblade.core.sight.ViewScene;
import everyblade.core.surface.Facets;
import everyblade.core.surface.Mesh;
import everyblade.practice.Engines;
import everyblade.practice.drill.Mockup;
import everyblade.practice.harm.Dice;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import everyblade.spi.Station;
import everyblade.spi.Station.Heading;
import everyblade.spi.View;
import everyblade.spi.Wall;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What is drawn is found by a depth buffer, sight arcs in closed form; both must tell the same of the same engine. */
class DrawnIsInSightTest {

    private static final int POSES = Boolean.getBoolean("everyblade.campaign") ? 100 : 10;
    private static final int SIZE = 640;
    private static final double MARGIN = 0.5;

    private double inSight;
    private double otherwise;

    @Test
    void facets_drawn_are_facets_in_sight_within_a_hundredth_of_their_area() throws Exception {
        ViewScene engine = Engines.scene("larkspur-4");
        Dice dice = new Dice(20);
        Map<String, Double> standing = Map.of("s1", 3.0, "s2", 1.0, "s3", 2.0, "s4", 4.0, "gtv", 5.0, "ptv", 6.0);
        Mockup mockup = new Mockup(engine, List.of(), standing, 0);
        List<View> views = engine.model().views().stream()
                .filter(view -> !view.stations().isEmpty()
                        && engine.model().row(view.row()).orElseThrow().kind() == RowKind.ROTOR)
                .toList();
        for (int i = 0; i < POSES; i++) {
            View view = views.get(dice.below(views.size()));
            Station station = view.stations().get(dice.below(view.stations().size()));
            Pose pose = tilted(
                    Pose.of(
                            station,
                            engine.model()
                                    .scopeTip(view.scopeTip().orElseThrow())
                                    .orElseThrow()),
                    dice);
            compare(engine, mockup, standing, engine.model().row(view.row()).orElseThrow(), pose, dice.between(0, 360));
        }

        assertThat(inSight).isPositive();
        assertThat(otherwise / inSight).isLessThan(0.01);
    }

    private static Pose tilted(Pose pose, Dice dice) {
        Heading forward = pose.forward();
        return new Pose(
                pose.x() + dice.between(-1, 1),
                pose.r() + dice.between(-1, 1),
                pose.clock(),
                new Heading(
                        forward.axial() + dice.between(-0.2, 0.2),
                        forward.tangential() + dice.between(-0.2, 0.2),
                        forward.radial() + dice.between(-0.2, 0.2)),
                pose.up(),
                pose.cone(),
                pose.near(),
                pose.far(),
                pose.pixels());
    }

    private void compare(
            ViewScene engine, Mockup mockup, Map<String, Double> standing, Row row, Pose pose, double shaft)
            throws Exception {
        SightScene scene = scene(engine, standing, row);
        SightArcs arcs = SightArcs.compute(scene, pose, Criteria.USUAL, Progress.NONE);
        List<PlacedMesh> stage = mockup.at(Map.of("gas", shaft, "power", shaft)).stream()
                .filter(one -> isIn(engine, row, mockup.owner(one.owner()).row()))
                .toList();
        EyeFrame frame = new Raster(SIZE).draw(stage, pose, 1000);
        Lens lens = new Lens(pose, SIZE);
        for (int airfoil = 1; airfoil <= row.count(); airfoil++) {
            Turn clock = mockup.clock(row.id(), airfoil, shaft);
            for (int facet = 0; facet < scene.facets().count(); facet++) {
                Optional<int[]> at = showing(scene.facets(), facet, clock, lens, pose);
                if (at.isPresent()) {
                    boolean seen = arcs.arcs(facet).contains(clock.wrapped().floorTicks());
                    boolean drawn = isDrawn(frame, mockup, row, airfoil, facet, at.get());
                    double area = scene.facets().area(facet);
                    inSight += seen ? area : 0;
                    otherwise += seen != drawn ? area : 0;
                }
            }
        }
    }

    /** The row and its ring, all vanes, all walls; other rotors are left out of both. */
    private static boolean isIn(ViewScene engine, Row row, String owner) {
        Optional<Row> other = engine.model().row(owner);
        return other.isEmpty()
                || other.get().equals(row)
                || other.get().kind() == RowKind.STATOR
                || row.ring().isPresent() && other.get().ring().equals(row.ring());
    }

    private static SightScene scene(ViewScene engine, Map<String, Double> standing, Row row) throws Exception {
        Mesh airfoil = engine.airfoil(row).orElseThrow();
        SightScene scene = SightScene.of(airfoil, row.count(), Zoning.of(row));
        for (Row other : engine.model().rows()) {
            Optional<Mesh> mesh = other.equals(row) ? Optional.empty() : engine.airfoil(other);
            if (mesh.isPresent() && isIn(engine, row, other.id())) {
                Turn first = Turn.ofDegrees(standing.getOrDefault(other.id(), 0.0));
                Ring ring = new Ring(mesh.get(), other.count(), first);
                scene = other.kind() == RowKind.STATOR ? scene.withFixed(ring) : scene.withMate(ring);
            }
        }
        for (Wall wall : engine.model().walls()) {
            scene = scene.withWall(wall);
        }
        return scene;
    }

    /** Where the middle of a facet is in the picture, if nothing but hiding can keep it out of sight. */
    private static Optional<int[]> showing(Facets facets, int facet, Turn clock, Lens lens, Pose pose) {
        double turned = Math.toRadians(clock.degrees());
        double[] seen = lens.seen(
                facets.centroid(facet, 0),
                y(facets.centroid(facet, 1), facets.centroid(facet, 2), turned),
                z(facets.centroid(facet, 1), facets.centroid(facet, 2), turned));
        double distance = Math.sqrt(seen[0] * seen[0] + seen[1] * seen[1] + seen[2] * seen[2]);
        if (seen[2] <= 0 || distance < pose.near() || distance > pose.far()) {
            return Optional.empty();
        }
        double[] origin = lens.seen(0, 0, 0);
        double[] tip = lens.seen(
                facets.normal(facet, 0),
                y(facets.normal(facet, 1), facets.normal(facet, 2), turned),
                z(facets.normal(facet, 1), facets.normal(facet, 2), turned));
        double along = 0;
        for (int i = 0; i < 3; i++) {
            along -= (tip[i] - origin[i]) * seen[i] / distance;
        }
        double across = lens.across(seen);
        double down = lens.down(seen);
        boolean inCone = Math.hypot(across - SIZE / 2.0, down - SIZE / 2.0) < SIZE / 2.0 - MARGIN;
        boolean square = along > Math.sin(Math.toRadians(30)) + 1e-9;
        return inCone && square ? Optional.of(new int[] {(int) across, (int) down}) : Optional.empty();
    }

    private static double y(double y, double z, double turned) {
        return y * Math.cos(turned) + z * Math.sin(turned);
    }

    private static double z(double y, double z, double turned) {
        return z * Math.cos(turned) - y * Math.sin(turned);
    }

    private static boolean isDrawn(EyeFrame frame, Mockup mockup, Row row, int airfoil, int facet, int[] at) {
        int element = at[1] * SIZE + at[0];
        int placed = frame.placed(element);
        return placed != EyeFrame.NOTHING
                && mockup.owner(frame.drawn().get(placed).owner()).equals(new Mockup.Owner(row.id(), airfoil))
                && frame.face(element) == facet;
    }
}
