package everyblade.json;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.PrettyPrinter;
import com.fasterxml.jackson.core.io.NumberOutput;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.core.util.Separators.Spacing;
import everyblade.spi.MeridionalPoint;
import everyblade.spi.Station.Heading;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/** Writes members of JSON objects, each value in exactly one way. */
final class CanonicalJson {

    /** Writes the members of one object. */
    interface Members {
        void write() throws IOException;
    }

    /** Writes the members of the object for one record. */
    interface MembersOf<T> {
        void write(T record) throws IOException;
    }

    private final JsonGenerator generator;

    CanonicalJson(JsonGenerator generator) {
        this.generator = generator;
    }

    /** Members on lines of their own, two spaces a level, arrays on one line, the same on every system. */
    static PrettyPrinter layout() {
        Separators separators = Separators.createDefaultInstance()
                .withObjectFieldValueSpacing(Spacing.AFTER)
                .withObjectEntrySpacing(Spacing.NONE)
                .withArrayValueSpacing(Spacing.AFTER)
                .withObjectEmptySeparator("")
                .withArrayEmptySeparator("");
        return new DefaultPrettyPrinter(separators)
                .withObjectIndenter(new DefaultIndenter("  ", "\n"))
                .withArrayIndenter(new DefaultPrettyPrinter.NopIndenter());
    }

    void begin() throws IOException {
        generator.writeStartObject();
    }

    void end() throws IOException {
        generator.writeEndObject();
    }

    void object(String key, Members members) throws IOException {
        generator.writeFieldName(key);
        begin();
        members.write();
        end();
    }

    <T> void objects(String key, List<T> records, MembersOf<T> members) throws IOException {
        generator.writeArrayFieldStart(key);
        for (T record : records) {
            begin();
            members.write(record);
            end();
        }
        generator.writeEndArray();
    }

    void nothing(String key) throws IOException {
        generator.writeNullField(key);
    }

    void text(String key, String text) throws IOException {
        generator.writeStringField(key, text);
    }

    void text(String key, Optional<String> text) throws IOException {
        generator.writeStringField(key, text.orElse(null));
    }

    void texts(String key, List<String> texts) throws IOException {
        generator.writeArrayFieldStart(key);
        for (String text : texts) {
            generator.writeString(text);
        }
        generator.writeEndArray();
    }

    void flag(String key, boolean flag) throws IOException {
        generator.writeBooleanField(key, flag);
    }

    void number(String key, double number) throws IOException {
        generator.writeFieldName(key);
        number(number);
    }

    void number(String key, OptionalDouble number) throws IOException {
        if (number.isEmpty()) {
            nothing(key);
        } else {
            number(key, number.getAsDouble());
        }
    }

    void numbers(String key, double... numbers) throws IOException {
        generator.writeFieldName(key);
        array(numbers);
    }

    void heading(String key, Heading heading) throws IOException {
        numbers(key, heading.axial(), heading.tangential(), heading.radial());
    }

    void curve(String key, List<MeridionalPoint> curve) throws IOException {
        pairs(key, curve, MeridionalPoint::x, MeridionalPoint::r);
    }

    <T> void pairs(String key, List<T> records, ToDoubleFunction<T> first, ToDoubleFunction<T> second)
            throws IOException {
        generator.writeArrayFieldStart(key);
        for (T record : records) {
            array(first.applyAsDouble(record), second.applyAsDouble(record));
        }
        generator.writeEndArray();
    }

    private void array(double... numbers) throws IOException {
        generator.writeStartArray();
        for (double number : numbers) {
            number(number);
        }
        generator.writeEndArray();
    }

    /** What is no number becomes null, which the reader refuses. */
    private void number(double number) throws IOException {
        if (Double.isFinite(number)) {
            generator.writeNumber(shortest(number));
        } else {
            generator.writeNull();
        }
    }

    /**
     * The shortest decimal that reads back as the same double. The JDK's own text became the shortest only with version
     * 19, so it would differ from machine to machine; Jackson's is that of Raffaello Giulietti, "The Schubfach way to
     * render doubles" (2020).
     */
    static String shortest(double number) {
        String text = NumberOutput.toString(number, true);
        return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    }
}
