package everyblade.cli;

import everyblade.record.Disk;
import everyblade.record.LocalDisk;
import everyblade.session.around.Surroundings;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * A command line in a folder of its own, where nothing of the machine shows through. Its engine {@code ring} has a rotor
 * {@code r} of 12 blades, root and tip, seen through view {@code p-r} while they are within 5° of the reference at 90°,
 * and a stator {@code v} of 8 undivided vanes with the view {@code p-v} that travels.
 */
record Console(Path folder, Map<String, String> environment, Optional<Path> home, Disk disk) {

    static final Instant NOW = Instant.parse("2026-05-14T06:00:00Z");

    static final String RING = """
            { "schema": "everyblade/engine-model/1", "id": "ring", "name": "Ring of twelve", "notice": "Invented for tests.",
              "rows": [ { "id": "r", "name": "Rotor", "kind": "rotor", "count": 12,
                          "landmarks": [ { "airfoil": 1, "what": "etched" } ] },
                        { "id": "v", "name": "Vanes", "kind": "stator", "count": 8, "spanBands": 1,
                          "landmarks": [ { "airfoil": 1, "what": "at the split line" } ] } ],
              "views": [ { "id": "p-r", "row": "r", "reference": 90, "window": { "halfWidth": 5, "shows": ["root", "tip"] } },
                         { "id": "p-v", "row": "v", "reference": 0, "window": { "halfWidth": 5, "shows": ["all"] },
                           "travels": true } ] }
            """;

    /** What a command left behind. */
    record Ran(int status, String out, String err) {

        List<String> outLines() {
            return out.lines().toList();
        }

        List<String> errLines() {
            return err.lines().toList();
        }
    }

    /** A console in this folder, with the model {@code ring} beside the jobs. */
    static Console in(Path folder) {
        Console console = new Console(folder, Map.of(), Optional.empty(), new LocalDisk());
        console.write("ring/engine.json", RING);
        return console;
    }

    Console with(Disk other) {
        return new Console(folder, environment, home, other);
    }

    Console with(String variable, String value) {
        Map<String, String> variables = new TreeMap<>(environment);
        variables.put(variable, value);
        return new Console(folder, variables, home, disk);
    }

    Console installedIn(Path place) {
        return new Console(folder, environment, Optional.of(place), disk);
    }

    Ran run(String... arguments) {
        return say("", arguments);
    }

    /** With this on standard input. */
    Ran say(String input, String... arguments) {
        return feed(new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8)), arguments);
    }

    Ran feed(InputStream in, String... arguments) {
        return feed(in, new ByteArrayOutputStream(), arguments);
    }

    /** With standard output going there. */
    Ran feed(InputStream in, ByteArrayOutputStream out, String... arguments) {
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int status = Commands.run(surroundings(in, out, err), arguments);
        return new Ran(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    /** With nobody at it. */
    Surroundings surroundings() {
        return surroundings(
                InputStream.nullInputStream(), OutputStream.nullOutputStream(), OutputStream.nullOutputStream());
    }

    private Surroundings surroundings(InputStream in, OutputStream out, OutputStream err) {
        return new Surroundings(
                in,
                new PrintStream(out, false, StandardCharsets.UTF_8),
                new PrintStream(err, false, StandardCharsets.UTF_8),
                InstantSource.fixed(NOW),
                environment,
                folder,
                home,
                disk);
    }

    /** Starts the job {@code job} on the engine {@code ring}. */
    Ran start(String... more) {
        return run(Stream.concat(
                        Stream.of(
                                "start", "job", "--model", "ring", "--serial", "7", "--task", "routine", "--by", "Ann"),
                        Stream.of(more))
                .toArray(String[]::new));
    }

    /** Starts the next job on the same engine, with the one before it in this folder or file. */
    Ran startNext(String job, String previous) {
        return run(
                "start",
                job,
                "--model",
                "ring",
                "--serial",
                "7",
                "--task",
                "again",
                "--by",
                "Ann",
                "--previous",
                previous);
    }

    /** Starts the job {@code job} and keeps these entries. */
    void job(String... entries) {
        start();
        if (entries.length > 0) {
            Ran logged = run(
                    Stream.concat(Stream.of("log", "job"), Stream.of(entries)).toArray(String[]::new));
            if (logged.status() != 0) {
                throw new AssertionError(logged.err());
            }
        }
    }

    Path file(String name) {
        return folder.resolve(name);
    }

    void write(String name, String text) {
        write(name, text.getBytes(StandardCharsets.UTF_8));
    }

    void write(String name, byte[] bytes) {
        try {
            Files.createDirectories(file(name).getParent());
            Files.write(file(name), bytes);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    String read(String name) {
        try {
            return Files.readString(file(name));
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    List<String> journal() {
        return read("job/journal.jsonl").lines().toList();
    }

    /** Every file below the folder with its bytes in hexadecimal digits, and every folder. */
    SortedMap<String, String> everything() {
        try (Stream<Path> paths = Files.walk(folder)) {
            SortedMap<String, String> all = new TreeMap<>();
            for (Path path : paths.toList()) {
                all.put(
                        folder.relativize(path).toString(),
                        Files.isDirectory(path) ? "folder" : HexFormat.of().formatHex(Files.readAllBytes(path)));
            }
            return all;
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }
}
