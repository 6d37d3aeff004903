package everyblade.picture.paint;

import everyblade.picture.scene.Group;
import everyblade.picture.scene.Item;
import everyblade.picture.scene.Scene;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/**
 * A scene made ready to be painted again and again, whole or in part: any part comes out as it would in the whole.
 *
 * <p>Immutable. {@link #after} keeps what is ready of groups that have not changed.
 */
public final class ReadyScene {

    private static final Rectangle2D NOWHERE = new Rectangle2D.Double();

    private final ScenePainter painter;
    private final List<ReadyGroup> groups;

    /** A group with its items made ready, and what they may touch together. */
    private record ReadyGroup(Group group, List<ReadyItem> items, Rectangle2D bounds) {

        static final ReadyGroup NONE = new ReadyGroup(Group.of(List.of()), List.of(), NOWHERE);

        static ReadyGroup of(Group group, ScenePainter painter) {
            List<ReadyItem> items = group.items().stream()
                    .map(item -> ReadyItem.of(item, painter))
                    .toList();
            return new ReadyGroup(group, items, touched(items));
        }
    }

    private ReadyScene(ScenePainter painter, List<ReadyGroup> groups) {
        this.painter = painter;
        this.groups = groups;
    }

    /** A scene to be painted by this painter. */
    public static ReadyScene of(Scene scene, ScenePainter painter) {
        return new ReadyScene(painter, List.of()).after(scene);
    }

    /** Another scene for the same painter. */
    public ReadyScene after(Scene scene) {
        List<ReadyGroup> next = new ArrayList<>(scene.groups().size());
        for (int i = 0; i < scene.groups().size(); i++) {
            Group group = scene.groups().get(i);
            next.add(
                    i < groups.size() && same(groups.get(i).group(), group)
                            ? groups.get(i)
                            : ReadyGroup.of(group, painter));
        }
        return new ReadyScene(painter, next);
    }

    /** Where this scene looks otherwise than one it was made {@link #after}; places in mm, one a group at most. */
    public List<Rectangle2D> changesSince(ReadyScene before) {
        List<Rectangle2D> changes = new ArrayList<>();
        for (int i = 0; i < Math.max(groups.size(), before.groups.size()); i++) {
            ReadyGroup old = i < before.groups.size() ? before.groups.get(i) : ReadyGroup.NONE;
            ReadyGroup now = i < groups.size() ? groups.get(i) : ReadyGroup.NONE;
            Rectangle2D change = old == now ? NOWHERE : change(old, now);
            if (!change.isEmpty()) {
                changes.add(change);
            }
        }
        return changes;
    }

    /** What is touched by the items of both between those that begin both alike and those that end both alike. */
    private static Rectangle2D change(ReadyGroup old, ReadyGroup now) {
        List<Item> a = old.group().items();
        List<Item> b = now.group().items();
        int least = Math.min(a.size(), b.size());
        int head = 0;
        while (head < least && a.get(head).equals(b.get(head))) {
            head++;
        }
        int tail = 0;
        while (tail < least - head && a.get(a.size() - 1 - tail).equals(b.get(b.size() - 1 - tail))) {
            tail++;
        }
        return union(
                touched(old.items().subList(head, a.size() - tail)),
                touched(now.items().subList(head, b.size() - tail)));
    }

    private static Rectangle2D touched(List<ReadyItem> items) {
        return items.stream().map(ReadyItem::bounds).reduce(NOWHERE, ReadyScene::union);
    }

    private static Rectangle2D union(Rectangle2D a, Rectangle2D b) {
        return a.isEmpty() ? b : b.isEmpty() ? a : a.createUnion(b);
    }

    private static boolean same(Group a, Group b) {
        return a == b || a.equals(b);
    }

    /**
     * Paints all that may touch a part of the sheet, over what is there; leaves the graphics as they were.
     *
     * @param part mm; what reaches beyond it is not cut off
     */
    public void paint(Graphics2D graphics, Rectangle2D part) {
        Graphics2D g = (Graphics2D) graphics.create();
        try {
            ScenePainter.smooth(g);
            for (ReadyGroup group : groups) {
                if (group.bounds().intersects(part)) {
                    for (ReadyItem item : group.items()) {
                        if (item.bounds().intersects(part)) {
                            item.paint(g);
                        }
                    }
                }
            }
        } finally {
            g.dispose();
        }
    }
}
