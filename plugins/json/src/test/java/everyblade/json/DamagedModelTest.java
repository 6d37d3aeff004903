package everyblade.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.Schema;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Whatever happens to a model's file, reading it answers, soon, and a refusal says why and where. */
class DamagedModelTest {

    private static final long SEED = 4_711;

    /** A sample, or with {@code -Deveryblade.campaign=true} 100,000. */
    private static final int FILES = Boolean.getBoolean("everyblade.campaign") ? 100_000 : 1_500;

    private static final Duration LONGEST = Duration.ofSeconds(1);
    private static final Set<String> CODES =
            ProblemCode.all().stream().map(ProblemCode::code).collect(Collectors.toSet());
    private static final Pattern TOKEN =
            Pattern.compile("\"(?:[^\"\\\\]|\\\\.)*\"|-?[0-9][0-9.eE+-]*|true|false|null|[{}\\[\\],:]");
    private static final Pattern VALUE = Pattern.compile("(?<=: |\\[|, )(?:\"[^\"]*\"(?!:)|-?[0-9.]+|true|false|null)");
    private static final Pattern MEMBER = Pattern.compile("\"[A-Za-z]+\": (?:\"[^\"]*\"|-?[0-9.]+|true|false|null),?");
    private static final List<String> VALUES = List.of(
            "null",
            "true",
            "0",
            "-1",
            "1e999",
            "1e-999",
            "123456789012345678901234567890",
            "NaN",
            "\"\"",
            "\"all\"",
            "\"29/77\"",
            "\"\\u0000\"",
            "\"\\ud800\"",
            "{}",
            "[]",
            "[[]]",
            "[[0, 1], [1, 1]]",
            "{\"id\": \"c1\"}");

    private final SplittableRandom random = new SplittableRandom(SEED);
    private final List<Original> originals = originals();

    @Test
    void is_read_or_refused_soon_with_a_code_and_a_place() {
        int refused = 0;
        for (int i = 0; i < FILES; i++) {
            byte[] bytes = damaged(originals.get(i % originals.size()), i);
            // Time of this thread alone, so that a busy machine does not count.
            long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
            Reading reading = read(bytes, i);
            long end = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
            assertThat(Duration.ofNanos(end - start)).as("time of file %d", i).isLessThan(LONGEST);
            if (reading instanceof Reading.Unreadable no) {
                refused++;
                assertThat(no.problems()).isNotEmpty().allMatch(DamagedModelTest::isComplete);
            }
        }
        assertThat(refused).isBetween(FILES / 2, FILES - 100);
    }

    @Test
    void is_refused_by_the_reader_wherever_the_schema_refuses_it() {
        Schema schema = ModelText.schema();
        int refused = 0;
        for (int i = 0; i < 600; i++) {
            // The reader holds numbers as doubles, of which this one is zero.
            String text = new String(replacedValue(originals.get(0)), StandardCharsets.UTF_8).replace("1e-999", "0");
            JsonNode json;
            try {
                json = ModelText.parse(text);
            } catch (UncheckedIOException e) {
                continue;
            }
            if (!schema.validate(json).isEmpty()) {
                refused++;
                assertThat(ModelText.read(text)).as(text).isInstanceOf(Reading.Unreadable.class);
            }
        }
        assertThat(refused).isGreaterThan(200);
    }

    private static Reading read(byte[] bytes, int i) {
        try {
            return EngineJsonReader.read("engine.json", bytes);
        } catch (RuntimeException | StackOverflowError e) {
            return fail("file " + i + ": " + new String(bytes, StandardCharsets.UTF_8), e);
        }
    }

    private static boolean isComplete(Problem problem) {
        return CODES.contains(problem.code())
                && problem.line() >= 1
                && problem.column() >= 1
                && Stream.of(problem.code(), problem.what(), problem.why(), problem.mend())
                        .noneMatch(String::isBlank)
                && problem.toString().lines().count() == 1;
    }

    /** A sound model, and where its parts are. */
    private record Original(String text, List<int[]> tokens, List<int[]> values, List<int[]> members) {

        Original(String text) {
            this(text, matches(TOKEN, text), matches(VALUE, text), matches(MEMBER, text));
        }

        private static List<int[]> matches(Pattern pattern, String text) {
            return pattern.matcher(text)
                    .results()
                    .map(match -> new int[] {match.start(), match.end()})
                    .toList();
        }
    }

    private byte[] damaged(Original original, int i) {
        return switch (i % 5) {
            case 0 -> flippedBytes(original);
            case 1 -> truncated(original);
            case 2 -> swappedTokens(original);
            case 3 -> withoutMember(original);
            default -> replacedValue(original);
        };
    }

    private byte[] flippedBytes(Original original) {
        byte[] bytes = bytes(original.text());
        for (int i = random.nextInt(3); i >= 0; i--) {
            bytes[random.nextInt(bytes.length)] ^= (byte) (1 << random.nextInt(8));
        }
        return bytes;
    }

    private byte[] truncated(Original original) {
        byte[] bytes = bytes(original.text());
        return Arrays.copyOf(bytes, random.nextInt(bytes.length));
    }

    private byte[] swappedTokens(Original original) {
        int[] a = one(original.tokens());
        int[] b = one(original.tokens());
        int[] first = a[0] < b[0] ? a : b;
        int[] second = a[0] < b[0] ? b : a;
        if (first[0] == second[0]) {
            return bytes(original.text());
        }
        String text = original.text();
        return bytes(text.substring(0, first[0])
                + text.substring(second[0], second[1])
                + text.substring(first[1], second[0])
                + text.substring(first[0], first[1])
                + text.substring(second[1]));
    }

    private byte[] withoutMember(Original original) {
        int[] member = one(original.members());
        return bytes(original.text().substring(0, member[0]) + original.text().substring(member[1]));
    }

    private byte[] replacedValue(Original original) {
        int[] old = one(original.values());
        int[] other = one(original.values());
        String value = random.nextInt(3) == 0
                ? original.text().substring(other[0], other[1])
                : VALUES.get(random.nextInt(VALUES.size()));
        return bytes(
                original.text().substring(0, old[0]) + value + original.text().substring(old[1]));
    }

    private int[] one(List<int[]> places) {
        return places.get(random.nextInt(places.size()));
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static List<Original> originals() {
        List<Original> originals = new ArrayList<>();
        originals.add(new Original(ModelText.resource("full.json")));
        originals.add(new Original(ModelText.resource("least.json")));
        try (Stream<Path> folders = Files.list(ShippedModelsTest.FOLDER)) {
            List<Path> files = folders.map(folder -> folder.resolve(EngineJsonReader.FILE))
                    .filter(Files::exists)
                    .sorted()
                    .toList();
            for (Path file : files) {
                originals.add(new Original(Files.readString(file)));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return originals;
    }
}
