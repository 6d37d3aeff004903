package everyblade.core.move;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.Engines;
import everyblade.core.Job;
import everyblade.core.ShapedEngine;
import everyblade.core.angle.Turn;
import everyblade.core.coverage.RowCoverage;
import everyblade.core.entry.EntryText;
import everyblade.core.entry.ZoneSet;
import everyblade.core.entry.Zoning;
import everyblade.core.sight.Pose;
import everyblade.core.sight.StationSight;
import everyblade.spi.Direction;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import everyblade.spi.Station;
import everyblade.spi.Station.Heading;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;

class SquarestTest {

    private static final Station AHEAD = ShapedEngine.station("ahead", -15, 138, new Heading(1, 0.3, -0.4), 0, 0);
    private static final Station LEFT = ShapedEngine.station("left", -15, 128, new Heading(1, -0.4, -0.1), 0, 0);

    private final Job job = new Job(new ShapedEngine()
            .row("r", RowKind.ROTOR, 12, 35, 0)
            .view("front", "r", AHEAD, LEFT)
            .built());

    private final Row row = job.fold().situation().engine().rows().get("r");
    private final Zoning zoning = Zoning.of(row);

    private Squarest of(int airfoil, ZoneSet zones) {
        return Squarest.of(job.fold(), job.coverage(), row, airfoil, zones).orElseThrow();
    }

    /** How much of the surface of these zones of airfoil 1 is seen wholly, facet by facet, after these lines. */
    private double share(ZoneSet zones, String... lines) {
        RowCoverage seen = job.another().enter(lines).coverage().row("r");
        var mesh = job.coverage().sights().scene(row).row().airfoil();
        var facets = job.coverage().sights().scene(row).facets();
        double all = 0;
        double shown = 0;
        for (int facet : IntStream.range(0, mesh.faceCount()).toArray()) {
            all += zones.contains(mesh.zone(facet)) ? facets.area(facet) : 0;
            shown += zones.contains(mesh.zone(facet)) ? seen.seen(1, facet) : 0;
        }
        return shown / all;
    }

    @Test
    void whatItSaysBringsThePartIntoSight() {
        job.enter("view front", "datum r 1", "skip 40");
        for (int side = 0; side < 2; side++) {
            ZoneSet zones = zoning.side(side);
            Squarest best = of(1, zones);
            Job there = job.another().enter("view front", "datum r 1", "skip 40");
            best.entries().forEach(entry -> there.enter(EntryText.of(entry)));

            assertThat(there.fold().situation().seat().orElseThrow().station().map(Station::id))
                    .isEqualTo(best.station());
            assertThat(share(
                            zones,
                            "view front",
                            "datum r 1",
                            "at " + best.station().get(),
                            "skip to " + best.reading().orElseThrow(),
                            "look"))
                    .as("only facets count that are seen wholly")
                    .isBetween(best.share() - 0.15, best.share() + 0.01);
            assertThat(best.share()).isPositive();
            assertThat(best.slant().orElseThrow()).isBetween(0.0, 60.0);
        }
    }

    /** What is seen at all is seen within 60° from square, so nothing that is seen can be worth less than half its surface. */
    @Test
    void noOtherPlaceShowsSoMuchThatItMustBeMoreSquare() {
        job.enter("view front", "datum r 1");
        ZoneSet zones = zoning.side(1);
        Squarest best = of(1, zones);
        double square = best.share() * Math.cos(Math.toRadians(best.slant().orElseThrow()));
        for (String station : new String[] {"ahead", "left"}) {
            for (int reading = 0; reading < 360; reading += 15) {
                double share = share(
                        zones, "view front", "datum r 1", "at " + station, "skip on to " + (reading + 0.5), "look");
                assertThat(share).as("%s at %d°", station, reading).isLessThanOrEqualTo(1);
                assertThat(share * Math.cos(Math.toRadians(60)))
                        .as("%s at %d°", station, reading)
                        .isLessThanOrEqualTo(square + 1e-9);
            }
        }
    }

    @Test
    void ofARowThatNobodyIdentifiedItTellsTheStationButNoReading() {
        Squarest best = of(3, zoning.side(0));

        assertThat(best.reading()).isEmpty();
        assertThat(best.entries()).extracting(EntryText::of).first().isEqualTo("view front");
    }

    @Test
    void whereNothingIsComputedTheAirfoilIsBroughtToTheReference() {
        Job declared =
                new Job(new Engines().rotor("c1", 36).view("v", "c1", 118, 2).built()).enter("view v", "datum c1 1");
        Row blades = declared.fold().situation().engine().rows().get("c1");

        Squarest best = Squarest.of(declared.fold(), declared.coverage(), blades, 4, new ZoneSet(1))
                .orElseThrow();

        assertThat(best.clock()).isEqualTo(118);
        assertThat(best.slant()).isEmpty();
        assertThat(best.entries()).extracting(EntryText::of).containsExactly("skip back to 330", "look");
    }

    /** How squarely an option shows zones of an airfoil there: mean cosine of the angle between normal and line of sight. */
    private double square(ViewOption option, int airfoil, double clock, ZoneSet zones) {
        var mesh = job.coverage().sights().scene(row).row().airfoil();
        var facets = job.coverage().sights().scene(row).facets();
        StationSight sight = option.sight().orElseThrow();
        Pose pose = Pose.of(
                option.stationThere().orElseThrow(),
                job.fold().situation().engine().model().scopeTips().get(0));
        // Instead of the airfoil the scope tip is turned, the other way.
        double turned = Math.toRadians(pose.clock().degrees() - clock);
        Vector3D tip = Vector3D.of(pose.x(), pose.r() * Math.sin(turned), pose.r() * Math.cos(turned));
        double all = 0;
        double square = 0;
        for (int facet : IntStream.range(0, mesh.faceCount()).toArray()) {
            if (zones.contains(mesh.zone(facet))) {
                all += facets.area(facet);
                boolean shown = sight.arcs(sight.kind(row, airfoil), 0, facet)
                        .contains(Turn.ofDegrees(clock).wrapped().floorTicks());
                Vector3D normal =
                        Vector3D.of(facets.normal(facet, 0), facets.normal(facet, 1), facets.normal(facet, 2));
                Vector3D sightLine = tip.subtract(
                        Vector3D.of(facets.centroid(facet, 0), facets.centroid(facet, 1), facets.centroid(facet, 2)));
                square += shown ? facets.area(facet) * Math.max(0, normal.dot(sightLine.normalize())) : 0;
            }
        }
        return square / all;
    }

    @Test
    void everyFacetCountsByTheCosineOfTheAngleAtWhichItIsSeen() {
        job.enter("view front", "datum r 1");
        List<ViewOption> options = ViewOption.of(job.coverage(), job.coverage().row("r"));
        for (int side = 0; side < 2; side++) {
            ZoneSet zones = zoning.side(side);
            Squarest best = of(1, zones);
            double squarest = 0;
            for (ViewOption option : options) {
                for (double clock = 0; clock < 360; clock += 0.5) {
                    double there = square(option, 1, clock, zones);
                    squarest = Math.max(squarest, there);
                    if (option.station().equals(best.station()) && clock == best.clock()) {
                        assertThat(best.share()
                                        * Math.cos(Math.toRadians(best.slant().orElseThrow())))
                                .isCloseTo(there, within(1e-9));
                    }
                }
            }
            assertThat(best.share() * Math.cos(Math.toRadians(best.slant().orElseThrow())))
                    .isCloseTo(squarest, within(1e-9));
        }
    }

    /** Drawn round by so much, a scope tip sees the same of a blade that was turned as far. */
    @Test
    void aScopeTipElsewhereOnTheCircleSeesTheSameThatMuchFurtherOn() {
        Job there = new Job(new ShapedEngine()
                .row("r", RowKind.ROTOR, 12, 35, 0)
                .view("front", "r", drawn(AHEAD, 40), drawn(LEFT, 40))
                .built());
        Squarest here = of(1, zoning.side(1));
        Squarest elsewhere = Squarest.of(there.fold(), there.coverage(), row, 1, zoning.side(1))
                .orElseThrow();
        assertThat(elsewhere.station()).isEqualTo(here.station());
        assertThat(elsewhere.clock()).isEqualTo(TypedDegrees.wrapped(here.clock() + 40));
        assertThat(elsewhere.slant().orElseThrow()).isCloseTo(here.slant().orElseThrow(), within(1e-6));
        assertThat(elsewhere.share()).isCloseTo(here.share(), within(1e-9));
    }

    private static Station drawn(Station station, double clock) {
        return new Station(
                station.id(),
                station.x(),
                station.r(),
                clock,
                station.forward(),
                station.up(),
                station.within(),
                station.forClock());
    }

    /** Twenty vanes 18° apart; of a view that cannot be drawn round each is seen where it stands, if it is seen at all. */
    @Test
    void aVaneBeforeAFixedViewIsSeenWhereItStands() {
        Job fixed = new Job(new ShapedEngine()
                        .row("s", RowKind.STATOR, 20, 10, 0)
                        .fixedView("f", "s", ShapedEngine.station("s", -15, 135, new Heading(1, 0.3, -0.3), 0, 0))
                        .built())
                .enter("view f", "datum s 3 ± 0");
        Row vanes = fixed.fold().situation().engine().rows().get("s");
        ZoneSet all = Zoning.of(vanes).all();
        int seen = 0;
        for (int n = 1; n <= 20; n++) {
            Optional<Squarest> best = Squarest.of(fixed.fold(), fixed.coverage(), vanes, n, all);
            if (best.isPresent()) {
                seen++;
                assertThat(best.get().clock()).isEqualTo(TypedDegrees.wrapped(18.0 * (n - 3)));
                assertThat(best.get().reading()).isEmpty();
            }
        }
        assertThat(seen).isBetween(1, 10);
    }

    @Test
    void ofTwoViewsThatShowItAlikeTheOneInUseIsBest() {
        Engines alike = new Engines().rotor("c1", 36).view("v", "c1", 118, 2).view("w", "c1", 18, 2);
        Job inOne = new Job(alike.built()).enter("view v", "datum c1 1");
        Job inOther = new Job(alike.built()).enter("view w", "datum c1 1");
        Row blades = inOne.fold().situation().engine().rows().get("c1");

        assertThat(Squarest.of(inOne.fold(), inOne.coverage(), blades, 4, new ZoneSet(1))
                        .orElseThrow()
                        .view()
                        .id())
                .isEqualTo("v");
        assertThat(Squarest.of(inOther.fold(), inOther.coverage(), blades, 4, new ZoneSet(1))
                        .orElseThrow()
                        .view()
                        .id())
                .isEqualTo("w");
    }

    @Test
    void whereNothingIsComputedTheViewThatShowsMoreOfThePartsIsBest() {
        Job declared = new Job(new Engines()
                        .row("c1", RowKind.ROTOR, 36, Direction.CW, 2, List.of(), false, 0)
                        .view("half", "c1", 118, 2, "root")
                        .view("whole", "c1", 18, 2, "root", "tip")
                        .built())
                .enter("view half", "datum c1 1");
        Row blades = declared.fold().situation().engine().rows().get("c1");

        Squarest both = Squarest.of(declared.fold(), declared.coverage(), blades, 4, new ZoneSet(3))
                .orElseThrow();
        assertThat(both.view().id()).isEqualTo("whole");
        assertThat(both.share()).isEqualTo(1);
        Squarest root = Squarest.of(declared.fold(), declared.coverage(), blades, 4, new ZoneSet(1))
                .orElseThrow();
        assertThat(root.view().id()).isEqualTo("half");
    }

    @Test
    void whoIsThereAlreadyOnlyLooks() {
        Job declared = new Job(
                        new Engines().rotor("c1", 36).view("v", "c1", 118, 2).built())
                .enter("view v", "datum c1 1", "skip on 30.04");
        Row blades = declared.fold().situation().engine().rows().get("c1");

        Squarest best = Squarest.of(declared.fold(), declared.coverage(), blades, 34, new ZoneSet(1))
                .orElseThrow();
        assertThat(best.entries()).extracting(EntryText::of).containsExactly("look");
    }

    /** Vane 1 was at the reference of 118°, and vane 4 stands 30° further on. */
    @Test
    void aScopeTipIsFedRoundARowThatStandsStill() {
        Job declared =
                new Job(new Engines().stator("s1", 36).view("v", "s1", 118, 2).built()).enter("view v", "datum s1 1");
        Row vanes = declared.fold().situation().engine().rows().get("s1");

        Squarest best = Squarest.of(declared.fold(), declared.coverage(), vanes, 4, new ZoneSet(1))
                .orElseThrow();
        assertThat(best.entries()).extracting(EntryText::of).containsExactly("feed 30", "look");
        assertThat(best.reading().orElseThrow()).isEqualByComparingTo("148");
    }
}
