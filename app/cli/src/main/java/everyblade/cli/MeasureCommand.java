package everyblade.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import everyblade.core.entry.Refusal;
import everyblade.core.finding.Measured;
import everyblade.core.finding.measure.PixelLine;
import everyblade.fact.Keyed;
import everyblade.session.around.Failure;
import everyblade.session.around.OneLine;
import everyblade.session.around.Surroundings;
import everyblade.session.job.OpenedJob;
import everyblade.session.photo.Album;
import everyblade.session.photo.JobPhoto;
import everyblade.session.photo.KnownLength;
import everyblade.session.photo.PhotoBytes;
import everyblade.session.photo.PhotoImage;
import everyblade.session.photo.PictureSize;
import everyblade.session.photo.PictureSize.Surface;
import everyblade.session.photo.Subject;
import everyblade.spi.Row;
import everyblade.words.Words;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Measures a length in a picture of a job. */
@Command(name = "measure", description = "${bundle:help.measure}")
final class MeasureCommand implements Callable<Integer> {

    private final Surroundings around;

    @Parameters(index = "0", paramLabel = "JOB", description = "${bundle:help.job}")
    private Path job;

    @Parameters(index = "1", paramLabel = "PICTURE", description = "${bundle:help.measure.picture}")
    private String picture;

    @Option(
            names = "--known",
            required = true,
            paramLabel = "X,Y,X,Y=LENGTH",
            description = "${bundle:help.measure.known}")
    private String known;

    @Option(names = "--size", required = true, paramLabel = "X,Y,X,Y", description = "${bundle:help.measure.size}")
    private String size;

    @Option(names = "--of", paramLabel = "N", description = "${bundle:help.measure.of}")
    private String of;

    @Option(names = "--zone", paramLabel = "ZONE", description = "${bundle:help.measure.zone}")
    private String zone;

    @Option(
            names = "--pointing",
            paramLabel = "PX",
            defaultValue = "1",
            description = "${bundle:help.measure.pointing}")
    private String pointing;

    @Option(names = "--json", description = "${bundle:help.json}")
    private boolean json;

    MeasureCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() {
        int equals = known.indexOf('=');
        if (equals < 0) {
            throw Failure.of("stopped.measure.doesNotSayHowLong", OneLine.quoted(known));
        }
        Measured length = KnownLength.of(known.substring(equals + 1))
                .orElseThrow(() -> Failure.of("stopped.measure.whatStandsAfterNoLength", OneLine.quoted(known)));
        Album album = OpenedJob.read(around, job).album();
        JobPhoto photo = album.find(picture).orElseThrow(() -> noPicture(album));
        if (PhotoBytes.of(album.folder(), photo.kept()).isEmpty()) {
            warn(around.words().say("measure.lostPicture", photo.kept().file()));
        }
        PixelLine from = line("--known", known.substring(0, equals), photo);
        PixelLine line = line("--size", size, photo);
        double exactly = Given.number("--pointing", pointing, "px").doubleValue();
        if (!(exactly > 0)) {
            throw Failure.of("stopped.measure.noHandExactWriteLike", pointing);
        }
        Optional<Subject> subject = subject(photo);
        Surface surface = subject.map(shown -> Surface.of(album, photo, shown)).orElse(Surface.UNKNOWN);
        PictureSize measured = PictureSize.of(line, from, length, surface, exactly);
        if (json) {
            around.out().println(JsonText.of(json(photo, subject, measured)));
        } else {
            tell(photo, subject, measured);
        }
        return Commands.FINE;
    }

    private Failure noPicture(Album album) {
        List<String> there = album.photos().stream()
                .map(photo -> photo.entry() + " (" + photo.kept().file() + ")")
                .toList();
        return Failure.of(
                "stopped.measure.noEntryNamesPictureThat",
                job,
                OneLine.quoted(picture),
                new Keyed("stopped.measure.there", List.of(there)));
    }

    private Optional<Subject> subject(JobPhoto photo) {
        Optional<Integer> airfoil = Optional.ofNullable(of)
                .map(number -> Given.number("--of", number, "").intValue());
        try {
            Optional<Subject> subject = Subject.of(photo, airfoil, Optional.ofNullable(zone));
            if (subject.isEmpty() && airfoil.isPresent()) {
                throw Failure.of(
                        "stopped.measure.line",
                        of,
                        new Keyed(
                                "stopped.measure.rowHas",
                                List.of(photo.place().row().map(Row::count))));
            }
            return subject;
        } catch (Refusal refusal) {
            throw Failure.of("stopped.measure.line2", OneLine.quoted(String.valueOf(zone)), refusal.why());
        }
    }

    private static PixelLine line(String option, String text, JobPhoto photo) {
        String[] numbers = text.strip().split("\\s*,\\s*", -1);
        if (numbers.length != 4) {
            throw Failure.of("stopped.measure.twoPointsAreFourNumbers", option, OneLine.quoted(text));
        }
        double[] at = Stream.of(numbers)
                .mapToDouble(number -> Given.number(option, number, "").doubleValue())
                .toArray();
        int width = PhotoImage.width(photo.kept().facts());
        int height = PhotoImage.height(photo.kept().facts());
        for (int i = 0; i < at.length; i++) {
            if (!(at[i] >= 0 && at[i] <= (i % 2 == 0 ? width : height))) {
                throw Failure.of(
                        "stopped.measure.pointLiesOutsidePictureWhich", option, OneLine.quoted(text), width, height);
            }
        }
        if (at[0] == at[2] && at[1] == at[3]) {
            throw Failure.of("stopped.measure.bothPointsAreSameGive", option, OneLine.quoted(text));
        }
        return new PixelLine(at[0], at[1], at[2], at[3]);
    }

    private void tell(JobPhoto photo, Optional<Subject> subject, PictureSize measured) {
        Words words = around.words();
        say(words.say("measure.size", photo.kept().file(), photo.entry(), measured.text()));
        subject.ifPresent(shown -> say(words.say(
                "measure.subject",
                words.airfoil(shown.row()),
                shown.airfoil(),
                shown.row().name(),
                shown.row().id(),
                shown.zone())));
        measured.seen().ifPresent(seen -> say(around.words().say(PictureSize.seen(seen))));
        around.words().say(measured.shares()).forEach(this::say);
        words.say(measured.warnings()).forEach(this::warn);
    }

    private void warn(String line) {
        around.err().println(OneLine.of(around.words().say("measure.warning", line)));
    }

    private void say(String line) {
        around.out().println(OneLine.of(line));
    }

    private ObjectNode json(JobPhoto photo, Optional<Subject> subject, PictureSize measured) {
        ObjectNode json = JsonText.object();
        json.put("entry", photo.entry());
        json.put("file", photo.kept().file());
        json.put("row", subject.map(shown -> shown.row().id()).orElse(null));
        json.put("airfoil", subject.map(Subject::airfoil).orElse(null));
        json.put("zone", subject.map(Subject::zone).orElse(null));
        json.put("size", measured.size().value().mm());
        json.put("plusMinus", measured.size().plusMinus().orElseThrow().mm());
        json.put(
                "incidence",
                measured.seen().map(seen -> rounded(seen.incidence())).orElse(null));
        json.put(
                "distance",
                measured.seen().map(seen -> rounded(seen.distance())).orElse(null));
        json.put("chord", measured.chord().map(chord -> chord.mm()).orElse(null));
        json.put("span", measured.span().map(span -> span.mm()).orElse(null));
        ObjectNode budget = json.putObject("budget");
        measured.budget().forEach((source, share) -> budget.put(JsonText.token(source), share));
        ArrayNode warnings = json.putArray("warnings");
        around.words().say(measured.warnings()).forEach(warnings::add);
        return json;
    }

    private static double rounded(double value) {
        return Math.round(value * 100) / 100.0;
    }
}
