package everyblade.core.entry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import everyblade.core.English;
import java.time.Duration;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever is typed, pasted or read from a damaged file is an entry or a refusal inside the line, soon. */
class HostileLinesTest {

    private static final List<String> PIECES = List.of(
            " ",
            "\t",
            "\"",
            "\"\"",
            ",",
            ".",
            "-",
            "+",
            "+-",
            "\u00b1",
            "\u00b0",
            "\u2013",
            "0",
            "9",
            "999999999",
            "all",
            "because",
            "photo",
            "held",
            "to",
            "in",
            "mm",
            "s",
            "\n",
            "\r",
            "\0",
            "\u0007",
            "\ud800",
            "\udc00",
            "\ud83d\udd27",
            "\u0130",
            "\u00a0",
            "\u2028",
            "\ufeff",
            "\uffff",
            "e5",
            "/",
            "*",
            "\\",
            "(",
            "%s",
            "$1");

    @Test
    void ten_thousand_damaged_lines_give_an_entry_that_can_be_written_or_a_refusal_inside_the_line() {
        EntryGenerator generator = new EntryGenerator(11);
        SplittableRandom random = new SplittableRandom(12);
        int kept = 0;
        int refused = 0;
        for (int count = 0; count < 10_000; count++) {
            String line = damaged(EntryText.of(generator.next()), random);
            try {
                Entry entry = EntryParser.parse(line);
                assertThat(EntryText.of(entry)).as(line).doesNotContain("\n");
                assertThat(rewritten(entry)).as(line).isEqualTo(EntryText.of(entry));
                kept++;
            } catch (Refusal refusal) {
                assertThat(refusal.column()).as(line).isBetween(1, line.codePointCount(0, line.length()) + 1);
                assertThat(English.say(refusal)).as(line).isNotBlank().doesNotContain("\n", "\r");
                refused++;
            }
        }
        assertThat(kept).isGreaterThan(1_000);
        assertThat(refused).isGreaterThan(1_000);
    }

    /** The text of the entry that its own text says. */
    private static String rewritten(Entry entry) {
        try {
            return EntryText.of(EntryParser.parse(EntryText.of(entry)));
        } catch (Refusal refusal) {
            return "refused: " + English.say(refusal);
        }
    }

    private static String damaged(String line, SplittableRandom random) {
        StringBuilder text = new StringBuilder(line);
        for (int times = random.nextInt(1, 4); times > 0; times--) {
            int from = random.nextInt(text.length() + 1);
            int to = Math.min(text.length(), from + random.nextInt(4));
            switch (random.nextInt(4)) {
                case 0 -> text.delete(from, to);
                case 1 -> text.insert(from, PIECES.get(random.nextInt(PIECES.size())));
                case 2 -> text.replace(from, to, PIECES.get(random.nextInt(PIECES.size())));
                default -> text.insert(from, text.substring(from, to));
            }
        }
        return text.toString();
    }

    @ParameterizedTest
    @ValueSource(strings = {"x", "\"", " ", "turn ", "watch a ", "\u00b1", "\ud83d\udd27", "9", "\n", "t/"})
    void a_line_of_a_million_characters_is_refused_at_once(String piece) {
        String line = piece.repeat(1_000_000 / piece.length());
        Assertions.assertTimeoutPreemptively(
                Duration.ofSeconds(5),
                () -> assertThatExceptionOfType(Refusal.class)
                        .isThrownBy(() -> EntryParser.parse(line))
                        .matches(refusal -> English.say(refusal).contains("at most 2000 characters"))
                        .matches(refusal -> refusal.column() == 2001));
    }

    @Test
    void two_thousand_characters_are_still_read() throws Refusal {
        String text = "\ud83d\udd27".repeat(1995);
        assertThat(EntryParser.parse("note " + text)).isEqualTo(new RecordEntry.Note(text));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "note a\u0007b",
                "note a\0b",
                "note a\ud800b",
                "note a\udc00b",
                "note a\nb",
                "note a\rb",
                "note a\u2028b"
            })
    void what_cannot_be_read_on_one_line_is_refused_where_it_stands(String line) {
        assertThatExceptionOfType(Refusal.class)
                .isThrownBy(() -> EntryParser.parse(line))
                .matches(refusal -> refusal.column() == 7);
    }

    @ParameterizedTest
    @ValueSource(strings = {"here 3", "\there\t3\t", "here\u00a03", "\u2003here \u2009 3\r\n", "\ufeffhere 3"})
    void white_space_of_any_kind_separates(String line) throws Refusal {
        assertThat(EntryText.of(EntryParser.parse(line))).isEqualTo("here 3");
    }
}
