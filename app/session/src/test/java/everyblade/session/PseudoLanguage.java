package everyblade.session;

import com.ibm.icu.text.MessagePattern;
import com.ibm.icu.text.MessagePattern.Part;
import everyblade.words.Words;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A language that nobody speaks: every letter of the English texts bears a mark, places stay. Whatever still reads as plain
 * letters did not come from the bundles. It is added as any language is, by one file of texts.
 */
public final class PseudoLanguage {

    /** One of the codes that ISO 639-2 reserves for private use. */
    public static final Locale LOCALE = new Locale("qps");

    private static final String PLAIN = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ";
    private static final String MARKED = "áƀćďéƒǧĥíĵķĺḿńóṕɋŕśťúṽẁẋýžÁɃĆĎÉƑǦĤÍĴĶĹḾŃÓṔɊŔŚŤÚṼẀẊÝŽ";
    private static final Pattern WORD = Pattern.compile("(?<![\\p{L}\\p{N}_])[A-Za-z]{4,}(?![\\p{L}\\p{N}_])");

    private PseudoLanguage() {}

    /** Adds it to what this test's class path holds, before anybody asks for it; gives its words. */
    public static Words addedFor(Class<?> test) {
        try (InputStream english = Words.class.getResourceAsStream("words.properties")) {
            Properties texts = new Properties();
            texts.load(new InputStreamReader(english, StandardCharsets.UTF_8));
            Path classes = Path.of(
                    test.getProtectionDomain().getCodeSource().getLocation().toURI());
            Path file = classes.resolve("everyblade/words/words_" + LOCALE.getLanguage() + ".properties");
            Files.createDirectories(file.getParent());
            List<String> lines = texts.stringPropertyNames().stream()
                    .sorted()
                    .map(key -> key + "=" + escaped(marked(texts.getProperty(key))))
                    .toList();
            Files.write(file, lines);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        } catch (URISyntaxException unlikely) {
            throw new IllegalStateException(unlikely);
        }
        return Words.of(LOCALE);
    }

    private static String escaped(String text) {
        String escaped = text.replace("\\", "\\\\").replace("\n", "\\n").replace("\t", "\\t");
        return escaped.startsWith(" ") ? "\\" + escaped : escaped;
    }

    /** What stands between the places of a text, marked. */
    private static String marked(String text) {
        MessagePattern pattern = new MessagePattern(text);
        StringBuilder marked = new StringBuilder(text);
        int depth = 0;
        int from = 0;
        boolean[] isText = new boolean[pattern.countParts() + 1];
        for (int i = 0; i < pattern.countParts(); i++) {
            Part part = pattern.getPart(i);
            for (int at = from; isText[depth] && at < part.getIndex(); at++) {
                int letter = PLAIN.indexOf(text.charAt(at));
                if (letter >= 0) {
                    marked.setCharAt(at, MARKED.charAt(letter));
                }
            }
            from = part.getLimit();
            switch (part.getType()) {
                case MSG_START -> isText[++depth] = true;
                case ARG_START -> isText[++depth] = false;
                case MSG_LIMIT, ARG_LIMIT -> depth--;
                default -> {
                    // What stands between is no text.
                }
            }
        }
        return marked.toString();
    }

    /** Plain words of four letters and more in a text, but for these. */
    public static Set<String> plainWords(String text, Collection<String> known) {
        return WORD.matcher(text)
                .results()
                .map(MatchResult::group)
                .filter(word -> !known.contains(word))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** The words of texts, to be known. */
    public static Set<String> words(String... texts) {
        return Stream.of(texts)
                .flatMap(text -> WORD.matcher(text).results().map(MatchResult::group))
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
