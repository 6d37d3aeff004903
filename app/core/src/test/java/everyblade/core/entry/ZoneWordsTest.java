package everyblade.core.entry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import everyblade.core.English;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ZoneWordsTest {

    private static final Zoning BLADE = new Zoning(
            List.of("root", "tip"), List.of("pressure", "suction"), List.of("leading", "middle", "trailing"));
    private static final Zoning SPAN_ONLY = new Zoning(List.of("root", "tip"), List.of(), List.of());
    private static final Zoning BANDS = new Zoning(
            IntStream.rangeClosed(1, 10).mapToObj(band -> "s" + band).toList(),
            List.of("pressure", "suction"),
            List.of("leading", "middle", "trailing"));
    private static final Zoning LINER = new Zoning(List.of("outer", "inner"), List.of(), List.of("forward", "aft"));
    private static final Zoning UNDIVIDED = new Zoning(List.of(), List.of(), List.of());

    @Nested
    class A_zone {

        @ParameterizedTest
        @CsvSource({
            "tip/pressure/leading, tip/pressure/leading",
            "TIP/Pressure/leading, tip/pressure/leading",
            "tpl, tip/pressure/leading",
            "TPL, tip/pressure/leading",
            "tip/pl, tip/pressure/leading",
            "t/p/l, tip/pressure/leading",
            "rst, root/suction/trailing",
            "root/convex/t, root/suction/trailing",
            "tip/concave/m, tip/pressure/middle"
        })
        void is_one_zone_when_all_is_said(String said, String name) {
            assertThat(names(BLADE, said)).containsExactly(name);
        }

        @Test
        void takes_in_all_below_what_is_left_out() {
            assertThat(names(BLADE, "tip")).hasSize(6).allMatch(name -> name.startsWith("tip/"));
            assertThat(names(BLADE, "pressure/leading"))
                    .containsExactly("root/pressure/leading", "tip/pressure/leading");
            assertThat(names(BLADE, "pl")).isEqualTo(names(BLADE, "pressure/leading"));
            assertThat(names(BLADE, "tl")).containsExactly("tip/pressure/leading", "tip/suction/leading");
            assertThat(names(BLADE, "tt")).containsExactly("tip/pressure/trailing", "tip/suction/trailing");
            assertThat(names(BLADE, "pt")).containsExactly("root/pressure/trailing", "tip/pressure/trailing");
            assertThat(names(BLADE, "concave")).isEqualTo(names(BLADE, "pressure"));
            assertThat(names(BLADE, "convex")).isEqualTo(names(BLADE, "suction"));
            assertThat(names(BLADE, "All")).isEqualTo(BLADE.names());
        }

        @Test
        void may_be_a_single_letter_where_it_is_clear() {
            assertThat(names(SPAN_ONLY, "t")).containsExactly("tip");
            assertThat(names(BLADE, "r")).isEqualTo(names(BLADE, "root"));
            assertThat(English.say(refusal(BLADE, "t"))).isEqualTo("\"t\" may be tip or trailing");
            assertThat(English.say(refusal(BLADE, "c"))).isEqualTo("\"c\" may be concave or convex");
        }

        @Test
        void keeps_the_numbers_of_span_bands() {
            assertThat(names(BANDS, "s2pl")).containsExactly("s2/pressure/leading");
            assertThat(names(BANDS, "s10sl")).containsExactly("s10/suction/leading");
            assertThat(names(BANDS, "s1")).hasSize(6).allMatch(name -> name.startsWith("s1/"));
            assertThat(names(BANDS, "s")).isEqualTo(names(BANDS, "suction"));
            assertThat(English.say(refusal(BANDS, "s11"))).contains("not a zone of this row");
            assertThat(English.say(refusal(BANDS, "s0"))).contains("not a zone of this row");
        }

        @Test
        void of_a_liner_lies_on_a_wall_and_along_it() {
            assertThat(names(LINER, "outer/forward")).containsExactly("outer/forward");
            assertThat(names(LINER, "of")).containsExactly("outer/forward");
            assertThat(names(LINER, "ia")).containsExactly("inner/aft");
            assertThat(names(LINER, "aft")).containsExactly("outer/aft", "inner/aft");
            assertThat(English.say(refusal(LINER, "concave"))).contains("outer, inner, forward, aft, all");
        }

        @Test
        void of_a_row_that_divides_nothing_is_all() {
            assertThat(names(UNDIVIDED, "all")).containsExactly("all");
            assertThat(English.say(refusal(UNDIVIDED, "tip"))).isEqualTo("\"tip\" is not a zone of this row: all");
        }

        @ParameterizedTest
        @CsvSource({
            "tipp, 11, 'root, tip, pressure, suction, leading, middle, trailing, all'",
            "tip/presure, 15, not a zone of this row",
            "tip/pressure/x, 24, not a zone of this row",
            "pressure/tip, 20, does not belong here",
            "tip/root, 15, does not belong here",
            "tip/, 15, expected a zone of this row",
            "/tip, 11, expected a zone of this row",
            "tip//leading, 15, expected a zone of this row",
            "all/tip, 11, stands alone",
            "tip/all, 15, stands alone",
            "lt, 11, not a zone of this row",
            "ttl, 11, not a zone of this row",
            "'', 11, expected a zone of this row"
        })
        void is_refused_at_the_word_that_does_not_fit(String said, int column, String message) {
            Refusal refusal = refusal(BLADE, said);
            assertThat(refusal.column()).isEqualTo(column);
            assertThat(English.say(refusal)).contains(message);
        }

        @ParameterizedTest
        @ValueSource(strings = {"de", "tr"})
        void means_the_same_in_any_locale(String language) {
            Locale before = Locale.getDefault();
            Locale.setDefault(Locale.forLanguageTag(language));
            try {
                assertThat(names(BLADE, "TIP/MIDDLE")).isEqualTo(names(BLADE, "tip/middle"));
                assertThat(names(LINER, "IA")).containsExactly("inner/aft");
            } finally {
                Locale.setDefault(before);
            }
        }

        @Test
        void has_a_name_that_is_understood_as_that_zone_alone() {
            for (Zoning zoning : List.of(BLADE, SPAN_ONLY, BANDS, LINER, UNDIVIDED)) {
                for (String name : zoning.names()) {
                    assertThat(names(zoning, name)).containsExactly(name);
                }
            }
        }
    }

    @Nested
    class Several_parts {

        @Test
        void of_one_kind_unite_and_of_different_kinds_intersect() {
            assertThat(parts(BLADE, "root", "tip")).isEqualTo(BLADE.names());
            assertThat(parts(BLADE, "tip", "pressure")).isEqualTo(names(BLADE, "tip/pressure"));
            assertThat(parts(BLADE, "l", "tip", "m", "p"))
                    .containsExactly("tip/pressure/leading", "tip/pressure/middle");
            assertThat(parts(BLADE, "all")).isEqualTo(BLADE.names());
            assertThat(parts(UNDIVIDED, "all")).containsExactly("all");
        }

        @Test
        void are_no_zone_if_there_are_none() {
            assertThat(parts(BLADE)).isEmpty();
            assertThat(parts(UNDIVIDED)).isEmpty();
        }

        @Test
        void that_are_compound_unite() {
            assertThat(parts(BLADE, "tpl", "root/suction/trailing"))
                    .containsExactly("root/suction/trailing", "tip/pressure/leading");
            assertThat(parts(BLADE, "tip/pressure", "root/suction", "leading"))
                    .containsExactly("root/suction/leading", "tip/pressure/leading");
        }

        @Test
        void must_leave_something() {
            Refusal refusal = refusal(BLADE, "tip/pressure", "root");
            assertThat(English.say(refusal)).contains("no zone in common");
            assertThat(refusal.column()).isEqualTo(1);
        }

        @Test
        void are_refused_at_the_one_that_is_not_understood() {
            Refusal refusal = refusal(BLADE, "tip", "presure");
            assertThat(refusal.column()).isEqualTo(5);
            assertThat(English.say(refusal(BLADE, "tip", "all"))).contains("stands alone");
        }
    }

    @Nested
    class A_text_that_may_begin_with_a_zone {

        @ParameterizedTest
        @CsvSource({
            "tip looks bent, tip",
            "'tip, looks bent', tip",
            "TIP/pressure: dark, tip/pressure",
            "tpl, tpl",
            "pl nick?, pl",
            "all dark, all"
        })
        void is_read_where_the_zone_is_clear(String text, String zone) {
            assertThat(ZoneWords.opening(BLADE, text).map(set -> names(BLADE, set)))
                    .contains(names(BLADE, zone));
        }

        @ParameterizedTest
        @ValueSource(
                strings = {"", "  ", "looks bent", "t", "p side", "r", "tip-shroud", "tip/t", "a dent", "tip/root"})
        void is_text_alone_otherwise(String text) {
            assertThat(ZoneWords.opening(BLADE, text)).isEmpty();
        }

        @Test
        void may_hide_an_english_word_that_spells_a_zone_of_the_row() {
            assertThat(ZoneWords.opening(LINER, "of the weld")).isPresent();
        }
    }

    private static List<String> names(Zoning zoning, String said) {
        try {
            return names(zoning, ZoneWords.zone(zoning, new Said<>(said, 11)));
        } catch (Refusal refusal) {
            throw new AssertionError(said + ": " + English.say(refusal), refusal);
        }
    }

    private static List<String> names(Zoning zoning, ZoneSet zones) {
        List<String> names = zoning.names();
        return IntStream.range(0, names.size())
                .filter(zones::contains)
                .mapToObj(names::get)
                .toList();
    }

    private static Refusal refusal(Zoning zoning, String said) {
        return caught(() -> ZoneWords.zone(zoning, new Said<>(said, 11)));
    }

    private static List<String> parts(Zoning zoning, String... words) {
        try {
            return names(zoning, ZoneWords.parts(zoning, said(words)));
        } catch (Refusal refusal) {
            throw new AssertionError(Arrays.toString(words) + ": " + English.say(refusal), refusal);
        }
    }

    private static Refusal refusal(Zoning zoning, String first, String second) {
        return caught(() -> ZoneWords.parts(zoning, said(first, second)));
    }

    private static Refusal caught(ThrowingCallable call) {
        Refusal refusal = catchThrowableOfType(Refusal.class, call);
        assertThat(refusal).isNotNull();
        return refusal;
    }

    /** The words as typed with one space between them, from column 1. */
    private static List<Said<String>> said(String... words) {
        List<Said<String>> said = new ArrayList<>();
        int column = 1;
        for (String word : words) {
            said.add(new Said<>(word, column));
            column += word.length() + 1;
        }
        return said;
    }
}
