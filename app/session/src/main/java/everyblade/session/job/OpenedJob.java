package everyblade.session.job;

import everyblade.core.coverage.Coverage;
import everyblade.core.entry.Refusal;
import everyblade.core.entry.Settings;
import everyblade.core.finding.Judgement;
import everyblade.core.finding.Judging;
import everyblade.core.finding.Limits;
import everyblade.core.finding.closing.Beside;
import everyblade.core.finding.closing.ClosingList;
import everyblade.core.finding.review.ReviewRemark;
import everyblade.core.move.Prices;
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
import everyblade.json.EngineJsonReader;
import everyblade.json.Reading;
import everyblade.record.Addition;
import everyblade.record.Beginning;
import everyblade.record.Job;
import everyblade.record.JobFolder;
import everyblade.record.Journal;
import everyblade.record.JournalLine;
import everyblade.record.RecordKind;
import everyblade.record.RecordProblem;
import everyblade.record.Review;
import everyblade.record.ReviewFile;
import everyblade.record.derived.DerivedFiles;
import everyblade.record.limits.LimitsReader;
import everyblade.record.limits.LimitsReading;
import everyblade.session.around.Failure;
import everyblade.session.around.OneLine;
import everyblade.session.around.Patience;
import everyblade.session.around.Surroundings;
import everyblade.session.around.Waiting;
import everyblade.session.photo.Album;
import everyblade.session.photo.JobPhoto;
import everyblade.spi.EngineModel;
import everyblade.words.Words;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Function;
import java.util.function.ToIntBiFunction;
import java.util.stream.Stream;

/**
 * A job with its journal folded over its frozen engine model.
 *
 * @param folder where it is
 * @param job as it was read
 * @param fold of all its entries
 * @param progress of computing what stations show, where that is not known yet
 * @param derived where that is kept
 * @param folds where folds of long journals are kept
 */
public record OpenedJob(
        JobFolder folder, Job job, Fold fold, Progress progress, DerivedFiles derived, KeptFolds folds) {

    /** Reads a job, and tells what a person should know of its state. */
    public static OpenedJob read(Surroundings around, Path path) {
        return read(around, path, RecordKind.JOB);
    }

    /** The same; also tells what must not stay unsaid where it is shown, see {@link #doubts}. */
    public static OpenedJob readWithDoubts(Surroundings around, Path path) {
        OpenedJob opened = read(around, path);
        opened.doubts(around.words()).forEach(around.err()::println);
        return opened;
    }

    /** Reads a record of this kind; one of the other kind is refused. */
    public static OpenedJob read(Surroundings around, Path path, RecordKind kind) {
        JobFolder folder = new JobFolder(around.disk(), around.job(path), kind);
        KeptFolds folds = new KeptFolds(around.derived());
        Job job = job(around, folder, folds);
        around.words().say(job.notices()).forEach(around.err()::println);
        return read(around, folder, job, folds);
    }

    /**
     * Tells what is asked of a job, or what was told of the same record before; gives the exit status.
     *
     * @param doubts where what must not stay unsaid is told before, which hangs on more than the record; empty if nowhere
     * @param question all that was said to the command
     */
    public static int answer(
            Surroundings around,
            Path path,
            Optional<PrintStream> doubts,
            List<String> question,
            ToIntBiFunction<OpenedJob, PrintStream> asked) {
        JobFolder folder = new JobFolder(around.disk(), around.job(path));
        KeptFolds folds = new KeptFolds(around.derived());
        KeptAnswers answers = new KeptAnswers(folds.files());
        List<String> inLanguage = Stream.concat(
                        Stream.of(around.words().locale().toLanguageTag()), question.stream())
                .toList();
        Job job = job(around, folder, folds);
        around.words().say(job.notices()).forEach(around.err()::println);
        KeptAnswers.Answer answer = answers.find(job, inLanguage).orElseGet(() -> {
            OpenedJob opened = read(around, folder, job, folds);
            KeptAnswers.Answer told = KeptAnswers.Answer.of(out -> asked.applyAsInt(opened, out));
            answers.keep(job, inLanguage, told);
            return told;
        });
        doubts.ifPresent(to -> doubts(folder, job.journal(), around.words()).forEach(to::println));
        around.out().print(answer.out());
        return answer.status();
    }

    private static OpenedJob read(Surroundings around, JobFolder folder, Job job, KeptFolds folds) {
        Progress patience = new Patience(around, "wait.stations");
        return Waiting.during(around, "wait.open", () -> of(around, folder, job, patience, folds));
    }

    /** Reads a job that is then written to; its writer tells what a person should know. */
    public static OpenedJob readToWrite(Surroundings around, Path path, RecordKind kind) {
        requireFolder(around, path);
        JobFolder folder = new JobFolder(around.disk(), around.path(path), kind);
        KeptFolds folds = new KeptFolds(around.derived());
        return of(around, folder, job(around, folder, folds), Progress.NONE, folds);
    }

    /** Refuses a packed job, to which nothing can be added. */
    public static void requireFolder(Surroundings around, Path path) {
        if (around.isPacked(path)) {
            throw Failure.of("stopped.openedJob.oneFileNotJobS", path);
        }
    }

    private static Job job(Surroundings around, JobFolder folder, KeptFolds folds) {
        JobFolder.Reading reading = Waiting.during(around, "wait.open", () -> folder.read(folds));
        if (reading instanceof JobFolder.Refused refused) {
            throw new Failure(refused.problem());
        }
        return ((JobFolder.Readable) reading).job();
    }

    /** The job as it was read from this folder. */
    public static OpenedJob of(Surroundings around, JobFolder folder, Job job) {
        return of(around, folder, job, Progress.NONE);
    }

    /** The same; {@code progress} watches what its coverage takes. */
    public static OpenedJob of(Surroundings around, JobFolder folder, Job job, Progress progress) {
        return of(around, folder, job, progress, new KeptFolds(around.derived()));
    }

    /** The job as it was after so many entries. */
    public OpenedJob upTo(int entries) {
        return of(folder, job.upTo(entries), progress, derived, new KeptFolds(DerivedFiles.none()));
    }

    /**
     * Remembers how far the record went on, for whoever reads it next.
     *
     * @param head hash of its last line
     * @param after the fold of all its entries
     */
    public void wentOn(Surroundings around, String head, Fold after) {
        around.seenHeads().saw(journal().firstHash(), after.entries().size(), head);
        folds.keep(journal().firstHash(), head, after);
    }

    private static OpenedJob of(Surroundings around, JobFolder folder, Job job, Progress progress, KeptFolds folds) {
        Journal journal = job.journal();
        around.seenHeads().saw(journal.firstHash(), journal.lines().size(), journal.head());
        return of(folder, job, progress, folds.files(), folds);
    }

    private static OpenedJob of(JobFolder folder, Job job, Progress progress, DerivedFiles derived, KeptFolds folds) {
        if (!(EngineJsonReader.read(
                        "model/" + EngineJsonReader.FILE, job.model().bytes())
                instanceof Reading.Read read)) {
            throw Failure.of("stopped.openedJob.itsFrozenEngineModelCannot", folder.path());
        }
        List<JournalLine> lines = job.journal().lines();
        Fold fold = folds.from(job.journal(), engine(folder, job, read.model()));
        for (JournalLine line : lines.subList(fold.entries().size(), lines.size())) {
            try {
                fold = fold.with(logged(line.k(), line.entry()));
            } catch (Refusal refusal) {
                throw Failure.of(
                        "stopped.openedJob.entryDoesNotFollowFrom",
                        folder.path(),
                        line.k(),
                        OneLine.quoted(line.text()),
                        refusal.why());
            }
        }
        folds.keep(job.journal().firstHash(), job.journal().head(), fold);
        return new OpenedJob(folder, job, fold, progress, derived, folds);
    }

    /** The engine with what is known of clearances at its stations. */
    private static Engine engine(JobFolder folder, Job job, EngineModel model) {
        try {
            ViewScene scene = scene(job, model);
            return Engine.of(model)
                    .withClearances(
                            Clearances.of(scene),
                            settings(job.journal().beginning())
                                    .number("clearance")
                                    .orElse(0))
                    .withAims(new StationAims(scene));
        } catch (UnusableShape unusable) {
            throw Failure.of("stopped.openedJob.itsFrozenEngineModelGives", folder.path(), unusable.told());
        }
    }

    /** The engine as sight is computed with. */
    public ViewScene scene() {
        return scene(job, engine().model());
    }

    private static ViewScene scene(Job job, EngineModel model) {
        return new ViewScene(model, meshes(job), Map.of());
    }

    /** The contents of the frozen model's mesh files, by name. */
    public static Map<String, byte[]> meshes(Job job) {
        Map<String, byte[]> meshes = new TreeMap<>();
        job.meshes().forEach((name, file) -> meshes.put(name, file.bytes()));
        return meshes;
    }

    private static Settings settings(Beginning beginning) {
        return new Settings(beginning.settings());
    }

    /** An entry of the record as the computation takes it. */
    static Logged logged(int number, Addition entry) {
        return new Logged(number, entry.at(), entry.by(), entry.live(), entry.text(), entry.means(), entry.written());
    }

    /** What must not stay unsaid where this record is shown: see {@link JobFolder#doubts}. */
    public List<String> doubts(Words words) {
        return doubts(folder, journal(), words);
    }

    private static List<String> doubts(JobFolder folder, Journal journal, Words words) {
        return Stream.concat(folder.doubts(journal).stream(), reviewDoubts(folder, journal))
                .map(words::say)
                .map(OneLine::of)
                .toList();
    }

    /** What is wrong with the review, or with the record since it was reviewed. */
    private static Stream<RecordProblem> reviewDoubts(JobFolder folder, Journal journal) {
        ReviewFile.Reading reading = folder.review().read(journal.firstHash());
        return reading instanceof ReviewFile.Readable readable
                ? Stream.concat(readable.review().unbound(journal).stream(), readable.review().tornLine().stream())
                : Stream.of(((ReviewFile.Refused) reading).problem());
    }

    /** What reviewers said of it so far; empty if that cannot be read, which {@link #doubts} tells. */
    public Optional<Review> reviewed() {
        return readReview() instanceof ReviewFile.Readable readable ? Optional.of(readable.review()) : Optional.empty();
    }

    /**
     * What reviewers said of it so far.
     *
     * @throws Failure if that cannot be read
     */
    public Review review() {
        ReviewFile.Reading reading = readReview();
        if (reading instanceof ReviewFile.Refused refused) {
            throw new Failure(refused.problem());
        }
        return ((ReviewFile.Readable) reading).review();
    }

    private ReviewFile.Reading readReview() {
        return folder.review().read(journal().firstHash());
    }

    public Journal journal() {
        return job.journal();
    }

    public Beginning beginning() {
        return journal().beginning();
    }

    /** The limits that were frozen into the job, if there are any. */
    public Optional<Limits> limits() {
        return job.limits().map(file -> {
            if (LimitsReader.read("limits/limits.json", file.bytes(), Optional.of(engine()))
                    instanceof LimitsReading.Read read) {
                return read.limits();
            }
            throw Failure.of("stopped.openedJob.itsFrozenLimitsCannotBe", folder.path());
        });
    }

    /** The record that this one is compared with, if there is one. */
    public Optional<OpenedJob> previous() {
        return job.previous().map(then -> of(folder, then, progress, derived, new KeptFolds(derived)));
    }

    /** What the limits say of each finding; nothing without limits. */
    public List<Judgement> judged(Coverage coverage) {
        return limits().map(known -> Judging.of(known, fold, coverage)).orElse(List.of());
    }

    /** Everything that is open. */
    public ClosingList closing(Coverage coverage) {
        return ClosingList.of(fold, coverage, limits(), judged(coverage), beside(review().remarks()));
    }

    /** What it holds beside its entries, with what reviewers said of it. */
    public Beside beside(List<ReviewRemark> review) {
        return new Beside(JobPhoto.named(journal().lines()), previous().map(OpenedJob::fold), review);
    }

    /** Its pictures, with what is needed to measure in them. */
    public Album album() {
        return new Album(
                folder.path(),
                fold,
                scene(job, engine().model()),
                JobPhoto.of(fold, journal().lines()));
    }

    /** What steps cost in this job. */
    public Prices prices() {
        return Prices.of(settings(beginning()));
    }

    public Engine engine() {
        return fold.situation().engine();
    }

    /** The coverage that goes on from this job to any later fold of it; computed when it is first asked for. */
    public Function<Fold, Coverage> coverageLater() {
        AtomicReference<Coverage> computed = new AtomicReference<>();
        return later -> {
            if (computed.get() == null) {
                computed.set(coverage());
            }
            return computed.get().after(later.situation());
        };
    }

    public Coverage coverage() {
        Settings settings = settings(beginning());
        Sights sights = new Sights(
                scene(job, engine().model()),
                journal().modelHash() + journal().meshHashes(),
                Criteria.of(settings),
                KeptSights.ofStations(derived),
                progress);
        return Coverage.of(fold.situation(), settings, sights, KeptSights.ofCells(derived));
    }
}
