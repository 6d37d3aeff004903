package everyblade.core.turning;

import everyblade.core.entry.FindingEntry;
import everyblade.core.entry.RecordEntry;
import everyblade.core.entry.Refusal;
import everyblade.fact.Fact;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The journal folded into a situation: every entry judged in order, void ones left out. Immutable; one more entry goes
 * on from where this fold stands, a void folds the rest of the journal again.
 */
public final class Fold {

    private final Trail<Logged> entries;
    private final Situation situation;
    private final BitSet voided;
    private final List<Fact> warnings;

    private Fold(Trail<Logged> entries, Situation situation, BitSet voided, List<Fact> warnings) {
        this.entries = entries;
        this.situation = situation;
        this.voided = voided;
        this.warnings = warnings;
    }

    /** An empty journal. */
    public static Fold start(Engine engine) {
        return new Fold(Trail.empty(), Situation.start(engine), new BitSet(), List.of());
    }

    /**
     * The fold after one more entry.
     *
     * @throws Refusal if it cannot follow the others; then this fold stands as it was
     */
    public Fold with(Logged logged) throws Refusal {
        Trail<Logged> longer = entries.with(logged);
        if (logged.entry() instanceof RecordEntry.Void struck) {
            return voiding(longer, struck);
        }
        EntryEffect step = judged(situation, longer, voided, logged);
        return new Fold(longer, step.situation(), voided, step.warnings());
    }

    private Fold voiding(Trail<Logged> longer, RecordEntry.Void struck) throws Refusal {
        int target = struck.entry().value();
        int column = struck.entry().column();
        if (target < 1 || target >= longer.last().number()) {
            throw new Refusal(
                    column,
                    longer.size() == 1
                            ? EntryProblem.Flaw.NOTHING_TO_VOID
                            : new EntryProblem.NoEntry(longer.last().number() - 1, target));
        }
        if (voided.get(target)) {
            throw new Refusal(column, new EntryProblem.VoidAlready(target));
        }
        BitSet newVoided = voided(longer);
        Situation replayed = Situation.start(situation.engine());
        for (Logged logged : longer) {
            if (newVoided.get(logged.number())) {
                continue;
            }
            if (logged.entry() instanceof RecordEntry.Void) {
                replayed = replayed.noted(replayed.ledger().awaiting(logged.number()));
                continue;
            }
            try {
                replayed = judged(replayed, longer, newVoided, logged).situation();
            } catch (Refusal refused) {
                throw new Refusal(
                        column, new EntryProblem.Needed(target, logged.number(), logged.text(), refused.why()));
            }
        }
        return new Fold(longer, replayed, newVoided, List.of(struck(longer, target)));
    }

    /** Says what was struck, since a number is soon mistaken for its neighbour. */
    private static EntryNote struck(Trail<Logged> entries, int target) {
        for (Logged logged : entries) {
            if (logged.number() == target) {
                return new EntryNote.Struck(target, logged.text());
            }
        }
        throw new IllegalArgumentException("there is no entry " + target);
    }

    /** An entry is void if one that is not void itself strikes it; later ones decide first. */
    private static BitSet voided(List<Logged> entries) {
        BitSet voided = new BitSet();
        for (int i = entries.size() - 1; i >= 0; i--) {
            Logged logged = entries.get(i);
            if (!voided.get(logged.number()) && logged.entry() instanceof RecordEntry.Void struck) {
                voided.set(struck.entry().value());
            }
        }
        return voided;
    }

    private static EntryEffect judged(Situation before, List<Logged> entries, BitSet voided, Logged logged)
            throws Refusal {
        Optional<Logged> answeredFor = answeredFor(entries, voided, logged);
        Situation ready = answeredFor
                .map(about -> before.noted(before.ledger().awaiting(about.number())))
                .orElse(before);
        return Judge.judge(ready, logged.number(), logged.entry(), sinceBefore(entries, logged))
                .and(answeredFor.map(about -> new EntryNote.AnsweredFor(about.number(), about.text())));
    }

    /** The entry for which this one answers, if that is no question by itself. */
    private static Optional<Logged> answeredFor(List<Logged> entries, BitSet voided, Logged logged) {
        if (!(logged.entry() instanceof FindingEntry.Settle settle)) {
            return Optional.empty();
        }
        int about = settle.entry().value();
        return about < 1 || about >= logged.number() || voided.get(about)
                ? Optional.empty()
                : Optional.of(entries.get(about - 1)).filter(one -> Answerable.is(entries, one));
    }

    /** Nothing entered live took longer than since the entry before. */
    private static OptionalDouble sinceBefore(List<Logged> entries, Logged logged) {
        if (!logged.live() || logged.number() < 2) {
            return OptionalDouble.empty();
        }
        Logged before = entries.get(logged.number() - 2);
        double seconds = EntryTime.seconds(before.at(), logged.at());
        return OptionalDouble.of(Math.max(0, seconds));
    }

    /** The fold of these entries, as it stood. */
    static Fold resumed(Trail<Logged> entries, Situation situation, BitSet voided) {
        return new Fold(entries, situation, voided, List.of());
    }

    /** The entries that do not count. */
    BitSet voided() {
        return (BitSet) voided.clone();
    }

    /** All entries, void ones included. */
    public List<Logged> entries() {
        return entries;
    }

    /** Where everything stands. */
    public Situation situation() {
        return situation;
    }

    /** Whether an entry does not count. */
    public boolean isVoid(int number) {
        return voided.get(number);
    }

    /** What the last entry gave rise to say. */
    public List<Fact> warnings() {
        return warnings;
    }
}
