package everyblade.core;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is computed is told as facts; sentences are made by the module of words alone. */
class FactsNotSentencesTest {

    private static final Path SOURCES = Path.of("src/main/java/everyblade/core");

    /** Entries as they are typed, and names of two words in them. */
    private static final Set<String> ENTRIES =
            Set.of("tool out ", "tool in ", "again in ", " mm at ", "scope serial", "eye test", "skip on ", "feed on ");

    private static final Pattern TWO_WORDS = Pattern.compile("\\p{L} +\\p{L}");

    /** A comment, a character, or a text. */
    private static final Pattern TOKEN =
            Pattern.compile("/\\*.*?\\*/|//[^\n]*|'(?:[^'\\\\]|\\\\.)+'|\"((?:[^\"\\\\]|\\\\.)*)\"", Pattern.DOTALL);

    @ParameterizedTest
    @ValueSource(strings = {"angle", "doubt", "entry", "turning"})
    void noTextWithABlankBetweenTwoWordsReachesAPerson(String area) throws IOException {
        List<String> sentences = new ArrayList<>();
        try (Stream<Path> files = Files.walk(SOURCES.resolve(area))) {
            for (Path file :
                    files.filter(path -> path.toString().endsWith(".java")).toList()) {
                sentences.addAll(sentences(file));
            }
        }
        assertThat(sentences).isEmpty();
    }

    private static List<String> sentences(Path file) throws IOException {
        String source = Files.readString(file);
        List<String> sentences = new ArrayList<>();
        Matcher token = TOKEN.matcher(source);
        while (token.find()) {
            String text = token.group(1);
            if (text != null
                    && TWO_WORDS.matcher(text).find()
                    && !ENTRIES.contains(text)
                    && !isForProgrammers(source, token.start())) {
                sentences.add(file.getFileName() + ": " + text);
            }
        }
        return sentences;
    }

    /** Whether the statement up to here makes one of Java's own exceptions, which no person is told. */
    private static boolean isForProgrammers(String source, int at) {
        String before = source.substring(0, at);
        int begin = Math.max(before.lastIndexOf(';'), Math.max(before.lastIndexOf('{'), before.lastIndexOf('}')));
        return Pattern.compile("new (Illegal\\w+Exception|AssertionError|UncheckedIOException)\\(")
                .matcher(before.substring(begin + 1))
                .find();
    }
}
