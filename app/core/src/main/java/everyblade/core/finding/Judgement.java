package everyblade.core.finding;

import java.util.List;
import java.util.Optional;

/**
 * What the entered limits say of a finding.
 *
 * @param finding that is judged
 * @param rulings one for each rule that is on it
 */
public record Judgement(Finding finding, List<Ruling> rulings) {

    public Judgement {
        rulings = List.copyOf(rulings);
    }

    /** The worst of the rulings. */
    public Verdict verdict() {
        return rulings.stream().map(Ruling::verdict).reduce(Verdict::and).orElse(Verdict.NO_RULE);
    }

    /** The first of the worst rulings; empty if no rule is on the finding. */
    public Optional<Ruling> decisive() {
        Verdict worst = verdict();
        return rulings.stream().filter(ruling -> ruling.verdict() == worst).findFirst();
    }

    /** The repeat inspections that go with it. */
    public List<Repeat> again() {
        return rulings.stream()
                .flatMap(ruling -> ruling.again().stream())
                .distinct()
                .toList();
    }
}
