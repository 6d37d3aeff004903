package everyblade.session;

import everyblade.core.entry.Refusal;
import everyblade.core.finding.closing.Beside;
import everyblade.core.finding.photo.Taken;
import everyblade.core.finding.review.ReviewRemark;
import everyblade.core.sight.Progress;
import everyblade.core.turning.Logged;
import everyblade.fact.Fact;
import everyblade.record.Addition;
import everyblade.record.Frozen;
import everyblade.record.Job;
import everyblade.record.JobFolder;
import everyblade.record.JournalWriter;
import everyblade.record.KeepingProblem;
import everyblade.record.PreviousRecord;
import everyblade.record.RecordKind;
import everyblade.record.RecordProblem;
import everyblade.record.ReviewFile;
import everyblade.session.around.Failure;
import everyblade.session.around.Surroundings;
import everyblade.session.job.OpenedJob;
import everyblade.session.job.Pictures;
import everyblade.session.job.Speech;
import everyblade.session.photo.Album;
import everyblade.session.photo.JobPhoto;
import everyblade.words.Words;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A job open in a window: its state is always that of the entries said so far, and an entry is told as safe only when it
 * is forced to disk. For one thread at a time, which may have to wait for the disk.
 */
public final class Session implements AutoCloseable {

    private final Surroundings around;
    private final List<Path> pictures;
    private final Progress progress;
    private JobFolder folder;
    private Job opened;
    private Optional<JournalWriter> writer;
    private JobState state;
    private final List<String> notices = new ArrayList<>();

    private Session(Surroundings around, List<Path> pictures, Progress progress, JobFolder folder, Job opened) {
        this.progress = progress;
        this.around = around;
        this.pictures = pictures;
        this.folder = folder;
        this.opened = opened;
        this.writer = Optional.empty();
    }

    /**
     * Opens a job to be worked on; if somebody else is writing, it is opened for reading and says who.
     *
     * @param pictures folders in which a picture named in an entry may be
     * @param progress of computing what stations show
     * @throws Failure if it cannot be read
     */
    public static Session open(Surroundings around, Path path, List<Path> pictures, Progress progress) {
        return open(around, path, RecordKind.JOB, pictures, progress);
    }

    /**
     * Opens a record of this kind to be worked on.
     *
     * @throws Failure if it cannot be read, or is of the other kind
     */
    public static Session open(
            Surroundings around, Path path, RecordKind kind, List<Path> pictures, Progress progress) {
        Session session = read(around, path, kind, pictures, progress);
        session.startWriting();
        return session;
    }

    /**
     * Opens a job to be looked at; nothing in its folder is touched.
     *
     * @throws Failure if it cannot be read
     */
    public static Session review(Surroundings around, Path path, String reason, Progress progress) {
        Session session = read(around, path, RecordKind.JOB, List.of(), progress);
        session.show(new Keeping.ReadOnly(reason, Optional.empty(), false));
        return session;
    }

    private static Session read(
            Surroundings around, Path path, RecordKind kind, List<Path> pictures, Progress progress) {
        JobFolder folder = new JobFolder(around.disk(), around.job(path), kind);
        Session session = new Session(around, pictures, progress, folder, job(folder));
        session.notices.addAll(around.words().say(session.opened.notices()));
        return session;
    }

    private static Job job(JobFolder folder) {
        JobFolder.Reading reading = folder.read();
        if (reading instanceof JobFolder.Refused refused) {
            throw new Failure(refused.problem());
        }
        return ((JobFolder.Readable) reading).job();
    }

    private String say(RecordProblem problem) {
        return around.words().say(problem);
    }

    /** Becomes the job's writer, or its reader if that cannot be. */
    private void startWriting() {
        OpenedJob job = read();
        JobFolder.Writing writing = folder.write(Speech.after(job).speaker(), now(), Optional.of(opened));
        if (writing instanceof JobFolder.Writable writable) {
            writer = Optional.of(writable.writer());
            opened = writable.writer().opened();
            notices.clear();
            notices.addAll(around.words().say(writable.writer().notices()));
            boolean same = opened.journal().head().equals(job.journal().head());
            show(same ? job : read(), new Keeping.OnDisk());
        } else if (writing instanceof JobFolder.InUse inUse) {
            show(
                    job,
                    new Keeping.ReadOnly(
                            say(inUse.problem()), Optional.of(around.words().say(inUse.holder())), true));
        } else {
            show(job, new Keeping.ReadOnly(say(((JobFolder.Refused) writing).problem()), Optional.empty(), true));
        }
    }

    /** Everything anew from what was read. */
    private void show(Keeping keeping) {
        show(read(), keeping);
    }

    private OpenedJob read() {
        return OpenedJob.of(around, folder, opened, progress);
    }

    private void show(OpenedJob job, Keeping keeping) {
        state = JobState.of(job, keeping, this::notice);
    }

    private void notice(String line) {
        if (!notices.contains(line)) {
            notices.add(line);
        }
    }

    /** What reviewers have said by now, for they do so while others work on the job. */
    private List<ReviewRemark> reviewNow() {
        return folder.review().read(opened.journal().firstHash()) instanceof ReviewFile.Readable readable
                ? readable.review().remarks()
                : state.review();
    }

    /** The job as it stands. */
    public JobState state() {
        return state;
    }

    /** The job's pictures; those only named in memory are not among them. */
    public Album album() {
        return OpenedJob.of(around, folder, job(folder), Progress.NONE).album();
    }

    /** The contents of the mesh files of its frozen model, by name. */
    public Map<String, byte[]> meshes() {
        return OpenedJob.meshes(opened);
    }

    /** What a person should be told about the opening, one line each. */
    public List<String> notices() {
        return List.copyOf(notices);
    }

    /** Says an entry, or asks about it if it is doubtful and not yet said to be meant. */
    public Answer enter(String line, boolean meant, Words words) {
        List<String> doubts = meant || !state.open() ? List.of() : doubts(line, words);
        return doubts.isEmpty() ? say(line) : new Answer.Asked(line, doubts);
    }

    /** What is asked about a line; nothing if it would be refused anyway. */
    private List<String> doubts(String line, Words words) {
        try {
            return Preview.asked(state.speech().with(line, now(), Optional.empty(), true, state::coverage), words);
        } catch (Refusal refused) {
            return List.of();
        }
    }

    /** Says an entry. */
    public Answer say(String line) {
        if (state.keeping() instanceof Keeping.ReadOnly readOnly) {
            return new Answer.Refused(line, 1, new KeepingProblem.NotWritten(readOnly.reason()));
        }
        try {
            Speech.Said said = state.speech().with(line, now(), Optional.empty(), true, state::coverage);
            if (state.keeping() instanceof Keeping.InMemory inMemory) {
                return remember(said, inMemory.problem(), inMemory.unsaved());
            }
            return keep(said);
        } catch (Refusal refusal) {
            return new Answer.Refused(line, refusal.column(), refusal.why());
        }
    }

    private Answer keep(Speech.Said said) throws Refusal {
        JournalWriter open = writer.orElseThrow();
        List<Fact> warnings = new ArrayList<>(said.warnings());
        new Pictures(open, folder, pictures).keep(said).ifPresent(warnings::add);
        JournalWriter.Appended appended = open.append(List.of(said.addition()));
        if (appended instanceof JournalWriter.NotKept notKept) {
            if (notKept.canGoOn()) {
                throw new Refusal(1, notKept.problem());
            }
            return remember(said, say(notKept.problem()), List.of());
        }
        state = state.after(said.after(), open.head(), reviewNow(), new Keeping.OnDisk())
                .with(((JournalWriter.Kept) appended).lines());
        return new Answer.Kept(said.number(), said.addition().text(), true, warnings);
    }

    private Answer remember(Speech.Said said, String problem, List<Addition> before) {
        List<Addition> unsaved = new ArrayList<>(before);
        unsaved.add(said.addition());
        state = state.after(said.after(), state.head(), state.review(), new Keeping.InMemory(problem, unsaved));
        return new Answer.Kept(said.number(), said.addition().text(), false, said.warnings());
    }

    /**
     * Tries the job's own disk again with what is only in memory.
     *
     * @return why it still cannot be kept; empty if all is safe
     */
    public Optional<String> saveAgain() {
        if (!(state.keeping() instanceof Keeping.InMemory inMemory)) {
            return Optional.empty();
        }
        writer.ifPresent(JournalWriter::close);
        writer = Optional.empty();
        JobFolder.Writing writing = folder.write(state.speech().speaker(), now());
        if (!(writing instanceof JobFolder.Writable writable)) {
            return Optional.of(say(
                    writing instanceof JobFolder.InUse inUse
                            ? inUse.problem()
                            : ((JobFolder.Refused) writing).problem()));
        }
        int stood = state.fold().entries().size() - inMemory.unsaved().size();
        return appendRest(writable.writer(), stood, folder);
    }

    /**
     * Makes a job folder elsewhere with all entries and pictures, and goes on there.
     *
     * @param place a folder that is not there yet
     * @return why it cannot be; empty if all is safe there
     */
    public Optional<String> saveElsewhere(Path place) {
        RecordKind kind = opened.drill().isPresent() ? RecordKind.DRILL : RecordKind.JOB;
        JobFolder other = new JobFolder(around.disk(), around.path(place), kind);
        Optional<RecordProblem> problem = start(other);
        if (problem.isPresent()) {
            return problem.map(this::say);
        }
        if (!(other.write(state.speech().speaker(), now()) instanceof JobFolder.Writable writable)) {
            return Optional.of(around.words().say("keeping.noWriting", place));
        }
        Optional<String> unsafe = new PictureCopy(around.disk(), folder.path(), around.words()).into(writable.writer());
        if (unsafe.isPresent()) {
            writable.writer().close();
            return unsafe;
        }
        return appendRest(writable.writer(), 0, other);
    }

    /** Starts the same job in another folder, with everything that is frozen into it. */
    private Optional<RecordProblem> start(JobFolder other) {
        Optional<PreviousRecord> previous = Optional.empty();
        if (opened.previous().isPresent()) {
            JobFolder.Copying copying =
                    new JobFolder(around.disk(), folder.path().resolve("previous")).copy();
            if (copying instanceof JobFolder.Refused refused) {
                return Optional.of(refused.problem());
            }
            previous = Optional.of(((JobFolder.Copied) copying).record());
        }
        return other.start(
                state.beginning(),
                new Frozen(opened.model(), opened.meshes(), opened.limits(), previous, opened.drill()));
    }

    /** Appends all entries that the writer's journal lacks, and goes on with that writer if that succeeds. */
    private Optional<String> appendRest(JournalWriter next, int atLeast, JobFolder place) {
        List<Addition> all =
                state.fold().entries().stream().map(Session::addition).toList();
        List<everyblade.record.JournalLine> there = next.opened().journal().lines();
        boolean same = there.size() >= atLeast && there.size() <= all.size();
        for (int i = 0; same && i < there.size(); i++) {
            Addition said = all.get(i);
            same = there.get(i).text().equals(said.text()) && there.get(i).at().equals(said.at());
        }
        if (!same) {
            next.close();
            return Optional.of(around.words().say("keeping.otherJournal", place.path()));
        }
        JournalWriter.Appended appended = next.append(all.subList(there.size(), all.size()));
        if (appended instanceof JournalWriter.NotKept notKept) {
            next.close();
            return Optional.of(say(notKept.problem()));
        }
        List<Taken.Named> pictures = new ArrayList<>(JobPhoto.named(there));
        pictures.addAll(JobPhoto.named(((JournalWriter.Kept) appended).lines()));
        writer.ifPresent(JournalWriter::close);
        writer = Optional.of(next);
        folder = place;
        opened = next.opened();
        state = new JobState(
                place.path(),
                state.beginning(),
                next.head(),
                state.speech(),
                state.coverage(),
                state.limits(),
                new Beside(pictures, state.beside().last(), state.review()),
                new Keeping.OnDisk());
        return Optional.empty();
    }

    private static Addition addition(Logged logged) {
        return new Addition(logged.text(), logged.entry(), logged.at(), logged.by(), logged.live(), logged.written());
    }

    /**
     * Looks whether whoever is writing has gone on; only for a job that is open for reading.
     *
     * @return whether there was anything new
     */
    public boolean refresh() {
        if (!(state.keeping() instanceof Keeping.ReadOnly)
                || !(folder.read() instanceof JobFolder.Readable readable)
                || readable.job().journal().head().equals(state.head())) {
            return false;
        }
        opened = readable.job();
        show(state.keeping());
        return true;
    }

    /** Takes the writing over if nothing stands against it any more. */
    public void tryWriting() {
        if (state.keeping() instanceof Keeping.ReadOnly readOnly && readOnly.mayChange()) {
            startWriting();
        }
    }

    private Instant now() {
        return around.clock().instant();
    }

    /** Gives the job free for other writers. */
    @Override
    public void close() {
        writer.ifPresent(JournalWriter::close);
    }
}
