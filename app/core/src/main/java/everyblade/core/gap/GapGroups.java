package everyblade.core.gap;

import everyblade.core.turning.Seat;
import everyblade.core.turning.Situation;
import everyblade.spi.Port;
import everyblade.spi.View;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * Gaps by the port and the view through which they are closed, nearest first: the view in use, others through its port, open
 * ports, the other ports in the model's order; last what nothing reaches.
 */
public final class GapGroups {

    private GapGroups() {}

    /**
     * What is closed through one view.
     *
     * @param port of the view, if it has one
     * @param view empty if nothing reaches these
     * @param gaps in their order
     */
    public record Group<T>(Optional<Port> port, Optional<View> view, List<T> gaps) {}

    /** @param gapOf of what is grouped */
    public static <T> List<Group<T>> of(Situation now, List<T> all, Function<T, Gap> gapOf) {
        List<Group<T>> groups = new ArrayList<>();
        for (T one : all) {
            Optional<View> view = gapOf.apply(one).view().flatMap(now.engine().model()::view);
            Group<T> group = groups.stream()
                    .filter(known -> known.view().equals(view))
                    .findFirst()
                    .orElseGet(() -> {
                        Group<T> next = new Group<>(
                                view.flatMap(View::port).flatMap(now.engine().model()::port), view, new ArrayList<>());
                        groups.add(next);
                        return next;
                    });
            group.gaps().add(one);
        }
        Optional<View> inUse = now.seat().map(Seat::view);
        Set<String> open = now.ledger().openings().keySet();
        List<Port> ports = now.engine().model().ports();
        groups.sort(Comparator.comparing((Group<T> group) -> group.view().isEmpty())
                .thenComparing(group -> !group.view().equals(inUse))
                .thenComparing(group -> inUse.isEmpty()
                        || !group.view().flatMap(View::port).equals(inUse.get().port()))
                .thenComparing(group ->
                        group.port().map(Port::id).filter(open::contains).isEmpty())
                .thenComparing(group -> group.port().map(ports::indexOf).orElse(-1)));
        return groups;
    }
}
