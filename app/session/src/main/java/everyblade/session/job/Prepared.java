package everyblade.session.job;

import everyblade.core.coverage.Coverage;
import everyblade.core.entry.EntryParser;
import everyblade.core.entry.FindingEntry;
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
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A job planned before anything of it was done.
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
        Fold fold = asked(engine(scene, settings), parsed(task.entries(model)));
        return of(around, fold, Coverage.of(fold.situation(), settings, sights));
    }

    /**
     * What a job had before it when it began, with what it asks for now: nothing but that is taken from its entries.
     *
     * @param now what was seen by now
     */
    static Prepared of(Surroundings around, OpenedJob job, Coverage now) {
        Fold all = job.fold();
        Fold fold = asked(
                job.engine(),
                all.entries().stream()
                        .filter(one -> one.entry() instanceof FindingEntry.Ask && !all.isVoid(one.number()))
                        .toList());
        return of(around, fold, Coverage.of(fold.situation(), now.settings(), now.sights()));
    }

    private static Prepared of(Surroundings around, Fold fold, Coverage coverage) {
        Plan plan = Waiting.during(
                around, "wait.plan", () -> PlanBuilder.of(fold, coverage, Prices.of(coverage.settings())));
        return new Prepared(fold.situation().engine().model(), coverage, plan, OutOfReach.of(coverage));
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

    private static List<Logged> parsed(List<String> lines) {
        List<Logged> entries = new ArrayList<>();
        try {
            for (String line : lines) {
                entries.add(new Logged(0, Instant.EPOCH, "", false, line, EntryParser.parse(line)));
            }
            return entries;
        } catch (Refusal refused) {
            throw new IllegalStateException("a task was refused: " + refused.getMessage(), refused);
        }
    }

    /** The fold of entries that ask, numbered anew. */
    private static Fold asked(Engine engine, List<Logged> entries) {
        try {
            Fold fold = Fold.start(engine);
            for (Logged one : entries) {
                int number = fold.entries().size() + 1;
                fold = fold.with(new Logged(number, one.at(), one.by(), false, one.text(), one.entry()));
            }
            return fold;
        } catch (Refusal refused) {
            throw new IllegalStateException("a task was refused: " + refused.getMessage(), refused);
        }
    }
}
