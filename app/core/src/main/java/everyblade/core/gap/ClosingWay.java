package everyblade.core.gap;

import everyblade.core.entry.ZonePhrase;
import everyblade.core.entry.Zoning;
import everyblade.fact.Fact;
import everyblade.spi.RowKind;
import java.util.Optional;

/** How a gap is closed. */
public sealed interface ClosingWay extends Fact {

    /**
     * By watching through a view.
     *
     * @param part what the view shows of the gap, if that is not all of it
     * @param drawn whether the scope tip is drawn round, instead of the shaft being turned
     * @param from where watching begins, degrees
     * @param sweep how far it goes from there, degrees from 0
     */
    record Watching(
            String view,
            Optional<String> station,
            Optional<ZonePhrase> part,
            boolean drawn,
            double from,
            double sweep,
            boolean clockwise)
            implements ClosingWay {}

    /** By bringing a known airfoil to the reference first: this one, where a view shows one. */
    record Identifying(Optional<Known> known) implements ClosingWay {}

    /**
     * An airfoil at the reference of a view, degrees.
     *
     * @param what it is known by; empty if any will do that is marked
     */
    record Known(RowKind kind, int airfoil, Optional<String> what, String view, double reference) implements Fact {}

    /** Empty if nothing that is done at the views of the engine model closes it. */
    static Optional<ClosingWay> of(Gap gap, Zoning zoning) {
        if (gap.reach().isPresent()) {
            Gap.Reach reach = gap.reach().get();
            return Optional.of(new Watching(
                    reach.view(),
                    reach.station(),
                    reach.zones().equals(gap.zones())
                            ? Optional.empty()
                            : Optional.of(ZonePhrase.of(zoning, reach.zones())),
                    reach.drawn(),
                    reach.from(),
                    Math.abs(reach.sweep()),
                    reach.sweep() >= 0));
        }
        return gap.why().outOfReach()
                ? Optional.empty()
                : Optional.of(new Identifying(gap.first()
                        .map(known -> new Known(
                                gap.row().kind(), known.airfoil(), known.what(), known.view(), known.reference()))));
    }
}
