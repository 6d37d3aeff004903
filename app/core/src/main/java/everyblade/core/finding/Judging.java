package everyblade.core.finding;

import everyblade.core.coverage.Coverage;
import everyblade.core.entry.ZonePhrase;
import everyblade.core.entry.ZoneSet;
import everyblade.core.entry.Zoning;
import everyblade.core.finding.Figure.Allowed;
import everyblade.core.finding.Figure.Counted;
import everyblade.core.finding.Figure.Value.Without;
import everyblade.core.finding.Ruling.Outcome;
import everyblade.core.turning.Engine;
import everyblade.core.turning.Fold;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Judges findings by the entered limits. It says what they say, no more.
 *
 * <p>A rule's steps are tried from the mildest: the first one that the finding does not surely break decides. Past the
 * last one the finding is beyond the rule. Cost: the number of findings squared, times the rules.
 */
public final class Judging {

    private final Limits limits;
    private final Map<String, Zoning> zonings;
    private final List<Finding> findings;
    private final Looked looked;
    private final Distances distances;
    private final Figures figures;
    private final Map<Integer, Judgement> judged = new HashMap<>();

    private Judging(
            Limits limits, Map<String, Zoning> zonings, List<Finding> findings, Looked looked, Distances distances) {
        this.limits = limits;
        this.zonings = zonings;
        this.findings = findings;
        this.looked = looked;
        this.distances = distances;
        this.figures = new Figures(limits);
    }

    /**
     * A judgement of each finding, in their order.
     *
     * @param zonings how each row is divided, by its id
     */
    public static List<Judgement> of(
            Limits limits, Map<String, Zoning> zonings, List<Finding> findings, Looked looked, Distances distances) {
        Judging judging = new Judging(limits, zonings, findings, looked, distances);
        return findings.stream().map(judging::judgement).toList();
    }

    /** A judgement of each finding of a journal, by its coverage and the shapes of its engine model. */
    public static List<Judgement> of(Limits limits, Fold fold, Coverage coverage) {
        Engine engine = fold.situation().engine();
        return of(limits, engine.zonings(), Findings.of(fold), Looked.in(coverage), new ZoneDistances(engine.model()));
    }

    private Judgement judgement(Finding finding) {
        Judgement known = judged.get(finding.entry());
        if (known != null) {
            return known;
        }
        Judgement judgement = new Judgement(
                finding,
                limits.rules().stream()
                        .filter(rule -> isOn(rule, finding))
                        .map(rule -> ruling(rule, finding))
                        .toList());
        judged.put(finding.entry(), judgement);
        return judgement;
    }

    private boolean isOn(Rule rule, Finding finding) {
        return rule.isOn(finding, zonings.get(finding.row().id()));
    }

    private Ruling ruling(Rule rule, Finding finding) {
        List<Figure> hanging = rule.onlyWhile().stream().map(this::kept).toList();
        Verdict whether = worst(hanging);
        if (whether == Verdict.BEYOND || rule.steps().isEmpty()) {
            List<Figure> why = hanging.isEmpty()
                    ? List.of(new Figure(
                            finding.kind(), Without.FOUND, Allowed.Whole.NONE, Optional.empty(), Verdict.BEYOND))
                    : hanging;
            return new Ruling(rule, Verdict.BEYOND, new Outcome.Sure(rule.beyond()), Optional.empty(), why);
        }
        List<Figure> last = List.of();
        for (int index = 0; index < rule.steps().size(); index++) {
            List<Figure> found = new ArrayList<>(figures(rule, index, finding));
            Verdict verdict = worst(found);
            if (verdict != Verdict.BEYOND) {
                found.addAll(hanging);
                return decided(rule, index, finding, verdict.and(whether), found);
            }
            last = found;
        }
        return new Ruling(rule, Verdict.BEYOND, new Outcome.Sure(rule.beyond()), Optional.empty(), last);
    }

    private Ruling decided(Rule rule, int index, Finding finding, Verdict verdict, List<Figure> found) {
        Step step = rule.steps().get(index);
        if (verdict != Verdict.WITHIN) {
            String next = index + 1 < rule.steps().size()
                    ? rule.steps().get(index + 1).outcome()
                    : rule.beyond();
            return new Ruling(rule, verdict, new Outcome.Either(step.outcome(), next), step.again(), found);
        }
        Optional<Figure> other = rule.bothFaces() ? otherFace(finding) : Optional.empty();
        other.ifPresent(found::add);
        return new Ruling(
                rule,
                other.isPresent() ? Verdict.OTHER_FACE : Verdict.WITHIN,
                new Outcome.Sure(step.outcome()),
                step.again(),
                found);
    }

    /** What a step says of a finding, one figure for each of its limits. */
    private List<Figure> figures(Rule rule, int index, Finding finding) {
        Step step = rule.steps().get(index);
        List<Figure> found = new ArrayList<>();
        for (Dimension dimension : Dimension.values()) {
            Optional.ofNullable(step.sizes().get(dimension))
                    .ifPresent(bounds -> found.add(figures.size(dimension, bounds, finding.sizes())));
        }
        List<Finding> sure = counted(rule, index, finding, true);
        List<Finding> maybe = counted(rule, index, finding, false);
        found.addAll(new Tallies(finding, sure, maybe).figures(step.counts()));
        step.apart()
                .ifPresent(least -> maybe.stream()
                        .filter(other -> other.airfoil() == finding.airfoil() && other.entry() != finding.entry())
                        .forEach(other -> found.add(distances
                                .between(finding.row(), finding.zones(), other.zones())
                                .map(span -> figures.apart(span, least))
                                .orElseGet(() -> figures.apartUnknown(least)))));
        return found;
    }

    /** The findings of the same row under the same rule that no earlier step takes by their size. */
    private List<Finding> counted(Rule rule, int index, Finding finding, boolean surely) {
        return findings.stream()
                .filter(other -> other.row().id().equals(finding.row().id()) && isOn(rule, other))
                .filter(other -> rule.steps().subList(0, index).stream().allMatch(earlier -> {
                    Verdict size = size(earlier, other);
                    return surely ? size == Verdict.BEYOND : size != Verdict.WITHIN;
                }))
                .toList();
    }

    private Verdict size(Step step, Finding finding) {
        return step.sizes().entrySet().stream()
                .map(limit -> figures.verdict(limit.getKey(), limit.getValue(), finding.sizes()))
                .reduce(Verdict.WITHIN, Verdict::and);
    }

    /** Whether the limits of a row are kept, on which another rule hangs. */
    private Figure kept(String row) {
        Verdict worst = findings.stream()
                .filter(other -> other.row().id().equals(row))
                .map(other -> judgement(other).verdict())
                .reduce(Verdict.WITHIN, Verdict::and);
        boolean unseen = worst == Verdict.WITHIN && !looked.atAllOf(row);
        Verdict verdict = worst == Verdict.WITHIN || worst == Verdict.BEYOND ? worst : Verdict.CLOSE;
        return new Figure(
                new Counted.LimitsOf(row),
                unseen ? Without.NOT_ALL_SEEN : worst,
                Allowed.Whole.ALL_WITHIN,
                Optional.empty(),
                unseen ? Verdict.CLOSE : verdict);
    }

    /** The other face of a finding that lies on one side, if that was not seen there. */
    private Optional<Figure> otherFace(Finding finding) {
        Zoning zoning = zonings.get(finding.row().id());
        for (int side = 0; side < zoning.sides().size(); side++) {
            if (finding.zones().minus(zoning.side(side)).isEmpty()) {
                int other = 1 - side;
                ZoneSet opposite = zoning.opposite(finding.zones());
                return looked.at(finding.row().id(), finding.airfoil(), opposite)
                        ? Optional.empty()
                        : Optional.of(new Figure(
                                new Counted.Side(ZonePhrase.named(zoning.sides().get(other))),
                                Without.NOT_SEEN_HERE,
                                Allowed.Whole.BOTH_FACES,
                                Optional.empty(),
                                Verdict.OTHER_FACE));
            }
        }
        return Optional.empty();
    }

    private static Verdict worst(List<Figure> figures) {
        return figures.stream().map(Figure::verdict).reduce(Verdict.WITHIN, Verdict::and);
    }
}
