package everyblade.cli;

import everyblade.core.entry.Refusal;
import everyblade.core.entry.Said;
import everyblade.core.entry.ZoneWords;
import everyblade.core.entry.Zoning;
import everyblade.core.move.Task;
import everyblade.fact.Keyed;
import everyblade.session.around.Failure;
import everyblade.session.around.OneLine;
import everyblade.spi.EngineModel;
import everyblade.spi.Port;
import everyblade.spi.Row;
import everyblade.spi.TaskCard;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Option;

/** What a task asks for, as options of a command. */
final class TaskOptions {

    @Option(names = "--card", paramLabel = "CARD", description = "${bundle:help.taskOptions.card}")
    private String card;

    @Option(names = "--rows", split = ",", paramLabel = "ROW", description = "${bundle:help.taskOptions.rows}")
    private List<String> rows = List.of();

    @Option(names = "--zones", split = ",", paramLabel = "PART", description = "${bundle:help.taskOptions.zones}")
    private List<String> zones = List.of();

    /** The options that were given, by name. */
    List<String> given() {
        List<String> given = new ArrayList<>();
        if (card != null) {
            given.add("--card");
        }
        if (!rows.isEmpty()) {
            given.add("--rows");
        }
        if (!zones.isEmpty()) {
            given.add("--zones");
        }
        return given;
    }

    /** The task on this engine, through these ports. */
    Task task(EngineModel model, List<String> ports) {
        if (card != null) {
            return carded(model).through(known(model, ports));
        }
        rows.forEach(id ->
                named("--rows", id, Sort.ROW, model.rows().stream().map(Row::id).toList()));
        known(model, ports);
        Map<String, List<String>> parts = new LinkedHashMap<>();
        for (Row row : model.rows()) {
            if (rows.isEmpty() || rows.contains(row.id())) {
                if (zones.isEmpty()) {
                    parts.put(row.id(), List.of("all"));
                } else if (has(row)) {
                    parts.put(row.id(), zones);
                }
            }
        }
        if (parts.isEmpty()) {
            throw Failure.of(
                    "stopped.taskOptions.noRowThatAskedFor",
                    String.join(",", zones),
                    model.rows().stream()
                            .filter(row -> rows.isEmpty() || rows.contains(row.id()))
                            .findFirst()
                            .map(row -> new Keyed(
                                    "stopped.taskOptions.rowHas",
                                    List.of(row.id(), Zoning.of(row).names())))
                            .orElseGet(() ->
                                    new Keyed("stopped.taskOptions.rowHas", List.of(Optional.empty(), List.of()))));
        }
        return new Task(parts, ports);
    }

    private Task carded(EngineModel model) {
        if (!rows.isEmpty() || !zones.isEmpty()) {
            throw Failure.of("stopped.taskOptions.cardSaysWhichRowsAnd", OneLine.quoted(card));
        }
        named(
                "--card",
                card,
                Sort.CARD,
                model.taskCards().stream().map(TaskCard::id).toList());
        return Task.of(model.taskCard(card).orElseThrow());
    }

    private static List<String> known(EngineModel model, List<String> ports) {
        ports.forEach(id -> named(
                "--from", id, Sort.PORT, model.ports().stream().map(Port::id).toList()));
        return ports;
    }

    private boolean has(Row row) {
        try {
            return !ZoneWords.parts(
                            Zoning.of(row),
                            zones.stream().map(zone -> new Said<>(zone, 1)).toList())
                    .isEmpty();
        } catch (Refusal noSuchPart) {
            return false;
        }
    }

    /** What an id may name. */
    private enum Sort {
        ROW,
        PORT,
        CARD
    }

    private static void named(String option, String id, Sort sort, List<String> known) {
        if (!known.contains(id)) {
            throw Failure.of("stopped.taskOptions.engineHasNoSuchHas", option, OneLine.quoted(id), sort, known);
        }
    }
}
