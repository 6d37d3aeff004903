package everyblade.core.coverage;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.Job;
import everyblade.core.ShapedEngine;
import everyblade.core.angle.Arc;
import everyblade.core.angle.Circle;
import everyblade.core.entry.Zoning;
import everyblade.core.sight.Criteria;
import everyblade.core.sight.Progress;
import everyblade.core.sight.SightStore;
import everyblade.core.sight.Sights;
import everyblade.core.sight.StationSight;
import everyblade.core.sight.ViewScene;
import everyblade.core.surface.Patches;
import everyblade.core.turning.Engine;
import everyblade.core.turning.Stance;
import everyblade.spi.EngineModel;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import everyblade.spi.Station;
import everyblade.spi.Station.Heading;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Coverage from stations against a slow oracle: random jobs, every cell. */
class SightOracleTest {

    private static final boolean CAMPAIGN = Boolean.getBoolean("everyblade.campaign");
    /** In these two jobs each state comes about. */
    private static final int FIRST = CAMPAIGN ? 0 : 2;

    private static final int JOBS = CAMPAIGN ? 400 : 2;
    private static final int BLADES = 20;
    private static final List<Integer> ALL = IntStream.range(0, 12).boxed().toList();

    private final Station tip = ShapedEngine.station("tip", -15, 140, new Heading(1, 0.2, -0.4), 1, 3);
    private final Station root = ShapedEngine.station("root", -12, 118, new Heading(1, 0.5, -0.3), 0.5, 1);
    private final Station exact = ShapedEngine.station("exact", -18, 130, new Heading(1, -0.4, 0), 0, 0);
    private final List<Station> stations = List.of(tip, root, exact);
    private final EngineModel model = new ShapedEngine()
            .row("r", RowKind.ROTOR, BLADES, 35, 0)
            .view("v", "r", tip, root, exact)
            .model();
    private final Row row = model.rows().get(0);
    private final Map<String, StationSight> known = new HashMap<>();
    private final Sights sights = new Sights(
            new ViewScene(model, Map.of(), Map.of()), "oracle", Criteria.USUAL, SightStore.NONE, Progress.NONE);

    @Test
    void everyCellOfRandomJobsHasTheStateThatTheOracleFinds() {
        int[] states = new int[State.values().length];
        for (int job = FIRST; job < FIRST + JOBS; job++) {
            compare(job, states);
        }
        assertThat(states).as("each state comes about").doesNotContain(0);
    }

    private StationSight sight(Station station) {
        return known.computeIfAbsent(
                station.id(),
                id -> sights.of(
                                new Stance("v", List.of(id), false, Optional.of("fwd60"), Map.of(), Optional.empty()),
                                id)
                        .orElseThrow());
    }

    private void compare(int seed, int[] states) {
        SplittableRandom random = new SplittableRandom(seed);
        SightOracle oracle = new SightOracle(row, sights.grain(row).patches(), this::sight);
        List<String> lines = new ArrayList<>(List.of("view v", "datum r 1"));
        Station at = tip;
        List<Integer> watching = ALL;
        int degrees = 0;
        int entries = 3 + random.nextInt(12);
        for (int i = 0; i < entries; i++) {
            int amount = (random.nextBoolean() ? 1 : -1) * random.nextInt(random.nextInt(4) == 0 ? 400 : 60);
            List<Station> passed = IntStream.rangeClosed(random.nextInt(2), 2)
                    .mapToObj(stations::get)
                    .toList();
            String through = " through " + passed.get(0).id() + " "
                    + passed.get(passed.size() - 1).id();
            switch (random.nextInt(7)) {
                case 0 -> {
                    at = stations.get(random.nextInt(3));
                    lines.add("at " + at.id());
                    oracle.seated();
                }
                case 1 -> {
                    boolean tips = random.nextBoolean();
                    watching = tips ? ALL.subList(6, 12) : ALL;
                    lines.add(tips ? "watch tip" : "watch all");
                }
                case 2 -> {
                    lines.add("look" + through);
                    oracle.through(passed, ticks(degrees), ticks(degrees), watching);
                    at = passed.get(passed.size() - 1);
                    oracle.seated();
                }
                case 3 -> {
                    lines.add("turn " + amount + through);
                    oracle.through(
                            passed,
                            ticks(Math.min(degrees, degrees + amount)),
                            ticks(Math.max(degrees, degrees + amount)),
                            watching);
                    degrees += amount;
                    at = passed.get(passed.size() - 1);
                    oracle.seated();
                }
                case 4 -> {
                    lines.add("skip " + amount);
                    degrees += amount;
                }
                case 5 -> {
                    lines.add("look");
                    oracle.hold(at, ticks(degrees), ticks(degrees), watching);
                }
                default -> {
                    lines.add("turn " + amount);
                    oracle.hold(
                            at,
                            ticks(Math.min(degrees, degrees + amount)),
                            ticks(Math.max(degrees, degrees + amount)),
                            watching);
                    degrees += amount;
                }
            }
        }
        RowCoverage coverage = new Job(Engine.of(model))
                .enter(lines.toArray(String[]::new))
                .coverage()
                .row("r");
        for (int n = 1; n <= BLADES; n++) {
            BitSet reach = oracle.reach(n, stations);
            assertThat(coverage.surely(n)).isEqualTo(oracle.surely(n));
            for (int zone = 0; zone < Zoning.of(row).size(); zone++) {
                State expected = oracle.state(n, zone, reach);
                states[expected.ordinal()]++;
                assertThat(coverage.state(n, zone))
                        .as("blade %d, zone %d after %s", n, zone, lines)
                        .isEqualTo(expected);
            }
        }
    }

    /** Where the turn began is known to ± 90° only, so that blade 1 need not have come by at all; what it left out is 10° less a tick. */
    @Test
    void aTurnFromAPlaceThatIsNotKnownShowsWhatIsInSightForLongerThanTheRestOfIt() {
        RowCoverage coverage = new Job(Engine.of(model))
                .enter("view v", "at exact", "datum r 1 ± 90", "turn 350 ± 0")
                .coverage()
                .row("r");
        StationSight sight = sight(exact);
        Patches patches = sights.grain(row).patches();
        int seen = 0;
        int tooShort = 0;
        for (int patch = 0; patch < patches.count(); patch++) {
            int facet = patches.facet(patch);
            int part = patch - patches.first(facet);
            long shorter = sight.shorter(0, 0, facet, part);
            List<Arc> arcs = sight.arcs(0, 0, facet, part).arcs();
            boolean longEnough = arcs.stream().anyMatch(arc -> arc.length() - shorter >= ticks(10));
            assertThat(coverage.surely(1).get(patch)).as("patch %d", patch).isEqualTo(longEnough);
            seen += longEnough ? 1 : 0;
            tooShort += !longEnough && arcs.stream().anyMatch(arc -> arc.length() + shorter >= ticks(10)) ? 1 : 0;
        }
        assertThat(seen).isPositive();
        assertThat(tooShort).as("long enough in its middle alone").isPositive();
    }

    /** One station shows what it shows while the other does, or nobody knows where on the way the scope tip was. */
    @Test
    void ofAScopeTipThatWasMovedWhileTheRowTurnedOnlyWhatEachStationShowsIsSeen() {
        Station aft = ShapedEngine.station("aft", -14, 120, new Heading(1, 0.4, 0.2), 0, 0);
        Engine engine = new ShapedEngine()
                .row("r", RowKind.ROTOR, BLADES, 35, 0)
                .view("v", "r", exact, aft)
                .built();
        RowCoverage moved = new Job(engine)
                .enter("view v", "datum r 1 ± 0", "turn 360 through exact aft")
                .coverage()
                .row("r");
        BitSet both = new Job(engine)
                .enter("view v", "datum r 1 ± 0", "turn 360")
                .coverage()
                .row("r")
                .surely(5);
        BitSet fromAft = new Job(engine)
                .enter("view v", "at aft", "datum r 1 ± 0", "turn 360")
                .coverage()
                .row("r")
                .surely(5);
        assertThat(both).isNotEqualTo(fromAft);
        both.and(fromAft);
        assertThat(moved.surely(5)).isEqualTo(both);
        assertThat(both.isEmpty()).isFalse();
    }

    private static long ticks(int degrees) {
        return degrees * Circle.TICKS_PER_DEGREE;
    }
}
