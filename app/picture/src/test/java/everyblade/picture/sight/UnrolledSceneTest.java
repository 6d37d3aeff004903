package everyblade.picture.sight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import everyblade.core.angle.Turn;
import everyblade.core.sight.Criteria;
import everyblade.core.sight.Hindrance;
import everyblade.core.sight.StationSight;
import everyblade.picture.MapWords;
import everyblade.picture.paint.ScenePdf;
import everyblade.picture.scene.DrawnShape.Text;
import everyblade.picture.scene.Group;
import everyblade.picture.scene.Ink;
import everyblade.picture.scene.Lettering;
import everyblade.picture.scene.Scene;
import everyblade.picture.scene.Theme;
import everyblade.picture.svg.SvgWriter;
import everyblade.words.Words;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UnrolledSceneTest {

    private static final Vantage VANTAGE = Vantages.of("larkspur-4", "p1-c2", "high", Criteria.USUAL);
    private static final StationSight SIGHT = VANTAGE.sight();

    private static final Scene SCENE = UnrolledScene.of(VANTAGE, Words.of(Locale.ENGLISH));

    private List<Group> facets() {
        return SCENE.groups().stream()
                .filter(group -> group.title().startsWith("Facet "))
                .toList();
    }

    @Test
    void every_facet_is_drawn_once_in_the_ink_of_its_step_or_of_its_reason() {

        assertThat(facets()).hasSize(SIGHT.facets());
        for (int facet = 0; facet < SIGHT.facets(); facet++) {
            Group group = facets().get(facet);
            double degrees = SIGHT.arcs(0, facet).measure() / 3_600_000.0;
            Ink ink = group.items().get(0).style().fill().orElseThrow();
            if (degrees > 0) {
                assertThat(ink).isEqualTo(InSight.of(degrees).fill());
                assertThat(group.title()).contains("in sight over " + InSight.written(degrees) + "°");
            } else {
                Hindrance why = SIGHT.why(facet).orElseThrow();
                assertThat(ink).isEqualTo(WhyLook.of(why).wash());
                assertThat(group.title())
                        .endsWith(
                                "never in sight, " + MapWords.of(Locale.ENGLISH).say(why));
            }
        }
    }

    @Test
    void a_number_in_brackets_is_not_sure_within_the_tolerance() {
        int brackets = 0;
        for (int facet = 0; facet < SIGHT.facets(); facet++) {
            boolean inBrackets = facets().get(facet).items().stream()
                    .anyMatch(item ->
                            item.shape() instanceof Text text && text.words().startsWith("("));
            assertThat(inBrackets && SIGHT.reaches(facet)).isFalse();
            brackets += inBrackets ? 1 : 0;
        }
        assertThat(brackets).isPositive();
    }

    @Test
    void shares_of_the_surface_are_told_and_add_up() {
        double sum = 0;
        int reasons = 0;
        for (Group group : SCENE.groups()) {
            if (group.title().equals("Why some is never in sight")) {
                for (var item : group.items()) {
                    if (item.shape() instanceof Text text && text.words().endsWith(" %")) {
                        sum += Double.parseDouble(text.words().replaceFirst(".*, (under )?([0-9]+) %", "$2"));
                        reasons++;
                    }
                }
            }
        }
        assertThat(reasons).isEqualTo(Hindrance.values().length);
        assertThat(SCENE.summary()).contains("35 % is in sight", "31 % wherever it stands within ± 0.5 mm and ± 2°");
        assertThat(sum + 35).isCloseTo(100, within(6.0));
    }

    @ParameterizedTest
    @CsvSource({
        "larkspur-4, p1-c2, high",
        "larkspur-4, d1-imp, low",
        "larkspur-4, ig1-comb, low",
        "corncrake-12, p5-s5, low"
    })
    void words_stay_on_the_sheet(String model, String view, String station) {
        Scene drawn = UnrolledScene.of(
                Vantages.of(model, view, station, Criteria.USUAL.withDetail(0.2)), Words.of(Locale.ENGLISH));

        assertThat(drawn.items().filter(item -> item.shape() instanceof Text).count())
                .isGreaterThan(30);
        drawn.items().forEach(item -> {
            if (item.shape() instanceof Text text && text.angle() == 0) {
                double length = text.length() * Lettering.SLACK;
                double left = text.at().x() - text.anchor().share() * length;
                assertThat(left).as(text.words()).isGreaterThanOrEqualTo(5);
                assertThat(left + length).as(text.words()).isLessThanOrEqualTo(drawn.width() - 5);
                assertThat(text.at().y()).as(text.words()).isBetween(5.0, drawn.height() - 5);
            }
        });
    }

    @Test
    void zones_are_named_as_entries_name_them() {
        assertThat(ZoneMarks.letters("tip/pressure/leading")).isEqualTo("tpl");
        assertThat(ZoneMarks.letters("s10/suction/middle")).isEqualTo("s10sm");
        assertThat(ZoneMarks.letters("all")).isEqualTo("all");
        assertThat(SCENE.groups().stream().filter(group -> group.title().startsWith("Zone ")))
                .hasSize(12);
    }

    @Test
    void the_same_bytes_come_in_every_locale() {
        Locale before = Locale.getDefault();
        String usual = SvgWriter.write(SCENE, Theme.DARK);
        byte[] pdf = ScenePdf.write(SCENE, Theme.DARK);
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            Scene again = UnrolledScene.of(VANTAGE, Words.of(Locale.ENGLISH));
            assertThat(SvgWriter.write(again, Theme.DARK)).isEqualTo(usual);
            assertThat(ScenePdf.write(again, Theme.DARK)).isEqualTo(pdf);
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void steps_begin_where_they_say() {
        assertThat(InSight.of(0.3)).isEqualTo(InSight.GLIMPSE);
        assertThat(InSight.of(1.999)).isEqualTo(InSight.GLIMPSE);
        assertThat(InSight.of(2)).isEqualTo(InSight.SHORT);
        assertThat(InSight.of(20)).isEqualTo(InSight.LONGEST);
        assertThat(InSight.of(360)).isEqualTo(InSight.LONGEST);
    }

    @Test
    void the_notice_of_the_model_is_told_to_its_end() {
        String notice = VANTAGE.engine().model().notice().orElseThrow();
        Scene sheet = new TipSheet(
                        VANTAGE, Turn.ZERO, Set.of(Tone.WALL), 40, Words.of(Locale.ENGLISH), new double[] {0, 0.4})
                .scene();

        for (Scene drawn : List.of(SCENE, sheet)) {
            String told = drawn.items()
                    .filter(item -> item.style().fill().equals(Optional.of(Ink.ALERT)))
                    .map(item -> ((Text) item.shape()).words())
                    .collect(Collectors.joining(" "));
            assertThat(told).isEqualTo(notice);
        }
    }
}
