package everyblade.core.gap;

import everyblade.core.coverage.State;
import everyblade.core.coverage.Why;
import everyblade.core.entry.ZonePhrase;
import everyblade.core.entry.Zoning;
import everyblade.core.turning.Airfoils;
import everyblade.fact.Fact;
import java.util.Optional;

/**
 * A gap as one person would tell it to another, without a full stop.
 *
 * @param name of the row
 * @param row its id
 * @param way how to close it; empty if nothing that is done at the views of the engine model can
 */
public record ToldGap(
        String name, String row, Airfoils airfoils, ZonePhrase zones, Unseen unseen, Optional<ClosingWay> way)
        implements Fact {

    /** What is known of its cells. */
    public record Unseen(State state, Why why) implements Fact {}

    /**
     * A sentence of it.
     *
     * @param lastTimeToo whether it was not seen in the last record either
     */
    public record Sentence(ToldGap gap, boolean lastTimeToo) implements Fact {}

    public static ToldGap of(Gap gap) {
        Zoning zoning = Zoning.of(gap.row());
        return new ToldGap(
                gap.row().name(),
                gap.row().id(),
                Airfoils.of(gap.row(), gap.airfoils()),
                ZonePhrase.of(zoning, gap.zones()),
                new Unseen(gap.state(), gap.why()),
                ClosingWay.of(gap, zoning));
    }
}
