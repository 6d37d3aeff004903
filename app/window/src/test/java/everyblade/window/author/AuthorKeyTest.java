package everyblade.window.author;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.window.view.Shortcut;
import everyblade.words.Words;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import javax.swing.KeyStroke;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class AuthorKeyTest {

    @Test
    void noKeyHasTwoMeanings() {
        Stream<String> ofEveryScreen =
                Stream.of(Shortcut.KEYS, Shortcut.LOOK_DARK, Shortcut.DENSITY).flatMap(one -> one.keys().stream());
        List<KeyStroke> keys = Stream.concat(
                        ofEveryScreen, Arrays.stream(AuthorKey.values()).flatMap(one -> one.keys().stream()))
                .map(KeyStroke::getKeyStroke)
                .toList();

        assertThat(keys).hasSizeGreaterThan(15).doesNotContainNull().doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @EnumSource(AuthorKey.class)
    void everyKeyIsExplainedInEveryLanguage(AuthorKey key) {
        for (Locale language : Words.languages()) {
            assertThat(Words.of(language).say(key.words())).isNotBlank();
        }
    }
}
