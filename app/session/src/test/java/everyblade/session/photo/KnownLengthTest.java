package everyblade.session.photo;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.finding.Length;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class KnownLengthTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "38; 38; -1",
                "38,5 mm; 38.5; -1",
                "0,125 mm; 0.125; -1",
                "38 ± 0.2; 38; 0.2",
                "38mm±0.2mm; 38; 0.2",
                "1.5in+-0.01; 38.1; 0.254",
                " 1 ± 0.1 in ; 25.4; 2.54"
            })
    void isReadAsPeopleWriteIt(String text, double mm, double plusMinus) {
        assertThat(KnownLength.of(text)).hasValueSatisfying(length -> {
            assertThat(length.value().millimetres()).isEqualTo(mm);
            assertThat(length.plusMinus().map(Length::millimetres).orElse(-1.0)).isEqualTo(plusMinus);
        });
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "mm",
                "-3",
                "0",
                "0 mm",
                "1 in ± 2 mm",
                "3 cm",
                "1e3",
                "3 ±",
                "4 mm long",
                "1,250 mm",
                "38 ± 1,250"
            })
    void isNothingElse(String text) {
        assertThat(KnownLength.of(text)).as(text.toUpperCase(Locale.ROOT)).isEmpty();
    }
}
