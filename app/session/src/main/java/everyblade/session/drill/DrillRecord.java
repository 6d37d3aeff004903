package everyblade.session.drill;

import everyblade.core.coverage.Coverage;
import everyblade.core.finding.Findings;
import everyblade.core.sight.Progress;
import everyblade.core.sight.ViewScene;
import everyblade.core.surface.UnusableShape;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Remark;
import everyblade.practice.account.Debrief;
import everyblade.practice.account.DrillReplay;
import everyblade.practice.account.SeenFacets;
import everyblade.practice.drill.Drill;
import everyblade.practice.drill.TipTrack;
import everyblade.practice.drill.Truth;
import everyblade.practice.harm.Harm;
import everyblade.record.RecordKind;
import everyblade.record.RecordProblem;
import everyblade.record.drill.DrillFile;
import everyblade.record.drill.DrillFolder;
import everyblade.record.drill.Sealed;
import everyblade.session.around.Failure;
import everyblade.session.around.Surroundings;
import everyblade.session.job.OpenedJob;
import everyblade.spi.Row;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;

/**
 * A drill as it was opened.
 *
 * @param path as it was named
 * @param job the entries made in it, over its engine
 * @param drill what the trainee may know
 * @param sealed the truth
 * @param folder what is added to it
 */
public record DrillRecord(Path path, OpenedJob job, Drill drill, Sealed sealed, DrillFolder folder) {

    /** Whether a folder is that of a drill, by what lies in it. */
    public static boolean isOne(Surroundings around, Path path) {
        return DrillFolder.isOne(around.disk(), around.path(path));
    }

    /** Reads a drill. */
    public static DrillRecord read(Surroundings around, Path path) {
        OpenedJob job = OpenedJob.read(around, path, RecordKind.DRILL);
        DrillFile.Content content = job.job()
                .drill()
                .flatMap(file -> DrillFile.read(file.bytes()))
                .orElseThrow(() -> Failure.of("stopped.drillRecord.drillDrillJsonCannotBe", path));
        return new DrillRecord(
                path,
                job,
                content.drill(),
                content.truth(),
                new DrillFolder(around.disk(), job.folder().path()));
    }

    /** Refuses a drill that has ended, to which nothing can be added. */
    public static void requireGoingOn(Surroundings around, Path path) {
        if (new DrillFolder(around.disk(), around.path(path)).ended()) {
            throw ended(path);
        }
    }

    private static Failure ended(Path path) {
        return Failure.of("stopped.drillRecord.drillHasEndedAndIts", path);
    }

    /** Refuses it if it has ended. */
    public void requireGoingOn() {
        if (folder.ended()) {
            throw ended(path);
        }
    }

    /** Refuses it if it has not ended. */
    public void requireEnded() {
        if (!folder.ended()) {
            throw Failure.of("stopped.drillRecord.drillGoesOnAndNobody", path);
        }
    }

    /** The truth: of a drill that has ended, or by the examiner's words, which are empty where there is no examiner. */
    public Truth truth(Optional<String> words) {
        if (folder.ended()) {
            return folder.truth(sealed)
                    .orElseThrow(() -> Failure.of("stopped.drillRecord.drillTruthJsonNotTruth", path));
        }
        if (drill.examined() && words.isEmpty()) {
            throw Failure.of("stopped.drillRecord.examinerSetDrillAndKeeps", path);
        }
        return sealed.open(words.orElse(""))
                .flatMap(DrillFile::readTruth)
                .orElseThrow(() -> Failure.of("stopped.drillRecord.keyDoesNotOpenDrill", path));
    }

    /** Ends it. */
    public void end(Truth truth) {
        Optional<RecordProblem> problem = folder.end(DrillFile.write(truth));
        if (problem.isPresent()) {
            throw new Failure(problem.get());
        }
    }

    /** The row that some damage is on. */
    public Row row(Harm harm) {
        return job.engine().rows().get(harm.row());
    }

    /** The engine that it is done on. */
    public ViewScene scene() {
        return job.scene();
    }

    /**
     * What came of a drill.
     *
     * @param truth of it
     * @param debrief the truth beside the calls
     * @param seen what was in sight
     * @param track how everything was moved
     * @param coverage what the entries claim
     */
    public record Told(Truth truth, Debrief debrief, SeenFacets seen, TipTrack track, Coverage coverage) {

        /**
         * What was truly in the picture, as if it had been seen by that, with a finding wherever there is damage: the sign of
         * each has its place among the outcomes, from 1.
         */
        public Coverage truly() {
            List<Remark> damage = new ArrayList<>();
            for (Harm harm : truth.damage()) {
                BitSet airfoil = new BitSet();
                airfoil.set(harm.airfoil() - 1);
                damage.add(new Remark(
                        damage.size() + 1,
                        Remark.What.FOUND,
                        harm.row(),
                        airfoil,
                        harm.zones(coverage.row(harm.row()).zoning())));
            }
            return coverage.showing(seen.facets(), damage);
        }
    }

    /** What came of it; takes some milliseconds for each moment of its track. */
    public Told told(Truth truth, Fold fold, Coverage coverage, Progress progress) {
        try {
            TipTrack track = folder.track();
            SeenFacets seen = DrillReplay.of(scene(), truth, track, progress);
            return new Told(truth, Debrief.of(truth, seen, Findings.of(fold), track.told()), seen, track, coverage);
        } catch (UnusableShape unusable) {
            throw Failure.of("stopped.noSurface", path, unusable.told());
        }
    }
}
