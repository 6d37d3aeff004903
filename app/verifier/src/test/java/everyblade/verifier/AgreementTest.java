package everyblade.verifier;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program and the verifier, which share no code, say the same of the same job. */
class AgreementTest {

    private static final int JOBS = Boolean.getBoolean("everyblade.campaign") ? 1_000 : 5;

    @TempDir
    Path folder;

    @Test
    void ofDeclaredRowsOfRandomJobs() throws IOException {
        Shop shop = new Shop(folder);
        int told = 0;
        int rows = 0;
        for (int seed = 0; seed < JOBS; seed++) {
            RandomShift shift = new RandomShift(seed);
            Files.createDirectories(folder.resolve("m" + seed));
            Files.writeString(folder.resolve("m" + seed + "/engine.json"), shift.model());
            String job = "job" + seed;
            shop.done("start", job, "--model", "m" + seed, "--serial", "1", "--task", "t", "--by", "A");
            shop.program(String.join("\n", shift.lines()) + "\n", "log", job, "--follow");

            Shop.Ran verified = shop.verifier(job);
            assertThat(verified.status()).as(verified.out()).isZero();
            assertThat(verified.out()).contains("text and meaning: all read");
            Job read = new Job(folder.resolve(job));
            Declared declared = new Declared(Flat.of(read.bytes("model/engine.json")), read.lines);
            JsonNode coverage = new ObjectMapper().readTree(shop.done("coverage", job, "--json"));
            for (JsonNode row : coverage.get("rows")) {
                rows++;
                Set<String> seen = declared.seen.get(row.get("row").textValue());
                if (seen != null) {
                    told++;
                    assertThat(counted(seen))
                            .as("job " + seed + " row " + row.get("row") + "\n" + String.join("\n", shift.lines()))
                            .isEqualTo(counted(row.get("airfoil")));
                }
            }
        }
        assertThat((double) told / rows)
                .as("share of the rows that the verifier tells")
                .isGreaterThan(0.6);
    }

    private static Map<Integer, Integer> counted(Set<String> seen) {
        Map<Integer, Integer> counts = new TreeMap<>();
        seen.forEach(cell -> counts.merge(Integer.valueOf(cell.split(" ")[0]), 1, Integer::sum));
        return counts;
    }

    private static Map<Integer, Integer> counted(JsonNode airfoils) {
        Map<Integer, Integer> counts = new TreeMap<>();
        for (JsonNode airfoil : airfoils) {
            if (airfoil.get("seen").intValue() > 0) {
                counts.put(airfoil.get("n").intValue(), airfoil.get("seen").intValue());
            }
        }
        return counts;
    }

    @Test
    void ofTheDemo() {
        Path demo = Path.of("..", "desktop", "src", "demo").toAbsolutePath().normalize();
        Path model = demo.resolve("../../../../engine-models/larkspur-4").normalize();
        String job = folder.resolve("demo").toString();
        Shop shop = new Shop(demo);
        shop.done("start", job, "--model", model.toString(), "--serial", "1", "--task", "t", "--by", "A");
        shop.done("log", job, "--file", "entries.txt");
        shop.done(
                "log",
                job,
                "c1 noaccess tip AND root/suction 2-3 because the lens was misted over",
                "noaccess unshown because no view shows it",
                "noaccess c2 unshown, because no view shows it",
                "settle 62 because the strut was in the way");

        Shop.Ran verified = shop.verifier(job);
        assertThat(verified.status()).as(verified.out()).isZero();
        String head = shop.done("verify", job).replaceAll("sound: (.*)\n", "chain: $1");
        assertThat(verified.out().lines()).contains(head, "text and meaning: all read");
        assertThat(Stream.of("c1", "s1", "gt"))
                .allSatisfy(
                        row -> assertThat(verified.out()).contains("not told: row " + row + ": its sight is computed"));

        shop.done("pack", job, "--out", folder.resolve("demo.zip").toString());
        assertThat(shop.verifier(folder.resolve("demo.zip").toString()).out()).isEqualTo(verified.out());
    }
}
