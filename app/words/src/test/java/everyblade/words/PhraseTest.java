package everyblade.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import everyblade.fact.Fact;
import everyblade.spi.RowKind;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class PhraseTest {

    private record Lost(int blades) implements Fact {}

    private static String said(String pattern, Map<String, ?> parts) {
        return said(pattern, Locale.ENGLISH, parts);
    }

    private static String said(String pattern, Locale language, Map<String, ?> parts) {
        return new Phrase(pattern, language, fact -> "[" + fact.key() + "]", style -> " " + style + " ").with(parts);
    }

    @Test
    void placesAreFilledInByTheirNames() {
        assertThat(said("row {row}, blade {n}", Map.of("row", "c1", "n", 1234))).isEqualTo("row c1, blade 1234");
        assertThat(said("it''s {0}", Map.of("0", "so"))).isEqualTo("it's so");
    }

    @Test
    void aCountChoosesItsWords() {
        String pattern = "{n, plural, =0 {nothing} one {# blade of {row}} other {# blades of {row}}}.";
        assertThat(said(pattern, Map.of("n", 0, "row", "c1"))).isEqualTo("nothing.");
        assertThat(said(pattern, Map.of("n", 1, "row", "c1"))).isEqualTo("1 blade of c1.");
        assertThat(said(pattern, Map.of("n", 1200, "row", "c1"))).isEqualTo("1200 blades of c1.");
        assertThat(said("{n, plural, one {a} other {b} =1 {just one}}", Map.of("n", 1)))
                .isEqualTo("just one");
    }

    @Test
    void aLanguageWithMorePluralsHasThem() {
        String pattern = "{n, plural, one {łopatka} few {łopatki} many {łopatek} other {łopatki}}";
        Locale polish = Locale.forLanguageTag("pl");
        assertThat(said(pattern, polish, Map.of("n", 1))).isEqualTo("łopatka");
        assertThat(said(pattern, polish, Map.of("n", 3))).isEqualTo("łopatki");
        assertThat(said(pattern, polish, Map.of("n", 12))).isEqualTo("łopatek");
    }

    @Test
    void constantsTruthAndNothingAreAskedFor() {
        String kind = "{kind, select, ROTOR {turns} other {stands}}";
        assertThat(said(kind, Map.of("kind", RowKind.ROTOR))).isEqualTo("turns");
        assertThat(said(kind, Map.of("kind", RowKind.STATOR))).isEqualTo("stands");
        assertThat(said("{open, select, true {open} other {shut}}", Map.of("open", true)))
                .isEqualTo("open");
        String near = "no {id}{near, select, none {} other {; did you mean {near}?}}";
        assertThat(said(near, Map.of("id", "c9", "near", Optional.empty()))).isEqualTo("no c9");
        assertThat(said(near, Map.of("id", "c9", "near", Optional.of("none"))))
                .as("a name is no word to ask for")
                .isEqualTo("no c9; did you mean none?");
    }

    @Test
    void numbersAreWrittenAsTheLanguageDoes() {
        assertThat(said("{a, number, 0.0}°", Locale.GERMAN, Map.of("a", 1.25))).isEqualTo("1,3°");
        assertThat(said("{a, number, 0.0}", Map.of("a", 0.35))).isEqualTo("0.4");
        assertThat(said("{a}", Locale.GERMAN, Map.of("a", OptionalDouble.of(0.5))))
                .isEqualTo("0,5");
        assertThat(said("{a, number, 0}", Map.of("a", 12345.6))).isEqualTo("12346");
    }

    @Test
    void aListIsJoinedAndCounted() {
        assertThat(said("{all}", Map.of("all", List.of("a", "b", "c")))).isEqualTo("a, b and c");
        assertThat(said("{all, list, or}", Map.of("all", List.of("a", "b")))).isEqualTo("a or b");
        assertThat(said("{all, list, plain}", Map.of("all", List.of("a", "b")))).isEqualTo("a, b");
        assertThat(said("{all, list, /}", Map.of("all", List.of("a", "b", "c"))))
                .isEqualTo("a/b/c");
        assertThat(said("{all, list, ands}", Map.of("all", List.of("a", "b", "c"))))
                .isEqualTo("a and b and c");
        assertThat(said("{all, plural, one {entry {all}} other {entries {all}}}", Map.of("all", List.of(4, 7))))
                .isEqualTo("entries 4 and 7");
    }

    @Test
    void aFactInAnotherIsSaid() {
        assertThat(said("{what}!", Map.of("what", new Lost(2)))).isEqualTo("[words.PhraseTest.Lost]!");
    }

    @Test
    void whatPeopleTypedHidesNothing() {
        assertThat(said("{0}", Map.of("0", "a\u202Eb"))).isEqualTo("a⟨U+202E⟩b");
    }

    @Test
    void aPlaceForWhichNothingIsThereIsAFault() {
        assertThatThrownBy(() -> said("{row}", Map.of())).hasMessageContaining("{row}");
    }
}
