package everyblade.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;

class WordsTest {

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
