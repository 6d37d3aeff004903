package everyblade.session.job;

import everyblade.core.coverage.Coverage;
import everyblade.core.entry.EntryParser;
import everyblade.core.entry.Refusal;
import everyblade.core.entry.Settings;
import everyblade.core.gap.OutOfReach;
import everyblade.core.move.Plan;
import everyblade.core.move.PlanBuilder;
import everyblade.core.move.Prices;
import everyblade.core.move.Task;
import everyblade.core.sight.Clearances;
import everyblade.core.sight.Criteria;
import everyblade.core.sight.Progress;
import everyblade.core.sight.Sights;
import everyblade.core.sight.StationAims;
import everyblade.core.sight.ViewScene;
import everyblade.core.surface.UnusableShape;
import everyblade.core.turning.Engine;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Logged;
import everyblade.record.FrozenFile;
import everyblade.session.around.Failure;
import everyblade.session.around.Patience;
import everyblade.session.around.Surroundings;
import everyblade.session.around.Waiting;
import everyblade.session.model.Shelf;
import everyblade.spi.EngineModel;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A job that nobody has begun, planned.
 *
 * @param model with those views alone that may be used
 * @param outOfReach what no move can reach
 */
public record Prepared(EngineModel model, Coverage before, Plan plan, List<OutOfReach> outOfReach) {

    public static Prepared of(Surroundings around, Shelf.Chosen chosen, Task task, Settings settings) {
        EngineModel model = task.narrowed(chosen.model());
        ViewScene scene = new ViewScene(model, chosen.meshes(), Map.of());
        Progress patience = new Patience(around, "wait.stations");
        TreeMap<String, String> meshes = new TreeMap<>();
        chosen.meshes()
                .forEach((name, bytes) -> meshes.put(name, FrozenFile.of(bytes).hash()));
        Sights sights = new Sights(
                scene,
                FrozenFile.of(chosen.bytes()).hash() + meshes,
                Criteria.of(settings),
                KeptSights.ofStations(around.derived()),
                patience);
        Fold fold = asked(engine(scene, settings), task.entries(model));
        Coverage coverage = Coverage.of(fold.situation(), settings, sights);
        Plan plan = Waiting.during(around, "wait.plan", () -> PlanBuilder.of(fold, coverage, Prices.of(settings)));
        return new Prepared(model, coverage, plan, OutOfReach.of(coverage));
    }

    private static Engine engine(ViewScene scene, Settings settings) {
        try {
            return Engine.of(scene.model())
                    .withClearances(
                            Clearances.of(scene), settings.number("clearance").orElse(0))
                    .withAims(new StationAims(scene));
        } catch (UnusableShape unusable) {
            throw Failure.of("stopped.prepared.engineModelGivesNoSurface", unusable.told());
        }
    }

    private static Fold asked(Engine engine, List<String> entries) {
        try {
            Fold fold = Fold.start(engine);
            for (String line : entries) {
                int number = fold.entries().size() + 1;
                fold = fold.with(new Logged(number, Instant.EPOCH, "", false, line, EntryParser.parse(line)));
            }
            return fold;
        } catch (Refusal refused) {
            throw new IllegalStateException("a task was refused: " + refused.getMessage(), refused);
        }
    }
}
