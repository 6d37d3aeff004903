package everyblade.window.author;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.json.Problem;
import everyblade.json.Severity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TextMarkTest {

    private static final String TEXT = "{\n  \"id\": \"a\\\"b\",\n  \"count\": 12.5,\n  \"on\": true }";

    private static Problem at(int line, int column) {
        return new Problem("code", Severity.ERROR, "engine.json", line, column, "", "what", "why", "mend");
    }

    @ParameterizedTest(name = "line {0}, column {1} is {2}")
    @CsvSource(
            delimiter = '|',
            value = {
                "1 | 1 | {",
                "2 | 3 | \"id\"",
                "2 | 9 | \"a\\\"b\"",
                "3 | 12 | 12.5",
                "3 | 16 | ,",
                "4 | 9 | true",
                "4 | 14 | }"
            })
    void aMarkIsAWholeWordOrNumberOrQuotedTextOrElseOneSign(int line, int column, String marked) {
        TextMark mark = TextMark.of(TEXT, at(line, column));

        assertThat(TEXT.substring(mark.start(), mark.end())).isEqualTo(marked);
        assertThat(TEXT.substring(mark.lineStart(), mark.lineEnd())).isEqualTo(TEXT.split("\n")[line - 1]);
    }

    @Test
    void aPlaceBeyondTheTextIsItsEnd() {
        assertThat(TextMark.of(TEXT, at(99, 99)))
                .isEqualTo(new TextMark(TEXT.lastIndexOf('\n') + 1, TEXT.length(), TEXT.length(), TEXT.length()));
        assertThat(TextMark.of("", at(1, 1))).isEqualTo(new TextMark(0, 0, 0, 0));
    }

    @Test
    void everyMarkLiesWithinItsLineWhateverThePlace() {
        for (int line = 0; line < 8; line++) {
            for (int column = 0; column < 30; column++) {
                TextMark mark = TextMark.of(TEXT + "\n\"open", at(line, column));
                assertThat(mark.lineStart()).isLessThanOrEqualTo(mark.start());
                assertThat(mark.start()).isLessThanOrEqualTo(mark.end());
                assertThat(mark.end()).isLessThanOrEqualTo(mark.lineEnd());
            }
        }
    }
}
