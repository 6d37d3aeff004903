package everyblade.words;

import static org.assertj.core.api.Assertions.assertThat;

import com.ibm.icu.text.MessagePattern;
import com.ibm.icu.text.MessagePattern.Part;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class BundlesTest {

    /** Names, units, signs and words that both languages share, and patterns that are nothing but places. */
    private static final Set<String> SAME = Set.of(
            "keyname.escape",
            "keyname.tab",
            "keyname.up",
            "keyname.down",
            "keyname.plus",
            "keyname.minus",
            "entry.Kind.EROSION",
            "start.title",
            "finding.plusMinus",
            "share.numbers",
            "where.static",
            "author.shares.zone",
            "left.what",
            "closing.toDo",
            "picture.zone",
            "picture.letterKnown",
            "picture.letterSize",
            "finding.ShownLength",
            "finding.Figure.Value.Size",
            "map.row.title",
            "unrolled.zone",
            "report.plan.title");

    private static final Set<String> ENGLISH_WORDS = Set.of(
            "the", "and", "is", "of", "to", "not", "with", "blade", "blades", "turn", "look", "scope", "tip", "row",
            "seen", "left", "map", "entry", "entries", "job", "which", "this", "that", "for", "from", "only");

    /** Options, commands and the names of what is given to them are typed the same in every language. */
    private static final Pattern COMMAND =
            Pattern.compile("--[a-z-]+( [a-z]+\\b)?|everyblade [a-z-]+( [a-z]+\\b)?|\\b[A-Z]{3,}\\b");

    private static Map<String, String> bundle(String suffix) {
        Properties properties = new Properties();
        try (InputStream in = Words.class.getResourceAsStream("words" + suffix + ".properties")) {
            properties.load(new InputStreamReader(in, StandardCharsets.UTF_8));
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
        Map<String, String> bundle = new TreeMap<>();
        properties.forEach((key, text) -> bundle.put((String) key, (String) text));
        return bundle;
    }

    @Test
    void everyLanguageHasEveryTextAndNoOther() {
        assertThat(bundle("").keySet())
                .hasSizeGreaterThan(200)
                .isEqualTo(bundle("_de").keySet());
    }

    /** What a file of texts may not use of the syntax, such as texts of several lines, would show here. */
    @Test
    void everyTextIsReadOnItsOwnAsItIsReadWithAllOthers() throws IOException {
        for (String suffix : List.of("", "_de")) {
            try (InputStream in = Words.class.getResourceAsStream("words" + suffix + ".properties")) {
                TextFile texts = new TextFile(in.readAllBytes());
                Map<String, String> read = new TreeMap<>();
                texts.keySet().forEach(key -> read.put(key, texts.getString(key)));

                assertThat(read).isEqualTo(bundle(suffix));
            }
        }
    }

    @Test
    void everyTextHasTheSamePlacesToFillIn() {
        Map<String, String> german = bundle("_de");
        bundle("")
                .forEach((key, text) ->
                        assertThat(places(german.get(key))).as(key).isEqualTo(places(text)));
    }

    private static Set<String> places(String text) {
        MessagePattern pattern = new MessagePattern(text);
        Set<String> places = new TreeSet<>();
        for (int i = 0; i < pattern.countParts(); i++) {
            Part.Type type = pattern.getPart(i).getType();
            if (type == Part.Type.ARG_NAME || type == Part.Type.ARG_NUMBER) {
                places.add(pattern.getSubstring(pattern.getPart(i)));
            }
        }
        return places;
    }

    @Test
    void noEnglishIsLeftInTheGermanTexts() {
        Map<String, String> english = bundle("");
        bundle("_de").forEach((key, text) -> {
            if (!SAME.contains(key)) {
                assertThat(text).as(key).matches(same -> !same.equals(english.get(key)) || !hasWords(same));
            }
            // The words of entries stay as they are; in straight quotes they stand in the texts as examples.
            String own = spoken(text).replaceAll("\"[^\"]*\"", "");
            List<String> words = List.of(own.toLowerCase(Locale.GERMAN).split("[^\\p{L}]+"));
            assertThat(words).as(key).doesNotContainAnyElementsOf(ENGLISH_WORDS);
        });
    }

    private static boolean hasWords(String text) {
        return spoken(text).matches("(?s).*\\p{L}{2}.*");
    }

    /** A text without the names of its places and what chooses among words. */
    private static String spoken(String text) {
        MessagePattern pattern = new MessagePattern(text);
        StringBuilder spoken = new StringBuilder();
        int depth = 0;
        int from = 0;
        boolean[] isText = new boolean[pattern.countParts() + 1];
        for (int i = 0; i < pattern.countParts(); i++) {
            Part part = pattern.getPart(i);
            if (isText[depth]) {
                spoken.append(text, from, part.getIndex()).append(' ');
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
        return COMMAND.matcher(spoken).replaceAll(" ");
    }

    @Test
    void everyTextSaysSomethingAndCanBeRead() {
        List.of("", "_de")
                .forEach(suffix -> bundle(suffix).forEach((key, text) -> {
                    assertThat(text).as(key).isNotEmpty();
                    assertThat(new MessagePattern(text).countParts()).as(key).isPositive();
                    assertThat(text.replace("''", ""))
                            .as("%s: an apostrophe is written twice", key)
                            .doesNotContain("'");
                }));
    }
}
