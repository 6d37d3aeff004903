package everyblade.picture;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.picture.paint.ScenePdf;
import everyblade.picture.paint.ScenePng;
import everyblade.picture.scene.Theme;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SameBytesTest {

    private static <T> T under(Locale locale, Supplier<T> made) {
        Locale before = Locale.getDefault();
        Locale.setDefault(locale);
        try {
            return made.get();
        } finally {
            Locale.setDefault(before);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"de-DE", "tr-TR", "ar-EG-u-nu-arab", "hi-IN-u-nu-deva"})
    void svg_is_the_same_in_every_locale(String locale) {
        String usual = under(Locale.ROOT, () -> Jobs.tansy().svg(Optional.of("t"), MapStyle.PLAIN));
        String other = under(Locale.forLanguageTag(locale), () -> Jobs.tansy().svg(Optional.of("t"), MapStyle.PLAIN));
        assertThat(other).isEqualTo(usual);
    }

    @Test
    void svg_of_all_rows_is_the_same_each_time() {
        assertThat(Jobs.larkspur().svg(Optional.empty(), MapStyle.PLAIN))
                .isEqualTo(Jobs.larkspur().svg(Optional.empty(), MapStyle.PLAIN));
    }

    @Test
    void pdf_is_the_same_each_time() {
        Job job = Jobs.tansy();
        assertThat(ScenePdf.write(job.scene(Optional.of("t"), MapStyle.PLAIN), Theme.LIGHT))
                .isEqualTo(ScenePdf.write(job.scene(Optional.of("t"), MapStyle.PLAIN), Theme.LIGHT));
    }

    @Test
    void png_is_the_same_each_time() {
        Job job = Jobs.tansy();
        assertThat(ScenePng.write(job.scene(Optional.of("t"), MapStyle.PLAIN), Theme.LIGHT))
                .isEqualTo(ScenePng.write(job.scene(Optional.of("t"), MapStyle.PLAIN), Theme.LIGHT));
    }

    @Test
    void one_more_turn_makes_another_picture() {
        assertThat(Jobs.tansy().enter("view ex-t", "turn 5").svg(Optional.empty(), MapStyle.PLAIN))
                .isNotEqualTo(Jobs.tansy().svg(Optional.empty(), MapStyle.PLAIN));
    }
}
