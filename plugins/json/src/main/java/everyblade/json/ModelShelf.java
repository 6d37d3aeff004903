package everyblade.json;

import com.fasterxml.jackson.core.JsonFactory;
import everyblade.json.jar.CodeDoor;
import everyblade.json.jar.CodeJar;
import everyblade.json.jar.Complaint;
import everyblade.json.jar.Handed;
import everyblade.json.jar.JarPatience;
import everyblade.json.jar.JarReader;
import everyblade.json.jar.OwnProcess;
import everyblade.spi.EngineModel;
import everyblade.spi.EngineModelSource;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The engine models found in some places: no two loaded ones have the same id, and whatever could not be loaded stays
 * visible beside them.
 *
 * @param found in the order of the places, within a folder by name
 */
public record ModelShelf(List<Found> found) {

    /** Lets code tell its models, in a process of its own; a model in code says what a file could say, as jobs keep it. */
    public static final CodeDoor OWN_PROCESS = ownProcess(JarPatience.OF_THE_PROGRAM);

    public ModelShelf {
        found = List.copyOf(found);
    }

    static CodeDoor ownProcess(JarPatience patience) {
        return new OwnProcess(
                PluginMain.class, List.of(PluginMain.class, EngineModelSource.class, JsonFactory.class), patience);
    }

    /** Looks through folders of models, and runs nothing. */
    public static ModelShelf of(List<Path> folders) {
        return of(folders, CodeDoor.SHUT);
    }

    /**
     * Looks through folders of models: each folder in them that holds an {@code engine.json}, and each jar. Of two models
     * with the same id the first one is loaded.
     *
     * @param door what becomes of jars of code
     */
    public static ModelShelf of(List<Path> folders, CodeDoor door) {
        List<Found> found = new ArrayList<>();
        folders.forEach(folder -> found.addAll(inFolder(folder, door)));
        return new ModelShelf(withoutDoubles(found));
    }

    /** Opens one model given directly, and runs nothing. */
    public static ModelShelf open(Path path) {
        return open(path, CodeDoor.SHUT);
    }

    /**
     * Opens one model given directly: its {@code engine.json}, the folder that holds it, or a jar.
     *
     * @param door what becomes of a jar of code
     */
    public static ModelShelf open(Path path, CodeDoor door) {
        if (Files.isDirectory(path)) {
            return new ModelShelf(
                    List.of(found(EngineJsonReader.read(path.resolve(EngineJsonReader.FILE)), path, List.of())));
        }
        return new ModelShelf(
                isJar(path)
                        ? withoutDoubles(inJar(path, door))
                        : List.of(found(EngineJsonReader.read(path), path, List.of())));
    }

    /** The models to work with. */
    public List<EngineModel> models() {
        return found.stream()
                .filter(Found.Loaded.class::isInstance)
                .map(one -> ((Found.Loaded) one).model())
                .toList();
    }

    /** The jars of code that were not run, whose models nobody knows yet. */
    public List<CodeJar> notRun() {
        return found.stream()
                .filter(Found.Code.class::isInstance)
                .map(one -> ((Found.Code) one).jar())
                .toList();
    }

    /** The model of that id. */
    public Optional<EngineModel> model(String id) {
        return models().stream().filter(model -> model.id().equals(id)).findFirst();
    }

    private static List<Found> inJar(Path jar, CodeDoor door) {
        return new JarReader(EngineJsonReader.FILE, door)
                .open(jar).stream().map(handed -> found(handed, jar)).toList();
    }

    private static Found found(Handed handed, Path jar) {
        if (handed instanceof Handed.Model model) {
            return found(EngineJsonReader.read(model.file(), model.engineJson()), jar, model.doubts());
        }
        if (handed instanceof Handed.Code code) {
            return new Found.Code(jar, code.jar());
        }
        Complaint complaint = ((Handed.Failed) handed).complaint();
        return new Found.Refused(jar, List.of(problem(complaint, Severity.ERROR, jar)));
    }

    private static Found found(Reading reading, Path origin, List<Complaint> doubts) {
        if (reading instanceof Reading.Unreadable unreadable) {
            return new Found.Refused(origin, unreadable.problems());
        }
        Reading.Read read = (Reading.Read) reading;
        List<Problem> warnings = new ArrayList<>(read.warnings());
        doubts.forEach(doubt -> warnings.add(problem(doubt, Severity.WARNING, origin)));
        return new Found.Loaded(read.model(), origin, warnings);
    }

    private static Problem problem(Complaint complaint, Severity severity, Path jar) {
        return new Problem(
                complaint.fault().code(),
                severity,
                jar.toString(),
                1,
                1,
                "",
                complaint.what(),
                complaint.why(),
                complaint.mend());
    }

    private static List<Found> inFolder(Path folder, CodeDoor door) {
        List<Path> children;
        try (Stream<Path> list = Files.list(folder)) {
            children = list.sorted().toList();
        } catch (IOException e) {
            return List.of(new Found.Refused(
                    folder,
                    List.of(Problem.ofWhole(
                            "cannot-read",
                            folder.toString(),
                            "the folder of models cannot be read",
                            "the system says " + Wording.plain(String.valueOf(e)),
                            "check that it is there and that you may read it"))));
        }
        List<Found> found = new ArrayList<>();
        for (Path child : children) {
            if (Files.exists(child.resolve(EngineJsonReader.FILE)) || isJar(child)) {
                found.addAll(open(child, door).found());
            }
        }
        return found;
    }

    private static boolean isJar(Path path) {
        return Files.isRegularFile(path) && path.getFileName().toString().endsWith(".jar");
    }

    private static List<Found> withoutDoubles(List<Found> found) {
        Map<String, Path> origins = new HashMap<>();
        List<Found> single = new ArrayList<>();
        for (Found one : found) {
            Path first = one instanceof Found.Loaded loaded
                    ? origins.putIfAbsent(loaded.model().id(), loaded.origin())
                    : null;
            single.add(first == null ? one : doubled((Found.Loaded) one, first));
        }
        return single;
    }

    private static Found doubled(Found.Loaded second, Path first) {
        return new Found.Refused(
                second.origin(),
                List.of(Problem.ofWhole(
                        "duplicate-model",
                        second.origin().toString(),
                        "a second model has the id "
                                + Wording.quoted(second.model().id()) + " here",
                        "the first is in " + first,
                        "take one of them away or give it another id")));
    }
}
