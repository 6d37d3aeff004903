package everyblade.session.drill;

import everyblade.core.entry.Settings;
import everyblade.core.surface.UnusableShape;
import everyblade.practice.drill.Drill;
import everyblade.practice.drill.Reachable;
import everyblade.practice.drill.Truth;
import everyblade.practice.drill.Truths;
import everyblade.record.Beginning;
import everyblade.record.Frozen;
import everyblade.record.FrozenFile;
import everyblade.record.JobFolder;
import everyblade.record.RecordKind;
import everyblade.record.RecordProblem;
import everyblade.record.drill.DrillFile;
import everyblade.record.drill.Sealed;
import everyblade.session.around.Failure;
import everyblade.session.around.Surroundings;
import everyblade.session.model.Shelf;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Makes folders of drills. */
public final class DrillMaker {

    private final Surroundings around;

    public DrillMaker(Surroundings around) {
        this.around = around;
    }

    /** Makes a drill of the course, another one each time; nobody keeps a key to it. */
    public void make(Path path, Shelf shelf, Course.Lesson lesson, String by) {
        make(path, shelf.chooseByOption(lesson.model()), lesson, Optional.empty(), Optional.empty(), by);
    }

    /**
     * Makes a drill.
     *
     * @param words of an examiner
     * @param seed by chance unless given
     * @return its truth
     */
    public Truth make(
            Path path,
            Shelf.Chosen chosen,
            Course.Lesson lesson,
            Optional<String> words,
            Optional<Long> seed,
            String by) {
        SecureRandom chance = new SecureRandom();
        Truth truth;
        try {
            truth = Truths.of(
                    chosen.scene(),
                    lesson.recipe(),
                    Reachable.faces(chosen.scene(), lesson.drill().views()),
                    seed.orElseGet(chance::nextLong));
        } catch (UnusableShape unusable) {
            throw Failure.of("stopped.drillMaker.line", lesson.model(), unusable.told());
        }
        byte[] random = new byte[Sealed.RANDOM];
        chance.nextBytes(random);
        start(path, chosen, lesson.drill(), Sealed.of(DrillFile.write(truth), words.orElse(""), random), by);
        return truth;
    }

    private void start(Path path, Shelf.Chosen chosen, Drill drill, Sealed sealed, String by) {
        TreeMap<String, FrozenFile> meshes = new TreeMap<>();
        chosen.meshes().forEach((name, bytes) -> meshes.put(name, FrozenFile.of(bytes)));
        Beginning beginning = new Beginning(
                around.clock().instant(),
                by,
                chosen.model().id(),
                "DRILL",
                drill.title() + ": " + drill.task(),
                Settings.of(Map.of("detail", Settings.DETAIL)).values(),
                Optional.empty());
        Frozen frozen = new Frozen(
                FrozenFile.of(chosen.bytes()),
                meshes,
                Optional.empty(),
                Optional.empty(),
                Optional.of(FrozenFile.of(DrillFile.write(drill, sealed))));
        Optional<RecordProblem> problem =
                new JobFolder(around.disk(), around.path(path), RecordKind.DRILL).start(beginning, frozen);
        if (problem.isPresent()) {
            throw new Failure(problem.get());
        }
    }
}
