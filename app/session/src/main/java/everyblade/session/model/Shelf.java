package everyblade.session.model;

import everyblade.core.sight.ViewScene;
import everyblade.fact.Keyed;
import everyblade.json.EngineJsonReader;
import everyblade.json.Found;
import everyblade.json.JsonTree;
import everyblade.json.ModelShelf;
import everyblade.json.PlainFile;
import everyblade.json.Problem;
import everyblade.json.Reading;
import everyblade.json.jar.CodeJar;
import everyblade.session.around.Failure;
import everyblade.session.around.Surroundings;
import everyblade.session.around.UserFolders;
import everyblade.spi.EngineModel;
import everyblade.spi.Row;
import everyblade.spi.Shape;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Where engine models are looked for: with the program, then in the folders given, then in the one of
 * {@code EVERYBLADE_MODELS}, then in the user's configuration.
 *
 * @param around where relative paths are meant from
 * @param folders in that order; those that nobody named are there
 * @param consent which jars of code may run
 */
public record Shelf(Surroundings around, List<Path> folders, Consent consent) {

    private static final String MODELS = "models";
    private static final long LARGEST_MESH = 200L << 20;

    public static Shelf of(Surroundings around, List<Path> given, Consent consent) {
        List<Path> folders = new ArrayList<>();
        around.home()
                .map(home -> home.resolve(MODELS))
                .filter(Files::isDirectory)
                .ifPresent(folders::add);
        for (Path folder : given) {
            Path path = around.path(folder);
            if (!Files.isDirectory(path)) {
                throw Failure.of("stopped.shelf.thereNoSuchFolderName", folder);
            }
            folders.add(path);
        }
        around.variable("EVERYBLADE_MODELS")
                .flatMap(UserFolders::path)
                .map(around::path)
                .ifPresent(folders::add);
        UserFolders.configuration(around)
                .map(folder -> folder.resolve("everyblade").resolve(MODELS))
                .filter(Files::isDirectory)
                .ifPresent(folders::add);
        return new Shelf(around, folders.stream().distinct().toList(), consent);
    }

    /** Every model in these folders, and whatever could not be loaded; runs nothing. */
    public ModelShelf models() {
        return ModelShelf.of(folders, consent.listing());
    }

    /** The same after a person has agreed that this jar runs. */
    public Shelf trusting(CodeJar jar) {
        return new Shelf(around, folders, consent.give(jar));
    }

    /** Lets a jar that may run tell its models, from when on they are known; gives why it could not. */
    public List<Problem> run(CodeJar jar) {
        return ModelShelf.open(jar.jar(), consent.using()).found().stream()
                .filter(Found.Refused.class::isInstance)
                .flatMap(one -> ((Found.Refused) one).problems().stream())
                .toList();
    }

    /**
     * A model to start a job with.
     *
     * @param model what it says
     * @param bytes of the {@code engine.json} that says it
     * @param warnings of its reader
     * @param meshes contents of its mesh files, by name
     */
    public record Chosen(EngineModel model, byte[] bytes, List<String> warnings, Map<String, byte[]> meshes) {

        /** The engine as sight is computed with. */
        public ViewScene scene() {
            return new ViewScene(model, meshes, Map.of());
        }
    }

    /** The model of this name: a folder, an {@code engine.json} or a jar if there is one, else an id. */
    public Chosen choose(String name) {
        return choose(name, name);
    }

    /** The same where the name stands behind {@code --model}, as a refusal then says. */
    public Chosen chooseByOption(String name) {
        return choose(name, "--model " + name);
    }

    /** @param said how the name was said, for refusals */
    private Chosen choose(String name, String said) {
        Optional<Path> given = UserFolders.path(name).map(around::path).filter(Shelf::holdsModel);
        ModelShelf shelf = given.map(path -> ModelShelf.open(path, consent.using()))
                .orElseGet(() -> models().model(name).isPresent() ? models() : used());
        List<Found.Loaded> loaded = shelf.found().stream()
                .filter(Found.Loaded.class::isInstance)
                .map(Found.Loaded.class::cast)
                .filter(one -> given.isPresent() || one.model().id().equals(name))
                .toList();
        if (loaded.size() == 1) {
            return frozen(loaded.get(0));
        }
        if (given.isEmpty()) {
            throw noSuchId(name, said, shelf);
        }
        if (loaded.isEmpty() && !shelf.notRun().isEmpty()) {
            throw Consent.refusal(shelf.notRun().get(0));
        }
        if (loaded.isEmpty()) {
            throw Failure.of("stopped.shelf.refusedSeeCheck", said, firstProblem(shelf), name);
        }
        throw Failure.of("stopped.shelf.holdsSeveralEngineModelsPut", said, ids(loaded));
    }

    /** The same after the jars that may run have told their models. */
    private ModelShelf used() {
        return ModelShelf.of(folders, consent.using());
    }

    private static boolean holdsModel(Path path) {
        return Files.isRegularFile(path) || Files.exists(path.resolve(EngineJsonReader.FILE));
    }

    /** The bytes as the author wrote them; of a model that code handed over, what it is written as. */
    private static Chosen frozen(Found.Loaded found) {
        List<String> warnings = found.warnings().stream().map(Object::toString).toList();
        Path file = Files.isDirectory(found.origin()) ? found.origin().resolve(EngineJsonReader.FILE) : found.origin();
        if (file.toString().endsWith(".jar")) {
            ModelFiles jar = ModelFiles.of(found);
            if (says(jar.name(), jar.text(), found.model())) {
                return new Chosen(found.model(), jar.text(), warnings, jar.meshes(found.model()));
            }
            throw changed(file);
        }
        try {
            byte[] bytes = PlainFile.read(file, JsonTree.LARGEST);
            if (says(file.toString(), bytes, found.model())) {
                return new Chosen(found.model(), bytes, warnings, meshes(found.model(), file));
            }
        } catch (IOException gone) {
            // said below
        }
        throw changed(file);
    }

    private static boolean says(String name, byte[] engineJson, EngineModel model) {
        return EngineJsonReader.read(name, engineJson) instanceof Reading.Read read
                && read.model().equals(model);
    }

    private static Failure changed(Path file) {
        return Failure.of("stopped.shelf.engineModelChangedWhileWas", file);
    }

    /** The mesh files that an engine names, which lie beside its {@code engine.json}. */
    private static Map<String, byte[]> meshes(EngineModel model, Path file) {
        Map<String, byte[]> meshes = new TreeMap<>();
        for (Row row : model.rows()) {
            if (row.shape().orElse(null) instanceof Shape.Mesh mesh) {
                try {
                    meshes.put(
                            mesh.file(), PlainFile.read(file.toAbsolutePath().getParent(), mesh.file(), LARGEST_MESH));
                } catch (PlainFile.NotPlain notRead) {
                    throw Failure.of(
                            "stopped.shelf.meshRowNotRead",
                            file.resolveSibling(mesh.file()),
                            row.id(),
                            notRead.getMessage());
                } catch (IOException missing) {
                    throw Failure.of(
                            "stopped.shelf.meshRowCannotBeRead",
                            file.resolveSibling(mesh.file()),
                            row.id(),
                            EngineJsonReader.FILE);
                }
            }
        }
        return meshes;
    }

    private static Failure noSuchId(String name, String said, ModelShelf shelf) {
        Optional<Found> refused = shelf.found().stream()
                .filter(Found.Refused.class::isInstance)
                .filter(one -> one.origin().getFileName() != null
                        && one.origin().getFileName().toString().equals(name))
                .findFirst();
        if (refused.isPresent()) {
            return Failure.of("stopped.shelf.refusedSeeModels", said, firstProblem(shelf(refused.get())));
        }
        Keyed found = new Keyed(
                "stopped.shelf.found",
                List.of(
                        shelf.models().stream().map(EngineModel::id).toList(),
                        shelf.notRun().stream().map(CodeJar::jar).toList()));
        return Failure.of("stopped.shelf.thereNoEngineModelThat", said, EngineJsonReader.FILE, found);
    }

    private static ModelShelf shelf(Found one) {
        return new ModelShelf(List.of(one));
    }

    private static Object firstProblem(ModelShelf shelf) {
        return shelf.found().stream()
                .filter(Found.Refused.class::isInstance)
                .map(one -> (Object) ((Found.Refused) one).problems().get(0).toString())
                .findFirst()
                .orElseGet(() -> new Keyed("stopped.shelf.holdsNone", List.of()));
    }

    private static String ids(List<Found.Loaded> loaded) {
        return String.join(", ", loaded.stream().map(one -> one.model().id()).toList());
    }
}
