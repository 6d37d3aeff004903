package everyblade.window.view;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.words.Words;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import javax.swing.KeyStroke;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ShortcutTest {

    @Test
    void noKeyHasTwoMeaningsEvenInDifferentPlaces() {
        List<String> keys = Arrays.stream(Shortcut.values())
                .flatMap(one -> one.keys().stream())
                .toList();

        assertThat(keys).hasSizeGreaterThan(30).doesNotHaveDuplicates();
        assertThat(keys.stream().filter(key -> !key.equals("KEYPAD_ENTER")).map(KeyStroke::getKeyStroke))
                .doesNotContainNull()
                .doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @EnumSource(Act.class)
    void everyActHasAKey(Act act) {
        assertThat(Shortcut.of(act).keys()).isNotEmpty();
    }

    @ParameterizedTest
    @EnumSource(Shortcut.class)
    void everyKeyIsExplainedInEveryLanguage(Shortcut shortcut) {
        for (Locale language : Words.languages()) {
            assertThat(Words.of(language).say(shortcut.words())).isNotBlank();
        }
    }
}
