package everyblade.record.limits;

import static everyblade.record.limits.LimitsFiles.FULL;
import static everyblade.record.limits.LimitsFiles.problems;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import everyblade.core.entry.Entry.Interval;
import everyblade.core.entry.Entry.LengthUnit;
import everyblade.core.entry.Kind;
import everyblade.core.finding.Bounds;
import everyblade.core.finding.Dimension;
import everyblade.core.finding.Guard;
import everyblade.core.finding.Length;
import everyblade.core.finding.Limits;
import everyblade.core.finding.Repeat;
import everyblade.core.finding.Step;
import everyblade.json.Problem;
import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LimitsReaderTest {

    private static Length inches(String inches) {
        return Length.of(new BigDecimal(inches), LengthUnit.IN);
    }

    @Test
    void takesEverythingExactlyAsItIsWritten() {
        Limits limits = LimitsFiles.limits(FULL);

        assertThat(limits.name()).isEqualTo("Limits for tests");
        assertThat(limits.notice()).contains("Invented.");
        assertThat(limits.guard()).isEqualTo(Guard.EXPANDED);
        assertThat(limits.plusMinus()).contains(inches("0.004"));
        assertThat(limits.facts()).containsExactly("scope serial");
        assertThat(limits.rules()).extracting(rule -> rule.id()).containsExactly("edges", "cracks", "deposits");
        assertThat(limits.rules().get(0).kinds()).containsExactlyInAnyOrder(Kind.NICK, Kind.DENT);
        Step second = limits.rules().get(0).steps().get(1);
        assertThat(second.sizes().get(Dimension.LENGTH))
                .isEqualTo(new Bounds(Optional.of(new Length(new BigDecimal("0.0254"))), Optional.of(inches("0.05"))));
        assertThat(second.counts().neighbours()).isEqualTo(OptionalInt.of(2));
        assertThat(second.again()).contains(new Repeat(BigDecimal.valueOf(25), Interval.CYCLES));
    }

    @Nested
    class Problems {

        /** @param at text that begins where the problem is said to be */
        private void isRefused(String from, String to, String code, String at) {
            assertThat(FULL).contains(from);
            String changed = FULL.replace(from, to);
            String before = changed.substring(0, changed.indexOf(at));
            assertThat(problems(changed)).first().satisfies(problem -> {
                assertThat(problem.code()).isEqualTo(code);
                assertThat(problem.line())
                        .isEqualTo(
                                1 + (int) before.chars().filter(c -> c == '\n').count());
                assertThat(problem.column()).isEqualTo(before.length() - before.lastIndexOf('\n'));
            });
        }

        @Test
        void nameTheirLineAndColumn() {
            isRefused("\"nick\", \"dent\"", "\"nick\", \"dint\"", "unknown-word", "\"dint\"");
            isRefused("\"edges\", \"rows\"", "\"edges\", \"row\"", "unknown-key", "\"row\": [\"a\"");
            isRefused("0.050 }", "-0.050 }", "out-of-range", "-0.050");
            isRefused("\"least\": 0.001", "\"least\": 0.051", "wrong-order", "{ \"least\": 0.051");
            isRefused(
                    "\"noLimit\": true, ", "", "missing-key", "{ \"outcome\": \"may stay\" } ], \"beyond\": \"wash\"");
            isRefused("\"rows\": [\"c\"]", "\"rows\": [\"d\"]", "unknown-row", "\"d\"");
            isRefused("\"tip/pressure\"", "\"top\"", "unknown-zone", "\"top\"");
            isRefused("\"onlyWhile\": [\"a\"]", "\"onlyWhile\": [\"c\"]", "circle", "[\n");
            isRefused("\"id\": \"cracks\"", "\"id\": \"edges\"", "duplicate-id", "\"edges\", \"kinds\"");
            isRefused("\"model\": \"three\"", "\"model\": \"other\"", "other-model", "\"other\"");
            isRefused("limits/1", "limits/2", "newer-version", "\"everyblade");
            isRefused("0.004", "0.0000000000001", "out-of-range", "0.0000000000001");
        }

        @Test
        void sayOnOneLineWhatWhyAndWhatToDo() {
            assertThat(problems(FULL.replace("\"dent\"", "\"dint\"")).get(0))
                    .asString()
                    .startsWith(
                            "limits.json:5:60: unknown-word: \"kinds\" of the rule edges is \"dint\", it must be one of"
                                    + " nick, dent,")
                    .endsWith("did you mean \"dent\"?")
                    .doesNotContain("\n");
        }

        @Test
        void doNotHideEachOther() {
            assertThat(problems(FULL.replace("\"dent\"", "\"dint\"")
                            .replace("0.5,", "\"x\",")
                            .replace("reject", "")))
                    .extracting(Problem::code)
                    .contains("unknown-word", "wrong-type", "empty-text");
        }
    }

    /** The schema and the reader say the same, as far as a schema can tell. */
    @Nested
    class TheSchema {

        private final Schema schema = schema();

        private static Schema schema() {
            try (InputStream in = LimitsReader.class.getResourceAsStream("limits-1.schema.json")) {
                return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                        .getSchema(new String(in.readAllBytes(), StandardCharsets.UTF_8), InputFormat.JSON);
            } catch (IOException failure) {
                throw new java.io.UncheckedIOException(failure);
            }
        }

        private boolean accepts(String json) throws IOException {
            return schema.validate(new ObjectMapper().readTree(json)).isEmpty();
        }

        @Test
        void acceptsWhatTheReaderTakes() throws IOException {
            assertThat(accepts(FULL)).isTrue();
            SplittableRandom random = new SplittableRandom(7);
            for (int i = 0; i < 200; i++) {
                ObjectNode file = new RandomLimits(random.split()).file();
                assertThat(accepts(file.toString())).as(file.toString()).isTrue();
            }
        }

        @ParameterizedTest
        @CsvSource(
                delimiter = '|',
                value = {
                    "\"unit\": \"in\"            | \"unit\": \"cm\"",
                    "\"guard\": \"expanded\"     | \"guard\": \"none\"",
                    "\"plusMinus\": 0.004        | \"plusMinus\": -1",
                    "\"dent\"                    | \"nick\"",
                    "\"dent\"                    | \"dint\"",
                    "\"rows\": [\"c\"]           | \"rows\": []",
                    "\"bothFaces\": false        | \"bothFaces\": 0",
                    "\"perAirfoil\": 3           | \"perAirfoil\": 2.5",
                    "\"perAirfoil\": 3           | \"perAirfoils\": 3",
                    "\"apart\": 0.5              | \"apart\": \"0.5\"",
                    "\"most\": 0.010             | \"least\": null",
                    "\"length\": { \"most\": 0.010 } | \"length\": null",
                    "\"noLimit\": true           | \"noLimit\": false",
                    "\"noLimit\": true           | \"noLimit\": true, \"perRow\": 1",
                    "\"in\": 25                  | \"in\": 0",
                    "\"unit\": \"cycles\"        | \"unit\": \"weeks\"",
                    "\"steps\": []               | \"steps\": {}",
                    "\"beyond\": \"wash\"        | \"beyond\": \" \"",
                    ", \"beyond\": \"wash\"      | ''",
                    "\"id\": \"cracks\",         | ''",
                    "\"name\": \"Limits for tests\", | ''",
                })
        void refusesWhatTheReaderRefuses(String from, String to) throws IOException {
            assertThat(FULL).contains(from);
            String changed = FULL.replaceFirst(java.util.regex.Pattern.quote(from), to);

            assertThat(accepts(changed)).isFalse();
            assertThat(problems(changed)).isNotEmpty();
        }
    }

    @Test
    void answersDamagedFilesWithoutAnException() {
        SplittableRandom random = new SplittableRandom(11);
        byte[] full = FULL.getBytes(StandardCharsets.UTF_8);
        int refused = 0;
        for (int i = 0; i < 3000; i++) {
            byte[] damaged = full.clone();
            int hits = random.nextInt(1, 4);
            for (int hit = 0; hit < hits; hit++) {
                damaged[random.nextInt(damaged.length)] =
                        (byte) (random.nextBoolean() ? random.nextInt(256) : "{}[]\",:0-e".charAt(random.nextInt(10)));
            }
            LimitsReading[] reading = new LimitsReading[1];
            assertThatCode(() -> reading[0] = LimitsReader.read("l", damaged, Optional.of(LimitsFiles.ENGINE)))
                    .doesNotThrowAnyException();
            refused += reading[0] instanceof LimitsReading.Unreadable ? 1 : 0;
        }
        assertThat(refused).isGreaterThan(1000);
    }

    @Test
    void isNotMisledByHugeExponentsNorByThousandsOfRules() {
        assertThat(problems(FULL.replace("0.004", "1e-999999999"))).isNotEmpty();
        assertThat(problems(FULL.replace("0.004", "1e999999999"))).isNotEmpty();
        StringBuilder rules = new StringBuilder();
        for (int i = 0; i < 20_000; i++) {
            rules.append("{\"id\":\"r")
                    .append(i)
                    .append("\",\"rows\":[\"x")
                    .append(i)
                    .append("\"],\"onlyWhile\":[\"x")
                    .append((i + 1) % 20_000)
                    .append("\"],\"steps\":[],\"beyond\":\"no\"},");
        }
        String chain = "{\"schema\":\"everyblade/limits/1\",\"name\":\"n\",\"rules\":["
                + rules.substring(0, rules.length() - 1) + "]}";
        List<Problem> found = ((LimitsReading.Unreadable)
                        LimitsReader.read("l", chain.getBytes(StandardCharsets.UTF_8), Optional.empty()))
                .problems();
        assertThat(found).extracting(Problem::code).containsExactly("circle");
    }
}
