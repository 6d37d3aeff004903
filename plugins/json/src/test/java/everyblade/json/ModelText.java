package everyblade.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.assertj.core.api.ListAssert;

/** Model files for tests, changes to them, and what the reader and the schema say. */
final class ModelText {

    /** The first members of a model of little else. */
    static final String HEAD = "\"schema\": \"everyblade/engine-model/1\", \"id\": \"m\", \"name\": \"M\"";

    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
            .build();

    private ModelText() {}

    static String resource(String name) {
        try (InputStream in = ModelText.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static JsonNode parse(String json) {
        try {
            return MAPPER.readTree(json);
        } catch (IOException e) {
            throw new UncheckedIOException(json, e);
        }
    }

    static Schema schema() {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(resource("engine-model-1.schema.json"), InputFormat.JSON);
    }

    static Reading read(JsonNode model) {
        return read(model.toString());
    }

    static Reading read(String model) {
        return EngineJsonReader.read("engine.json", model.getBytes(StandardCharsets.UTF_8));
    }

    /** What is wrong with a file that is refused. */
    static ListAssert<Problem> assertProblems(byte[] bytes) {
        Reading reading = EngineJsonReader.read("m/engine.json", bytes);
        assertThat(reading).isInstanceOf(Reading.Unreadable.class);
        return assertThat(((Reading.Unreadable) reading).problems());
    }

    static ListAssert<Problem> assertProblems(String text) {
        return assertProblems(text.getBytes(StandardCharsets.UTF_8));
    }

    /** Applies {@code POINTER = JSON} or {@code POINTER gone}. */
    static void change(JsonNode model, String change) {
        boolean gone = change.endsWith(" gone");
        String pointer = change.substring(0, change.indexOf(' '));
        JsonNode value = gone ? null : parse(change.substring(change.indexOf(" = ") + 3));
        JsonPointer at = JsonPointer.compile(pointer);
        String key = at.last().getMatchingProperty();
        if (model.at(at.head()) instanceof ObjectNode object) {
            if (gone) {
                object.remove(key);
            } else {
                object.set(key, value);
            }
        } else {
            ArrayNode array = (ArrayNode) model.at(at.head());
            if (key.equals("-")) {
                array.add(value);
            } else if (gone) {
                array.remove(Integer.parseInt(key));
            } else {
                array.set(Integer.parseInt(key), value);
            }
        }
    }
}
