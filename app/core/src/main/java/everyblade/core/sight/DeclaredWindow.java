package everyblade.core.sight;

import everyblade.core.angle.Turn;
import everyblade.core.entry.Refusal;
import everyblade.core.entry.Said;
import everyblade.core.entry.ZoneSet;
import everyblade.core.entry.ZoneWords;
import everyblade.core.entry.Zoning;
import everyblade.spi.View;
import java.util.Optional;

/**
 * What a view shows by declaration: an airfoil is in sight while its clock angle lies in a closed range round the view's
 * reference.
 *
 * @param from least clock angle, unrolled
 * @param to the tick after the greatest clock angle, unrolled; at most a turn after {@code from}
 * @param zones that are then in sight
 */
public record DeclaredWindow(Turn from, Turn to, ZoneSet zones) {

    private static final Turn TICK = Turn.ofTicks(1);

    /**
     * The window of a view; empty if it declares none.
     *
     * @throws IllegalStateException if it shows parts that the row does not have
     */
    public static Optional<DeclaredWindow> of(View view, Zoning zoning) {
        return view.window().map(window -> {
            Turn middle = Turn.ofDegrees(view.reference());
            Turn half = Turn.ofDegrees(window.halfWidth());
            Turn from = middle.minus(half);
            Turn to = middle.plus(half).plus(TICK);
            return new DeclaredWindow(
                    from,
                    to.minus(from).compareTo(Turn.FULL) > 0 ? from.plus(Turn.FULL) : to,
                    shown(window.shows(), zoning, view.id()));
        });
    }

    private static ZoneSet shown(java.util.List<String> words, Zoning zoning, String view) {
        try {
            return ZoneWords.parts(
                    zoning, words.stream().map(word -> new Said<>(word, 1)).toList());
        } catch (Refusal refused) {
            throw new IllegalStateException("view " + view + ": " + refused.getMessage(), refused);
        }
    }
}
