package everyblade.core.gap;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.Engines;
import everyblade.core.English;
import everyblade.core.Job;
import everyblade.core.coverage.RowCoverage;
import everyblade.core.coverage.State;
import everyblade.core.entry.Refusal;
import everyblade.core.turning.Engine;
import everyblade.spi.Direction;
import everyblade.spi.Ratio;
import everyblade.spi.RowKind;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/**
 * Whoever does what a gap says has closed it: random jobs without errors, at pads that may be turned one way only or
 * both, and round rows that stand still.
 */
class ReachTest {

    private static final int JOBS = Boolean.getBoolean("everyblade.campaign") ? 5_000 : 200;
    private static final int[] COUNTS = {1, 2, 7, 12, 19, 36, 47, 94};

    /** A random job: every row is identified and then seen in a few short moves. */
    private static final class RandomJob {

        final SplittableRandom random;
        final List<String> lines = new ArrayList<>();
        final Engine engine;
        final int way;

        RandomJob(long seed) {
            random = new SplittableRandom(seed);
            Engines engines = new Engines().normal(random.nextBoolean() ? Direction.CW : Direction.CCW);
            way = random.nextInt(3) - 1;
            if (way == 0) {
                engines.pad("pad", Ratio.ONE, 0, 0, 0);
            } else {
                engines.pad("pad", Ratio.ONE, 0, 0, 0, way > 0 ? Direction.CW : Direction.CCW);
            }
            int rows = 1 + random.nextInt(3);
            for (int i = 0; i < rows; i++) {
                addRow(engines, "row" + i);
            }
            engine = engines.built();
        }

        private void addRow(Engines engines, String id) {
            boolean turns = random.nextInt(3) > 0;
            int count = COUNTS[random.nextInt(COUNTS.length)];
            int bands = 1 + random.nextInt(2);
            engines.row(
                    id,
                    turns ? RowKind.ROTOR : RowKind.STATOR,
                    count,
                    random.nextBoolean() ? Direction.CW : Direction.CCW,
                    bands,
                    List.of(),
                    random.nextBoolean(),
                    0);
            int views = 1 + random.nextInt(2);
            for (int i = 0; i < views; i++) {
                double halfWidth = 0.01 + Math.rint(360e3 / count * 0.9 * random.nextDouble()) / 1e3;
                String shows = bands == 1 || random.nextInt(3) == 0 ? "all" : random.nextBoolean() ? "root" : "tip";
                engines.view(id + "-" + i, id, random.nextInt(360), Math.min(180, halfWidth), shows);
                lines.add("view " + id + "-" + i);
                if (i == 0) {
                    int airfoil = 1 + random.nextInt(count);
                    lines.add("datum " + id + " " + airfoil + (turns && random.nextBoolean() ? " at 77.7" : ""));
                }
                int moves = random.nextInt(4);
                for (int move = 0; move < moves; move++) {
                    int sign = turns && way != 0 ? way : random.nextBoolean() ? 1 : -1;
                    String verb = random.nextBoolean() ? turns ? "turn " : "draw " : turns ? "skip " : "feed ";
                    lines.add(verb
                            + BigDecimal.valueOf(sign * random.nextInt(9000), 2).toPlainString());
                }
            }
        }

        Job job() {
            return new Job(engine).enter(lines.toArray(String[]::new));
        }
    }

    @Nested
    class ByHand {

        private static Engines blades36() {
            return new Engines().rotor("c1", 36).view("v", "c1", 118, 2);
        }

        private static List<Gap> gaps(Job job) {
            return Gaps.of(job.coverage());
        }

        private Gap.Reach reach(Engines engines) {
            Job job = new Job(engines.built()).enter("view v", "datum c1 1 at 0", "turn on 90");
            return gaps(job).get(0).reach().orElseThrow();
        }

        /** Blades 2 to 27 are left; clockwise 27 comes first, at 360° − 260°, and 2 comes 25 pitches later. */
        @Test
        void goesOnInTheNormalDirection() {
            Gap.Reach reach = reach(blades36());
            assertThat(reach.view()).isEqualTo("v");
            assertThat(reach.from()).isEqualTo(100);
            assertThat(reach.sweep()).isEqualTo(250);
        }

        /** Counter-clockwise 11 to 36 are left, and 11 comes first, at − 100°. */
        @Test
        void countsDownTheOtherWay() {
            Gap.Reach reach = reach(blades36().normal(Direction.CCW));
            assertThat(reach.from()).isEqualTo(260);
            assertThat(reach.sweep()).isEqualTo(-250);
        }

        @Test
        void goesTheOnlyWayThatThePadAllows() {
            Job job = new Job(blades36()
                            .pad("aft", Ratio.ONE, 0, 0, 0, Direction.CCW)
                            .built())
                    .enter("view v", "datum c1 1 at 0", "turn -90");
            assertThat(gaps(job))
                    .singleElement()
                    .satisfies(
                            gap -> assertThat(gap.reach().orElseThrow().sweep()).isEqualTo(-250));
        }

        /** Vanes 1 to 7 stand from 0° to 90°; 8 to 24 are left, from 105° to 345°. */
        @Test
        void isTheClockOfTheScopeTipWhereTheRowStandsStill() {
            Job job = new Job(
                            new Engines().stator("s1", 24).view("v", "s1", 0, 2).built())
                    .enter("view v", "datum s1 1", "draw 90");
            Gap gap = gaps(job).get(0);
            assertThat(gap.airfoils())
                    .isEqualTo(IntStream.rangeClosed(8, 24).boxed().toList());
            assertThat(gap.reach().orElseThrow().from()).isEqualTo(105);
            assertThat(gap.reach().orElseThrow().sweep()).isEqualTo(240);
            assertThat(English.say(new ToldGap.Sentence(ToldGap.of(gap), false)))
                    .isEqualTo(
                            "row s1 (s1): vanes 8–24, everything: not seen (skipped, or too little of it in sight); through view v feed the scope"
                                    + " tip to 105°, then draw it 240° clockwise watching.");
        }

        @Test
        void isThroughTheViewThatShowsMostOfIt() {
            Job job = new Job(new Engines()
                            .row("c1", RowKind.ROTOR, 36, Direction.CW, 2, List.of(), false, 0)
                            .view("v", "c1", 0, 2)
                            .view("tips", "c1", 90, 2, "tip")
                            .built())
                    .enter("view tips", "datum c1 1", "look");
            assertThat(gaps(job))
                    .extracting(gap -> gap.reach().orElseThrow().view())
                    .containsExactly("v", "v");
        }
    }

    private static String number(double degrees) {
        return BigDecimal.valueOf(degrees).setScale(9, RoundingMode.HALF_EVEN).toPlainString();
    }

    /** Does what the gap says. */
    private static void follow(Job job, Gap.Reach reach) {
        job.enter("view " + reach.view());
        String go = reach.drawn() ? "feed " : "skip ";
        try {
            job.tryEnter(go + "to " + number(reach.from()));
        } catch (Refusal opposite) {
            assertThat(English.say(opposite)).contains("exactly opposite");
            job.enter(go + "on to " + number(reach.from()));
        }
        job.enter((reach.drawn() ? "draw " : "turn ") + number(reach.sweep()));
    }

    @Test
    void doingWhatAGapSaysClosesExactlyThatGap() {
        int closed = 0;
        for (int seed = 0; seed < JOBS; seed++) {
            RandomJob random = new RandomJob(seed);
            Job before = random.job();
            for (Gap gap : Gaps.of(before.coverage())) {
                if (gap.reach().isEmpty()) {
                    continue;
                }
                Gap.Reach reach = gap.reach().get();
                assertThat(reach.zones().minus(gap.zones()).isEmpty()).isTrue();
                Job after = random.job();
                follow(after, reach);
                String what =
                        "job " + seed + "\n" + String.join("\n", random.lines) + "\n" + English.say(ToldGap.of(gap));
                for (RowCoverage was : before.coverage().rows()) {
                    RowCoverage is = after.coverage().row(was.row().id());
                    boolean own = was.row().id().equals(gap.row().id());
                    for (int n = 1; n <= was.row().count(); n++) {
                        boolean inGap = own && gap.airfoils().contains(n);
                        for (int zone = 0; zone < was.zoning().size(); zone++) {
                            if (inGap && reach.zones().contains(zone)) {
                                assertThat(is.state(n, zone))
                                        .as("%s%nblade %d", what, n)
                                        .isEqualTo(State.SEEN);
                            } else if (!inGap) {
                                assertThat(is.state(n, zone))
                                        .as(
                                                "%s%nblade %d of %s",
                                                what, n, was.row().id())
                                        .isEqualTo(was.state(n, zone));
                            }
                        }
                    }
                }
                closed++;
            }
        }
        assertThat(closed).isGreaterThan(JOBS);
    }
}
