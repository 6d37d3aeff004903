package everyblade.core.gap;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.Engines;
import everyblade.core.English;
import everyblade.core.Job;
import everyblade.core.coverage.RowCoverage;
import everyblade.core.coverage.State;
import everyblade.core.coverage.Why;
import everyblade.core.turning.Engine;
import everyblade.spi.Direction;
import everyblade.spi.Ratio;
import everyblade.spi.RowKind;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class GapsTest {

    private static Engine halves() {
        return new Engines()
                .row("c1", RowKind.ROTOR, 36, Direction.CW, 2, List.of(), false, 0)
                .view("v", "c1", 118, 2)
                .view("tips", "c1", 200, 2, "tip")
                .built();
    }

    private static List<Gap> gaps(Job job) {
        List<Gap> gaps = Gaps.of(job.coverage());
        for (RowCoverage row : job.coverage().rows()) {
            assertThat(Gaps.in(row))
                    .as("any in %s", row.row().id())
                    .isEqualTo(gaps.stream().anyMatch(gap -> gap.row().equals(row.row())));
        }
        return gaps;
    }

    private static List<String> told(Job job) {
        return gaps(job).stream()
                .map(gap -> English.say(new ToldGap.Sentence(ToldGap.of(gap), false)))
                .toList();
    }

    @Test
    void aSkippedSectorIsToldAsAPersonWould() {
        Job job = new Job(halves()).enter("view v", "datum c1 1", "turn on 100", "skip on 50", "turn on 210");
        assertThat(told(job))
                .containsExactly(
                        "row c1 (c1): blades 23–26, everything: not seen (skipped, or too little of it in sight); through view v turn unwatched"
                                + " to 110°, then turn 30° clockwise watching.");
    }

    @Test
    void aRunOverTheSeamIsOneGap() {
        Job job = new Job(halves()).enter("view v", "datum c1 5", "turn on 300");
        assertThat(gaps(job))
                .singleElement()
                .satisfies(gap -> assertThat(gap.airfoils()).containsExactly(6, 7, 8, 9, 10));
    }

    @Test
    void aRunThatGoesOnBehindTheLastNumberIsOneGap() {
        Job job = new Job(halves()).enter("view v", "datum c1 34", "turn on 300");
        assertThat(gaps(job))
                .singleElement()
                .satisfies(gap -> assertThat(gap.airfoils()).containsExactly(35, 36, 1, 2, 3));
    }

    @Test
    void ofARowOfWhichNothingWasSeenEachBladeIsNamedOnce() {
        Job job = new Job(halves()).enter("view v", "datum c1 5");
        assertThat(gaps(new Job(halves())).get(0).airfoils())
                .isEqualTo(IntStream.rangeClosed(1, 36).boxed().toList());
        assertThat(gaps(job.enter("watch root", "turn on 360")).get(0).airfoils())
                .isEqualTo(IntStream.rangeClosed(1, 36).boxed().toList());
    }

    @Test
    void halvesThatWereNotWatchedAreGapsOfTheirOwn() {
        Job job = new Job(halves()).enter("view v", "datum c1 1", "watch root", "turn on 360");
        assertThat(told(job))
                .singleElement()
                .asString()
                .contains("all 36 blades, tip: not seen (not watched while it was in sight)");
    }

    @Test
    void whatNobodyEverIdentifiedAsksForADatum() {
        Job job = new Job(halves()).enter("view v", "turn on 360");
        assertThat(told(job))
                .singleElement()
                .asString()
                .contains("first bring a known airfoil to the reference: ")
                .contains("blade 1 (any that you mark), in view v at ");
    }

    @Test
    void whatNoViewShowsStaysAGapUntilSomeoneAcceptsIt() {
        Engine engine = new Engines()
                .row("c1", RowKind.ROTOR, 36, Direction.CW, 2, List.of(), false, 0)
                .view("tips", "c1", 200, 2, "tip")
                .built();
        Job job = new Job(engine).enter("view tips", "round 1");
        assertThat(gaps(job)).singleElement().satisfies(gap -> {
            assertThat(gap.why()).isEqualTo(Why.NO_ACCESS);
            assertThat(gap.reach()).isEmpty();
        });
        job.enter("noaccess root all because no port reaches it");
        assertThat(gaps(job)).isEmpty();
        assertThat(job.coverage().row("c1").state(1, 0)).isEqualTo(State.UNSEEN);
    }

    @Test
    void theTaskMayAskForSomePartsOnly() {
        Job job = new Job(halves()).enter("view v", "datum c1 1", "watch root", "turn on 360", "ask c1 root");
        assertThat(gaps(job)).isEmpty();
    }

    @Test
    void whatIsOnlyMaybeSeenSaysWhy() {
        Job job = new Job(new Engines()
                        .rotor("c1", 36)
                        .view("v", "c1", 0, 2)
                        .pad("pad", Ratio.ONE, 3, 0, 0)
                        .built())
                .enter("view v", "datum c1 1", "turn on 350");
        assertThat(told(job)).anySatisfy(text -> assertThat(text).contains("only maybe seen", "too much play"));
    }

    @Test
    void whatPassedTooFastIsToldApart() {
        Job job = new Job(halves())
                .leastView(0.3)
                .enter("view v", "datum c1 1", "turn on 180 in 90s", "turn on 178 in 2s");
        assertThat(gaps(job))
                .singleElement()
                .satisfies(gap -> assertThat(gap.why()).isEqualTo(Why.FAST));
        assertThat(job.coverage().row("c1").state(36, 0)).isEqualTo(State.SEEN);
    }

    @Test
    void followingTheWayToAGapClosesIt() {
        int closed = 0;
        for (int seed = 0; seed < 100; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            Direction numbering = random.nextBoolean() ? Direction.CW : Direction.CCW;
            boolean turns = random.nextInt(3) > 0;
            int count = 2 + random.nextInt(60);
            Job job = new Job(new Engines()
                    .normal(random.nextBoolean() ? Direction.CW : Direction.CCW)
                    .row("r", turns ? RowKind.ROTOR : RowKind.STATOR, count, numbering, 2, List.of(), false, 0)
                    .view("v", "r", random.nextInt(360), 1)
                    .view("tips", "r", random.nextInt(360), 1, "tip")
                    .built());
            job.enter("view v", "datum r " + (1 + random.nextInt(count)));
            for (int i = 0; i < 4; i++) {
                String verb =
                        turns ? random.nextBoolean() ? "turn " : "skip " : random.nextBoolean() ? "draw " : "feed ";
                job.enter(verb + (random.nextInt(300) - 150));
                job.enter(random.nextBoolean() ? "watch root" : "watch all");
            }
            for (Gap gap : gaps(job)) {
                Gap.Reach reach = gap.reach().orElseThrow();
                Job after = new Job(job.fold().situation().engine());
                job.fold().entries().forEach(entry -> after.enter(entry.text()));
                String from = java.math.BigDecimal.valueOf(reach.from())
                        .setScale(6, java.math.RoundingMode.HALF_EVEN)
                        .toPlainString();
                String sweep = java.math.BigDecimal.valueOf(reach.sweep())
                        .setScale(6, java.math.RoundingMode.HALF_EVEN)
                        .toPlainString();
                after.enter("view " + reach.view());
                String way = turns ? "skip on to " : "feed on to ";
                after.enter(way + from, (turns ? "turn " : "draw ") + sweep);
                for (int n : gap.airfoils()) {
                    for (int zone = 0; zone < 2; zone++) {
                        if (reach.zones().contains(zone)) {
                            assertThat(after.coverage().row("r").state(n, zone))
                                    .as("job %d, %s", seed, English.say(ToldGap.of(gap)))
                                    .isEqualTo(State.SEEN);
                        }
                    }
                }
                closed++;
            }
        }
        assertThat(closed).isGreaterThan(100);
    }
}
