package everyblade.core.finding.closing;

import everyblade.core.entry.Entry;
import everyblade.core.entry.EntryKind;
import everyblade.core.entry.EntryText;
import everyblade.core.finding.closing.OpenItem.Kind;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Logged;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/**
 * What the record itself leaves open: rechecks, questions, repeats, things lost, a hand-over, facts that are missing.
 *
 * @param fold of the journal
 * @param facts names of the facts that must be there
 */
record OpenRecord(Fold fold, Collection<String> facts) {

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
                        new RecordLack.HandedOver(((Entry.Handover) logged.entry()).name()),
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
        return switch (EntryKind.of(entry)) {
            case RECHECK -> Optional.of(Kind.RECHECK);
            case AGAIN -> Optional.of(Kind.REPEAT);
            case LOST -> Optional.of(Kind.LOST);
            case REFER -> Optional.of(Kind.QUESTION);
            default -> Optional.empty();
        };
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
                last = logged.entry() instanceof Entry.Handover
                        ? Optional.of(logged)
                        : logged.entry() instanceof Entry.Takeover ? Optional.empty() : last;
            }
        }
        return last;
    }

    private boolean isStated(String fact) {
        return fold.entries().stream()
                .filter(logged -> !fold.isVoid(logged.number()))
                .anyMatch(logged -> logged.entry() instanceof Entry.Fact stated
                        && stated.name().value().strip().equalsIgnoreCase(fact)
                        && !stated.value().isBlank());
    }
}
