package everyblade.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Which languages there are is told by the files that are there. */
class LanguageFilesTest {

    private static final List<String> NAMES = List.of(
            "words.properties",
            "words_it.properties",
            "words_de.properties",
            "words_long.properties",
            "other_fr.properties");
    private static final List<Locale> LANGUAGES = List.of(Locale.ENGLISH, Locale.GERMAN, Locale.ITALIAN);

    @TempDir
    private Path folder;

    @Test
    void besideTheEnglishOneInAFolder() throws IOException {
        for (String name : NAMES) {
            Files.createFile(folder.resolve(name));
        }
        URL english = folder.resolve("words.properties").toUri().toURL();
        assertThat(LanguageFiles.languages(english)).isEqualTo(LANGUAGES);
    }

    @Test
    void besideTheEnglishOneInAJar() throws IOException {
        Path jar = folder.resolve("words.jar");
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(jar))) {
            for (String name : NAMES) {
                zip.putNextEntry(new ZipEntry("some/where/" + name));
            }
        }
        URL english = URI.create("jar:" + jar.toUri() + "!/some/where/words.properties")
                .toURL();
        assertThat(LanguageFiles.languages(english)).isEqualTo(LANGUAGES);
    }

    @Test
    void areEnglishAndGermanNow() {
        assertThat(Words.languages()).containsExactly(Locale.ENGLISH, Locale.GERMAN);
    }
}
