package everyblade.picture;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.turning.LostCount;
import everyblade.spi.RowKind;
import everyblade.words.Words;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class MapWordsTest {

    @Test
    void everything_that_can_be_the_matter_has_a_name() {
        Words words = Words.of(Locale.ENGLISH);
        assertThat(Stream.of(Look.values()).flatMap(look -> Stream.of("look." + key(look), "meaning." + key(look))))
                .allMatch(key -> words.has("map." + key));
        assertThat(Stream.of(RowKind.values()).map(kind -> "airfoils." + key(kind)))
                .allMatch(key -> words.has("map." + key));
        assertThat(Stream.of(Standing.Doubt.values()).map(doubt -> "doubt." + key(doubt)))
                .allMatch(key -> words.has("map." + key));
    }

    private static String key(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }

    @Test
    void zones_are_translated_word_by_word_and_numbered_bands_stay() {
        MapWords german = MapWords.of(Locale.GERMANY);
        assertThat(german.zone("tip/pressure/leading")).isEqualTo("Spitze/Druckseite/Vorderkante");
        assertThat(german.zone("s3/pressure")).isEqualTo("s3/Druckseite");
        assertThat(MapWords.of(Locale.ITALIAN).zone("tip/pressure")).isEqualTo("tip/pressure");
    }

    @Test
    void what_was_counted_wrongly_is_told_in_one_or_several() {
        assertThat(MapWords.of(Locale.ENGLISH).say(new LostCount(1, RowKind.ROTOR, "c3", 4, 9)))
                .isEqualTo("Count lost by 1 blade of c3 between entries 4 and 9: what was watched between them is only"
                        + " maybe seen.");
        assertThat(MapWords.of(Locale.ENGLISH).say(new LostCount(2, RowKind.STATOR, "s1", 4, 9)))
                .startsWith("Count lost by 2 vanes of s1 ");
        assertThat(MapWords.of(Locale.ENGLISH).say("noon")).isEqualTo("12 o'clock");
    }
}
