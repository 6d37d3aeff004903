package everyblade.core.move;

import everyblade.core.Job;
import everyblade.core.sight.Clearances;
import everyblade.core.sight.StationAims;
import everyblade.core.sight.ViewScene;
import everyblade.core.turning.Engine;
import everyblade.json.EngineJsonReader;
import everyblade.json.Reading;
import everyblade.spi.EngineModel;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import everyblade.spi.Station;
import everyblade.spi.View;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;

/** Jobs on the engines that come with the program, left off somewhere in the middle. */
final class MidJob {

    private static final int MOST_VISITS = 12;

    private MidJob() {}

    /** An engine as a job has it, nothing done yet; what its stations show is computed when first asked. */
    static Job fresh(String id) throws Exception {
        return fresh(model(id));
    }

    /** The same of an engine that had no views of other rows than this one. */
    static Job fresh(String id, String row) throws Exception {
        EngineModel model = model(id);
        return fresh(new EngineModel(
                model.id(),
                model.name(),
                model.notice(),
                model.spools(),
                model.walls(),
                model.rows(),
                model.scopeTips(),
                model.ports(),
                model.views().stream().filter(view -> view.row().equals(row)).toList(),
                model.taskCards()));
    }

    private static EngineModel model(String id) throws Exception {
        Path file = Path.of("..", "..", "engine-models", id, EngineJsonReader.FILE);
        return ((Reading.Read) EngineJsonReader.read(file)).model();
    }

    private static Job fresh(EngineModel model) throws Exception {
        ViewScene scene = new ViewScene(model, Map.of(), Map.of());
        return new Job(Engine.of(model).withClearances(Clearances.of(scene), 2).withAims(new StationAims(scene)))
                .set("detail", "0.8");
    }

    /** A random job, the same for each seed: some views were used, whole turns and parts of them watched, halves of blades too. */
    static Job of(Job fresh, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Job job = fresh.another().enter("heat 20 C");
        EngineModel model = job.fold().situation().engine().model();
        Set<String> counted = new HashSet<>();
        Optional<String> open = Optional.empty();
        for (int visits = 1 + random.nextInt(MOST_VISITS); visits > 0; visits--) {
            View view = model.views().get(random.nextInt(model.views().size()));
            Row row = model.row(view.row()).orElseThrow();
            if (!open.equals(view.port())) {
                open.ifPresent(port -> job.enter("out", "shut " + port));
                view.port().ifPresent(port -> job.enter("open " + port));
                open = view.port();
            }
            job.enter("view " + view.id());
            boolean turns = row.kind() == RowKind.ROTOR;
            if (counted.add(row.id())) {
                job.enter("datum " + row.id() + " 1");
            } else if (turns) {
                job.enter("slip", "here 1");
            }
            if (random.nextInt(4) == 0 && row.kind() != RowKind.LINER) {
                job.enter("watch " + (random.nextBoolean() ? "root" : "tip"));
            }
            for (Station station : some(view.stations(), random)) {
                job.enter("at " + station.id());
                if (!turns) {
                    job.enter("draw " + (20 + random.nextInt(341)));
                } else if (random.nextBoolean()) {
                    job.enter("slip", "round 1");
                } else {
                    job.enter("turn on " + (20 + random.nextInt(320)));
                }
            }
        }
        return job;
    }

    private static List<Station> some(List<Station> stations, SplittableRandom random) {
        List<Station> some = new ArrayList<>(stations);
        some.removeIf(station -> random.nextInt(3) == 0);
        return some;
    }
}
