package everyblade.core.move;

import everyblade.core.gap.Gaps;
import everyblade.core.move.RotationProblem.Stay;
import everyblade.core.move.RotationProblem.Work;
import everyblade.spi.Row;
import java.util.List;
import java.util.stream.IntStream;

/** What {@link EveryOrder} finds, by trying all there is: whole turns, told as rounds wherever an airfoil can be told. */
final class SlowOrders {

    private final Row row;
    private final List<ViewOption> options;
    private final List<String> ports;
    private final Prices prices;
    private double best;
    private int tried;

    private SlowOrders(Row row, List<ViewOption> options, List<String> ports, Prices prices, double most) {
        this.row = row;
        this.options = options;
        this.ports = ports;
        this.prices = prices;
        this.best = most;
    }

    /**
     * @param most minutes; orders that take longer are not followed
     */
    static SlowOrders of(RemainingState start, Row row, List<String> ports, Prices prices, double most) {
        List<ViewOption> options =
                ViewOption.of(start.coverage(), start.coverage().row(row.id()));
        SlowOrders orders = new SlowOrders(row, options, ports, prices, most);
        orders.go(start, 0, 0);
        return orders;
    }

    double minutes() {
        return best;
    }

    int tried() {
        return tried;
    }

    private void go(RemainingState state, int used, double minutes) {
        if (minutes >= best) {
            return;
        }
        if (IntStream.rangeClosed(1, row.count())
                .allMatch(n -> Gaps.within(state.coverage().row(row.id()), n).isEmpty())) {
            best = minutes;
            return;
        }
        int here = state.port().map(ports::indexOf).orElse(-1);
        for (int option = 0; option < options.size(); option++) {
            if ((used >> option & 1) == 0 && ports.indexOf(PortChoice.portOf(options.get(option))) >= here) {
                turn(state, option, used | 1 << option, minutes);
            }
        }
    }

    private void turn(RemainingState state, int option, int used, double minutes) {
        ViewOption at = options.get(option);
        RotationProblem problem = problem(state, at);
        for (Work work : problem.works(new Stay(at, List.of(), true))) {
            tried++;
            for (Spoken.Done whole : Spoken.of(state, problem, work)) {
                if (state.rounds(row, at) && !whole.move().round()) {
                    continue;
                }
                double then = minutes + whole.move().minutes();
                go(whole.after(), used, then);
                Spoken.further(whole.after(), problem, work)
                        .ifPresent(more ->
                                go(more.after(), used, then + more.move().minutes()));
            }
        }
    }

    private RotationProblem problem(RemainingState state, ViewOption at) {
        return RotationProblem.of(
                state,
                row,
                options,
                state.slack(row, at),
                false,
                option -> ports.indexOf(PortChoice.portOf(option)),
                prices);
    }
}
