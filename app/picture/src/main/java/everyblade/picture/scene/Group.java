package everyblade.picture.scene;

import java.util.List;

/**
 * Items that belong together and are told of together.
 *
 * @param title what they are, in words, for those who point at them or have the picture read out; may be empty
 * @param items in the order in which they are drawn
 */
public record Group(String title, List<Item> items) {

    public Group {
        items = List.copyOf(items);
    }

    /** Items without a title of their own. */
    public static Group of(List<Item> items) {
        return new Group("", items);
    }
}
