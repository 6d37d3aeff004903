package everyblade.core.move;

import everyblade.core.coverage.Coverage;
import everyblade.core.coverage.RowCoverage;
import everyblade.core.coverage.Why;
import everyblade.core.entry.Refusal;
import everyblade.core.gap.Gaps;
import everyblade.core.move.RotationProblem.Stay;
import everyblade.core.move.RotationProblem.Work;
import everyblade.core.move.VisibilityWindow.Slack;
import everyblade.core.turning.Engine;
import everyblade.core.turning.Fold;
import everyblade.spi.EngineModel;
import everyblade.spi.Port;
import everyblade.spi.Row;
import everyblade.spi.View;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * How a technician goes on who looks at the map and plans nothing: the port that is in use first, then all others in the
 * model's order, at each port each view once and at each view station after station, the root turn and the tip turn. Where a
 * station shows nothing that is left, none is done; where it does, all airfoils that it helps are turned past it by the
 * shortest way, whole turns from a known airfoil and a little further where the seam needs it. Nobody asks whether another
 * station would show the same. Each move is said, priced and followed as a planned one is, with the same play and the same
 * identifications.
 */
final class Habit {

    private static final int MOST_ROUNDS = 4;

    private final Prices prices;
    private final List<Move> moves = new ArrayList<>();
    private RemainingState state;

    private Habit(RemainingState state, Prices prices) {
        this.state = state;
        this.prices = prices;
    }

    /** The moves of whoever works so, until the map has nothing left that a view shows. */
    static Plan of(Fold fold, Coverage coverage, Prices prices) throws Refusal {
        Habit habit = new Habit(new RemainingState(Trial.of(fold), coverage), prices);
        int before = -1;
        for (int round = 0; round < MOST_ROUNDS && habit.moves.size() > before; round++) {
            before = habit.moves.size();
            habit.goRound();
        }
        return new Plan(habit.moves, 0, new TreeMap<>(), habit.open(), LeastTurns.NONE);
    }

    /** What some view shows and is not seen then, whatever it is. */
    private SortedMap<Why, Integer> open() {
        SortedMap<Why, Integer> open = new TreeMap<>();
        for (RowCoverage of : state.coverage().after(state.now()).rows()) {
            for (int n = 1; n <= of.row().count(); n++) {
                int cells = Gaps.within(of, n).size();
                if (cells > 0) {
                    open.merge(Why.SKIPPED, cells, Integer::sum);
                }
            }
        }
        return open;
    }

    private void goRound() {
        EngineModel model = state.now().engine().model();
        Optional<String> inUse = state.port();
        Stream<String> others = model.ports().stream().map(Port::id).filter(port -> !inUse.equals(Optional.of(port)));
        for (String port : Stream.concat(inUse.stream(), Stream.concat(Stream.of(PortChoice.NO_PORT), others))
                .toList()) {
            for (View view : model.views()) {
                if (view.port().orElse(PortChoice.NO_PORT).equals(port)) {
                    lookThrough(view);
                }
            }
        }
    }

    private void lookThrough(View view) {
        Row row = state.now().engine().rows().get(view.row());
        List<ViewOption> options =
                ViewOption.of(state.coverage(), state.coverage().row(row.id()));
        for (ViewOption option : options) {
            if (option.view().equals(view)) {
                stay(row, options, option).ifPresent(stay -> turn(row, options, stay));
            }
        }
    }

    /** All airfoils of which a station shows something that is left. */
    private Optional<Stay> stay(Row row, List<ViewOption> options, ViewOption option) {
        RowNeeds needs = RowNeeds.of(state.coverage(), row, state.setBackOrClock(row), options);
        int number = needs.options().indexOf(option);
        BitSet airfoils = new BitSet();
        RowNeeds.Shown shown = new RowNeeds.Shown();
        for (RowNeeds.Kind kind : needs.kinds()) {
            RowNeeds.Shown here = kind.shown().get(number);
            if (!here.parts().isEmpty()) {
                airfoils.or(kind.airfoils());
                shown = shown.or(here);
            }
        }
        if (airfoils.isEmpty()) {
            return Optional.empty();
        }
        VisibilityWindow window = option.window(shown.parts(), new BitSet());
        boolean all = airfoils.cardinality() == row.count() && row.count() > 5 && option.travels();
        return Optional.of(
                all && !slack(row, option).none()
                        ? new Stay(option, List.of(), true)
                        : new Stay(
                                option,
                                airfoils.stream()
                                        .mapToObj(n -> window.moved(
                                                -Engine.fromFirst(row, n).degrees()))
                                        .toList()));
    }

    private void turn(Row row, List<ViewOption> options, Stay stay) {
        RotationProblem problem = problem(row, options, stay.option());
        Work work = problem.course(List.of(problem.works(stay))).works().get(0);
        follow(Spoken.of(state, problem, work));
        if (state.turnedWhole() && stay(row, options, stay.option()).isPresent()) {
            follow(Spoken.further(state, problem(row, options, stay.option()), work).stream()
                    .toList());
        }
    }

    private void follow(List<Spoken.Done> done) {
        for (Spoken.Done one : done) {
            moves.add(one.move());
            state = one.after();
        }
    }

    private Slack slack(Row row, ViewOption option) {
        return state.slack(row, option);
    }

    private RotationProblem problem(Row row, List<ViewOption> options, ViewOption option) {
        return RotationProblem.of(state, row, options, slack(row, option), false, other -> 0, prices);
    }
}
