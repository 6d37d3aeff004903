package everyblade.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import everyblade.picture.scene.Colour;
import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Theme;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PaletteTest {

    /**
     * Dichromats as simulated on linear sRGB by Machado, Oliveira and Fernandes, A Physiologically-based Model for
     * Simulation of Color Vision Deficiency, IEEE TVCG 15 (2009), severity 1.0.
     */
    private enum Eyes {
        USUAL(1, 0, 0, 0, 1, 0, 0, 0, 1),
        PROTANOPE(0.152286, 1.052583, -0.204868, 0.114503, 0.786281, 0.099216, -0.003882, -0.048116, 1.051998),
        DEUTERANOPE(0.367322, 0.860646, -0.227968, 0.280085, 0.672501, 0.047413, -0.011820, 0.042940, 0.968881),
        TRITANOPE(1.255528, -0.076749, -0.178779, -0.078411, 0.930809, 0.147602, 0.004733, 0.691367, 0.303900);

        private final double[] matrix;

        Eyes(double... matrix) {
            this.matrix = matrix;
        }

        double[] sees(Colour colour) {
            double[] linear = linear(colour);
            double[] seen = new double[3];
            for (int i = 0; i < 3; i++) {
                for (int j = 0; j < 3; j++) {
                    seen[i] += matrix[3 * i + j] * linear[j];
                }
                seen[i] = Math.max(0, Math.min(1, seen[i]));
            }
            return seen;
        }
    }

    private static double[] linear(Colour colour) {
        return Arrays.stream(new int[] {colour.red(), colour.green(), colour.blue()})
                .mapToDouble(part -> part / 255.0)
                .map(part -> part <= 0.04045 ? part / 12.92 : Math.pow((part + 0.055) / 1.055, 2.4))
                .toArray();
    }

    /** WCAG 2.2, definitions of relative luminance and contrast ratio. */
    private static double contrast(Colour a, Colour b) {
        double one = luminance(linear(a)) + 0.05;
        double other = luminance(linear(b)) + 0.05;
        return Math.max(one, other) / Math.min(one, other);
    }

    private static double luminance(double[] linear) {
        return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2];
    }

    /** CIE 15, CIELAB under D65. */
    private static double[] lab(double[] rgb) {
        double x = root((0.4124 * rgb[0] + 0.3576 * rgb[1] + 0.1805 * rgb[2]) / 0.95047);
        double y = root(luminance(rgb));
        double z = root((0.0193 * rgb[0] + 0.1192 * rgb[1] + 0.9505 * rgb[2]) / 1.08883);
        return new double[] {116 * y - 16, 500 * (x - y), 200 * (y - z)};
    }

    private static double root(double t) {
        return t > 216.0 / 24389 ? Math.cbrt(t) : (24389.0 / 27 * t + 16) / 116;
    }

    private static double apart(Eyes eyes, Colour a, Colour b) {
        double[] one = lab(eyes.sees(a));
        double[] other = lab(eyes.sees(b));
        return Math.sqrt(
                Math.pow(one[0] - other[0], 2) + Math.pow(one[1] - other[1], 2) + Math.pow(one[2] - other[2], 2));
    }

    private static Colour grey(int part) {
        return new Colour(part, part, part);
    }

    @Test
    void contrast_is_that_of_wcag() {
        assertThat(contrast(grey(0), grey(255))).isCloseTo(21, within(1e-9));
        // WCAG 2.2, success criterion 1.4.3: the darkest and the lightest grey about 4.5 on white.
        assertThat(contrast(grey(0x76), grey(255))).isCloseTo(4.5422, within(1e-4));
        assertThat(contrast(grey(0x77), grey(255))).isCloseTo(4.4781, within(1e-4));
    }

    @ParameterizedTest
    @EnumSource(Theme.class)
    void every_mark_stands_out_from_the_paper_and_from_what_lies_under_it(Theme theme) {
        // WCAG 2.2, success criterion 1.4.11: 3 : 1 for parts of pictures.
        for (Look look : Look.values()) {
            assertThat(contrast(theme.colour(look.mark()), theme.colour(Ink.PAPER)))
                    .as(look.words(MapWords.of(Locale.ENGLISH)))
                    .isGreaterThanOrEqualTo(3);
            assertThat(contrast(theme.colour(look.mark()), theme.colour(look.wash())))
                    .as(look.words(MapWords.of(Locale.ENGLISH)))
                    .isGreaterThanOrEqualTo(3);
        }
    }

    @ParameterizedTest
    @EnumSource(Theme.class)
    void every_cell_is_outlined_against_its_neighbours_whatever_they_are(Theme theme) {
        for (Look look : Look.values()) {
            Ink under = look.pattern() == Pattern.SOLID ? look.mark() : look.wash();
            Ink outline = look.pattern() == Pattern.SOLID ? look.wash() : Ink.FAINT;
            assertThat(contrast(theme.colour(under), theme.colour(outline)))
                    .as(look.words(MapWords.of(Locale.ENGLISH)))
                    .isGreaterThanOrEqualTo(3);
        }
    }

    @ParameterizedTest
    @EnumSource(Theme.class)
    void words_can_be_read(Theme theme) {
        // WCAG 2.2, success criterion 1.4.3: 4.5 : 1 for text.
        for (Ink ink : List.of(Ink.LINE, Ink.FAINT, Ink.ALERT)) {
            assertThat(contrast(theme.colour(ink), theme.colour(Ink.PAPER)))
                    .as(ink.name())
                    .isGreaterThanOrEqualTo(4.5);
        }
    }

    /** The ink that a cell is covered with, wholly or in part. */
    private static Ink covers(Look look) {
        return look.pattern() == Pattern.EMPTY ? look.wash() : look.mark();
    }

    @ParameterizedTest
    @EnumSource(Theme.class)
    void marks_differ_for_all_eyes(Theme theme) {
        List<String> alike = new ArrayList<>();
        for (Eyes eyes : Eyes.values()) {
            for (Look one : Look.values()) {
                for (Look other : Look.values()) {
                    double difference = apart(eyes, theme.colour(covers(one)), theme.colour(covers(other)));
                    if (one.ordinal() < other.ordinal() && difference < 28) {
                        alike.add(eyes + ": " + one + " and " + other + " by " + difference);
                    }
                }
            }
        }
        assertThat(alike).isEmpty();
    }

    private static final List<Ink> STEPS = List.of(Ink.STEP_1, Ink.STEP_2, Ink.STEP_3, Ink.STEP_4, Ink.STEP_5);

    @ParameterizedTest
    @EnumSource(Theme.class)
    void words_on_the_steps_can_be_read(Theme theme) {
        for (Ink step : STEPS) {
            Ink words = step.compareTo(Ink.STEP_3) <= 0 ? Ink.LINE : Ink.PAPER;
            assertThat(contrast(theme.colour(words), theme.colour(step)))
                    .as(step.name())
                    .isGreaterThanOrEqualTo(4.5);
        }
    }

    @ParameterizedTest
    @EnumSource(Theme.class)
    void steps_lead_away_from_the_paper_and_each_differs_from_the_one_before_for_all_eyes(Theme theme) {
        for (int i = 1; i < STEPS.size(); i++) {
            Colour before = theme.colour(STEPS.get(i - 1));
            Colour step = theme.colour(STEPS.get(i));
            Colour paper = theme.colour(Ink.PAPER);
            assertThat(contrast(step, paper)).as(STEPS.get(i).name()).isGreaterThan(1.3 * contrast(before, paper));
            for (Eyes eyes : Eyes.values()) {
                assertThat(apart(eyes, before, step))
                        .as("%s %s", eyes, STEPS.get(i))
                        .isGreaterThanOrEqualTo(12);
            }
        }
    }
}
