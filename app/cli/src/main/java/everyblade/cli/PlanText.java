package everyblade.cli;

import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.Why;
import everyblade.core.entry.EntryText;
import everyblade.core.entry.Zoning;
import everyblade.core.gap.GapText;
import everyblade.core.move.Move;
import everyblade.core.move.Plan;
import everyblade.core.turning.AirfoilNames;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Situation;
import everyblade.session.around.OneLine;
import everyblade.spi.Row;
import everyblade.words.Words;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

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
            explain(closes(move));
            identification(move).ifPresent(this::explain);
            move.entries().forEach(entry -> lines.add(EntryText.of(entry)));
        }
        if (!plan.moves().isEmpty()) {
            effort();
        }
        remaining();
        if (lines.isEmpty()) {
            explain(NothingLeft.told(fold, coverage, words));
        }
        return lines;
    }

    private void explain(String words) {
        lines.add("# " + OneLine.of(words));
    }

    /** A scope tip that bears only so much heat is not seated before the metal was measured. */
    private void heat() {
        HeatFirst.of(plan, now)
                .ifPresent(first -> explain("first measure the metal and say heat NUMBER C: scope tip "
                        + String.join(", ", first.scopeTips()) + " bears only so much"));
    }

    private static String closes(Move move) {
        Row row = move.row();
        Zoning zoning = Zoning.of(row);
        String what = move.closes().stream()
                .map(closing -> airfoils(row, closing) + ", " + GapText.zones(zoning, closing.zones()))
                .collect(Collectors.joining("; "));
        return row.name() + " (" + row.id() + ") through " + move.view().id()
                + move.station().map(station -> ", station " + station + ",").orElse("")
                + (what.isEmpty() ? " closes nothing by itself, but leaves less for what follows" : " closes " + what);
    }

    /** Which airfoil must be brought to the reference of which view, and how it is told from the others. */
    static Optional<String> identification(Move move) {
        Row row = move.row();
        return move.identifies().isPresent()
                ? Optional.of((move.drawn() ? "feed the scope tip" : "turn, unwatched,") + " until "
                        + row.kind().airfoil() + " "
                        + landmark(row, move.identifies().getAsInt()) + " stands at the reference of "
                        + move.view().id() + ", at "
                        + degrees(BigDecimal.valueOf(move.view().reference())) + "°")
                : Optional.empty();
    }

    private static String landmark(Row row, int airfoil) {
        return row.landmarks().stream()
                .filter(landmark -> landmark.airfoil() == airfoil)
                .findFirst()
                .map(landmark -> airfoil + " (" + landmark.what() + ")")
                .orElse(airfoil + " (any that you mark)");
    }

    private static String airfoils(Row row, Move.Closing closing) {
        BitSet airfoils = new BitSet();
        closing.airfoils().forEach(n -> airfoils.set(n - 1));
        return AirfoilNames.of(row, airfoils);
    }

    private void effort() {
        explain(
                plan.turning().signum() > 0
                        ? "turning " + degrees(plan.turning()) + "° of shaft in all"
                        : "no shaft needs to be turned");
        if (plan.drawing().signum() > 0) {
            explain("drawing the scope tip " + degrees(plan.drawing()) + "° in all round rows that stand still");
        }
        String openings = plan.openings() == 0 ? "" : ports(plan.openings()) + ", ";
        explain(openings + plan.views() + (plan.views() == 1 ? " view, " : " views, ") + minutes(plan.minutes())
                + " in all; "
                + (plan.proved()
                        ? "no plan takes less"
                        : "no plan takes less than " + minutes(Math.min(plan.bound(), plan.minutes()))));
    }

    private static String ports(int number) {
        return number + (number == 1 ? " port" : " ports");
    }

    static String minutes(double minutes) {
        return degrees(BigDecimal.valueOf(minutes)) + " min";
    }

    private void remaining() {
        plan.open()
                .forEach((why, number) -> explain(cells(number) + " would still not be surely seen (" + why.words()
                        + "): ask again when these moves are done"));
        plan.beyond()
                .forEach((why, number) -> explain(cells(number) + " cannot be seen (" + why.words()
                        + "): no move reaches them; accept them with "
                        + (why == Why.NO_ACCESS ? "noaccess unshown because …" : "noaccess and a reason")
                        + ", or add a view"));
    }

    private static String degrees(BigDecimal number) {
        BigDecimal rounded = number.setScale(1, RoundingMode.HALF_EVEN);
        return (rounded.compareTo(rounded.setScale(0, RoundingMode.HALF_EVEN)) == 0 ? rounded.setScale(0) : rounded)
                .toPlainString();
    }

    private static String cells(int number) {
        return number + (number == 1 ? " cell" : " cells");
    }
}
