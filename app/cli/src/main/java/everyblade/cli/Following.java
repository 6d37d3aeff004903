package everyblade.cli;

import everyblade.core.coverage.Coverage;
import everyblade.core.entry.LineProblem;
import everyblade.core.entry.Refusal;
import everyblade.core.turning.Fold;
import everyblade.fact.Fact;
import everyblade.record.JournalWriter;
import everyblade.session.around.Failure;
import everyblade.session.around.OneLine;
import everyblade.session.around.Surroundings;
import everyblade.session.job.OpenedJob;
import everyblade.session.job.Pictures;
import everyblade.session.job.Speech;
import everyblade.session.job.Writing;
import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Takes entries line by line as they happen, and answers each when it is on disk. */
final class Following {

    /** Longer lines are read to their end and refused; an entry is shorter by far. */
    private static final int LONGEST_LINE = 1 << 16;

    private final Surroundings around;
    private final OpenedJob job;
    private final JournalWriter writer;
    private final Optional<String> by;
    private final Function<Fold, Coverage> coverage;
    private Speech speech;

    private Following(Surroundings around, OpenedJob job, JournalWriter writer, Optional<String> by) {
        this.around = around;
        this.job = job;
        this.writer = writer;
        this.by = by;
        this.speech = Speech.after(job);
        this.coverage = job.coverageLater();
    }

    static Following of(Surroundings around, OpenedJob read, Optional<String> by) {
        JournalWriter writer = Writing.open(around, read, by);
        try {
            OpenedJob job = OpenedJob.of(around, read.folder(), writer.opened());
            return new Following(around, job, writer, by);
        } catch (RuntimeException failure) {
            writer.close();
            throw failure;
        }
    }

    /** Until standard input ends. */
    int run() {
        around.err().flush();
        try (writer) {
            InputStream in = new BufferedInputStream(around.in());
            int number = 1;
            for (Optional<byte[]> line = line(in); line.isPresent(); line = line(in)) {
                take(line.get(), number);
                number++;
                around.err().flush();
                if (around.out().checkError()) { // flushes
                    throw Failure.of(
                            "stopped.following.standardOutputClosedSoNothing",
                            speech.fold().entries().size());
                }
            }
            return Commands.FINE;
        } catch (IOException failure) {
            throw Failure.of(
                    "stopped.following.standardInputCannotBeRead",
                    speech.fold().entries().size());
        }
    }

    private void take(byte[] bytes, int number) {
        int column = 1;
        try {
            if (bytes.length > LONGEST_LINE) {
                throw new Refusal(1, LineProblem.Flaw.TOO_LONG);
            }
            Optional<TypedLine> typed = TypedLine.of(ByteBuffer.wrap(bytes), number);
            if (typed.isPresent()) {
                column = typed.get().column();
                keep(typed.get());
            }
        } catch (Refusal refusal) {
            around.out()
                    .println(OneLine.of("refused column " + (column - 1 + refusal.column()) + ": "
                            + around.words().say(refusal.why())));
        }
    }

    private void keep(TypedLine line) throws Refusal {
        Instant at = line.at().orElseGet(around.clock()::instant);
        Speech.Said said = speech.with(
                line.text(),
                at,
                around.clock().instant(),
                by,
                line.at().isEmpty(),
                () -> coverage.apply(speech.fold()));
        Optional<Fact> note = new Pictures(writer, job.folder(), List.of(around.folder())).keep(said);
        if (writer.append(List.of(said.addition())) instanceof JournalWriter.NotKept notKept) {
            if (notKept.canGoOn()) {
                throw new Refusal(1, notKept.problem());
            }
            throw new Failure(notKept.problem());
        }
        speech = said.after();
        around.out().println("kept " + said.number());
        said.remarks(around.words()).forEach(around.err()::println);
        note.ifPresent(one -> around.err().println(OneLine.of(around.words().say(one))));
    }

    /** The next line without its newline, empty at the end; of one that is too long, only as much as shows that. */
    private static Optional<byte[]> line(InputStream in) throws IOException {
        ByteArrayOutputStream line = new ByteArrayOutputStream();
        int next = in.read();
        if (next < 0) {
            return Optional.empty();
        }
        for (; next >= 0 && next != '\n'; next = in.read()) {
            if (line.size() <= LONGEST_LINE) {
                line.write(next);
            }
        }
        return Optional.of(line.toByteArray());
    }
}
