package everyblade.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import everyblade.core.entry.EntryKind;
import everyblade.core.entry.EntryParser;
import everyblade.core.entry.Kind;
import everyblade.core.entry.Refusal;
import everyblade.words.Words;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class EntrySheetTest {

    private static final Pattern EXAMPLE = Pattern.compile("such as \"([^\"]+)\"|also \"([^\"]+)\"");

    static Stream<String> verbs() {
        return Arrays.stream(EntrySheet.lines(Words.of(Locale.ENGLISH)))
                .filter(line -> line.matches("  [a-z].*"))
                .flatMap(line -> Stream.of(line.strip().split(" {2,}")[0].split(", ")))
                .map(entry -> entry.split(" ")[0]);
    }

    @ParameterizedTest
    @MethodSource("verbs")
    void everyEntryOnTheSheetIsOne(String verb) {
        try {
            EntryParser.parse(verb);
        } catch (Refusal incomplete) {
            assertThat(Words.of(Locale.ENGLISH).say(incomplete.why())).doesNotContain("is not an entry");
        }
    }

    @Test
    void everyVerbStandsOnTheSheet() {
        String sheet = String.join("\n", EntrySheet.lines(Words.of(Locale.ENGLISH)));
        assertThat(EntryKind.all())
                .allSatisfy(kind -> assertThat(sheet).containsPattern("[ \"]" + kind.verb() + "[ ,]"));
    }

    @Test
    void everyExampleOnTheSheetCanBeEntered() {
        List<String> examples = EXAMPLE.matcher(String.join("\n", EntrySheet.lines(Words.of(Locale.ENGLISH))))
                .results()
                .map(found -> found.group(1) == null ? found.group(2) : found.group(1))
                .toList();
        assertThat(examples).hasSizeGreaterThanOrEqualTo(4);
        examples.forEach(entry ->
                assertThatCode(() -> EntryParser.parse(entry)).as(entry).doesNotThrowAnyException());
    }

    /** The parser's unit {@code TOOL} is a whole turn of the tool. */
    @Test
    void aTurnOfTheToolIsToldFromADegreeOfIt() {
        assertThat(String.join(" ", EntrySheet.lines(Words.of(Locale.ENGLISH))))
                .contains("\"tool\" (whole turns of the turning tool)", "\"tooldeg\" (degrees of it)");
    }

    @Test
    void everyKindOfFindingIsNamed() {
        assertThat(String.join(" ", EntrySheet.lines(Words.of(Locale.ENGLISH))))
                .contains(Arrays.stream(Kind.values()).map(Kind::word).toList());
    }

    @Test
    void theHelpOfLogShowsIt(@TempDir Path folder) {
        assertThat(Console.in(folder).run("log", "--help").out()).contains("round N [in 60s]");
    }
}
