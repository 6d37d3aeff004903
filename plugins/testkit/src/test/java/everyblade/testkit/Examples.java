package everyblade.testkit;

import everyblade.json.EngineJsonReader;
import everyblade.json.Reading;
import everyblade.spi.EngineModel;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Engine models for tests: those that explain the codes of problems, those that come with the program, and a small one. */
final class Examples {

    private static final Path CODES = Path.of("..", "json", "examples");

    /** A rotor of twelve blades seen through one window. */
    private static final String RING = """
            { "schema": "everyblade/engine-model/1", "id": "ring", "name": "Ring", "notice": "Invented.",
              "rows": [ { "id": "r", "kind": "rotor", "count": 12, "landmarks": [ { "airfoil": 1, "what": "etched" } ] } ],
              "scopeTips": [ { "id": "tip", "cone": 60, "near": 4, "far": 60, "pixels": 640, "diameter": 4, "hottest": 75 } ],
              "views": [ { "id": "v", "row": "r", "scopeTip": "tip", "reference": 90,
                           "window": { "halfWidth": 5, "shows": ["root", "tip"] } } ] }
            """;

    private Examples() {}

    static EngineModel ring() {
        return ring("", "");
    }

    /** The ring with something else in its text. */
    static EngineModel ring(String instead, String of) {
        String text = of.isEmpty() ? RING : RING.replace(of, instead);
        return ((Reading.Read) EngineJsonReader.read("ring", text.getBytes(StandardCharsets.UTF_8))).model();
    }

    static Evidence bad(String code) {
        return of(CODES.resolve(code).resolve("bad"));
    }

    static Evidence good(String code) {
        return of(CODES.resolve(code).resolve("good"));
    }

    static List<Path> shipped() {
        return Stream.of("corncrake-12", "larkspur-4", "tansy-a1")
                .map(id -> Path.of("..", "..", "engine-models", id))
                .toList();
    }

    static Evidence of(Path folder) {
        Reading reading = EngineJsonReader.read(folder.resolve(EngineJsonReader.FILE));
        List<EngineModel> handed =
                reading instanceof Reading.Read read ? List.of(read.model(), read.model()) : List.of();
        return Evidence.of(reading, handed, files(folder));
    }

    private static Map<String, byte[]> files(Path folder) {
        Map<String, byte[]> files = new HashMap<>();
        try (Stream<Path> list = Files.list(folder)) {
            for (Path file : list.toList()) {
                files.put(file.getFileName().toString(), Files.readAllBytes(file));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return files;
    }
}
