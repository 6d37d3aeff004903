package everyblade.session;

import everyblade.core.entry.Settings;
import everyblade.core.sight.Progress;
import everyblade.record.Beginning;
import everyblade.record.Disk;
import everyblade.record.Frozen;
import everyblade.record.FrozenFile;
import everyblade.record.JobFolder;
import everyblade.record.LocalDisk;
import everyblade.session.around.Surroundings;
import everyblade.words.Words;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javax.imageio.ImageIO;

/**
 * A folder with one job in it on the engine {@code ring}: rotor {@code r} of 12 blades, root and tip, seen through view
 * {@code p-r} while within 5° of the reference at 90°; a stator {@code v} of 8 undivided vanes with the view {@code p-v}
 * that travels. The pad {@code hand} turns either way with ± 1° of play; the scope tip bears 60 °C.
 */
public record Workshop(Path folder, Disk disk) {

    /** The time that it is in tests. */
    public static final Instant NOW = Instant.parse("2026-05-14T06:00:00Z");

    public static final Words ENGLISH = Words.of(Locale.ENGLISH);

    /** The engine model. */
    public static final String RING = """
            { "schema": "everyblade/engine-model/1", "id": "ring", "name": "Ring of twelve", "notice": "Invented for tests.",
              "spools": [ { "id": "gas", "name": "Gas generator", "normal": "cw",
                            "pads": [ { "id": "hand", "name": "Hand pad", "play": 1 } ] } ],
              "rows": [ { "id": "r", "name": "Rotor", "kind": "rotor", "count": 12,
                          "landmarks": [ { "airfoil": 1, "what": "etched" } ] },
                        { "id": "v", "name": "Vanes", "kind": "stator", "count": 8, "spanBands": 1,
                          "landmarks": [ { "airfoil": 1, "what": "at the split line" } ] } ],
              "scopeTips": [ { "id": "fwd", "cone": 60, "lookAngle": 0, "near": 4, "far": 60, "pixels": 640, "diameter": 3.9,
                               "hottest": 60 } ],
              "views": [ { "id": "p-r", "row": "r", "scopeTip": "fwd", "reference": 90,
                           "window": { "halfWidth": 5, "shows": ["root", "tip"] } },
                         { "id": "p-v", "row": "v", "reference": 0, "window": { "halfWidth": 5, "shows": ["all"] },
                           "travels": true } ] }
            """;

    /** Limits for it: a nick on the rotor may be 1 mm long. */
    public static final String LIMITS = """
            { "schema": "everyblade/limits/1", "name": "Ring limits", "notice": "Invented limits.", "unit": "mm",
              "rules": [ { "id": "nicks", "rows": ["r"], "kinds": ["nick"],
                           "steps": [ { "length": { "most": 1.0 }, "outcome": "may stay",
                                        "again": { "in": 25, "unit": "cycles" } } ],
                           "beyond": "replace the blade" } ] }
            """;

    /** A workshop in this folder, its job just started. */
    public static Workshop in(Path folder) {
        return in(folder, new LocalDisk());
    }

    /** Puts a small picture into the folder. */
    public byte[] picture(String name) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        BufferedImage image = new BufferedImage(16, 12, BufferedImage.TYPE_INT_RGB);
        try {
            ImageIO.write(image, name.endsWith(".jpg") ? "jpg" : "png", bytes);
            Files.write(folder.resolve(name), bytes.toByteArray());
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
        return bytes.toByteArray();
    }

    /** One axial row between two cylinders, seen from ahead by a tip that stands far away or near; invented for tests. */
    public static final String SHAPED = """
            { "schema": "everyblade/engine-model/1", "id": "ring", "name": "Shaped ring",
              "walls": [ { "id": "hub", "curve": [[0, 60], [60, 60]] }, { "id": "casing", "curve": [[0, 100], [60, 100]] } ],
              "rows": [ { "id": "r", "kind": "rotor", "count": 12, "source": "invented",
                          "landmarks": [ { "airfoil": 1, "what": "etched" } ],
                          "shape": { "type": "axial", "sections": [
                            { "span": 0, "chord": 22, "stagger": 20, "camber": 20, "thickness": 0.08, "x": 30 },
                            { "span": 1, "chord": 22, "stagger": 50, "camber": 10, "thickness": 0.05, "x": 32 } ] } } ],
              "scopeTips": [ { "id": "t", "cone": 90, "near": 2, "far": 80, "pixels": 640, "diameter": 4 } ],
              "views": [ { "id": "p-r", "row": "r", "scopeTip": "t", "stations": [
                { "id": "far", "x": 1, "r": 98, "clock": 0, "forward": [1, 0, 0.4], "up": [0, 0, 1],
                  "within": { "mm": 0, "deg": 0 } },
                { "id": "near", "x": 12, "r": 85, "clock": 0, "forward": [1, 0.3, 0], "up": [0, 0, 1],
                  "within": { "mm": 0, "deg": 0 } } ] } ] }
            """;

    /** A workshop with a job on an engine whose sight is computed. */
    public static Workshop shaped(Path folder) {
        return shaped(folder, Map.of());
    }

    /** The same by other settings. */
    public static Workshop shaped(Path folder, Map<String, BigDecimal> settings) {
        List<String> facts = List.of("7", "routine", "Ann");
        return in(folder, new LocalDisk(), SHAPED, Optional.empty(), facts, Settings.of(settings));
    }

    /** The same on another disk. */
    public static Workshop in(Path folder, Disk disk) {
        return in(folder, disk, RING, Optional.empty());
    }

    /** The same with {@link #LIMITS}. */
    public static Workshop limited(Path folder) {
        return in(folder, new LocalDisk(), RING, Optional.of(frozen(LIMITS)));
    }

    private static FrozenFile frozen(String text) {
        return FrozenFile.of(text.getBytes(StandardCharsets.UTF_8));
    }

    private static Workshop in(Path folder, Disk disk, String model, Optional<FrozenFile> limits) {
        return in(folder, disk, model, limits, List.of("7", "routine", "Ann"), Settings.of(Map.of()));
    }

    /** A workshop whose job is on another engine, {@code ring} by its id, and says this as serial number, task and name. */
    public static Workshop of(Path folder, String model, String serial, String task, String by) {
        List<String> facts = List.of(serial, task, by);
        return in(folder, new LocalDisk(), model, Optional.empty(), facts, Settings.of(Map.of()));
    }

    private static Workshop in(
            Path folder,
            Disk disk,
            String model,
            Optional<FrozenFile> limits,
            List<String> serialTaskBy,
            Settings settings) {
        Workshop workshop = new Workshop(folder, disk);
        new JobFolder(new LocalDisk(), workshop.job())
                .start(
                        new Beginning(
                                NOW,
                                serialTaskBy.get(2),
                                "ring",
                                serialTaskBy.get(0),
                                serialTaskBy.get(1),
                                settings.values(),
                                Optional.empty()),
                        new Frozen(frozen(model), Collections.emptySortedMap(), limits, Optional.empty()))
                .ifPresent(problem -> {
                    throw new AssertionError(Words.of(Locale.ENGLISH).say(problem));
                });
        return workshop;
    }

    public Path job() {
        return folder.resolve("job");
    }

    /** The world outside, always at the same time. */
    public Surroundings around() {
        PrintStream nowhere = new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8);
        return new Surroundings(
                new ByteArrayInputStream(new byte[0]),
                nowhere,
                nowhere,
                () -> NOW,
                Map.of("HOME", folder.toString()),
                folder,
                Optional.empty(),
                disk);
    }

    /** The job open for work, after these entries. */
    public Session open(String... entries) {
        Session session = Session.open(around(), job(), List.of(folder), Progress.NONE);
        for (String entry : entries) {
            if (!(session.say(entry) instanceof Answer.Kept)) {
                throw new AssertionError(entry + ": " + session.say(entry));
            }
        }
        return session;
    }

    /** Ready for turning: hot metal excluded, view of the rotor, blade 1 at the reference. */
    public Session counting(String... more) {
        Session session = open("heat 20 C", "view p-r", "datum r 1 at 0");
        for (String entry : more) {
            if (!(session.say(entry) instanceof Answer.Kept)) {
                throw new AssertionError(entry + " was not kept");
            }
        }
        return session;
    }

    /** The texts of the entries on disk. */
    public List<String> kept() {
        if (new JobFolder(new LocalDisk(), job()).read() instanceof JobFolder.Readable readable) {
            return readable.job().journal().lines().stream()
                    .map(everyblade.record.JournalLine::text)
                    .toList();
        }
        throw new AssertionError("the journal cannot be read");
    }

    public void write(String name, String text) {
        try {
            Files.createDirectories(folder.resolve(name).getParent());
            Files.writeString(folder.resolve(name), text);
        } catch (IOException failure) {
            throw new java.io.UncheckedIOException(failure);
        }
    }
}
