package everyblade.cli;

import everyblade.core.sight.Progress;
import everyblade.json.Found;
import everyblade.json.Problem;
import everyblade.session.model.ModelFiles;
import everyblade.spi.EngineModel;
import everyblade.testkit.Evidence;
import everyblade.testkit.RuleBook;
import everyblade.testkit.RulesReport;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Judges engine models by every rule.
 *
 * @param at when
 * @param again what was found at the same place another time
 * @param sight whether to compute what views see, too
 * @param progress of that
 */
record Rules(Instant at, List<Found> again, boolean sight, Progress progress) {

    /** @param problems what reading and checking it say */
    RulesReport judge(Found found, List<Problem> problems) {
        Optional<EngineModel> model = model(found);
        Evidence evidence = new Evidence(
                Evidence.told(problems),
                model,
                model.map(one -> handed(found, one)).orElse(List.of()),
                found instanceof Found.Loaded loaded ? ModelFiles.of(loaded).meshes(loaded.model()) : Map.of(),
                sight);
        return new RulesReport(at, found.origin().toString(), model, RuleBook.judge(evidence, progress));
    }

    private List<EngineModel> handed(Found found, EngineModel model) {
        Stream<EngineModel> later = again.stream()
                .filter(one -> one.origin().equals(found.origin()))
                .flatMap(one -> model(one).stream())
                .filter(one -> one.id().equals(model.id()));
        return Stream.concat(Stream.of(model), later).toList();
    }

    private static Optional<EngineModel> model(Found found) {
        return found instanceof Found.Loaded loaded ? Optional.of(loaded.model()) : Optional.empty();
    }
}
