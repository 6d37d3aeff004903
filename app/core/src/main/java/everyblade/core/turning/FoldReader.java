package everyblade.core.turning;

import everyblade.core.angle.Turn;
import java.lang.reflect.Array;
import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Reads what {@link FoldWriter} wrote. For bytes that are known to be unchanged since: what stands in them is made as it
 * says. The items of trails are made when they are asked for, from whatever thread.
 */
final class FoldReader {

    private static final String OURS = "everyblade.";

    private final ByteBuffer bytes;
    private final Engine engine;
    private final int pool;
    private final Map<Integer, Object> pooled = new ConcurrentHashMap<>();
    private final Map<Integer, Type> types = new ConcurrentHashMap<>();

    /** A type of records, as it is made. */
    private record Type(Constructor<?> constructor, int components) {}

    private FoldReader(byte[] bytes, Engine engine) {
        this.bytes = ByteBuffer.wrap(bytes);
        this.engine = engine;
        this.pool = Integer.BYTES + this.bytes.getInt(0);
    }

    /**
     * The value that was packed.
     *
     * @param engine stands where one did
     */
    static Object of(byte[] packed, Engine engine) {
        return new FoldReader(packed, engine).value(Integer.BYTES);
    }

    private Object value(int position) {
        return value(bytes.duplicate().position(position));
    }

    private Object value(ByteBuffer in) {
        byte tag = in.get();
        return switch (tag) {
            case Packed.TEXT -> pooled((int) Bytes.whole(in));
            case Packed.INT -> (int) Bytes.whole(in);
            case Packed.LONG -> Bytes.whole(in);
            case Packed.DOUBLE -> Bytes.real(in);
            case Packed.TRUE -> true;
            case Packed.FALSE -> false;
            case Packed.TURN -> Turn.of(Bytes.whole(in), Bytes.whole(in), Bytes.whole(in));
            case Packed.ENGINE -> engine;
            case Packed.TRAIL -> trail(in);
            case Packed.RECORD -> record(in);
            case Packed.SOME -> Optional.of(value(in));
            case Packed.NONE -> Optional.empty();
            case Packed.NUMBER -> OptionalDouble.of(Bytes.real(in));
            case Packed.NO_NUMBER -> OptionalDouble.empty();
            case Packed.DECIMAL -> new BigDecimal(text((int) Bytes.whole(in)));
            case Packed.CONSTANT -> type(text((int) Bytes.whole(in))).getEnumConstants()[(int) Bytes.whole(in)];
            case Packed.LIST -> List.of(items(in, new Object[(int) Bytes.whole(in)]));
            case Packed.SET ->
                Collections.unmodifiableSet(new LinkedHashSet<>(List.of(items(in, new Object[(int) Bytes.whole(in)]))));
            case Packed.MAP -> map(in);
            case Packed.BITS -> bits(in);
            case Packed.DOUBLES -> doubles(in);
            case Packed.ARRAY -> array(in);
            default -> throw new IllegalArgumentException("no value begins with " + tag);
        };
    }

    private Object[] items(ByteBuffer in, Object[] items) {
        for (int i = 0; i < items.length; i++) {
            items[i] = value(in);
        }
        return items;
    }

    private Object map(ByteBuffer in) {
        int size = (int) Bytes.whole(in);
        Map<Object, Object> map = new LinkedHashMap<>();
        for (int i = 0; i < size; i++) {
            map.put(value(in), value(in));
        }
        return Collections.unmodifiableMap(map);
    }

    private static BitSet bits(ByteBuffer in) {
        long[] words = new long[(int) Bytes.whole(in)];
        for (int i = 0; i < words.length; i++) {
            words[i] = Bytes.whole(in);
        }
        return BitSet.valueOf(words);
    }

    private static double[] doubles(ByteBuffer in) {
        double[] numbers = new double[(int) Bytes.whole(in)];
        for (int i = 0; i < numbers.length; i++) {
            numbers[i] = Bytes.real(in);
        }
        return numbers;
    }

    private Object array(ByteBuffer in) {
        String of = text((int) Bytes.whole(in));
        Class<?> type = of.equals("[D") ? double[].class : of.startsWith("[L") ? listed(of) : type(of);
        return items(in, (Object[]) Array.newInstance(type, (int) Bytes.whole(in)));
    }

    /** The type of an array of records, such as {@code [Leveryblade…;}. */
    private static Class<?> listed(String name) {
        return type(name.substring(2, name.length() - 1)).arrayType();
    }

    private Object record(ByteBuffer in) {
        Type type = types.computeIfAbsent((int) Bytes.whole(in), index -> constructed(type(text(index))));
        try {
            return type.constructor().newInstance(items(in, new Object[type.components()]));
        } catch (ReflectiveOperationException failure) {
            throw new IllegalArgumentException("it was another record that was packed", failure);
        }
    }

    private static Type constructed(Class<?> type) {
        RecordComponent[] components = type.getRecordComponents();
        try {
            Constructor<?> constructor = type.getDeclaredConstructor(
                    Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new));
            constructor.setAccessible(true);
            return new Type(constructor, components.length);
        } catch (NoSuchMethodException impossible) {
            throw new AssertionError("every record has its canonical constructor", impossible);
        }
    }

    private static Class<?> type(String name) {
        if (!name.startsWith(OURS)) {
            throw new IllegalArgumentException("nothing of the kind of " + name + " was packed");
        }
        try {
            return Class.forName(name);
        } catch (ClassNotFoundException unknown) {
            throw new IllegalArgumentException("there is no " + name + " any more", unknown);
        }
    }

    private Trail<Object> trail(ByteBuffer in) {
        int size = in.getInt();
        int table = in.position();
        int items = table + size * Integer.BYTES;
        in.position(items + end(table, size));
        return Trail.onDemand(size, index -> value(items + end(table, index)));
    }

    /** Where the items before this one end, counted from the first. */
    private int end(int table, int index) {
        return index == 0 ? 0 : bytes.getInt(table + (index - 1) * Integer.BYTES);
    }

    private String text(int index) {
        return (String) pooled(index);
    }

    private Object pooled(int index) {
        Object known = pooled.get(index);
        if (known == null) {
            int size = bytes.getInt(pool);
            int table = pool + Integer.BYTES;
            int start = table + size * Integer.BYTES + end(table, index);
            int end = table + size * Integer.BYTES + end(table, index + 1);
            known = bytes.get(start) == Packed.TEXT
                    ? new String(bytes.array(), start + 1, end - start - 1, StandardCharsets.UTF_8)
                    : value(start);
            pooled.put(index, known);
        }
        return known;
    }
}
