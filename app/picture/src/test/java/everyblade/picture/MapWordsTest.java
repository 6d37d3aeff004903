package everyblade.picture;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.coverage.Why;
import everyblade.spi.RowKind;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
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

class MapWordsTest {

    private static final Pattern PLACE = Pattern.compile("\\{[0-9]\\}");

    private static Map<String, String> bundle(String suffix) throws IOException {
        Properties properties = new Properties();
        try (InputStream in = MapWords.class.getResourceAsStream("map" + suffix + ".properties")) {
            properties.load(new InputStreamReader(in, StandardCharsets.UTF_8));
        }
        Map<String, String> bundle = new TreeMap<>();
        properties.forEach((key, text) -> bundle.put((String) key, (String) text));
        return bundle;
    }

    @Test
    void every_language_has_the_same_texts_with_the_same_places_to_fill_in() throws IOException {
        Map<String, String> english = bundle("");
        Map<String, String> german = bundle("_de");
        assertThat(german.keySet()).isEqualTo(english.keySet());
        english.forEach(
                (key, text) -> assertThat(places(german.get(key))).as(key).isEqualTo(places(text)));
    }

    private static Set<String> places(String text) {
        return PLACE.matcher(text).results().map(MatchResult::group).collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void everything_that_can_be_the_matter_has_a_name() throws IOException {
        Set<String> keys = bundle("").keySet();
        assertThat(Stream.of(Look.values()).flatMap(look -> Stream.of("look." + key(look), "meaning." + key(look))))
                .allMatch(keys::contains);
        assertThat(Why.values())
                .allSatisfy(why -> assertThat(MapWords.ENGLISH.why(why))
                        .as("the map says the same as the list of gaps")
                        .isEqualTo(why.words()));
        assertThat(Stream.of(RowKind.values()).map(kind -> "airfoils." + key(kind)))
                .allMatch(keys::contains);
        assertThat(Stream.of(Standing.Doubt.values()).map(doubt -> "doubt." + key(doubt)))
                .allMatch(keys::contains);
    }

    private static String key(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }

    @Test
    void zones_are_translated_word_by_word_and_numbered_bands_stay() {
        MapWords german = MapWords.of(Locale.GERMANY);
        assertThat(german.zone("tip/pressure/leading and root")).isEqualTo("Spitze/Druckseite/Vorderkante und Fuß");
        assertThat(german.zone("s3/pressure")).isEqualTo("s3/Druckseite");
        assertThat(MapWords.of(Locale.ITALIAN).zone("tip/pressure")).isEqualTo("tip/pressure");
    }

    @Test
    void what_was_counted_wrongly_is_told_in_one_or_several() {
        assertThat(MapWords.ENGLISH.say("lost", 1, "blade", "c3", 4, 9))
                .isEqualTo("Count lost by 1 blade of c3 between entries 4 and 9: what was watched between them is only"
                        + " maybe.");
        assertThat(MapWords.ENGLISH.say("noon")).isEqualTo("12 o'clock");
    }
}
