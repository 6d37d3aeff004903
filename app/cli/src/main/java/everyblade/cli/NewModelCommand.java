package everyblade.cli;

import everyblade.json.EngineJsonReader;
import everyblade.session.around.Failure;
import everyblade.session.around.Surroundings;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Makes a folder with an engine model to begin with. */
@Command(name = "new-model", description = "${bundle:help.newModel}")
final class NewModelCommand implements Callable<Integer> {

    private static final String README = "README.md";
    private static final String FALLBACK_ID = "my-engine";
    private static final int LONGEST_ID = 64;

    private final Surroundings around;

    @Parameters(index = "0", paramLabel = "FOLDER", description = "${bundle:help.newModel.folder}")
    private Path named;

    @Option(names = "--name", paramLabel = "NAME", description = "${bundle:help.newModel.name}")
    private String name;

    NewModelCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() {
        Path folder = around.path(named).toAbsolutePath().normalize();
        refuseUnlessFree(folder);
        String last = folder.getFileName() == null
                ? FALLBACK_ID
                : folder.getFileName().toString();
        String called = Given.words("--name", name == null ? last : name);
        String model = filled(EngineJsonReader.FILE, last, quoted(called));
        String readme = filled(README, last, called);
        try {
            Files.createDirectories(folder);
        } catch (IOException failure) {
            throw Failure.of("stopped.newModel.folderCannotBeMadeCheck", named);
        }
        write(named.resolve(EngineJsonReader.FILE), model);
        write(named.resolve(README), readme);
        around.out().println(around.words().say("newModel.made", named, EngineJsonReader.FILE, README));
        return Commands.FINE;
    }

    private void refuseUnlessFree(Path folder) {
        if (!Files.exists(folder)) {
            return;
        }
        if (!Files.isDirectory(folder)) {
            throw Failure.of("stopped.newModel.somethingThereThatNoFolder", named);
        }
        try (Stream<Path> inside = Files.list(folder)) {
            if (inside.findAny().isPresent()) {
                throw Failure.of("stopped.newModel.thereSomethingInFolderAlready", named);
            }
        } catch (IOException failure) {
            throw Failure.of("stopped.newModel.folderCannotBeReadCheck", named);
        }
    }

    private void write(Path file, String text) {
        NewFile.at(around, "FOLDER", file).write(text.getBytes(StandardCharsets.UTF_8));
    }

    private String filled(String template, String last, String called) {
        try (InputStream in = NewModelCommand.class.getResourceAsStream("new-model/" + template)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .replace("@ID@", id(last))
                    .replace("@FOLDER@", named.toString())
                    .replace("@NAME@", called);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The folder's name as an id: what an id cannot hold becomes a hyphen. */
    private static String id(String last) {
        String id = last.toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9._-]+", "-")
                .replaceAll("^[^a-z]+", "")
                .replaceAll("-+$", "");
        String fit = id.substring(0, Math.min(id.length(), LONGEST_ID));
        return EngineJsonReader.isId(fit) ? fit : FALLBACK_ID;
    }

    /** As it stands between the quotes of a JSON text. */
    private static String quoted(String words) {
        String json = JsonText.of(JsonText.object().textNode(words));
        return json.substring(1, json.length() - 1);
    }
}
