package everyblade.window.author;

import everyblade.words.Words;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Instant;
import java.util.Locale;
import java.util.Optional;

/**
 * A folder in which an author writes {@link #MODEL}: rotor {@code c1} of 24 shaped blades, looked at from station {@code mid}
 * of view {@code p1-c1}, which may stand in 27 places; stator {@code s1} without a shape, looked at through the window of view
 * {@code p1-s1}.
 */
public record Bench(Path folder) {

    public static final Instant FIRST = Instant.parse("2026-05-14T06:00:00Z");
    public static final Instant LATER = FIRST.plusSeconds(70);

    public static final String MODEL = """
            { "schema": "everyblade/engine-model/1", "id": "sedge-2", "name": "Sedge 2", "notice": "Invented.",
              "spools": [{ "id": "gas", "pads": [{ "id": "pad", "ratio": "29/77", "play": 1 }] }],
              "walls": [
                { "id": "hub", "curve": [[0, 60], [80, 64]] },
                { "id": "casing", "curve": [[0, 100], [80, 98]] } ],
              "rows": [
                { "id": "c1", "kind": "rotor", "count": 24, "source": "invented",
                  "landmarks": [{ "airfoil": 1, "what": "locking blade" }],
                  "shape": { "type": "axial", "sections": [
                    { "span": 0, "chord": 22, "stagger": -20, "camber": -20, "thickness": 0.08, "x": 30 },
                    { "span": 1, "chord": 22, "stagger": -50, "camber": -10, "thickness": 0.05, "x": 32 } ] } },
                { "id": "s1", "kind": "stator", "count": 30, "landmarks": [{ "airfoil": 1, "what": "at the split line" }] } ],
              "scopeTips": [{ "id": "fwd90", "cone": 90, "near": 2, "far": 80, "pixels": 640, "diameter": 4 }],
              "ports": [{ "id": "p1", "clock": 90, "x": 15, "through": [{ "what": "casing plug hole", "diameter": 6 }] }],
              "views": [
                { "id": "p1-c1", "port": "p1", "row": "c1", "scopeTip": "fwd90", "reference": 90,
                  "window": { "halfWidth": 6, "shows": ["root", "tip"] },
                  "stations": [
                    { "id": "mid", "x": 15, "r": 85, "clock": 90, "forward": [1, -0.3, 0], "up": [0, 0, 1],
                      "within": { "mm": 0.5, "deg": 2 } } ] },
                { "id": "p1-s1", "port": "p1", "row": "s1", "reference": 90, "travels": true,
                  "window": { "halfWidth": 5, "shows": ["all"] } } ] }
            """;

    /** The same with one error, at line 8, column 38, in the count of {@code c1}. */
    public static final String BROKEN = MODEL.replace("\"count\": 24", "\"count\": \"24\"");

    /** The same with {@code c1} from a mesh file. */
    public static String meshed(String file) {
        return MODEL.replaceFirst(
                "(?s)\\{ \"type\": \"axial\".*?\\] \\} \\}", "{ \"type\": \"mesh\", \"file\": \"" + file + "\" } }");
    }

    public ModelFolder model() {
        return new ModelFolder(folder);
    }

    /** Writes the {@code engine.json} as most editors do: beside, then into its place. */
    public void save(String text) {
        try {
            Files.createDirectories(folder);
            Path beside = folder.resolve(".engine.json.tmp");
            Files.writeString(beside, text);
            Files.move(beside, folder.resolve("engine.json"), StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    /** Saves and reads. */
    Attempt read(String text, Instant now) {
        save(text);
        return model().read(ModelFolder.files(), now).checked(Words.of(Locale.ENGLISH));
    }

    /** A text saved, read and checked, as the screen would have it. */
    AuthorState after(AuthorState before, String text, Instant now) {
        Attempt attempt = read(text, now);
        return attempt.model()
                .map(read -> before.read(attempt, AuthorState.sheet(read, before.row(), Words.of(Locale.ENGLISH))))
                .orElseGet(() -> before.broken(attempt));
    }

    AuthorState first() {
        return AuthorState.first(model());
    }

    static Standpoint at(String view, String station) {
        return new Standpoint(view, Optional.ofNullable(station));
    }
}
