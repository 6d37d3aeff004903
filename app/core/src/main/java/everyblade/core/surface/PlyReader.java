package everyblade.core.surface;

import everyblade.core.surface.MeshFile.Damaged;
import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Reads points and faces from PLY 1.0; elements and properties that a mesh does not need are passed over. */
final class PlyReader {

    private final ByteBuffer bytes;
    private final MeshGatherer mesh = new MeshGatherer();
    private boolean ascii;

    PlyReader(byte[] content) {
        bytes = ByteBuffer.wrap(content);
    }

    /** @param count type of a list's length, null if it is no list */
    private record Property(String name, Type count, Type type) {}

    private record Element(String name, int count, List<Property> properties) {}

    Mesh mesh() throws Damaged, UnusableShape {
        try {
            for (Element element : header()) {
                for (int i = 0; i < element.count(); i++) {
                    read(element);
                }
            }
        } catch (BufferUnderflowException e) {
            throw new Damaged(FileDamage.Plain.ENDS_EARLY);
        }
        return mesh.built();
    }

    private List<Element> header() throws Damaged {
        List<Element> elements = new ArrayList<>();
        while (true) {
            String[] words = line().trim().split("\\s+");
            switch (words[0]) {
                case "end_header" -> {
                    return elements;
                }
                case "format" -> format(at(words, 1));
                case "element" -> elements.add(new Element(at(words, 1), count(at(words, 2)), new ArrayList<>()));
                case "property" -> {
                    if (elements.isEmpty()) {
                        throw new Damaged(FileDamage.Plain.STRAY_PROPERTY);
                    }
                    elements.get(elements.size() - 1).properties().add(property(words));
                }
                default -> {
                    // The first line, comments and what the standard does not fix.
                }
            }
        }
    }

    private static Property property(String[] words) throws Damaged {
        return at(words, 1).equals("list")
                ? new Property(at(words, 4), Type.of(at(words, 2)), Type.of(at(words, 3)))
                : new Property(at(words, 2), null, Type.of(at(words, 1)));
    }

    private void format(String format) throws Damaged {
        switch (format) {
            case "ascii" -> ascii = true;
            case "binary_little_endian" -> bytes.order(ByteOrder.LITTLE_ENDIAN);
            case "binary_big_endian" -> bytes.order(ByteOrder.BIG_ENDIAN);
            default -> throw new Damaged(new FileDamage.UnknownFormat(format));
        }
    }

    /** Every item takes a byte at least, so that a larger count can only be wrong. */
    private int count(String word) throws Damaged {
        double count = MeshGatherer.number(word);
        if (!(count >= 0 && count <= bytes.capacity() && count == Math.rint(count))) {
            throw new Damaged(new FileDamage.ManyItems(word));
        }
        return (int) count;
    }

    private void read(Element element) throws Damaged {
        double[] place = {Double.NaN, Double.NaN, Double.NaN};
        int[] corners = null;
        for (Property property : element.properties()) {
            if (property.count() == null) {
                double value = value(property.type());
                int axis = List.of("x", "y", "z").indexOf(property.name());
                if (axis >= 0) {
                    place[axis] = value;
                }
            } else {
                int[] list = list(property);
                if (property.name().equals("vertex_indices") || property.name().equals("vertex_index")) {
                    corners = list;
                }
            }
        }
        if (element.name().equals("vertex")) {
            mesh.point(place[0], place[1], place[2]);
        } else if (element.name().equals("face")) {
            if (corners == null) {
                throw new Damaged(FileDamage.Plain.NO_CORNERS);
            }
            mesh.face(corners);
        }
    }

    private int[] list(Property property) throws Damaged {
        double length = value(property.count());
        if (!(length >= 0 && length <= bytes.capacity())) {
            throw new Damaged(new FileDamage.LongList(String.valueOf(length)));
        }
        int[] list = new int[(int) length];
        for (int i = 0; i < list.length; i++) {
            list[i] = (int) value(property.type());
        }
        return list;
    }

    private double value(Type type) throws Damaged {
        return ascii ? MeshGatherer.number(word()) : type.read(bytes);
    }

    private String word() {
        byte next = bytes.get();
        while (next <= ' ') {
            next = bytes.get();
        }
        StringBuilder word = new StringBuilder();
        while (true) {
            word.append((char) next);
            if (!bytes.hasRemaining()) {
                return word.toString();
            }
            next = bytes.get();
            if (next <= ' ') {
                return word.toString();
            }
        }
    }

    private String line() {
        int start = bytes.position();
        while (bytes.get() != '\n') {
            // On to the end of the line.
        }
        return new String(bytes.array(), start, bytes.position() - start, StandardCharsets.ISO_8859_1);
    }

    private static String at(String[] words, int i) throws Damaged {
        if (i >= words.length) {
            throw new Damaged(new FileDamage.ShortHeader(String.join(" ", words)));
        }
        return words[i];
    }

    private enum Type {
        INT8,
        UINT8,
        INT16,
        UINT16,
        INT32,
        UINT32,
        FLOAT32,
        FLOAT64;

        static Type of(String word) throws Damaged {
            return switch (word) {
                case "char", "int8" -> INT8;
                case "uchar", "uint8" -> UINT8;
                case "short", "int16" -> INT16;
                case "ushort", "uint16" -> UINT16;
                case "int", "int32" -> INT32;
                case "uint", "uint32" -> UINT32;
                case "float", "float32" -> FLOAT32;
                case "double", "float64" -> FLOAT64;
                default -> throw new Damaged(new FileDamage.UnknownType(word));
            };
        }

        double read(ByteBuffer bytes) {
            return switch (this) {
                case INT8 -> bytes.get();
                case UINT8 -> Byte.toUnsignedInt(bytes.get());
                case INT16 -> bytes.getShort();
                case UINT16 -> Short.toUnsignedInt(bytes.getShort());
                case INT32 -> bytes.getInt();
                case UINT32 -> Integer.toUnsignedLong(bytes.getInt());
                case FLOAT32 -> bytes.getFloat();
                case FLOAT64 -> bytes.getDouble();
            };
        }
    }
}
