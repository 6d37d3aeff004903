package everyblade.spi;

import java.util.List;
import java.util.Optional;

/**
 * Makes an engine model step by step. What is not said stays empty, so a model that is built so is built the same by every
 * later minor version of this package.
 */
public final class EngineModelBuilder {

    private final String id;
    private final String name;
    private Optional<String> notice = Optional.empty();
    private List<Spool> spools = List.of();
    private List<Wall> walls = List.of();
    private List<Row> rows = List.of();
    private List<ScopeTip> scopeTips = List.of();
    private List<Port> ports = List.of();
    private List<View> views = List.of();
    private List<TaskCard> taskCards = List.of();

    EngineModelBuilder(String id, String name) {
        this.id = id;
        this.name = name;
    }

    /** What is shown wherever the model is used. */
    public EngineModelBuilder notice(String text) {
        notice = Optional.of(text);
        return this;
    }

    /** What turns together. */
    public EngineModelBuilder spools(List<Spool> all) {
        spools = List.copyOf(all);
        return this;
    }

    /** Walls of revolution. */
    public EngineModelBuilder walls(List<Wall> all) {
        walls = List.copyOf(all);
        return this;
    }

    /** Rows in the order in which the air passes. */
    public EngineModelBuilder rows(List<Row> all) {
        rows = List.copyOf(all);
        return this;
    }

    /** Ends of borescopes. */
    public EngineModelBuilder scopeTips(List<ScopeTip> all) {
        scopeTips = List.copyOf(all);
        return this;
    }

    /** Ways in. */
    public EngineModelBuilder ports(List<Port> all) {
        ports = List.copyOf(all);
        return this;
    }

    /** What can be looked at from where. */
    public EngineModelBuilder views(List<View> all) {
        views = List.copyOf(all);
        return this;
    }

    /** Tasks that are done often. */
    public EngineModelBuilder taskCards(List<TaskCard> all) {
        taskCards = List.copyOf(all);
        return this;
    }

    public EngineModel build() {
        return new EngineModel(id, name, notice, spools, walls, rows, scopeTips, ports, views, taskCards);
    }
}
