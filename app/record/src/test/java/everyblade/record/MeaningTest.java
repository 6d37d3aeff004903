package everyblade.record;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.entry.Entry;
import everyblade.core.entry.EntryKind;
import everyblade.core.entry.LookEntry;
import everyblade.core.entry.Movement;
import everyblade.core.entry.Said;
import everyblade.core.entry.TurnEntry;
import java.io.IOException;
import java.io.InputStream;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class MeaningTest {

    /** Makes up entries of every kind, by their records alone. */
    private record Inventor(SplittableRandom random, boolean saysEverything) {

        private static final List<String> TEXTS =
                List.of("p1-c1", "", "\"tip\" \\", "Öl\u2028°", "\uD83D\uDD29", "\t\u0001");

        Object invent(Type type) {
            if (type instanceof ParameterizedType generic) {
                Type inner = generic.getActualTypeArguments()[0];
                if (generic.getRawType() == Said.class) {
                    return new Said<>(invent(inner), 1);
                }
                if (generic.getRawType() == Optional.class) {
                    return saysEverything || random.nextBoolean() ? Optional.of(invent(inner)) : Optional.empty();
                }
                return Stream.generate(() -> invent(inner))
                        .limit(saysEverything ? 2 : random.nextInt(4))
                        .toList();
            }
            return plain((Class<?>) type);
        }

        private Object plain(Class<?> type) {
            if (type == String.class) {
                return choose(saysEverything ? List.of("x") : TEXTS);
            }
            if (type == Integer.class) {
                return saysEverything ? 7 : random.nextInt();
            }
            if (type == boolean.class) {
                return saysEverything || random.nextBoolean();
            }
            if (type == BigDecimal.class) {
                return saysEverything
                        ? new BigDecimal("1.50")
                        : BigDecimal.valueOf(random.nextLong(), random.nextInt(25));
            }
            if (type.isEnum()) {
                return choose(List.of(type.getEnumConstants()));
            }
            return record(type.isSealed() ? choose(List.of(type.getPermittedSubclasses())) : type);
        }

        private <T> T choose(List<T> choices) {
            return choices.get(saysEverything ? 0 : random.nextInt(choices.size()));
        }

        Object record(Class<?> type) {
            List<Class<?>> types = new ArrayList<>();
            List<Object> values = new ArrayList<>();
            for (RecordComponent component : type.getRecordComponents()) {
                types.add(component.getType());
                values.add(invent(component.getGenericType()));
            }
            try {
                return type.getDeclaredConstructor(types.toArray(Class<?>[]::new))
                        .newInstance(values.toArray());
            } catch (ReflectiveOperationException impossible) {
                throw new AssertionError(impossible);
            }
        }
    }

    @Test
    void readsBackEveryEntryAsItWasWritten() throws Unreadable {
        Inventor inventor = new Inventor(new SplittableRandom(20260303), false);
        for (EntryKind kind : EntryKind.all()) {
            for (int i = 0; i < 200; i++) {
                Entry entry = (Entry) inventor.record(kind.type());
                byte[] json = JobJson.text(Meaning.write(entry)).getBytes(StandardCharsets.UTF_8);

                assertThat(Meaning.read(JobJson.object(json), false)).isEqualTo(entry);
            }
        }
    }

    @Test
    void writesEveryKindThatTheFormatHasAsItHasIt() throws IOException, Unreadable {
        Inventor inventor = new Inventor(new SplittableRandom(0), true);

        List<String> written = new ArrayList<>();
        for (EntryKind kind : EntryKind.all()) {
            written.add(JobJson.text(Meaning.write((Entry) inventor.record(kind.type()))));
        }

        assertThat(written).containsAll(fixture());
    }

    private static List<String> fixture() throws IOException {
        try (InputStream lines = MeaningTest.class.getResourceAsStream("meanings.jsonl")) {
            return new String(lines.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .toList();
        }
    }

    @Test
    void leavesOutWhatWasNotSaid() throws Unreadable {
        Entry entry = new TurnEntry.Skip(
                Samples.said(new Movement.To(Optional.empty(), new BigDecimal("210"), Optional.empty())));

        assertThat(JobJson.text(Meaning.write(entry)))
                .isEqualTo("{\"verb\":\"skip\",\"movement\":{\"move\":\"to\",\"angle\":210}}");
    }

    @Test
    void writesNumbersAsTheyWereTypedAndNeverWithAnExponent() throws Unreadable {
        Entry small = new LookEntry.Heat(Samples.said(new BigDecimal("0.000000010")), false);
        Entry large = new LookEntry.Heat(Samples.said(new BigDecimal("4E+3")), false);

        assertThat(JobJson.text(Meaning.write(small))).contains("0.000000010");
        assertThat(JobJson.text(Meaning.write(large))).contains("4000");
    }
}
