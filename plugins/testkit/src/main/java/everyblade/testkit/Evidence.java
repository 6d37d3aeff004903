package everyblade.testkit;

import everyblade.core.check.Flaw;
import everyblade.core.check.ModelCheck;
import everyblade.core.check.SightCheck;
import everyblade.core.sight.Progress;
import everyblade.json.EngineJsonReader;
import everyblade.json.EngineJsonWriter;
import everyblade.json.Problem;
import everyblade.json.Reading;
import everyblade.spi.EngineModel;
import everyblade.spi.EngineModelSource;
import everyblade.words.Words;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What the rules judge by.
 *
 * @param told what reading and checking the model say
 * @param model as a job would keep it; empty if it was refused
 * @param handed the same, as it was handed over each time it was asked for
 * @param files contents of its mesh files, by name
 * @param sight whether what its views see may be computed, which takes a while
 */
public record Evidence(
        List<Told> told,
        Optional<EngineModel> model,
        List<EngineModel> handed,
        Map<String, byte[]> files,
        boolean sight) {

    private static final Words ENGLISH = Words.of(Locale.ENGLISH);

    /**
     * One thing that was said of a model.
     *
     * @param code as in the table of all codes
     * @param line for people
     */
    public record Told(String code, String line) {}

    public Evidence {
        told = List.copyOf(told);
        handed = List.copyOf(handed);
        files = Map.copyOf(files);
    }

    /** Of each model of a source of code, read, checked, and asked for twice. */
    static List<Evidence> of(EngineModelSource source) throws IOException {
        List<EngineModel> first = source.models();
        List<EngineModel> second = source.models();
        return first.stream()
                .map(model -> {
                    List<EngineModel> handed = Stream.of(List.of(model), second)
                            .flatMap(List::stream)
                            .filter(one -> one.id().equals(model.id()))
                            .toList();
                    return of(reading(model), handed, Map.of());
                })
                .toList();
    }

    private static Reading reading(EngineModel model) {
        byte[] text;
        try {
            text = text(model);
        } catch (NullPointerException missing) {
            return new Reading.Unreadable(List.of(Problem.ofWhole(
                    "plugin-failed",
                    "the model " + model.id(),
                    "it cannot be written as " + EngineJsonReader.FILE,
                    "something in it is null: " + missing.getMessage(),
                    "state it, or leave it empty by Optional.empty()")));
        }
        return EngineJsonReader.read(EngineJsonReader.FILE, text);
    }

    /** Of what was read and is checked now, views included. */
    static Evidence of(Reading reading, List<EngineModel> handed, Map<String, byte[]> files) {
        if (reading instanceof Reading.Unreadable unreadable) {
            return new Evidence(told(unreadable.problems()), Optional.empty(), handed, files, false);
        }
        Reading.Read read = (Reading.Read) reading;
        List<Told> told = new ArrayList<>(told(read.warnings()));
        Stream.concat(
                        ModelCheck.of(read.model(), files).stream(),
                        SightCheck.of(read.model(), files, Progress.NONE).stream())
                .forEach(flaw -> told.add(told(flaw)));
        return new Evidence(told, Optional.of(read.model()), handed, files, true);
    }

    /** The {@code engine.json} that says this model. */
    static byte[] text(EngineModel model) {
        return EngineJsonWriter.write(model).getBytes(StandardCharsets.UTF_8);
    }

    /** What problems say. */
    public static List<Told> told(List<Problem> problems) {
        return problems.stream()
                .map(problem -> new Told(problem.code(), problem.toString()))
                .toList();
    }

    private static Told told(Flaw flaw) {
        return new Told(
                flaw.kind().code(),
                ENGLISH.say(flaw.what()) + ", " + ENGLISH.say(flaw.why()) + ", " + ENGLISH.say(flaw.mend()));
    }
}
