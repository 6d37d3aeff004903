package everyblade.core.finding;

import everyblade.core.Engines;
import everyblade.core.Job;
import everyblade.core.entry.Entry.Interval;
import everyblade.core.entry.Entry.LengthUnit;
import everyblade.core.entry.Kind;
import everyblade.core.finding.Step.Counts;
import everyblade.core.turning.Engine;
import everyblade.spi.ChordBand;
import everyblade.spi.Direction;
import everyblade.spi.RowKind;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/** Limits in a test, said in a few words; invented but where a test names its source. */
public final class LimitsUnderTest {

    /** Two rotors {@code a} and {@code b} of 12 blades: root and tip, both sides, three chord bands. */
    public static final Engine ENGINE = new Engines()
            .row(
                    "a",
                    RowKind.ROTOR,
                    12,
                    Direction.CW,
                    2,
                    List.of(ChordBand.values()).subList(0, 3),
                    true,
                    0)
            .row(
                    "b",
                    RowKind.ROTOR,
                    12,
                    Direction.CW,
                    2,
                    List.of(ChordBand.values()).subList(0, 3),
                    true,
                    0)
            .view("va", "a", 0, 20)
            .view("vb", "b", 0, 20)
            .built();

    private final List<Rule> rules = new ArrayList<>();
    private LengthUnit unit = LengthUnit.MM;
    private Optional<Length> plusMinus = Optional.empty();

    public LimitsUnderTest inches() {
        unit = LengthUnit.IN;
        return this;
    }

    public LimitsUnderTest assuming(String assumed) {
        plusMinus = Optional.of(length(assumed));
        return this;
    }

    /** A rule of a row, on these kinds and zones; the outcome of a step is its index. */
    public LimitsUnderTest rule(String id, String row, String kinds, String zones, Step... steps) {
        return rule(id, row, kinds, zones, false, List.of(), steps);
    }

    public LimitsUnderTest rule(
            String id, String row, String kinds, String zones, boolean both, List<String> onlyWhile, Step... steps) {
        rules.add(new Rule(
                id,
                words(row),
                Set.copyOf(words(kinds).stream().map(LimitsUnderTest::kind).toList()),
                words(zones),
                both,
                onlyWhile,
                List.of(steps),
                "beyond " + id));
        return this;
    }

    private static List<String> words(String text) {
        return text.isBlank() ? List.of() : List.of(text.split(" "));
    }

    static Kind kind(String word) {
        return Arrays.stream(Kind.values())
                .filter(kind -> kind.word().equals(word))
                .findFirst()
                .orElseThrow();
    }

    /** A step of sizes such as {@code length 1, depth 0.2-0.5}, and counts such as {@code airfoil 3, row 5}. */
    public Step step(String text) {
        Map<Dimension, Bounds> sizes = new EnumMap<>(Dimension.class);
        OptionalInt[] counts = new OptionalInt[4];
        Arrays.fill(counts, OptionalInt.empty());
        Optional<Length> apart = Optional.empty();
        List<String> countWords = List.of("airfoil", "row", "airfoils", "neighbours");
        for (String limit : text.isBlank() ? new String[0] : text.split(", ")) {
            String word = limit.split(" ")[0];
            String value = limit.split(" ")[1];
            if (countWords.contains(word)) {
                counts[countWords.indexOf(word)] = OptionalInt.of(Integer.parseInt(value));
            } else if (word.equals("apart")) {
                apart = Optional.of(length(value));
            } else {
                String[] ends = value.split("-");
                sizes.put(
                        Dimension.valueOf(word.toUpperCase(java.util.Locale.ROOT)),
                        ends.length == 1
                                ? Bounds.upTo(length(value))
                                : new Bounds(Optional.of(length(ends[0])), Optional.of(length(ends[1]))));
            }
        }
        return new Step(
                sizes, new Counts(counts[0], counts[1], counts[2], counts[3]), apart, "step " + text, Optional.empty());
    }

    /** The same step with a repeat inspection after so many cycles. */
    public static Step again(Step step, int cycles) {
        return new Step(
                step.sizes(),
                step.counts(),
                step.apart(),
                step.outcome(),
                Optional.of(new Repeat(BigDecimal.valueOf(cycles), Interval.CYCLES)));
    }

    private Length length(String value) {
        return Length.of(new BigDecimal(value), unit);
    }

    public Limits built() {
        return new Limits(
                "limits of a test",
                Optional.of("Invented for tests."),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                unit,
                Guard.CONFORMANCE,
                plusMinus,
                List.of(),
                rules);
    }

    /** What is said of findings entered as lines, such as {@code a nick 3 tpl 0.8 ± 0.1}. */
    public List<Judgement> judge(String... lines) {
        Job job = new Job(ENGINE).enter(lines);
        return Judging.of(
                built(), ENGINE.zonings(), Findings.of(job.fold()), Looked.in(job.coverage()), Distances.UNKNOWN);
    }

    public List<Verdict> verdicts(String... lines) {
        return judge(lines).stream().map(Judgement::verdict).toList();
    }
}
