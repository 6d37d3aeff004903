package everyblade.core.coverage;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.Engines;
import everyblade.core.Job;
import everyblade.core.coverage.Oracle.OracleRow;
import everyblade.core.entry.Refusal;
import everyblade.core.turning.Engine;
import everyblade.core.turning.Logged;
import everyblade.core.turning.Situation;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.IntUnaryOperator;
import org.junit.jupiter.api.Test;

/**
 * Changes to a random job that must change nothing, or exactly so much; 80 jobs each, with {@code
 * -Deveryblade.campaign=true} 5,000.
 */
class SymmetryTest {

    private static final int JOBS = Boolean.getBoolean("everyblade.campaign") ? 5_000 : 80;

    private static Coverage coverage(Engine engine, List<String> lines) {
        return new Job(engine).enter(lines.toArray(String[]::new)).coverage();
    }

    /** The states of all cells of a row, airfoil after airfoil, each airfoil taken where it is said to be found. */
    private static List<State> states(Coverage coverage, OracleRow row, IntUnaryOperator place) {
        RowCoverage of = coverage.row(row.id());
        List<State> states = new ArrayList<>();
        for (int n = 1; n <= row.count(); n++) {
            for (int zone = 0; zone < of.zoning().size(); zone++) {
                states.add(of.state(place.applyAsInt(n), zone));
            }
        }
        return states;
    }

    private static void assertSame(String what, RandomJob job, List<String> lines, Coverage found, Coverage wanted) {
        for (OracleRow row : job.engine().rows) {
            assertThat(states(found, row, n -> n))
                    .as("%s, %s%n%s", what, row.id(), String.join("\n", lines))
                    .isEqualTo(states(wanted, row, n -> n));
        }
    }

    /**
     * The lines of a random job, and between them airfoils called out that are there within half a pitch, or are not;
     * as far as they are not refused.
     */
    private static List<String> withMistakes(RandomJob random, Engine engine, SplittableRandom dice) {
        Job job = new Job(engine);
        for (String line : random.lines()) {
            enterIfPossible(job, line);
            Situation now = job.fold().situation();
            Optional<Integer> there = now.seat().flatMap(now::airfoilAtReference);
            if (there.isPresent() && dice.nextInt(3) == 0) {
                int count = now.seat().get().row().count();
                int called = dice.nextInt(3) > 0 ? there.get() : 1 + dice.nextInt(count);
                enterIfPossible(job, "here " + called + " ±0.1");
            }
        }
        return job.fold().entries().stream().map(Logged::text).toList();
    }

    private static boolean enterIfPossible(Job job, String line) {
        try {
            job.tryEnter(line);
            return true;
        } catch (Refusal refused) {
            return false;
        }
    }

    @Test
    void voidingAnEntryGivesExactlyTheJobWithoutItWhateverTheErrors() throws Refusal {
        int voided = 0;
        int changed = 0;
        for (int seed = 0; seed < JOBS; seed++) {
            RandomJob random = new RandomJob(seed);
            SplittableRandom dice = new SplittableRandom(seed);
            Engine engine = random.engine().withPlay(dice.nextInt(3));
            List<String> lines = withMistakes(random, engine, dice);
            for (int attempt = 0; attempt < 4; attempt++) {
                Job job = new Job(engine).enter(lines.toArray(String[]::new));
                Coverage before = job.coverage();
                int k = 1 + dice.nextInt(lines.size());
                if (!enterIfPossible(job, "void " + k + " because it was wrong")) {
                    continue;
                }
                List<String> without = counting(lines, k);
                assertSame("job " + seed + " without " + k, random, lines, job.coverage(), coverage(engine, without));
                voided++;
                changed += before.tally().equals(job.coverage().tally()) ? 0 : 1;

                job.tryEnter("void " + (lines.size() + 1) + " because it was right");
                assertSame("job " + seed + " with " + k + " again", random, lines, job.coverage(), before);
            }
        }
        assertThat(voided).isGreaterThan(JOBS);
        assertThat(changed).isGreaterThan(JOBS / 10);
    }

    /** Only the entries that count once another is struck too; the numbers of the others stay taken. */
    private static List<String> counting(List<String> lines, int struck) {
        List<String> entered = new ArrayList<>(lines);
        entered.add("void " + struck + " because it was wrong");
        Set<Integer> voided = RandomJob.voided(entered);
        List<String> counting = new ArrayList<>();
        for (int k = 1; k <= lines.size(); k++) {
            boolean counts = !voided.contains(k) && !lines.get(k - 1).startsWith("void");
            counting.add(counts ? lines.get(k - 1) : "note nothing");
        }
        return counting;
    }

    @Test
    void watchingMoreNeverTakesAwayWhateverTheErrors() throws Refusal {
        int grown = 0;
        for (int seed = 0; seed < JOBS; seed++) {
            RandomJob random = new RandomJob(seed);
            Engine engine = random.engine().withPlay(seed % 3);
            List<String> lines = withMistakes(random, engine, new SplittableRandom(seed));
            Job job = new Job(engine);
            Coverage before = job.coverage();
            for (String line : lines) {
                job.tryEnter(line);
                Coverage after = job.coverage();
                // Identifications and voids may well take away: they tell what was taken for true and was not.
                if (!line.matches("(here|datum|round|void).*")) {
                    for (OracleRow row : random.engine().rows) {
                        assertNothingLost(lines, line, states(before, row, n -> n), states(after, row, n -> n));
                    }
                    grown += after.tally().seen() > before.tally().seen() ? 1 : 0;
                }
                before = after;
            }
        }
        assertThat(grown).isGreaterThan(JOBS / 2);
    }

    private static void assertNothingLost(List<String> lines, String line, List<State> before, List<State> after) {
        for (int cell = 0; cell < before.size(); cell++) {
            // The states are declared from best to worst.
            assertThat(after.get(cell))
                    .as("cell %d after %s%n%s", cell, line, String.join("\n", lines))
                    .isLessThanOrEqualTo(before.get(cell));
        }
    }

    @Test
    void goingOnFromTheCoverageBeforeIsCountingAnew() throws Refusal {
        int revised = 0;
        for (int seed = 0; seed < JOBS; seed++) {
            RandomJob random = new RandomJob(seed);
            Engine engine = random.engine().withPlay(seed % 3);
            List<String> lines = withMistakes(random, engine, new SplittableRandom(seed));
            Job job = new Job(engine);
            Coverage grown = job.coverage();
            for (String line : lines) {
                job.tryEnter(line);
                Coverage next = grown.after(job.fold().situation());
                assertSame("job " + seed + " after " + line, random, lines, next, job.coverage());
                revised += line.matches("(here|datum|round).*") && !next.tally().equals(grown.tally()) ? 1 : 0;
                grown = next;
            }
        }
        // Identifications are what changes coverage of long before.
        assertThat(revised).isGreaterThan(JOBS / 4);
    }

    @Test
    void turningInTwoGoesIsTurningInOne() {
        int split = 0;
        for (int seed = 0; seed < JOBS; seed++) {
            RandomJob random = new RandomJob(seed);
            if (random.lines().stream().anyMatch(line -> line.startsWith("void"))) {
                continue;
            }
            SplittableRandom dice = new SplittableRandom(seed);
            List<String> lines = new ArrayList<>();
            for (String line : random.lines()) {
                List<String> goes = inTwo(line, BigDecimal.valueOf(dice.nextInt(0, 101), 2));
                split += goes.size() - 1;
                lines.addAll(goes);
            }
            Engine engine = random.engine().exact();
            assertSame(
                    "job " + seed, random, random.lines(), coverage(engine, lines), coverage(engine, random.lines()));
        }
        assertThat(split).isGreaterThan(JOBS);
    }

    /** A move by an amount as two moves, the first of which goes a share of the way; any other line as it is. */
    private static List<String> inTwo(String line, BigDecimal share) {
        List<String> words = new ArrayList<>(List.of(line.split(" ")));
        int at = words.size() > 1 && words.get(1).matches("on|back") ? 2 : 1;
        if (!words.get(0).matches("turn|skip|draw|feed") || words.get(at).equals("to")) {
            return List.of(line);
        }
        BigDecimal whole = new BigDecimal(words.get(at).replace(',', '.'));
        List<String> goes = new ArrayList<>();
        for (BigDecimal part : List.of(whole.multiply(share), whole.subtract(whole.multiply(share)))) {
            words.set(at, part.toPlainString());
            goes.add(String.join(" ", words));
        }
        return goes;
    }

    @Test
    void anEngineInAMirrorIsCoveredAsInAMirror() {
        int seen = 0;
        for (int seed = 0; seed < JOBS; seed++) {
            RandomJob random = new RandomJob(seed);
            List<String> mirrored =
                    random.lines().stream().map(SymmetryTest::mirrored).toList();
            Coverage inMirror = coverage(random.engine().mirrored(), mirrored);
            assertSame(
                    "job " + seed,
                    random,
                    random.lines(),
                    inMirror,
                    random.job().coverage());
            seen += inMirror.tally().seen();
        }
        assertThat(seen).isGreaterThan(JOBS);
    }

    private static String mirrored(String line) {
        List<String> words = new ArrayList<>(List.of(line.split(" ")));
        boolean scope = words.get(0).matches("draw|feed");
        for (int i = 1; i < words.size(); i++) {
            String word = words.get(i);
            boolean isAngle =
                    words.get(i - 1).matches("to|at") || i == 1 && words.get(0).matches("turn|skip|draw|feed");
            if (isAngle && word.matches("-?[0-9].*")) {
                words.set(i, word.startsWith("-") ? word.substring(1) : "-" + word);
            } else if (scope && word.matches("on|back")) {
                // The normal direction of a spool is mirrored with it; clockwise for the scope tip stays clockwise.
                words.set(i, word.equals("on") ? "back" : "on");
            }
        }
        return String.join(" ", words);
    }

    @Test
    void callingEveryBladeByTheNextNumberMovesTheCoverageByOneBlade() {
        int seen = 0;
        for (int seed = 0; seed < JOBS; seed++) {
            RandomJob random = new RandomJob(seed);
            Coverage renumbered = coverage(random.engine().exact(), renumbered(random));
            for (OracleRow row : random.engine().rows) {
                assertThat(states(renumbered, row, n -> next(n, row)))
                        .as("job %d, %s%n%s", seed, row.id(), String.join("\n", random.lines()))
                        .isEqualTo(states(random.job().coverage(), row, n -> n));
            }
            seen += renumbered.tally().seen();
        }
        assertThat(seen).isGreaterThan(JOBS);
    }

    private static int next(int n, OracleRow row) {
        return n % row.count() + 1;
    }

    private static List<String> renumbered(RandomJob random) {
        List<String> lines = new ArrayList<>();
        OracleRow inView = random.engine().rows.get(0);
        for (String line : random.lines()) {
            String[] words = line.split(" ");
            int at = words[0].equals("datum") ? 2 : 1;
            if (words[0].equals("view")) {
                inView = random.engine().rows.stream()
                        .filter(row -> words[1].startsWith(row.id()))
                        .findFirst()
                        .orElseThrow();
            } else if (words[0].matches("datum|here|round")) {
                words[at] = "" + next(Integer.parseInt(words[at]), inView);
            }
            lines.add(String.join(" ", words));
        }
        return lines;
    }

    /** One blade on, every blade stands where its neighbour stood. */
    @Test
    void turningEverythingByOnePitchMovesTheCoverageByOneBlade() {
        for (int count : new int[] {2, 7, 19, 36, 94}) {
            SplittableRandom random = new SplittableRandom(count);
            for (int i = 0; i < 40; i++) {
                Engine engine = Engines.of(count, random.nextInt(0, 4));
                String amount =
                        BigDecimal.valueOf(random.nextInt(-36000, 36000), 2).toPlainString();
                Coverage from = coverage(engine, List.of("view v", "datum c1 1", "turn " + amount));
                Coverage on = coverage(engine, List.of("view v", "datum c1 1", "skip 1 blades", "turn " + amount));
                for (int n = 1; n <= count; n++) {
                    assertThat(on.row("c1").state(n, 0))
                            .as("%d blades, turn %s, blade %d", count, amount, n)
                            .isEqualTo(from.row("c1").state(n % count + 1, 0));
                }
            }
        }
    }
}
