package everyblade.cli;

import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.Why;
import everyblade.core.entry.EntryText;
import everyblade.core.entry.ZonePhrase;
import everyblade.core.entry.Zoning;
import everyblade.core.move.Move;
import everyblade.core.move.Plan;
import everyblade.core.turning.Airfoils;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Situation;
import everyblade.picture.report.OutlineWords;
import everyblade.session.around.OneLine;
import everyblade.spi.Row;
import everyblade.words.Words;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A plan for people: entries that can be typed as they stand, and lines that begin with # and explain. */
final class PlanText {

    private final Plan plan;
    private final Words words;
    private final Fold fold;
    private final Coverage coverage;
    private final Situation now;
    private final List<String> lines = new ArrayList<>();

    private PlanText(Plan plan, Fold fold, Coverage coverage, Words words) {
        this.words = words;
        this.fold = fold;
        this.plan = plan;
        this.coverage = coverage;
        this.now = coverage.situation();
    }

    /** The lines of a plan that goes on from a coverage. */
    static List<String> of(Plan plan, Fold fold, Coverage coverage, Words words) {
        return new PlanText(plan, fold, coverage, words).lines();
    }

    private List<String> lines() {
        heat();
        for (Move move : plan.moves()) {
            explained(closes(move));
            identification(move).ifPresent(this::explained);
            move.entries().forEach(entry -> lines.add(EntryText.of(entry)));
        }
        if (!plan.moves().isEmpty()) {
            effort();
        }
        remaining();
        if (lines.isEmpty()) {
            explained(NothingLeft.told(fold, coverage, words));
        }
        return lines;
    }

    private void explain(String key, Object... parts) {
        explained(words.say(key, parts));
    }

    private void explained(String line) {
        lines.add("# " + OneLine.of(line));
    }

    /** A scope tip that bears only so much heat is not seated before the metal was measured. */
    private void heat() {
        HeatFirst.of(plan, now).ifPresent(first -> explain("steps.heat", first.scopeTips()));
    }

    private String closes(Move move) {
        Row row = move.row();
        Zoning zoning = Zoning.of(row);
        List<String> closed = move.closes().stream()
                .map(closing -> words.say(
                        "steps.closing", Airfoils.of(row, closing.airfoils()), ZonePhrase.of(zoning, closing.zones())))
                .toList();
        return words.say(
                closed.isEmpty() ? "steps.closesNothing" : "steps.closes",
                row.name(),
                row.id(),
                move.view().id(),
                move.station(),
                String.join("; ", closed));
    }

    /** Which airfoil must be brought to the reference of which view, and how it is told from the others. */
    private Optional<String> identification(Move move) {
        Row row = move.row();
        return move.identifies().isPresent()
                ? Optional.of(words.say(
                        move.drawn() ? "steps.feedUntil" : "steps.turnUntil",
                        row.kind(),
                        move.identifies().getAsInt(),
                        new OutlineWords(words).toldBy(row, move.identifies().getAsInt()),
                        move.view().id(),
                        move.view().reference()))
                : Optional.empty();
    }

    private void effort() {
        if (plan.turning().signum() > 0) {
            explain("steps.turning", plan.turning());
        } else {
            explain("steps.noTurning");
        }
        if (plan.drawing().signum() > 0) {
            explain("steps.drawing", plan.drawing());
        }
        explain(
                plan.proved() ? "steps.effortProved" : "steps.effort",
                plan.openings(),
                plan.views(),
                plan.minutes(),
                BigDecimal.valueOf(plan.bound()).setScale(1, RoundingMode.FLOOR));
        new OutlineWords(words).least(plan.least()).ifPresent(this::explained);
    }

    private void remaining() {
        plan.open().forEach((why, cells) -> explain("steps.open", cells, why));
        plan.beyond()
                .forEach((why, cells) ->
                        explain(why == Why.NO_ACCESS ? "steps.beyondUnshown" : "steps.beyond", cells, why));
    }
}
