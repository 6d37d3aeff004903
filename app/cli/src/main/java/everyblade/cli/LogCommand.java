package everyblade.cli;

import everyblade.core.coverage.Coverage;
import everyblade.core.entry.Refusal;
import everyblade.core.turning.Fold;
import everyblade.fact.Keyed;
import everyblade.record.Addition;
import everyblade.record.JournalWriter;
import everyblade.record.RecordKind;
import everyblade.session.around.Failure;
import everyblade.session.around.OneLine;
import everyblade.session.around.Surroundings;
import everyblade.session.drill.DrillRecord;
import everyblade.session.job.OpenedJob;
import everyblade.session.job.Pictures;
import everyblade.session.job.Speech;
import everyblade.session.job.Writing;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Appends entries to a job, all or none of them, or one by one as they are typed. */
@Command(name = "log", description = "${bundle:help.log}")
final class LogCommand implements Callable<Integer> {

    private static final String STANDARD_INPUT = "-";

    private final Surroundings around;
    private final RecordKind kind;

    @Parameters(index = "0", paramLabel = "JOB", description = "${bundle:help.job}")
    private Path job;

    @Parameters(index = "1..*", arity = "0..*", paramLabel = "ENTRY", description = "${bundle:help.log.entry}")
    private List<String> entries = List.of();

    @Option(names = "--file", paramLabel = "F", description = "${bundle:help.log.file}")
    private Path file;

    @Option(names = "--follow", description = "${bundle:help.log.follow}")
    private boolean follow;

    @Option(names = "--at", paramLabel = "TIME", description = "${bundle:help.log.at}")
    private String at;

    @Option(names = "--by", paramLabel = "NAME", description = "${bundle:help.log.by}")
    private String by;

    @Option(names = "--undated", description = "${bundle:help.log.undated}")
    private boolean undated;

    /** @param kind of record that it adds to */
    LogCommand(Surroundings around, RecordKind kind) {
        this.around = around;
        this.kind = kind;
    }

    @Override
    public Integer call() {
        int sources = (entries.isEmpty() ? 0 : 1) + (file == null ? 0 : 1) + (follow ? 1 : 0);
        if (sources != 1) {
            throw Failure.of(
                    "stopped.log.logGiveEntriesOrF",
                    new Keyed(sources == 0 ? "wrongUse.noEntry" : "wrongUse.twoWays", List.of()));
        }
        if (follow && at != null) {
            throw Failure.of("stopped.log.logWhatFollowedHappensNow");
        }
        Optional<String> speaker = Optional.ofNullable(by).map(name -> Given.words("--by", name));
        Optional<Instant> time = Optional.ofNullable(at).map(text -> Given.time("--at", text));
        OpenedJob opened = OpenedJob.readToWrite(around, job, kind);
        if (kind == RecordKind.DRILL) {
            DrillRecord.requireGoingOn(around, job);
        }
        if (follow) {
            return Following.of(around, opened, speaker).run();
        }
        return keep(opened, lines(), speaker, time);
    }

    private List<TypedLine> lines() {
        try {
            if (file != null) {
                return TypedLine.ofFile(source(), Files.readAllBytes(around.path(file)));
            }
            if (entries.equals(List.of(STANDARD_INPUT))) {
                return TypedLine.ofFile(source(), around.in().readAllBytes());
            }
            return entries.stream().map(TypedLine::ofArgument).toList();
        } catch (IOException failure) {
            throw Failure.of("stopped.log.cannotBeReadCheckThat", source());
        }
    }

    /** What is read, for messages. */
    private Object source() {
        return file != null ? file : new Keyed("stopped.log.standardInput", List.of());
    }

    /**
     * Entries that may be kept. Where everything stood after each of them is not among it: of a long file that would be
     * the most by far.
     *
     * @param additions one for each line
     * @param remarks what is to be said of each
     * @param after all of them
     */
    private record Judged(List<Addition> additions, List<List<String>> remarks, Fold after) {

        /** The number of one of them, counted from 0. */
        int number(int index) {
            return after.entries().size() - additions.size() + index + 1;
        }
    }

    /** Judges all before anything is opened for writing, so a refusal leaves no trace. */
    private int keep(OpenedJob opened, List<TypedLine> lines, Optional<String> speaker, Optional<Instant> time) {
        Judged said = judged(opened, lines, speaker, time);
        if (said.additions().isEmpty()) {
            return Commands.FINE;
        }
        try (JournalWriter writer = Writing.open(around, opened, speaker)) {
            if (!writer.opened().journal().head().equals(opened.journal().head())) {
                said = judged(OpenedJob.of(around, opened.folder(), writer.opened()), lines, speaker, time);
            }
            List<String> notes = keepPictures(new Pictures(writer, opened.folder(), places()), said, lines);
            if (writer.append(said.additions()) instanceof JournalWriter.NotKept notKept) {
                throw new Failure(notKept.problem());
            }
            for (int i = 0; i < said.additions().size(); i++) {
                around.out().println("kept " + said.number(i));
                said.remarks().get(i).forEach(around.err()::println);
            }
            notes.forEach(around.err()::println);
            around.out().flush();
            opened.wentOn(around, writer.head(), said.after());
            return Commands.FINE;
        }
    }

    private List<String> keepPictures(Pictures pictures, Judged said, List<TypedLine> lines) {
        List<String> notes = new ArrayList<>();
        for (int i = 0; i < said.additions().size(); i++) {
            try {
                pictures.keep(said.number(i), said.additions().get(i))
                        .map(note -> OneLine.of(around.words().say(note)))
                        .ifPresent(notes::add);
            } catch (Refusal refusal) {
                throw refused(lines.get(i), refusal);
            }
        }
        return notes;
    }

    private List<Path> places() {
        List<Path> places = new ArrayList<>();
        Optional.ofNullable(file).map(Path::getParent).map(around::path).ifPresent(places::add);
        places.add(around.folder());
        return places;
    }

    private Judged judged(OpenedJob opened, List<TypedLine> lines, Optional<String> speaker, Optional<Instant> time) {
        List<Addition> additions = new ArrayList<>();
        List<List<String>> remarks = new ArrayList<>();
        Speech speech = Speech.after(opened);
        Instant now = around.clock().instant();
        Function<Fold, Coverage> coverage = opened.coverageLater();
        for (TypedLine line : lines) {
            try {
                Fold before = speech.fold();
                Speech.Said one = speech.with(
                        line.text(),
                        line.at().or(() -> time).orElse(now),
                        now,
                        speaker,
                        false,
                        () -> coverage.apply(before));
                additions.add(undated ? one.addition().undated() : one.addition());
                remarks.add(one.remarks(around.words()));
                speech = one.after();
            } catch (Refusal refusal) {
                throw refused(line, refusal);
            }
        }
        return new Judged(additions, remarks, speech.fold());
    }

    private Failure refused(TypedLine line, Refusal refusal) {
        int column = line.column() - 1 + refusal.column();
        String quoted = OneLine.quoted(line.text().strip());
        boolean isArgument = file == null && !entries.equals(List.of(STANDARD_INPUT));
        return isArgument
                ? Failure.of("stopped.log.refusedArgument", quoted, column, refusal.why())
                : Failure.of("stopped.log.refusedLine", source(), line.number(), column, quoted, refusal.why());
    }
}
