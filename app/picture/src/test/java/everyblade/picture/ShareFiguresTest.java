package everyblade.picture;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.coverage.Headline;
import everyblade.core.entry.Settings;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ShareFiguresTest {

    private static final MapWords GERMAN = MapWords.of(Locale.GERMAN);

    private static ShareFigures english(Headline headline) {
        return new ShareFigures(headline, MapWords.of(Locale.ENGLISH));
    }

    @Test
    void stand_in_one_order_everywhere() {
        Headline headline = new Headline(12, 96, 0.312, 0.66);
        assertThat(english(headline).line())
                .isEqualTo(
                        "12.5 % left of what these views can show (12 of 96 cells); 31.2 % of the surface seen; 66.0 %"
                                + " of the surface no view shows");
        assertThat(english(headline).brief()).isEqualTo("12.5 / 31.2 / 66.0 %");
        assertThat(new ShareFigures(headline, GERMAN).line())
                .isEqualTo("12,5 % übrig von dem, was diese Zugänge zeigen können (12 von 96 Zellen); 31,2 % der"
                        + " Oberfläche gesehen; 66,0 % der Oberfläche zeigt kein Zugang");
    }

    @Test
    void are_never_rounded_in_our_favour() {
        ShareFigures figures = english(new Headline(1, 100_000, 0.99999, 0.00001));
        assertThat(figures.brief()).isEqualTo("0.1 / 99.9 / 0.1 %");
        assertThat(english(new Headline(0, 7, 1 - 1e-12, 1e-12)).brief()).isEqualTo("0.0 / 100.0 / 0.0 %");
        assertThat(english(new Headline(0, 0, 0, 1)).brief()).isEqualTo("0.0 / 0.0 / 100.0 %");
    }

    @Test
    void come_with_what_they_are_judged_by() {
        Settings settings = Settings.of(Map.of(
                "detail", Settings.DETAIL, "grazing-leading", new BigDecimal("12.5"), "least-view", BigDecimal.ONE));
        assertThat(new Terms(settings, true, MapWords.of(Locale.ENGLISH)).line())
                .isEqualTo(
                        "Judged by: line of sight at least 12.5° to the surface at leading edges, 30° between, 30° at"
                                + " trailing edges; a detail of 0.8 mm on 3 picture points; in view for 1 s; light and depth of"
                                + " field are not judged.");
        assertThat(new Terms(settings, false, MapWords.of(Locale.ENGLISH)).line())
                .isEqualTo(
                        "Judged by: windows that the model states, however slanted and coarse what they show; in view for"
                                + " 1 s; light and depth of field are not judged.");
        assertThat(new Terms(Settings.USUAL, true, GERMAN).line())
                .isEqualTo(
                        "Beurteilt nach: Blicklinie mindestens 30° zur Oberfläche; keine Feinheit verlangt, also kein"
                                + " Zugang zu grob; Licht, Schärfentiefe und Dauer im Blick werden nicht beurteilt.");
    }
}
