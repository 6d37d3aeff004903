package everyblade.core.coverage;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.Job;
import everyblade.core.ShapedEngine;
import everyblade.core.entry.Refusal;
import everyblade.core.entry.Settings;
import everyblade.core.sight.Criteria;
import everyblade.core.sight.Progress;
import everyblade.core.sight.SightStore;
import everyblade.core.sight.Sights;
import everyblade.core.sight.ViewScene;
import everyblade.core.turning.Engine;
import everyblade.core.turning.Fold;
import everyblade.spi.EngineModel;
import everyblade.spi.RowKind;
import everyblade.spi.Station;
import everyblade.spi.Station.Heading;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Cells that were kept: a row of which nothing further was said is not computed again, and no row is told otherwise for it. */
class KnownCellsTest {

    private static final int JOBS = 30;

    private final Station far = ShapedEngine.station("far", -15, 140, new Heading(1, 0.2, -0.4), 1, 3);
    private final Station near = ShapedEngine.station("near", -12, 118, new Heading(1, 0.5, -0.3), 0, 0);
    private final Station vanes = ShapedEngine.station("vanes", -60, 130, new Heading(1, 0.3, -0.2), 0.5, 1);
    private final EngineModel model = new ShapedEngine()
            .row("s", RowKind.STATOR, 12, 0, -46)
            .row("r", RowKind.ROTOR, 20, 35, 0)
            .twisted("q", 18, 60)
            .view("vr", "r", far, near)
            .view("vs", "s", vanes)
            .view("vb", "r", ShapedEngine.station("b", -50, 130, new Heading(1, 0, -0.1), 0, 0))
            .view("vq", "q", ShapedEngine.station("q", 45, 130, new Heading(1, 0.3, -0.3), 0, 0))
            .model();
    private final Engine engine = Engine.of(model);
    private final Kept kept = new Kept();

    /** Keeps everything, and counts. */
    private static final class Kept implements SightStore {
        private final Map<String, byte[]> contents = new HashMap<>();
        private int computed;

        @Override
        public synchronized Optional<byte[]> find(String key) {
            return Optional.ofNullable(contents.get(key));
        }

        @Override
        public synchronized void keep(String key, byte[] content) {
            contents.put(key, content);
            computed++;
        }

        /** How many rows were computed since this was asked last. */
        int rows() {
            int since = computed;
            computed = 0;
            return since;
        }
    }

    private static Settings settings(Map<String, String> said) {
        Map<String, BigDecimal> values = new HashMap<>();
        said.forEach((name, value) -> values.put(name, new BigDecimal(value)));
        return Settings.of(values);
    }

    private Sights sights(Settings settings) {
        return new Sights(
                new ViewScene(model, Map.of(), Map.of()),
                "test",
                Criteria.of(settings),
                SightStore.NONE,
                Progress.NONE);
    }

    private final Settings usual = settings(Map.of("detail", "0.8"));
    private final Settings timed = settings(Map.of("detail", "0.8", "least-view", "0.5"));
    private final Map<Settings, Sights> sights = Map.of(usual, sights(usual), timed, sights(timed));

    private Coverage kept(Fold fold, Settings settings) {
        return Coverage.of(fold.situation(), settings, sights.get(settings), kept);
    }

    private Coverage kept(Fold fold) {
        return kept(fold, usual);
    }

    private Coverage computed(Fold fold, Settings settings) {
        return Coverage.of(fold.situation(), settings, sights.get(settings));
    }

    /** Everything that cells tell, and that is asked of them otherwise. */
    private static void assertAlike(Coverage told, Coverage computed, List<String> lines) {
        for (RowCoverage row : computed.rows()) {
            RowCoverage other = told.row(row.row().id());
            assertThat(other.headline()).as("%s", lines).isEqualTo(row.headline());
            assertThat(other.basis()).isEqualTo(row.basis());
            assertThat(other.surface(row.zoning().all()))
                    .isEqualTo(row.surface(row.zoning().all()));
            for (int n = 1; n <= row.row().count(); n++) {
                for (int zone = 0; zone < row.zoning().size(); zone++) {
                    assertThat(cell(other, n, zone))
                            .as("%s %d zone %d after %s", row.row().id(), n, zone, lines)
                            .isEqualTo(cell(row, n, zone));
                }
            }
        }
    }

    private static List<Object> cells(Coverage coverage) {
        return coverage.rows().stream()
                .flatMap(row -> IntStream.rangeClosed(1, row.row().count())
                        .boxed()
                        .flatMap(n ->
                                IntStream.range(0, row.zoning().size()).mapToObj(zone -> (Object) cell(row, n, zone))))
                .toList();
    }

    private static List<Object> cell(RowCoverage row, int n, int zone) {
        return List.of(
                row.state(n, zone),
                row.why(n, zone),
                row.hindrance(n, zone),
                row.lacksEdgeAlone(n, zone),
                row.areas(n, zone));
    }

    private static Fold fold(Job job, String... lines) {
        return job.enter(lines).fold();
    }

    private Job begun() {
        return new Job(engine).enter("view vr", "datum r 1", "turn 120", "view vq", "datum q 1", "turn 90");
    }

    @Test
    void anEntryOnOneRowHasThatRowAloneComputed() {
        Job job = begun();
        kept(job.fold());
        assertThat(kept.rows()).isEqualTo(3);
        kept(fold(job, "nick 3 tip 0.4", "recheck 4 of r"));
        assertThat(kept.rows()).as("a finding").isZero();
        kept(fold(job, "turn 40"));
        assertThat(kept.rows()).as("q watched").isEqualTo(1);
        kept(fold(job, "skip 40"));
        assertThat(kept.rows()).as("turned unwatched").isZero();
        kept(fold(job, "view vs", "datum s 1", "draw 90"));
        assertThat(kept.rows()).as("s drawn past, and known to stand before r").isEqualTo(2);
        kept(fold(job, "draw 40"));
        assertThat(kept.rows()).as("s drawn past").isEqualTo(1);
    }

    @Test
    void anIdentificationHasTheRowsOfItsShaftComputed() {
        Job job = begun();
        kept(job.fold());
        kept.rows();
        kept(fold(job, "skip 20", "here 7 ± 2"));
        assertThat(kept.rows()).isBetween(1, 2);
    }

    @Test
    void whatIsVoidedComesBackAsItWas() {
        Job job = begun();
        kept(job.fold());
        kept(fold(job, "turn 60"));
        kept.rows();
        kept(fold(job, "void 7 because of another row"));
        assertThat(kept.rows()).isZero();
    }

    @Test
    void hangOnTheSettingsAndOnHowLongItTook() {
        Fold brief =
                new Job(engine).enter("view vr", "datum r 1", "turn 60 in 0.1s").fold();
        Fold slow =
                new Job(engine).enter("view vr", "datum r 1", "turn 60 in 90s").fold();
        assertToldApart(kept(brief, usual), kept(brief, timed), computed(brief, timed), "the least time");
        assertToldApart(kept(brief, timed), kept(slow, timed), computed(slow, timed), "how long it took");
    }

    private static String[] lines(String... lines) {
        return lines;
    }

    /** Of each two jobs one thing alone is otherwise. */
    @Test
    void hangOnAllThatIsSaidOfTheWatching() {
        String[] blades = lines("view vr", "datum r 1");
        String[] stators = lines("view vs", "datum s 1");
        assertTellsApart("where it stood", blades, lines("turn 60"), lines("view vr", "datum r 3"), lines("turn 60"));
        assertTellsApart("how surely", blades, lines("skip 9", "turn 60"), blades, lines("skip 9 ± 20", "turn 60"));
        assertTellsApart("how far", blades, lines("turn 60"), blades, lines("turn 70"));
        assertTellsApart("the station", blades, lines("at far", "turn 60"), blades, lines("at near", "turn 60"));
        assertTellsApart("what was watched", blades, lines("turn 60"), blades, lines("watch tip", "turn 60"));
        assertTellsApart(
                "where what stands between stood",
                lines("view vb", "datum r 1", "turn 60"),
                lines("view vs", "datum s 1"),
                lines("view vb", "datum r 1", "turn 60"),
                lines("view vs", "draw 11", "datum s 1"));
        assertTellsApart(
                "how the vanes stood",
                stators,
                lines("draw 90", "vanes s open"),
                stators,
                lines("vanes s open", "draw 90"));
        assertTellsApart(
                "whether it was seated anew between",
                blades,
                times(12, "look", "skip 2"),
                blades,
                times(12, "look", "view vr", "skip 2"));
        String[] watched = lines("view vr", "datum r 1", "skip 9 ± 9", "turn 60");
        assertTellsApart(
                "the number of the run",
                times(40, "view vq", "datum q 1"),
                watched,
                times(40, "view vq", "datum q 1", "look"),
                watched);
    }

    /** Nothing was watched: what is within reach hangs on which vane stands before the scope tip, and on nothing else. */
    @Test
    void hangOnWhereTheVanesStandBeforeAScopeTipThatCannotBeDrawnRound() {
        Engine fixed = new ShapedEngine()
                .row("s", RowKind.STATOR, 12, 0, -46)
                .fixedView("f", "s", ShapedEngine.station("vanes", -60, 130, new Heading(1, 0.3, -0.2), 0, 0))
                .built();
        Coverage computed = new Job(fixed).enter("view f", "datum s 4 ± 0").coverage();
        Coverage first = known(new Job(fixed).enter("view f", "datum s 1 ± 0"), computed.sights());
        Coverage told = known(new Job(fixed).enter("view f", "datum s 4 ± 0"), computed.sights());
        assertToldApart(first, told, computed, "which vane stands there");
    }

    private Coverage known(Job job, Sights shown) {
        return Coverage.of(job.fold().situation(), Settings.USUAL, shown, kept);
    }

    private static String[] times(int often, String... lines) {
        return IntStream.range(0, often).boxed().flatMap(i -> Stream.of(lines)).toArray(String[]::new);
    }

    private void assertTellsApart(String what, String[] one, String[] further, String[] other, String[] otherwise) {
        Fold first = new Job(engine).enter(one).enter(further).fold();
        Fold second = new Job(engine).enter(other).enter(otherwise).fold();
        assertToldApart(kept(first), kept(second), computed(second, usual), what);
    }

    private static void assertToldApart(Coverage before, Coverage told, Coverage computed, String what) {
        assertThat(cells(before)).as("%s tells", what).isNotEqualTo(cells(computed));
        assertAlike(told, computed, List.of(what));
    }

    @Test
    void whateverWasSaidTheyAreThoseThatAreComputed() {
        for (int seed = 0; seed < JOBS; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            Settings settings = random.nextInt(4) == 0 ? timed : usual;
            Job job = new Job(engine);
            List<String> lines = new ArrayList<>();
            for (int i = 0; i < 12; i++) {
                enter(job, lines, line(random));
                if (i % 4 == 3) {
                    assertAlike(kept(job.fold(), settings), computed(job.fold(), settings), lines);
                    kept.rows();
                    assertAlike(kept(job.fold(), settings), computed(job.fold(), settings), lines);
                    assertThat(kept.rows()).as("asked again").isZero();
                }
            }
        }
    }

    /** A line that is refused is left out. */
    private static void enter(Job job, List<String> lines, String line) {
        try {
            job.tryEnter(line);
            lines.add(line);
        } catch (Refusal refused) {
            assertThat(refused.column()).isPositive();
        }
    }

    private static String line(SplittableRandom random) {
        String view = List.of("vr", "vs", "vq").get(random.nextInt(3));
        String row = view.substring(1);
        int amount = 5 + random.nextInt(8) * 15;
        return switch (random.nextInt(16)) {
            case 0, 1 -> "view " + view;
            case 2, 3, 4 -> "datum " + row + " " + (1 + random.nextInt(2));
            case 5, 6 -> "turn " + amount;
            case 7 -> "turn back " + amount + " in 2s";
            case 8 -> "skip " + amount;
            case 9 -> "draw " + amount;
            case 10 -> "watch tip";
            case 11 -> "at near";
            case 12 -> "look";
            case 13 -> "slip";
            case 14 -> "vanes s open";
            default -> "here " + (1 + random.nextInt(6)) + " ± 3";
        };
    }

    @Test
    void whatIsAskedOfThemFurtherIsComputedThen() {
        Job job = begun();
        kept(job.fold());
        Coverage told = kept(job.fold());
        Coverage computed = computed(job.fold(), usual);
        for (RowCoverage row : computed.rows()) {
            RowCoverage other = told.row(row.row().id());
            BitSet half = row.surely(1);
            half.set(0, half.size() / 2);
            for (int n = 1; n <= row.row().count(); n++) {
                assertThat(other.surely(n)).isEqualTo(row.surely(n));
                assertThat(other.wholly(n)).isEqualTo(row.wholly(n));
                for (int zone = 0; zone < row.zoning().size(); zone++) {
                    assertThat(other.doneBy(n, zone, half, row.wholly(n)))
                            .isEqualTo(row.doneBy(n, zone, half, row.wholly(n)));
                }
            }
            assertThat(other.reach().orElseThrow().facets())
                    .isEqualTo(row.reach().orElseThrow().facets());
            assertThat(other.seen(1, 0)).isEqualTo(row.seen(1, 0));
        }
    }

    @Test
    void workGoesOnFromThem() {
        Job job = begun();
        kept(job.fold());
        Coverage told = kept(job.fold());
        Fold later = fold(job, "turn 50", "view vr", "turn 30");
        assertAlike(told.after(later.situation()), computed(later, usual), List.of("gone on"));
    }

    @Test
    void whatIsNotTheirsIsComputedAgain() {
        Job job = begun();
        Coverage computed = kept(job.fold());
        SplittableRandom random = new SplittableRandom(1);
        Map<String, byte[]> honest = Map.copyOf(kept.contents);
        for (int i = 0; i < 20; i++) {
            kept.contents.replaceAll((key, content) -> otherLength(random, honest.get(key)));
            assertAlike(kept(job.fold()), computed, List.of("damaged"));
        }
    }

    /** Cut somewhere, or with more behind. */
    private static byte[] otherLength(SplittableRandom random, byte[] content) {
        return Arrays.copyOf(content, content.length + (random.nextBoolean() ? 1 : -1) * (1 + random.nextInt(60)));
    }
}
