package everyblade.window.view;

import everyblade.core.coverage.RowCoverage;
import everyblade.core.entry.RecordEntry;
import everyblade.core.turning.CountError;
import everyblade.core.turning.LostCount;
import everyblade.core.turning.Seat;
import everyblade.core.turning.Situation;
import everyblade.session.JobState;
import everyblade.spi.ScopeTip;
import everyblade.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The cautions that matter at this moment; common practice, subject to the manual and the local rules.
 *
 * @param text in words
 * @param bars whether something is refused because of it
 * @param row id of the row whose count was lost, if that is what it is about
 */
public record CautionsNow(String text, boolean bars, Optional<String> row) {

    private CautionsNow(String text, boolean bars) {
        this(text, bars, Optional.empty());
    }

    /** What to mind now, what bars first. */
    public static List<CautionsNow> of(JobState state, Words words) {
        Situation now = state.situation();
        List<CautionsNow> cautions = new ArrayList<>();
        if (now.among()) {
            cautions.add(new CautionsNow(words.say("caution.in"), true));
        }
        heat(now, words).ifPresent(cautions::add);
        lost(state, words).forEach(cautions::add);
        if (now.seat().isEmpty() && state.open()) {
            cautions.add(new CautionsNow(words.say("caution.before"), false));
        }
        boolean handedOver = state.last()
                .map(last -> last.entry() instanceof RecordEntry.Handover)
                .orElse(false);
        if (handedOver
                && !(now.ledger().toolsOut().isEmpty()
                        && now.ledger().openings().isEmpty())) {
            List<String> out = new ArrayList<>(now.ledger().toolsOut().keySet());
            out.addAll(now.ledger().openings().keySet());
            cautions.add(new CautionsNow(words.say("caution.after", String.join(", ", out)), false));
        }
        return cautions;
    }

    /** Where the count was lost, as long as something of the row is only maybe seen. */
    private static List<CautionsNow> lost(JobState state, Words words) {
        return state.situation().countErrors().stream()
                .filter(CountError::lost)
                .filter(error -> {
                    RowCoverage row = state.coverage().row(error.row());
                    return row.tally(row.zoning().all()).maybe() > 0;
                })
                .map(error -> new CautionsNow(
                        words.say(LostCount.of(
                                error, state.coverage().row(error.row()).row().kind())),
                        false,
                        Optional.of(error.row())))
                .toList();
    }

    private static Optional<CautionsNow> heat(Situation now, Words words) {
        Optional<ScopeTip> tip = now.seat()
                .flatMap(Seat::scopeTip)
                .or(() -> now.engine().model().scopeTips().stream()
                        .filter(one -> one.hottest().isPresent())
                        .findFirst());
        if (tip.isEmpty() || tip.get().hottest().isEmpty()) {
            return Optional.empty();
        }
        String limit = words.number(tip.get().hottest().getAsDouble(), 0);
        if (now.celsius().isEmpty()) {
            return Optional.of(new CautionsNow(words.say("caution.noHeat", limit), true));
        }
        double read = now.celsius().get().doubleValue();
        return read > tip.get().hottest().getAsDouble()
                ? Optional.of(new CautionsNow(words.say("caution.hot", words.number(read, 1), limit), true))
                : Optional.empty();
    }
}
