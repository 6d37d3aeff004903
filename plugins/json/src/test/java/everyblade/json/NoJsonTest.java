package everyblade.json;

import static everyblade.json.ModelText.HEAD;
import static everyblade.json.ModelText.assertProblems;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A model file that is no JSON, or not one that can be taken at its word. */
class NoJsonTest {

    @Test
    void is_refused_at_the_place_where_it_goes_wrong() {
        assertProblems("{\n  \"schema\": nonsense\n}").singleElement().satisfies(problem -> {
            assertThat(problem.code()).isEqualTo("bare-word");
            assertThat(problem.line()).isEqualTo(2);
        });
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "~~               | empty-file",
                "~  ~             | empty-file",
                "{                | unclosed",
                "[1, 2            | unclosed",
                "{\"a\": \"xyz    | unclosed",
                "{} {}            | text-after-end",
                "{}}              | wrong-bracket",
                "{\"a\": [1}      | wrong-bracket",
                "{\"a\": 01}      | bad-number",
                "{\"a\": +1}      | bad-number",
                "{\"a\": .5}      | bad-number",
                "{\"a\": 5.}      | bad-number",
                "{\"a\": 1e}      | bad-number",
                "{\"a\": 12mm}    | bad-number",
                "{\"a\": 29/77}   | bad-number",
                "{\"a\": NaN}     | bare-word",
                "{\"a\": True}    | bare-word",
                "{\"a\": 1,5}     | decimal-comma",
                "{\"a\": 1,}      | extra-comma",
                "[1,]             | extra-comma",
                "[1,,2]           | extra-comma",
                "{,}              | extra-comma",
                "{\"a\": 1 \"b\":2}| missing-comma",
                "[1 2]            | missing-comma",
                "{\"a\" 1}        | missing-colon",
                "{\"a\"= 1}       | missing-colon",
                "{\"a\": }        | missing-value",
                "{a: 1}           | unquoted-key",
                "{'a': 1}         | wrong-quotes",
                "{\"a\": \u201cx\u201d} | wrong-quotes",
                "{\"a\": \"C:\\x\"} | bad-escape",
                "{\"a\": \"\t\"}   | control-character",
                "// x             | comment",
                "# x              | comment",
                "{ /* c */ }      | comment",
                "@                | not-json"
            })
    void is_refused_by_the_slip_that_its_author_made(String text, String code) {
        assertProblems(String.valueOf(text)).first().extracting(Problem::code).isEqualTo(code);
    }

    @Test
    void is_refused_if_its_bytes_are_not_UTF_8() {
        assertProblems("{\n\"name\": \"größer\"}".getBytes(StandardCharsets.ISO_8859_1))
                .singleElement()
                .satisfies(problem -> {
                    assertThat(problem.code()).isEqualTo("not-utf-8");
                    assertThat(problem.line()).isEqualTo(2);
                    assertThat(problem.column()).isEqualTo(12);
                });
        assertProblems("{}".getBytes(StandardCharsets.UTF_16))
                .first()
                .extracting(Problem::code)
                .isEqualTo("not-utf-8");
    }

    @Test
    void may_still_begin_with_a_byte_order_mark_if_it_is_UTF_8() {
        assertThat(ModelText.read("\uFEFF" + ModelText.resource("full.json"))).isInstanceOf(Reading.Read.class);
    }

    @Test
    void is_refused_if_a_key_stands_twice() {
        assertProblems("{" + HEAD + ", \"rows\": [{\"id\": \"r\", \"kind\": \"rotor\", \"count\": 9,\n\"count\": 10}]}")
                .filteredOn(problem -> problem.severity() == Severity.ERROR)
                .singleElement()
                .satisfies(problem -> {
                    assertThat(problem.code()).isEqualTo("duplicate-key");
                    assertThat(problem.line()).isEqualTo(2);
                    assertThat(problem.pointer()).isEqualTo("/rows/0/count");
                });
    }

    @Test
    void is_refused_if_it_is_not_there() {
        assertThat(EngineJsonReader.read(Path.of("no", "such", "engine.json")))
                .isInstanceOfSatisfying(
                        Reading.Unreadable.class,
                        no -> assertThat(no.problems())
                                .singleElement()
                                .satisfies(problem -> assertThat(problem.code()).isEqualTo("no-such-file")));
    }
}
