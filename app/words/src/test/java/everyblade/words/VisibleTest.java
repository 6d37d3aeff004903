package everyblade.words;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class VisibleTest {

    @Test
    void leavesReadableTextOfAnyScriptAsItIs() {
        String text = "c1 – Ступень, 段, שלב, مرحلة, α\tβ\nγ 🌀";

        assertThat(Visible.text(text)).isSameAs(text);
    }

    @Test
    void writesOutWhatTurnsTheDirection() {
        assertThat(Visible.text("a\u202Eb\u2066c")).isEqualTo("a⟨U+202E⟩b⟨U+2066⟩c");
    }

    @Test
    void writesOutWhatShowsNothing() {
        assertThat(Visible.text("a\u200Bb\uFEFFc\u00ADd\uDB40\uDC41e"))
                .isEqualTo("a⟨U+200B⟩b⟨U+FEFF⟩c⟨U+00AD⟩d⟨U+E0041⟩e");
    }

    @Test
    void writesOutControlsAndHalvesOfCharacters() {
        assertThat(Visible.text("a\u001B[31mb\u0000c\u009Bd\uD800e\u2028f"))
                .isEqualTo("a⟨U+001B⟩[31mb⟨U+0000⟩c⟨U+009B⟩d⟨U+D800⟩e⟨U+2028⟩f");
    }
}
