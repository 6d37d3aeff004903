package everyblade.json;

import everyblade.spi.EngineModel;
import everyblade.spi.Port;
import everyblade.spi.Row;
import everyblade.spi.ScopeTip;
import everyblade.spi.Spool;
import everyblade.spi.TaskCard;
import everyblade.spi.View;
import everyblade.spi.Wall;
import java.io.IOException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads an engine model from {@code engine.json}: whatever the bytes are, the answer is a {@link Reading}, never an
 * exception. Lengths in the file are mm, angles degrees.
 */
public final class EngineJsonReader {

    /** Name of the file that holds a model, in its folder or at the root of its jar. */
    public static final String FILE = "engine.json";

    /** What {@code schema} says in a file of this version. */
    public static final String SCHEMA = "everyblade/engine-model/1";

    private static final Pattern VERSION = Pattern.compile("everyblade/engine-model/([0-9]{1,6})(\\.[0-9]{1,6})?");

    private EngineJsonReader() {}

    /** Whether an engine model may have this id. */
    public static boolean isId(String text) {
        return Ids.isFit(text, Set.of());
    }

    /** Reads a file. */
    public static Reading read(Path file) {
        try {
            return read(file.toString(), PlainFile.read(file, JsonTree.LARGEST + 1L));
        } catch (NoSuchFileException e) {
            return unreadable("no-such-file", file, "there is no such file", "check the path and the name " + FILE);
        } catch (IOException e) {
            return unreadable(
                    "cannot-read",
                    file,
                    "the system says " + Wording.plain(String.valueOf(e.getMessage())),
                    "check that it is a file you may read");
        }
    }

    /**
     * Reads a file that is held as bytes.
     *
     * @param file its name, for messages
     */
    public static Reading read(String file, byte[] bytes) {
        ProblemLog log = new ProblemLog(file);
        Optional<EngineModel> model =
                JsonTree.parse(bytes, "an engine model", log).flatMap(json -> model(json, log));
        if (model.isEmpty() || log.errorCount() > 0) {
            return new Reading.Unreadable(log.problems());
        }
        return new Reading.Read(model.get(), log.problems());
    }

    private static Reading unreadable(String code, Path file, String why, String mend) {
        return new Reading.Unreadable(
                List.of(Problem.ofWhole(code, file.toString(), "the file cannot be read", why, mend)));
    }

    private static Optional<EngineModel> model(Json json, ProblemLog log) {
        if (!(json instanceof Json.Obj object)) {
            log.error(
                    "wrong-type",
                    json.place(),
                    "the model is " + json.type(),
                    "it must be an object",
                    "begin the file with {");
            return Optional.empty();
        }
        if (!versionIsOurs(object, log)) {
            return Optional.empty();
        }
        Fields fields = new Fields(
                object,
                "engine model",
                List.of(
                        "schema",
                        "id",
                        "name",
                        "notice",
                        "spools",
                        "walls",
                        "rows",
                        "scopeTips",
                        "ports",
                        "views",
                        "taskCards"),
                log);
        fields.required("schema");
        String id = new Ids("engine model", Set.of()).required(fields);
        String name = fields.requiredText("name");
        Optional<String> notice = fields.textIfStated("notice");
        List<Located<Spool>> spools = SpoolReader.spools(fields);
        References<Spool> spoolIds =
                new References<>("spool", "unknown-spool", fields, "spools", Located.values(spools), Spool::id, true);
        List<Located<Wall>> walls = ShapeReader.walls(fields, spoolIds);
        List<Located<Row>> rows = RowReader.rows(fields, spoolIds);
        List<ScopeTip> scopeTips = AccessReader.scopeTips(fields);
        List<Located<Port>> ports = AccessReader.ports(fields);
        References<ScopeTip> tipIds =
                new References<>("scope tip", "unknown-scope-tip", fields, "scopeTips", scopeTips, ScopeTip::id, false);
        References<Port> portIds =
                new References<>("port", "unknown-port", fields, "ports", Located.values(ports), Port::id, false);
        References<Located<Row>> rowIds = new References<>(
                "row", "unknown-row", fields, "rows", rows, row -> row.value().id(), true);
        List<Located<View>> views = ViewReader.views(fields, rowIds, tipIds, portIds);
        List<TaskCard> taskCards = TaskCardReader.cards(fields, rowIds);
        new ModelValidator(spools, walls, rows, scopeTips, ports, views, log).judge();
        return Optional.of(new EngineModel(
                id,
                name,
                notice,
                Located.values(spools),
                Located.values(walls),
                Located.values(rows),
                scopeTips,
                Located.values(ports),
                Located.values(views),
                taskCards));
    }

    /** Whether the keys mean what we think they mean; a file without a version is read for its other mistakes. */
    private static boolean versionIsOurs(Json.Obj object, ProblemLog log) {
        Json.Member schema = object.members().get("schema");
        if (schema == null) {
            return true;
        }
        String version = schema.value() instanceof Json.Text text ? text.value() : "";
        if (version.equals(SCHEMA)) {
            return true;
        }
        Matcher matcher = VERSION.matcher(version);
        if (matcher.matches() && Integer.parseInt(matcher.group(1)) > 1) {
            log.error(
                    "newer-version",
                    schema.value().place(),
                    "the model is written for version " + matcher.group(1) + " of the format",
                    "this Everyblade reads version 1",
                    "use a newer Everyblade");
        } else {
            log.error(
                    "unknown-version",
                    schema.value().place(),
                    "\"schema\" is " + (version.isEmpty() ? schema.value().type() : Wording.quoted(version)),
                    "this is no engine model that Everyblade knows",
                    "write \"" + SCHEMA + "\"");
        }
        return false;
    }
}
