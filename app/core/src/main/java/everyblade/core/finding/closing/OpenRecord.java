package everyblade.core.finding.closing;

import everyblade.core.entry.Entry;
import everyblade.core.entry.EntryKind;
import everyblade.core.entry.EntryText;
import everyblade.core.entry.FindingEntry;
import everyblade.core.entry.RecordEntry;
import everyblade.core.finding.closing.OpenItem.Kind;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Logged;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the record itself leaves open: rechecks, questions, repeats, things lost, a hand-over, facts that are missing.
 *
 * @param fold of the journal
 * @param facts names of the facts that must be there
 */
record OpenRecord(Fold fold, Collection<String> facts) {

    /** What kind of thing each sort of question is; any other is a question that someone answers. */
    private static final Map<Class<?>, Kind> KINDS = Map.of(
            FindingEntry.Recheck.class, Kind.RECHECK,
            FindingEntry.Again.class, Kind.REPEAT,
            RecordEntry.Lost.class, Kind.LOST);

    List<OpenItem> items() {
        List<OpenItem> items = new ArrayList<>();
        fold.situation().ledger().questions().forEach((number, question) -> {
            Logged logged = fold.entries().get(number - 1);
            Kind kind = question(logged.entry()).orElse(Kind.QUESTION);
            String settle = "settle " + number + " because ";
            items.add(new OpenItem(
                    kind,
                    Optional.of(logged),
                    question,
                    Optional.empty(),
                    new ToDo.Settle(step(kind), settle.strip()),
                    settle));
        });
        handedOver()
                .ifPresent(logged -> items.add(new OpenItem(
                        Kind.HANDOVER,
                        Optional.of(logged),
                        new RecordLack.HandedOver(((RecordEntry.Handover) logged.entry()).name()),
                        Optional.empty(),
                        ToDo.Look.TAKE_OVER,
                        "takeover ")));
        for (String fact : facts) {
            if (!isStated(fact)) {
                String state = "fact " + EntryText.name(fact) + " ";
                items.add(new OpenItem(
                        Kind.FACT,
                        Optional.empty(),
                        new RecordLack.NotStated(List.of(fact)),
                        Optional.empty(),
                        new ToDo.State(state.strip()),
                        state));
            }
        }
        return items;
    }

    /** What an entry leaves open until it is settled, if it does. */
    static Optional<Kind> question(Entry entry) {
        if (!EntryKind.of(entry).asks()) {
            return Optional.empty();
        }
        return Optional.of(KINDS.getOrDefault(entry.getClass(), Kind.QUESTION));
    }

    private static ToDo.Step step(Kind kind) {
        return switch (kind) {
            case RECHECK -> ToDo.Step.LOOK_AGAIN;
            case REPEAT -> ToDo.Step.ENTER_REPEAT;
            case LOST -> ToDo.Step.FIND;
            default -> ToDo.Step.GET_ANSWER;
        };
    }

    /** The last hand-over, if nobody took over after it. */
    private Optional<Logged> handedOver() {
        Optional<Logged> last = Optional.empty();
        for (Logged logged : fold.entries()) {
            if (!fold.isVoid(logged.number())) {
                last = logged.entry() instanceof RecordEntry.Handover
                        ? Optional.of(logged)
                        : logged.entry() instanceof RecordEntry.Takeover ? Optional.empty() : last;
            }
        }
        return last;
    }

    private boolean isStated(String fact) {
        return fold.entries().stream()
                .filter(logged -> !fold.isVoid(logged.number()))
                .anyMatch(logged -> logged.entry() instanceof RecordEntry.Fact stated
                        && stated.name().value().strip().equalsIgnoreCase(fact)
                        && !stated.value().isBlank());
    }
}
