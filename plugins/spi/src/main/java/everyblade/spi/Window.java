package everyblade.spi;

import java.util.List;

/**
 * What a view shows, stated instead of computed: an airfoil is in sight while its clock is within the half-width of the
 * view's reference, ends included.
 *
 * @param halfWidth degrees, 0 to 180
 * @param shows the parts it shows, in the words of the entry {@code watch}; {@code all} if everything
 */
public record Window(double halfWidth, List<String> shows) {

    public Window {
        shows = List.copyOf(shows);
    }
}
