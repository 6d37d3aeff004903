package everyblade.core.entry;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.English;
import everyblade.words.Words;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class ZonePhraseTest {

    private static final Zoning ZONING = new Zoning(
            List.of("root", "tip"), List.of("pressure", "suction"), List.of("leading", "middle", "trailing"));

    @Test
    void zonesAreToldInTheLargestPartsThatHoldNothingElse() {
        ZoneSet pressure = ZONING.side(0);
        ZoneSet leading = ZONING.chord(0);
        assertThat(told(pressure.union(ZONING.span(1).intersection(leading)))).isEqualTo("pressure and tip/leading");
        assertThat(told(pressure.intersection(leading))).isEqualTo("pressure/leading");
        assertThat(told(new ZoneSet(1))).isEqualTo("root/pressure/leading");
        assertThat(told(ZONING.all())).isEqualTo("everything");
    }

    private static String told(ZoneSet zones) {
        ZonePhrase phrase = ZonePhrase.of(ZONING, zones);
        assertThat(phrase.written()).isEqualTo(English.say(phrase));
        return English.say(phrase);
    }

    @Test
    void aZoneIsToldInThePersonsLanguageAndWrittenAsInFiles() {
        ZonePhrase tip = ZonePhrase.named("tip/pressure/leading");
        assertThat(Words.of(Locale.GERMAN).say(tip)).isEqualTo("Spitze/Druckseite/Vorderkante");
        assertThat(tip.written()).isEqualTo("tip/pressure/leading");
        assertThat(Words.of(Locale.GERMAN).say(ZonePhrase.named("s3/suction"))).isEqualTo("s3/Saugseite");
    }
}
