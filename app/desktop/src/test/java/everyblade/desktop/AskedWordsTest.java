package everyblade.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.words.Words;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class AskedWordsTest {

    private static final Pattern LITERAL_KEY = Pattern.compile("\\bwords\\.say\\(\\s*\"([a-zA-Z.]+[a-zA-Z])\"");

    @Test
    void everyTextThatTheProgramAsksForIsThere() throws IOException {
        Set<String> asked = new TreeSet<>();
        for (String module : List.of("session", "cli", "window")) {
            try (Stream<Path> sources = Files.walk(Path.of("..", module, "src", "main", "java"))) {
                for (Path source : sources.filter(path -> path.toString().endsWith(".java"))
                        .toList()) {
                    LITERAL_KEY.matcher(Files.readString(source)).results().forEach(match -> asked.add(match.group(1)));
                }
            }
        }
        Words words = Words.of(Locale.ENGLISH);
        assertThat(asked).hasSizeGreaterThan(60).allMatch(words::has);
    }
}
