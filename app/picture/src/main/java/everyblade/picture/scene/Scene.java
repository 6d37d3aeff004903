package everyblade.picture.scene;

import java.util.List;
import java.util.stream.Stream;

/**
 * One sheet.
 *
 * @param width mm
 * @param height mm
 * @param title what it shows, in a few words
 * @param summary what it says, in a sentence or two, for those who cannot see it
 * @param groups in the order in which they are drawn
 */
public record Scene(double width, double height, String title, String summary, List<Group> groups) {

    public Scene {
        groups = List.copyOf(groups);
    }

    /** All items in the order in which they are drawn. */
    public Stream<Item> items() {
        return groups.stream().flatMap(group -> group.items().stream());
    }
}
