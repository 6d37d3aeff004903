package everyblade.record;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How a line of the journal reads, its hash aside: version 1, the first line and the lines of entries. */
final class LineFormat {

    private static final String AT = "at";

    /** In old records there is none, and none is made up for them. */
    private static final String WRITTEN = "written";

    private static final int MAJOR = 1;
    private static final Pattern VERSION =
            Pattern.compile("(everyblade/(?:journal|drill)/)([0-9]{1,9})(?:\\.([0-9]{1,9}))?");
    private static final List<String> FIRST_KEYS = List.of(
            "schema",
            "at",
            "by",
            "model",
            "modelHash",
            "meshHashes",
            "serial",
            "task",
            "settings",
            "limitsHash",
            "previous",
            "previousHead",
            "drillHash",
            "hash");
    private static final Pattern SHA_256 = Pattern.compile("[0-9a-f]{64}");
    private static final List<String> ENTRY_KEYS =
            List.of("k", AT, WRITTEN, "by", "live", "text", "means", "photo", "hash");

    private LineFormat() {}

    /** The version of a journal, read from its first line. */
    record Version(RecordKind kind, int major, int minor) {

        /** One of which this program knows nothing. */
        boolean isForeign() {
            return major != MAJOR;
        }

        /** One that may say more than this program knows, but says the rest in the same way. */
        boolean isNewer() {
            return major == MAJOR && minor > 0;
        }

        @Override
        public String toString() {
            return major + "." + minor;
        }
    }

    /** What the first line says. */
    record FirstLine(
            Beginning beginning,
            String modelHash,
            SortedMap<String, String> meshHashes,
            Optional<String> limitsHash,
            Optional<String> previousHead,
            Optional<String> drillHash) {

        FirstLine(Beginning beginning, String modelHash) {
            this(
                    beginning,
                    modelHash,
                    Collections.emptySortedMap(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty());
        }

        RecordKind kind() {
            return drillHash.isPresent() ? RecordKind.DRILL : RecordKind.JOB;
        }

        static FirstLine of(Beginning beginning, Frozen frozen) {
            TreeMap<String, String> meshes = new TreeMap<>();
            frozen.meshes().forEach((name, file) -> meshes.put(name, file.hash()));
            return new FirstLine(
                    beginning,
                    frozen.model().hash(),
                    meshes,
                    frozen.limits().map(FrozenFile::hash),
                    frozen.previous().map(PreviousRecord::head),
                    frozen.drill().map(FrozenFile::hash));
        }
    }

    static String firstLine(FirstLine first) throws Unreadable {
        Beginning beginning = first.beginning();
        ObjectNode line = JobJson.object();
        line.put("schema", first.kind().schema() + MAJOR);
        line.put(AT, beginning.at().toString());
        line.put("by", beginning.by());
        line.put("model", beginning.model());
        line.put("modelHash", first.modelHash());
        if (!first.meshHashes().isEmpty()) {
            ObjectNode meshes = line.putObject("meshHashes");
            first.meshHashes().forEach(meshes::put);
        }
        line.put("serial", beginning.serial());
        line.put("task", beginning.task());
        ObjectNode settings = line.putObject("settings");
        beginning.settings().forEach((name, value) -> settings.set(name, DecimalNode.valueOf(value)));
        first.limitsHash().ifPresent(hash -> line.put("limitsHash", hash));
        beginning.previous().ifPresent(previous -> line.put("previous", previous));
        first.previousHead().ifPresent(head -> line.put("previousHead", head));
        first.drillHash().ifPresent(hash -> line.put("drillHash", hash));
        return JobJson.text(line);
    }

    static String entryLine(int k, Addition entry) throws Unreadable {
        ObjectNode line = JobJson.object();
        line.put("k", k);
        line.put(AT, entry.at().toString());
        entry.written().ifPresent(written -> line.put(WRITTEN, written.toString()));
        line.put("by", entry.by());
        line.put("live", entry.live());
        line.put("text", entry.text());
        line.set("means", Meaning.write(entry.means()));
        entry.photo().ifPresent(photo -> line.set("photo", PhotoFormat.write(photo)));
        return JobJson.text(line);
    }

    /** The version that a first line states, whatever else stands in it; empty if it states none. */
    static Optional<Version> version(byte[] line) {
        try {
            Matcher matcher = VERSION.matcher(text(JobJson.object(line), "schema"));
            if (matcher.matches()) {
                RecordKind kind =
                        matcher.group(1).equals(RecordKind.DRILL.schema()) ? RecordKind.DRILL : RecordKind.JOB;
                int minor = matcher.group(3) == null ? 0 : Integer.parseInt(matcher.group(3));
                return Optional.of(new Version(kind, Integer.parseInt(matcher.group(2)), minor));
            }
        } catch (Unreadable noVersion) {
            // said by the empty answer
        }
        return Optional.empty();
    }

    static FirstLine readFirst(byte[] line, boolean unknownKeysToo) throws Unreadable {
        ObjectNode node = JobJson.object(line);
        if (!unknownKeysToo) {
            Meaning.requireKnown(node, FIRST_KEYS);
        }
        RecordKind kind = node.has("drillHash") ? RecordKind.DRILL : RecordKind.JOB;
        Matcher schema = VERSION.matcher(text(node, "schema"));
        Meaning.require(schema.matches() && schema.group(1).equals(kind.schema()), "schema", kind.schema() + MAJOR);
        JsonNode settings = node.path("settings");
        Meaning.require(settings.isObject(), "settings", LineFlaw.Sort.NUMBERS);
        TreeMap<String, BigDecimal> numbers = new TreeMap<>();
        for (Map.Entry<String, JsonNode> setting : settings.properties()) {
            Meaning.require(setting.getValue().isNumber(), setting.getKey(), LineFlaw.Sort.NUMBER);
            numbers.put(setting.getKey(), setting.getValue().decimalValue());
        }
        Beginning beginning = new Beginning(
                time(node, AT),
                text(node, "by"),
                text(node, "model"),
                text(node, "serial"),
                text(node, "task"),
                numbers,
                textIfThere(node, "previous"));
        return new FirstLine(
                beginning,
                text(node, "modelHash"),
                meshHashes(node),
                textIfThere(node, "limitsHash"),
                textIfThere(node, "previousHead"),
                textIfThere(node, "drillHash"));
    }

    private static SortedMap<String, String> meshHashes(ObjectNode node) throws Unreadable {
        JsonNode meshes = node.path("meshHashes");
        Meaning.require(meshes.isMissingNode() || meshes.isObject(), "meshHashes", LineFlaw.Sort.HASHES);
        TreeMap<String, String> hashes = new TreeMap<>();
        for (Map.Entry<String, JsonNode> mesh : meshes.properties()) {
            boolean hash = mesh.getValue().isTextual()
                    && SHA_256.matcher(mesh.getValue().textValue()).matches();
            Meaning.require(hash, mesh.getKey(), LineFlaw.Sort.HASH);
            hashes.put(mesh.getKey(), mesh.getValue().textValue());
        }
        return hashes;
    }

    /** Reads a line of an entry, which must have this number. */
    static Addition readEntry(byte[] line, int k, boolean unknownKeysToo) throws Unreadable {
        ObjectNode node = JobJson.object(line);
        if (!unknownKeysToo) {
            Meaning.requireKnown(node, ENTRY_KEYS);
        }
        Meaning.require(node.path("k").isInt() && node.path("k").intValue() == k, "k", Integer.toString(k));
        Meaning.require(node.path("live").isBoolean(), "live", LineFlaw.Sort.TRUTH);
        Meaning.require(node.path("means").isObject(), "means", LineFlaw.Sort.OBJECT);
        return new Addition(
                text(node, "text"),
                Meaning.read(node.get("means"), unknownKeysToo),
                time(node, AT),
                text(node, "by"),
                node.get("live").booleanValue(),
                node.has("photo") ? Optional.of(PhotoFormat.read(node.get("photo"), unknownKeysToo)) : Optional.empty(),
                node.has(WRITTEN) ? Optional.of(time(node, WRITTEN)) : Optional.empty());
    }

    private static Optional<String> textIfThere(ObjectNode node, String key) throws Unreadable {
        return node.has(key) ? Optional.of(text(node, key)) : Optional.empty();
    }

    static String text(ObjectNode node, String key) throws Unreadable {
        Meaning.require(node.path(key).isTextual(), key, LineFlaw.Sort.TEXT);
        return node.get(key).textValue();
    }

    static Instant time(ObjectNode node, String key) throws Unreadable {
        String text = text(node, key);
        try {
            Instant time = Instant.parse(text);
            if (time.toString().equals(text)) {
                return time;
            }
        } catch (DateTimeException notATime) {
            // said below
        }
        throw new Unreadable(new LineFlaw.OtherSort(key, LineFlaw.Sort.TIME));
    }
}
