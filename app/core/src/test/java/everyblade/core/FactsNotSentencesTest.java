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
import org.junit.jupiter.api.Test;

/** What is computed is told as facts; sentences are made by the module of words alone. */
class FactsNotSentencesTest {

    private static final Path SOURCES = Path.of("src/main/java/everyblade/core");

    /** Entries as they are typed, names in them of two words, and values of JSON: the same in every language. */
    private static final Set<String> SAME_IN_ALL_LANGUAGES = Set.of(
            "tool out ",
            "tool in ",
            "again in ",
            " mm at ",
            "scope serial",
            "eye test",
            "skip on ",
            "feed on ",
            "note review ",
            "camera clock",
            "not watched",
            "count lost");

    /** A file's format, and what is looked for in a person's own words. */
    private static final Set<String> OTHER_TEXTS = Set.of("PlyText.java", "ReasonGiven.java");

    private static final Pattern TWO_WORDS = Pattern.compile("\\p{L} +\\p{L}");

    /** A comment, a character, or a text. */
    private static final Pattern TOKEN =
            Pattern.compile("/\\*.*?\\*/|//[^\n]*|'(?:[^'\\\\]|\\\\.)+'|\"((?:[^\"\\\\]|\\\\.)*)\"", Pattern.DOTALL);

    @Test
    void noTextWithABlankBetweenTwoWordsReachesAPerson() throws IOException {
        List<String> sentences = new ArrayList<>();
        try (Stream<Path> files = Files.walk(SOURCES)) {
            for (Path file : files.filter(path -> path.toString().endsWith(".java"))
                    .filter(path -> !OTHER_TEXTS.contains(path.getFileName().toString()))
                    .toList()) {
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
                    && !SAME_IN_ALL_LANGUAGES.contains(text.replace("\\\"", ""))
                    && !isAsTyped(source, token.start())
                    && !isForProgrammers(source, token.start())) {
                sentences.add(file.getFileName() + ": " + text);
            }
        }
        return sentences;
    }

    /** Whether what follows is how an entry is typed, on the sheet of entries. */
    private static boolean isAsTyped(String source, int at) {
        return source.startsWith(".usage(", at - ".usage(".length());
    }

    /** Whether the statement up to here makes an exception, which no person is told. */
    private static boolean isForProgrammers(String source, int at) {
        String before = source.substring(0, at);
        int begin = Math.max(before.lastIndexOf(';'), Math.max(before.lastIndexOf('{'), before.lastIndexOf('}')));
        return Pattern.compile(
                        "(new (Illegal\\w+|Cancellation|UncheckedIO)Exception|new AssertionError|super|require)\\(")
                .matcher(before.substring(begin + 1))
                .find();
    }
}
