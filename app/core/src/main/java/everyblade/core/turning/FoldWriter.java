package everyblade.core.turning;

import everyblade.core.angle.Turn;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Writes values as {@link Packed} says. */
final class FoldWriter {

    private final Map<Object, Integer> pool = new LinkedHashMap<>();
    private final List<byte[]> pooled = new ArrayList<>();
    private final Map<Class<?>, List<RecordComponent>> components = new HashMap<>();

    /** A value and all that it needs, by itself. */
    static byte[] of(Object value) {
        FoldWriter packing = new FoldWriter();
        byte[] body = packing.packed(value);
        Bytes out = new Bytes();
        out.writeInt(body.length);
        out.write(body);
        packing.table(out, packing.pooled);
        return out.all();
    }

    private byte[] packed(Object value) {
        Bytes bytes = new Bytes();
        write(value, bytes);
        return bytes.all();
    }

    /** How many there are, where each ends, and all of them. */
    private void table(Bytes out, List<byte[]> items) {
        out.writeInt(items.size());
        int end = 0;
        for (byte[] item : items) {
            end += item.length;
            out.writeInt(end);
        }
        for (byte[] item : items) {
            out.write(item);
        }
    }

    private void write(Object value, Bytes out) {
        if (value instanceof String || value instanceof Stance) {
            out.writeByte(Packed.TEXT);
            out.writeWhole(pooled(value));
        } else if (value instanceof Integer number) {
            out.writeByte(Packed.INT);
            out.writeWhole(number);
        } else if (value instanceof Long number) {
            out.writeByte(Packed.LONG);
            out.writeWhole(number);
        } else if (value instanceof Double number) {
            out.writeByte(Packed.DOUBLE);
            out.writeReal(number);
        } else if (value instanceof Boolean yes) {
            out.writeByte(yes ? Packed.TRUE : Packed.FALSE);
        } else if (value instanceof Turn turn) {
            out.writeByte(Packed.TURN);
            out.writeWhole(turn.floorTicks());
            out.writeWhole(turn.numerator());
            out.writeWhole(turn.denominator());
        } else if (value instanceof Engine) {
            out.writeByte(Packed.ENGINE);
        } else if (value instanceof Trail<?> trail) {
            List<byte[]> items = new ArrayList<>();
            for (Object item : trail) {
                items.add(packed(item));
            }
            out.writeByte(Packed.TRAIL);
            table(out, items);
        } else if (value instanceof Record said) {
            writeRecord(said, out);
        } else {
            writeFurther(value, out);
        }
    }

    private void writeRecord(Record said, Bytes out) {
        out.writeByte(Packed.RECORD);
        out.writeWhole(pooled(said.getClass().getName()));
        for (RecordComponent component : components.computeIfAbsent(said.getClass(), FoldWriter::components)) {
            try {
                write(component.getAccessor().invoke(said), out);
            } catch (ReflectiveOperationException failure) {
                throw new IllegalStateException("a record gives its components", failure);
            }
        }
    }

    private static List<RecordComponent> components(Class<?> type) {
        List<RecordComponent> components = List.of(type.getRecordComponents());
        components.forEach(component -> component.getAccessor().setAccessible(true));
        return components;
    }

    private void writeFurther(Object value, Bytes out) {
        if (value instanceof Optional<?> optional) {
            out.writeByte(optional.isPresent() ? Packed.SOME : Packed.NONE);
            if (optional.isPresent()) {
                write(optional.get(), out);
            }
        } else if (value instanceof OptionalDouble optional) {
            out.writeByte(optional.isPresent() ? Packed.NUMBER : Packed.NO_NUMBER);
            if (optional.isPresent()) {
                out.writeReal(optional.getAsDouble());
            }
        } else if (value instanceof BigDecimal number) {
            out.writeByte(Packed.DECIMAL);
            out.writeWhole(pooled(number.toString()));
        } else if (value instanceof Enum<?> constant) {
            out.writeByte(Packed.CONSTANT);
            out.writeWhole(pooled(constant.getDeclaringClass().getName()));
            out.writeWhole(constant.ordinal());
        } else if (value instanceof List<?> || value instanceof Set<?>) {
            Collection<?> items = (Collection<?>) value;
            out.writeByte(value instanceof Set<?> ? Packed.SET : Packed.LIST);
            out.writeWhole(items.size());
            for (Object item : items) {
                write(item, out);
            }
        } else if (value instanceof Map<?, ?> map) {
            out.writeByte(Packed.MAP);
            out.writeWhole(map.size());
            for (Map.Entry<?, ?> entry : map.entrySet()) {
                write(entry.getKey(), out);
                write(entry.getValue(), out);
            }
        } else if (value instanceof BitSet bits) {
            long[] words = bits.toLongArray();
            out.writeByte(Packed.BITS);
            out.writeWhole(words.length);
            for (long word : words) {
                out.writeWhole(word);
            }
        } else if (value instanceof double[] numbers) {
            out.writeByte(Packed.DOUBLES);
            out.writeWhole(numbers.length);
            for (double number : numbers) {
                out.writeReal(number);
            }
        } else if (value instanceof Object[] items) {
            out.writeByte(Packed.ARRAY);
            out.writeWhole(pooled(items.getClass().getComponentType().getName()));
            out.writeWhole(items.length);
            for (Object item : items) {
                write(item, out);
            }
        } else {
            throw new IllegalArgumentException("a " + value.getClass().getName() + " cannot be packed");
        }
    }

    private int pooled(Object value) {
        Integer known = pool.get(value);
        if (known != null) {
            return known;
        }
        byte[] bytes;
        if (value instanceof Stance stance) {
            Bytes packed = new Bytes();
            writeRecord(stance, packed);
            bytes = packed.all();
        } else {
            byte[] text = ((String) value).getBytes(StandardCharsets.UTF_8);
            bytes = new byte[text.length + 1];
            bytes[0] = Packed.TEXT;
            System.arraycopy(text, 0, bytes, 1, text.length);
        }
        pooled.add(bytes);
        pool.put(value, pooled.size() - 1);
        return pooled.size() - 1;
    }
}
