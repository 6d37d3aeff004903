package everyblade.core.finding.closing;

import everyblade.core.entry.ZonePhrase;
import everyblade.core.turning.Airfoils;
import everyblade.fact.Fact;
import everyblade.spi.RowKind;

/** Where something is that is told in a closing list. */
public sealed interface Where extends Fact {

    /** @param view id */
    record AtView(String view) implements Where {}

    /** @param degrees clock angle */
    record AtClock(long degrees) implements Where {}

    /**
     * A whole row.
     *
     * @param row id
     */
    record OfRow(String name, String row) implements Where {}

    record Named(String name) implements Where {}

    /** @param place as a reviewer says it */
    record AsSaid(String place) implements Where {}

    /** @param row id */
    record OnAirfoil(String name, String row, RowKind kind, int airfoil, ZonePhrase zones) implements Where {}

    /**
     * Parts of several airfoils.
     *
     * @param row id
     * @param zones a {@link ZonePhrase}, or that it is all that no view shows
     */
    record OnAirfoils(String name, String row, Airfoils airfoils, Fact zones) implements Where {}

    /** Zones that nobody named one by one. */
    enum Zones implements Fact {
        UNSHOWN
    }
}
