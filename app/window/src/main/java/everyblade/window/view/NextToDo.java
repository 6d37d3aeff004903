package everyblade.window.view;

import everyblade.core.coverage.Why;
import everyblade.core.entry.EntryText;
import everyblade.core.entry.Settings;
import everyblade.core.finding.review.Question;
import everyblade.core.finding.review.ReviewRemark;
import everyblade.core.move.Move;
import everyblade.core.move.PlanBuilder;
import everyblade.core.move.Prices;
import everyblade.core.sight.Progress;
import everyblade.core.turning.Situation;
import everyblade.picture.report.OutlineWords;
import everyblade.session.JobState;
import everyblade.window.map.CellAt;
import everyblade.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a technician does next: the next move of the plan, then closing up.
 *
 * @param steps the entries of it in their order; none if nothing is entered for it
 * @param note what must be known to do them, or what is to be done where nothing is entered; blank if nothing
 * @param entry what to enter, or how the entry begins; empty if nothing is entered for it
 * @param closes cells that are left, and not once the steps are done
 */
public record NextToDo(List<String> steps, String note, Optional<String> entry, List<CellAt> closes) {

    public NextToDo {
        steps = List.copyOf(steps);
        closes = List.copyOf(closes);
    }

    private NextToDo(String note, Optional<String> entry) {
        this(List.of(), note, entry, List.of());
    }

    /** All of it in a line. */
    public String words() {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < steps.size(); i++) {
            line.append(i == 0 ? "" : "  ").append(i + 1).append(". ").append(steps.get(i));
        }
        return line.append(line.isEmpty() || note.isEmpty() ? "" : " – ")
                .append(note)
                .toString();
    }

    /**
     * What is next: the first move of the same plan that {@code next} prints, then closing up. Takes as long as planning.
     *
     * @param watching may stop it
     */
    public static NextToDo of(Shown shown, Words words, Progress watching) {
        JobState state = shown.state();
        Situation now = state.situation();
        Optional<Move> move = PlanBuilder.next(
                state.fold(),
                state.coverage(),
                Prices.of(new Settings(state.beginning().settings())),
                watching);
        if (move.isEmpty()) {
            return now.engine().model().views().isEmpty()
                    ? new NextToDo(words.say("next.noViews"), Optional.empty())
                    : closing(state, shown.left(), words);
        }
        return tooHot(now, move.get())
                ? new NextToDo(words.say("next.heat"), Optional.of("heat "))
                : moved(move.get(), words);
    }

    /** Whether the metal must be measured, or cool down, before the scope tip of a move goes in. */
    private static boolean tooHot(Situation now, Move move) {
        return move.seated()
                && move.view()
                        .scopeTip()
                        .flatMap(now.engine().model()::scopeTip)
                        .filter(tip -> tip.hottest().isPresent())
                        .filter(tip -> now.celsius().isEmpty()
                                || now.celsius().get().doubleValue()
                                        > tip.hottest().getAsDouble())
                        .isPresent();
    }

    /** The entries of a move, and how to tell the airfoil that must come to the reference. */
    private static NextToDo moved(Move move, Words words) {
        List<String> steps = move.entries().stream().map(EntryText::of).toList();
        String note = move.identifies().isPresent()
                ? words.say("next.bring", landmark(move, words), move.row().id())
                : "";
        return new NextToDo(steps, note, steps.stream().findFirst(), closes(move));
    }

    private static List<CellAt> closes(Move move) {
        List<CellAt> cells = new ArrayList<>();
        for (Move.Closing closing : move.closes()) {
            for (int airfoil : closing.airfoils()) {
                for (long rest = closing.zones().bits(); rest != 0; rest &= rest - 1) {
                    cells.add(new CellAt(move.row().id(), airfoil, Long.numberOfTrailingZeros(rest)));
                }
            }
        }
        return cells;
    }

    private static String landmark(Move move, Words words) {
        int airfoil = move.identifies().getAsInt();
        return new OutlineWords(words)
                .toldBy(move.row(), airfoil)
                .map(what -> words.airfoil(move.row()) + " " + airfoil + " (" + what + ")")
                .orElseGet(() -> words.say("next.anyAirfoil", words.airfoil(move.row())));
    }

    private static NextToDo closing(JobState state, List<Left> left, Words words) {
        Situation now = state.situation();
        Optional<String> tool = now.ledger().toolsOut().keySet().stream().findFirst();
        if (tool.isPresent()) {
            return new NextToDo(
                    words.say("next.tool", tool.get()), Optional.of("tool in " + EntryText.nameToEnd(tool.get())));
        }
        Optional<String> open = now.ledger().openings().keySet().stream().findFirst();
        if (open.isPresent()) {
            return new NextToDo(
                    words.say("next.shut", open.get()), Optional.of("shut " + EntryText.name(open.get()) + " "));
        }
        Optional<Question> asked = Question.of(state.review(), state.fold()).stream()
                .filter(Question::open)
                .findFirst();
        if (asked.isPresent()) {
            ReviewRemark remark = asked.get().asked();
            return new NextToDo(
                    words.say("next.answer", remark.by(), remark.text()),
                    Optional.of(asked.get().answer()));
        }
        if (!left.isEmpty()) {
            return new NextToDo(
                    words.say("next.accept", left.get(0).what()),
                    Optional.of(left.get(0).gap().why() == Why.NO_ACCESS ? "noaccess unshown because " : "noaccess "));
        }
        return new NextToDo(words.say("next.report"), Optional.empty());
    }
}
