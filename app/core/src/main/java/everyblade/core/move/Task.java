package everyblade.core.move;

import everyblade.core.entry.EntryText;
import everyblade.spi.EngineModel;
import everyblade.spi.Port;
import everyblade.spi.Row;
import everyblade.spi.TaskCard;
import everyblade.spi.TaskCard.Asked;
import everyblade.spi.View;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * What is to be looked at, and through what.
 *
 * @param parts of each row that is asked for, as the entry {@code ask} says them; none of a row that is not there
 * @param ports that may be used, in this order; any, in the model's order, if none is said
 */
public record Task(Map<String, List<String>> parts, List<String> ports) {

    private static final List<String> ALL = List.of("all");

    public Task {
        parts = Map.copyOf(parts);
        ports = List.copyOf(ports);
    }

    /** What a task card asks for, through any port. */
    public static Task of(TaskCard card) {
        return new Task(card.asks().stream().collect(Collectors.toMap(Asked::row, Asked::parts)), List.of());
    }

    /** The same through these ports. */
    public Task through(List<String> named) {
        return new Task(parts, named);
    }

    /** The entries that say what is asked for; none for a row that is asked for wholly. */
    public List<String> entries(EngineModel model) {
        List<String> entries = new ArrayList<>();
        for (Row row : model.rows()) {
            List<String> asked = parts.getOrDefault(row.id(), List.of("none"));
            if (!asked.equals(ALL)) {
                entries.add("ask " + EntryText.name(row.id()) + " " + String.join(" ", asked));
            }
        }
        return entries;
    }

    /** The model with those views alone that go through the ports of the task, and its ports in that order. */
    public EngineModel narrowed(EngineModel model) {
        if (ports.isEmpty()) {
            return model;
        }
        List<Port> used = model.ports().stream()
                .filter(port -> ports.contains(port.id()))
                .sorted(Comparator.comparing(port -> ports.indexOf(port.id())))
                .toList();
        List<View> through = model.views().stream()
                .filter(view -> view.port().filter(ports::contains).isPresent())
                .toList();
        return new EngineModel(
                model.id(),
                model.name(),
                model.notice(),
                model.spools(),
                model.walls(),
                model.rows(),
                model.scopeTips(),
                used,
                through,
                model.taskCards());
    }
}
