package everyblade.desktop.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class WordsTest {

    private static final Pattern PLACE = Pattern.compile("\\{[0-9]\\}");
    private static final Pattern LITERAL_KEY = Pattern.compile("\\bsay\\(\\s*\"([a-zA-Z.]+[a-zA-Z])\"");

    /** Names, units, signs and words that both languages share. */
    private static final Set<String> SAME = Set.of(
            "keyname.escape",
            "keyname.tab",
            "keyname.up",
            "keyname.down",
            "keyname.plus",
            "keyname.minus",
            "kind.erosion",
            "start.title",
            "finding.plusMinus",
            "share.numbers",
            "where.static",
            "author.shares.zone",
            "left.what",
            "closing.toDo",
            "picture.zone",
            "picture.letterKnown",
            "picture.letterSize");

    private static final Set<String> ENGLISH_WORDS = Set.of(
            "the", "and", "is", "of", "to", "not", "with", "blade", "blades", "turn", "look", "scope", "tip", "row",
            "seen", "left", "map", "entry", "entries", "job", "which", "this", "that", "for", "from", "only");

    private static Map<String, String> bundle(String suffix) {
        Properties properties = new Properties();
        try (InputStream in = Words.class.getResourceAsStream("words" + suffix + ".properties")) {
            properties.load(new InputStreamReader(in, StandardCharsets.UTF_8));
        } catch (IOException failure) {
            throw new java.io.UncheckedIOException(failure);
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

    @Test
    void everyTextHasTheSamePlacesToFillIn() {
        Map<String, String> german = bundle("_de");
        bundle("")
                .forEach((key, text) ->
                        assertThat(places(german.get(key))).as(key).isEqualTo(places(text)));
    }

    private static Set<String> places(String text) {
        return PLACE.matcher(text).results().map(MatchResult::group).collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void noEnglishIsLeftInTheGermanTexts() {
        Map<String, String> english = bundle("");
        bundle("_de").forEach((key, text) -> {
            if (!SAME.contains(key)) {
                assertThat(text).as(key).isNotEqualTo(english.get(key));
            }
            List<String> words = List.of(text.toLowerCase(Locale.GERMAN).split("[^\\p{L}]+"));
            // The words of entries stay as they are, and stand in the texts as examples.
            assertThat(words).as(key).doesNotContainAnyElementsOf(ENGLISH_WORDS);
        });
    }

    @Test
    void noTextHasAnApostropheThatWouldSwallowItsPlaces() {
        Stream.of("", "_de")
                .forEach(suffix -> bundle(suffix)
                        .forEach((key, text) ->
                                assertThat(text).as(key).doesNotContain("'").isNotBlank()));
    }

    @Test
    void everyTextThatTheProgramAsksForIsThere() throws IOException {
        Set<String> asked = new TreeSet<>();
        try (Stream<Path> sources = Files.walk(Path.of("src/main/java/everyblade/desktop"))) {
            for (Path source :
                    sources.filter(path -> path.toString().endsWith(".java")).toList()) {
                LITERAL_KEY.matcher(Files.readString(source)).results().forEach(match -> asked.add(match.group(1)));
            }
        }
        assertThat(asked).hasSizeGreaterThan(60);
        assertThat(bundle("").keySet()).containsAll(asked);
    }

    @Test
    void numbersAreWrittenAsPeopleOfTheLanguageDo() {
        assertThat(Words.of(Locale.GERMANY).number(12.25, 1)).isEqualTo("12,2");
        assertThat(Words.of(Locale.UK).number(12.5, 1)).isEqualTo("12.5");
        assertThat(Words.of(Locale.UK).number(-0.04, 1)).isEqualTo("0");
        assertThat(Words.of(Locale.UK).signed(-12.5, 1)).isEqualTo("−12.5");
    }

    @Test
    void aShareIsNeverRoundedUpNorToldAsNothingUnlessItIs() {
        Words words = Words.of(Locale.ENGLISH);
        assertThat(words.percent(0)).isEqualTo("0 %");
        assertThat(words.percent(0.001)).isEqualTo("1 %");
        assertThat(words.percent(0.9999)).isEqualTo("99 %");
        assertThat(words.percent(0.166)).isEqualTo("16 %");
        assertThat(words.percent(0.29)).isEqualTo("29 %");
        assertThat(words.percent(1)).isEqualTo("100 %");
    }

    @Test
    void wholeNumbersAreNotGrouped() {
        assertThat(Words.of(Locale.ENGLISH).say("effect.void", 1234)).contains("1234");
    }

    @Test
    void englishIsSpokenToWhoeverSpeaksAnotherLanguage() {
        assertThat(Words.of(Locale.JAPANESE).say("act.look")).isEqualTo("Look");
        assertThat(Words.of(Locale.forLanguageTag("de-AT")).say("act.look")).isEqualTo("Schauen");
    }
}
