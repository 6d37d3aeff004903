package everyblade.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The runnable folder says what it holds, and under which licences. */
class LicencesIT {

    private static final Path RUNNABLE = Path.of(System.getProperty("everyblade.runnable"));
    private static final Path LICENCES = RUNNABLE.resolve("licences");

    /** The libraries that others made, by the names of their artifacts. */
    private static List<String> libraries() throws IOException {
        try (Stream<Path> files = Files.list(RUNNABLE.resolve("lib"))) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".jar") && !name.startsWith("everyblade-"))
                    .map(name -> name.replaceFirst("-[0-9][^-]*\\.jar$", ""))
                    .toList();
        }
    }

    private static String sha256(Path file) throws IOException, NoSuchAlgorithmException {
        return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file)));
    }

    @Test
    void ourOwnLieBesideTheProgram() {
        assertThat(RUNNABLE.resolve("LICENSE")).hasSameTextualContentAs(Path.of("..", "..", "LICENSE"));
        assertThat(RUNNABLE.resolve("NOTICE")).hasSameTextualContentAs(Path.of("..", "..", "NOTICE"));
    }

    @Test
    void eachLibraryIsNamedAndItsLicenceIsThere() throws IOException {
        String notice = Files.readString(RUNNABLE.resolve("NOTICE"));
        List<String> texts;
        try (Stream<Path> files = Files.list(LICENCES)) {
            texts = files.map(file -> file.getFileName().toString()).toList();
        }
        assertThat(libraries()).hasSizeGreaterThan(10).allSatisfy(library -> {
            assertThat(notice).contains(library);
            boolean inItsFolder = Files.exists(LICENCES.resolve(library).resolve("LICENSE"))
                    || Files.exists(LICENCES.resolve(library).resolve("LICENSE.txt"));
            boolean beside = texts.stream()
                    .filter(text -> text.endsWith(".txt"))
                    .anyMatch(text -> library.startsWith(text.split("-")[0]));
            boolean apache = notice.lines().anyMatch(line -> line.contains(library) && line.contains("Apache-2.0"));
            assertThat(inItsFolder || beside || apache && texts.contains("Apache-2.0.txt"))
                    .as("the licence of " + library)
                    .isTrue();
        });
    }

    /** Its plugin works only where Maven is online, which it is where nothing may be left out. */
    @Test
    void theBillOfMaterialsNamesEveryLibraryAndIsTheSameForTheSameBuild() throws Exception {
        Path file = RUNNABLE.resolve("bom.json");
        assumeTrue(Boolean.getBoolean("everyblade.bom.required") || Files.exists(file), "it was built offline");

        JsonNode bill = new ObjectMapper().readTree(file.toFile());

        assertThat(bill.get("bomFormat").textValue()).isEqualTo("CycloneDX");
        assertThat(bill.get("components").findValuesAsText("name")).containsAll(libraries());
        for (JsonNode component : bill.get("components")) {
            Path jar = RUNNABLE.resolve("lib/" + component.get("name").textValue() + "-"
                    + component.get("version").textValue() + ".jar");
            if (Files.exists(jar)) {
                assertThat(component.get("hashes").findValuesAsText("content"))
                        .as("of " + jar.getFileName())
                        .contains(sha256(jar));
            }
        }
        assertThat(bill.has("serialNumber")).isFalse();
        assertThat(bill.at("/metadata/timestamp").asText("none")).isIn("none", "", "2026-01-01T00:00:00Z");
    }
}
