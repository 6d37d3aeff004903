package everyblade.session.photo;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.finding.Length;
import everyblade.core.finding.Measured;
import everyblade.core.finding.measure.PixelLine;
import everyblade.core.finding.measure.Slant;
import everyblade.session.photo.PictureSize.Surface;
import everyblade.words.Words;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PictureSizeTest {

    private static final Words ENGLISH = Words.of(Locale.ENGLISH);

    private static final PixelLine TWO_HUNDRED = new PixelLine(0, 0, 200, 0);
    private static final PixelLine FOUR_HUNDRED = new PixelLine(0, 50, 400, 50);
    private static final Measured TWENTY =
            new Measured(Length.ofMillimetres(20), Optional.of(Length.ofMillimetres(0.2)));

    @Test
    void goesWithTheRatioOfTheLinesAndAddsUpTheSquaresOfWhatIsUncertain() {
        PictureSize size = PictureSize.of(TWO_HUNDRED, FOUR_HUNDRED, TWENTY, Surface.UNKNOWN, 1);

        assertThat(size.size().value().millimetres()).isEqualTo(10);
        // JCGM 100:2008, 5.1.6: relative √(2/200² + 2/400² + 0.005²) = 0.009354, twice that of 10 mm
        assertThat(size.size().plusMinus().orElseThrow().millimetres()).isEqualTo(0.187083);
        assertThat(size.text()).isEqualTo("10.00 ± 0.19 mm");
    }

    @ParameterizedTest
    @CsvSource({
        "1.4237, 0.1134, 1.42 ± 0.12 mm",
        "14.237, 2.41, 14.2 ± 2.5 mm",
        "142.37, 24, 142 ± 24 mm",
        "0.1, 0.0096, 0.1000 ± 0.0096 mm",
        "99.96, 0.95, 99.96 ± 0.95 mm"
    })
    void isToldToTheSecondDigitOfItsUncertaintyWhichIsRoundedUp(String size, String plusMinus, String text) {
        Measured measured =
                new Measured(new Length(new BigDecimal(size)), Optional.of(new Length(new BigDecimal(plusMinus))));

        assertThat(new PictureSize(measured, Map.of(), Optional.empty(), Optional.empty(), Optional.empty(), List.of())
                        .text())
                .isEqualTo(text);
    }

    @Test
    void saysThatItIsNotKnownHowSlantwiseThePlaceWasSeen() {
        assertThat(ENGLISH.say(PictureSize.of(TWO_HUNDRED, FOUR_HUNDRED, TWENTY, Surface.UNKNOWN, 1)
                        .warnings()))
                .singleElement()
                .asString()
                .contains("does not tell how this was seen");
    }

    @Test
    void warnsOfASlantAndIsLessCertainForIt() {
        Surface slanted = new Surface(Optional.of(new Slant(45, 30, 0)), Optional.empty(), Optional.empty());
        Surface square = new Surface(Optional.of(new Slant(0, 30, 0)), Optional.empty(), Optional.empty());

        PictureSize aslant = PictureSize.of(TWO_HUNDRED, FOUR_HUNDRED, TWENTY, slanted, 1);
        PictureSize upright = PictureSize.of(TWO_HUNDRED, FOUR_HUNDRED, TWENTY, square, 1);

        assertThat(upright.warnings()).isEmpty();
        assertThat(ENGLISH.say(aslant.warnings()))
                .anyMatch(warning -> warning.startsWith("the line is seen 45° from square"));
        assertThat(aslant.size().plusMinus().orElseThrow())
                .isGreaterThan(upright.size().plusMinus().orElseThrow());
    }

    @Test
    void isToldAsAShareOfChordAndSpanWhereTheseAreKnown() {
        Surface known = new Surface(
                Optional.of(new Slant(0, 30, 0)),
                Optional.of(Length.ofMillimetres(40)),
                Optional.of(Length.ofMillimetres(80)));

        assertThat(ENGLISH.say(PictureSize.of(TWO_HUNDRED, FOUR_HUNDRED, TWENTY, known, 1)
                        .shares()))
                .containsExactly("25.0 % of the chord (40 mm)", "12.5 % of the span (80 mm)");
    }
}
