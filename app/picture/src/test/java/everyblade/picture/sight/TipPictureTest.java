package everyblade.picture.sight;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.angle.Turn;
import everyblade.core.sight.Criteria;
import everyblade.core.surface.UnusableShape;
import everyblade.picture.scene.Theme;
import everyblade.words.Words;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class TipPictureTest {

    private static final int SIZE = 300;

    private static final Vantage VANTAGE =
            Vantages.coarse(Vantages.of("larkspur-4", "in-c1", "low", Criteria.USUAL), SIZE);

    private static TipPicture picture;
    private static TipField field;

    @BeforeAll
    static void drawn() throws UnusableShape {
        picture = TipPicture.of(VANTAGE, Turn.ZERO, Words.of(Locale.ENGLISH));
        field = TipField.of(VANTAGE, new FacetJudge(VANTAGE), Turn.ofDegrees(7));
    }

    @Test
    void the_same_bytes_come_in_every_locale() throws UnusableShape {
        Locale before = Locale.getDefault();
        byte[] usual = picture.png(Theme.LIGHT);
        try {
            Locale.setDefault(Locale.forLanguageTag("hi-IN-u-nu-deva"));
            assertThat(TipPicture.of(VANTAGE, Turn.ZERO, Words.of(Locale.ENGLISH))
                            .png(Theme.LIGHT))
                    .isEqualTo(usual);
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void airfoils_in_view_are_numbered_from_where_the_first_stands() throws UnusableShape {
        assertThat(picture.airfoils()).containsExactly(1, 2, 17, 18, 19);
        // Three blades on, the same picture has numbers three lower.
        assertThat(TipPicture.of(VANTAGE, Turn.ofFraction(3, 19), Words.of(Locale.ENGLISH))
                        .airfoils())
                .containsExactly(14, 15, 16, 17, 18);
    }

    @Test
    void numbers_of_a_row_that_counts_the_other_way_rise_anticlockwise() {
        Vantage turbine = Vantages.of("larkspur-4", "ex-pt", "mid", Criteria.USUAL);

        assertThat(turbine.clock(1, Turn.ofDegrees(90)).degrees()).isEqualTo(90 - 360.0 / 50);
        assertThat(VANTAGE.clock(1, Turn.ofDegrees(90)).wrapped())
                .isEqualTo(Turn.ofDegrees(90).plus(Turn.ofFraction(1, 19)));
    }

    @Test
    void a_number_lies_on_its_airfoil_and_on_no_other_number() {
        List<TipNumbers.Number> numbers = TipNumbers.of(field, 19);

        assertThat(numbers).hasSizeGreaterThan(2);
        for (TipNumbers.Number number : numbers) {
            assertThat(field.airfoil((int) number.x(), (int) number.y())).isEqualTo(number.airfoil());
            assertThat(numbers.stream()
                            .filter(other ->
                                    Math.hypot(other.x() - number.x(), other.y() - number.y()) < 2 * TipNumbers.RADIUS))
                    .containsExactly(number);
        }
    }

    @Test
    void the_field_is_round_and_has_the_scope_tip_s_pixels() {
        BufferedImage image = field.image();

        assertThat(image.getWidth()).isEqualTo(SIZE);
        assertThat(image.getHeight()).isEqualTo(SIZE);
        assertThat(image.getRGB(3, 3) >>> 24).isZero();
        assertThat(image.getRGB(SIZE / 2, 1) >>> 24).isEqualTo(255);
    }

    @Test
    void what_is_grazing_is_toned_otherwise_than_what_is_in_sight() throws UnusableShape {
        Criteria none = new Criteria(Turn.ZERO, Map.of(), OptionalDouble.empty());
        Vantage lenient = Vantages.coarse(Vantages.of("larkspur-4", "in-c1", "low", none), SIZE);
        TipField all = TipField.of(lenient, new FacetJudge(lenient), Turn.ofDegrees(7));

        assertThat(field.tones()).contains(Tone.IN_SIGHT, Tone.GRAZING, Tone.WALL);
        assertThat(coloured(field.image())).isGreaterThan(SIZE * SIZE / 100);
        assertThat(coloured(all.image())).isLessThan(coloured(field.image()) / 10);
    }

    /** Metal is grey; only patterns have colour. */
    private static long coloured(BufferedImage image) {
        return Arrays.stream(image.getRGB(0, 0, SIZE, SIZE, null, 0, SIZE))
                .filter(rgb -> (rgb >> 16 & 255) - (rgb & 255) > 50)
                .count();
    }

    @Test
    void the_dark_sheet_is_dark() throws IOException {
        assertThat(ImageIO.read(new ByteArrayInputStream(picture.png(Theme.DARK)))
                                .getRGB(2, 2)
                        & 0xffffff)
                .isEqualTo(0x10161d);
        assertThat(ImageIO.read(new ByteArrayInputStream(picture.png(Theme.LIGHT)))
                                .getRGB(2, 2)
                        & 0xffffff)
                .isEqualTo(0xffffff);
    }

    @Test
    void tones_of_what_is_out_of_sight_differ_without_colour() {
        // Each pattern of its own, and all of them darker than what is in sight.
        List<Tone> marked = List.of(Tone.GRAZING, Tone.OUT_OF_RANGE, Tone.TOO_COARSE, Tone.HIDDEN);
        for (Tone tone : marked) {
            assertThat(brightness(tone, 1.0)).isLessThan(brightness(Tone.IN_SIGHT, 1.0));
            for (Tone other : marked) {
                assertThat(pattern(tone).equals(pattern(other))).isEqualTo(tone == other);
            }
        }
    }

    private static double brightness(Tone tone, double light) {
        double sum = 0;
        for (int i = 0; i < 256; i++) {
            sum += tone.at(light, i % 16, i / 16) >> 8 & 255;
        }
        return sum / 256;
    }

    private static String pattern(Tone tone) {
        StringBuilder pattern = new StringBuilder();
        for (int i = 0; i < 64; i++) {
            pattern.append(tone.at(1, i % 8, i / 8) == tone.at(1, 4.5, 1.5) ? ' ' : '#');
        }
        return pattern.toString();
    }
}
