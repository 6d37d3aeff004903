package everyblade.spi;

import java.util.List;
import java.util.Optional;

/**
 * One engine as far as looking inside it goes: what turns, what is in each row, where a scope gets in.
 *
 * @param id lower-case letters, digits and hyphens
 * @param name what people call it
 * @param notice shown wherever the model is used, such as that it is invented
 * @param spools what turns together, in the author's order
 * @param walls walls of revolution
 * @param rows in the order in which the air passes
 * @param scopeTips ends of borescopes
 * @param ports ways in
 * @param views what can be looked at from where
 * @param taskCards tasks that are done often; since 1.2
 */
public record EngineModel(
        String id,
        String name,
        Optional<String> notice,
        List<Spool> spools,
        List<Wall> walls,
        List<Row> rows,
        List<ScopeTip> scopeTips,
        List<Port> ports,
        List<View> views,
        List<TaskCard> taskCards) {

    public EngineModel {
        spools = List.copyOf(spools);
        walls = List.copyOf(walls);
        rows = List.copyOf(rows);
        scopeTips = List.copyOf(scopeTips);
        ports = List.copyOf(ports);
        views = List.copyOf(views);
        taskCards = List.copyOf(taskCards);
    }

    /** A model without task cards, as it was made before there were any. */
    public EngineModel(
            String id,
            String name,
            Optional<String> notice,
            List<Spool> spools,
            List<Wall> walls,
            List<Row> rows,
            List<ScopeTip> scopeTips,
            List<Port> ports,
            List<View> views) {
        this(id, name, notice, spools, walls, rows, scopeTips, ports, views, List.of());
    }

    /** Begins a model of this id and name. */
    public static EngineModelBuilder of(String id, String name) {
        return new EngineModelBuilder(id, name);
    }

    /** The row of that id. */
    public Optional<Row> row(String id) {
        return rows.stream().filter(row -> row.id().equals(id)).findFirst();
    }

    /** The spool of that id. */
    public Optional<Spool> spool(String id) {
        return spools.stream().filter(spool -> spool.id().equals(id)).findFirst();
    }

    /** The view of that id. */
    public Optional<View> view(String id) {
        return views.stream().filter(view -> view.id().equals(id)).findFirst();
    }

    /** The scope tip of that id. */
    public Optional<ScopeTip> scopeTip(String id) {
        return scopeTips.stream().filter(tip -> tip.id().equals(id)).findFirst();
    }

    /** The port of that id. */
    public Optional<Port> port(String id) {
        return ports.stream().filter(port -> port.id().equals(id)).findFirst();
    }

    /** The task card of that id. */
    public Optional<TaskCard> taskCard(String id) {
        return taskCards.stream().filter(card -> card.id().equals(id)).findFirst();
    }
}
