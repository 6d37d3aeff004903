package everyblade.cli;

import everyblade.core.entry.EntryParser;
import everyblade.core.entry.Refusal;
import everyblade.core.entry.Settings;
import everyblade.core.entry.UnfitSetting;
import everyblade.core.surface.UnusableShape;
import everyblade.core.turning.Engine;
import everyblade.picture.MapWords;
import everyblade.picture.Terms;
import everyblade.record.Addition;
import everyblade.record.Beginning;
import everyblade.record.Frozen;
import everyblade.record.FrozenFile;
import everyblade.record.JobFolder;
import everyblade.record.JournalWriter;
import everyblade.record.PreviousRecord;
import everyblade.record.RecordKind;
import everyblade.record.RecordProblem;
import everyblade.record.limits.LimitsReading;
import everyblade.session.around.Failure;
import everyblade.session.around.OneLine;
import everyblade.session.around.Surroundings;
import everyblade.session.job.JobList;
import everyblade.session.job.OpenedJob;
import everyblade.session.job.VerdictText;
import everyblade.session.job.Writing;
import everyblade.session.model.Shelf;
import everyblade.spi.Row;
import everyblade.words.Words;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Makes a job folder. */
@Command(name = "start", description = "${bundle:help.start}")
final class StartCommand implements Callable<Integer> {

    private static final String LIMITS = "--limits ";

    static final String NO_DETAIL = "none";

    private final Surroundings around;
    private final Everyblade everyblade;

    @Parameters(index = "0", paramLabel = "JOB", description = "${bundle:help.folderToMake}")
    private Path job;

    @Option(names = "--model", required = true, paramLabel = "M", description = "${bundle:help.start.model}")
    private String model;

    @Option(names = "--serial", required = true, paramLabel = "S", description = "${bundle:help.start.serial}")
    private String serial;

    @Option(names = "--task", required = true, paramLabel = "TEXT", description = "${bundle:help.start.task}")
    private String task;

    @Option(names = "--by", required = true, paramLabel = "NAME", description = "${bundle:help.start.by}")
    private String by;

    @Option(names = "--limits", paramLabel = "F", description = "${bundle:help.start.limits}")
    private Path limits;

    @Option(names = "--previous", paramLabel = "JOB", description = "${bundle:help.start.previous}")
    private Path previous;

    @Option(names = "--detail", paramLabel = "MM", description = "${bundle:help.detailUnlessGiven}")
    private String detail;

    @Option(names = "--least-view", paramLabel = "S", description = "${bundle:help.start.leastView}")
    private String leastView;

    @Option(names = "--set", paramLabel = "NAME=VALUE", description = "${bundle:help.start.set}")
    private List<String> set = List.of();

    @Mixin
    private TaskOptions asked = new TaskOptions();

    @Option(names = "--plan", description = "${bundle:help.start.plan}")
    private boolean plan;

    @Option(names = "--at", paramLabel = "TIME", description = "${bundle:help.start.at}")
    private String at;

    StartCommand(Surroundings around, Everyblade everyblade) {
        this.around = around;
        this.everyblade = everyblade;
    }

    @Override
    public Integer call() {
        Settings settings = settings();
        Instant began = at == null ? around.clock().instant() : Given.time("--at", at);
        Shelf.Chosen chosen = everyblade.shelf().chooseByOption(model);
        List<String> asks = asked.task(chosen.model(), List.of()).entries(chosen.model());
        Optional<LimitsFile> judgedBy = Optional.ofNullable(limits)
                .map(file -> LimitsFile.read(around, LIMITS, file, Optional.of(Engine.of(chosen.model()))));
        judgedBy.ifPresent(file -> file.limits(LIMITS));
        Beginning beginning = new Beginning(
                began,
                Given.words("--by", by),
                chosen.model().id(),
                Given.words("--serial", serial),
                Given.words("--task", task),
                settings.values(),
                Optional.ofNullable(previous)
                        .map(folder ->
                                around.path(folder).toAbsolutePath().normalize().toString()));
        Frozen frozen = new Frozen(
                FrozenFile.of(chosen.bytes()),
                meshes(chosen),
                judgedBy.map(file -> FrozenFile.of(file.bytes())),
                Optional.ofNullable(previous).map(folder -> earlier(folder, beginning)));
        Optional<RecordProblem> problem = new JobFolder(around.disk(), around.path(job)).start(beginning, frozen);
        if (problem.isPresent()) {
            throw new Failure(problem.get());
        }
        keep(asks, began, beginning.by());
        chosen.warnings().forEach(around.err()::println);
        around.out()
                .println(around.words()
                        .say("start.started", job, chosen.model().name(), beginning.model(), beginning.serial()));
        chosen.model().notice().map(OneLine::of).ifPresent(around.out()::println);
        around.out().println(new Terms(settings, true, MapWords.of(around.words())).line());
        judgedBy.ifPresent(this::tell);
        if (plan) {
            JobList list = JobList.of(around, OpenedJob.read(around, job));
            OutlineText.of(list, around.words()).forEach(around.out()::println);
        }
        return Commands.FINE;
    }

    /** What the task asks for is the record's first entries. */
    private void keep(List<String> asks, Instant began, String name) {
        if (asks.isEmpty()) {
            return;
        }
        OpenedJob opened = OpenedJob.readToWrite(around, job, RecordKind.JOB);
        try (JournalWriter writer = Writing.open(around, opened, Optional.of(name))) {
            List<Addition> additions = new ArrayList<>();
            for (String ask : asks) {
                additions.add(new Addition(ask, EntryParser.parse(ask), began, name, false, Optional.empty()));
            }
            if (writer.append(additions) instanceof JournalWriter.NotKept notKept) {
                throw new Failure(notKept.problem());
            }
        } catch (Refusal refused) {
            throw new IllegalStateException("a task was refused: " + refused.getMessage(), refused);
        }
    }

    /** The files of shapes that the model names; refuses shapes that give no surface, since nothing could be computed. */
    private SortedMap<String, FrozenFile> meshes(Shelf.Chosen chosen) {
        try {
            for (Row row : chosen.model().rows()) {
                chosen.scene().airfoil(row);
            }
        } catch (UnusableShape unusable) {
            throw Failure.of("stopped.start.line", model, unusable.told());
        }
        TreeMap<String, FrozenFile> meshes = new TreeMap<>();
        chosen.meshes().forEach((name, bytes) -> meshes.put(name, FrozenFile.of(bytes)));
        return meshes;
    }

    private Settings settings() {
        Map<String, BigDecimal> given = new TreeMap<>();
        if (detail != null && !detail.equals(NO_DETAIL)) {
            given.put("detail", Given.number("--detail", detail, "mm"));
        }
        if (leastView != null) {
            given.put("least-view", Given.number("--least-view", leastView, "s"));
        }
        for (String setting : set) {
            int equals = setting.indexOf('=');
            if (equals < 1) {
                throw Failure.of("stopped.start.thereNoValueInWrite", setting);
            }
            String name = setting.substring(0, equals);
            if (given.put(name, Given.number("--set " + name, setting.substring(equals + 1), "")) != null) {
                throw Failure.of("stopped.start.givenTwiceGiveOnce", name);
            }
        }
        if (detail == null) {
            given.putIfAbsent("detail", Settings.DETAIL);
        }
        try {
            return Settings.of(given);
        } catch (UnfitSetting unfit) {
            throw Failure.of("stopped.start.line2", unfit.why());
        }
    }

    private void tell(LimitsFile file) {
        ((LimitsReading.Read) file.reading())
                .warnings().stream().map(Object::toString).map(OneLine::of).forEach(around.err()::println);
        around.out().println(OneLine.of(VerdictText.source(Optional.of(file.limits(LIMITS)), around.words())));
    }

    /** The record of an earlier job on the same engine, to be kept with this one. */
    private PreviousRecord earlier(Path folder, Beginning beginning) {
        OpenedJob last = OpenedJob.read(around, folder);
        if (!last.beginning().model().equals(beginning.model())
                || !last.beginning().serial().equals(beginning.serial())) {
            throw Failure.of(
                    "stopped.start.serialAndNotSameEngine",
                    folder,
                    last.beginning().model(),
                    last.beginning().serial());
        }
        if (last.folder().copy() instanceof JobFolder.Copied copied) {
            return copied.record();
        }
        throw Failure.of("stopped.start.changedWhileWasReadTry", folder);
    }

    /** The settings there are, a line each, for the help. */
    static String[] settingsHelp(Words words) {
        List<String> help = new ArrayList<>(List.of("", words.say("help.settings")));
        for (Settings.Setting setting : Settings.ALL) {
            String standard = setting.standard()
                    .map(value -> " " + words.say("help.standard", value))
                    .orElse("");
            help.add(String.format(Locale.ROOT, "  %-18s%s%s", setting.name(), words.say(setting.meaning()), standard));
        }
        return help.toArray(String[]::new);
    }
}
