package everyblade.record;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;

/** JSON as the journal has it: one object a line, members in the order given, numbers plain and never rounded. */
final class JobJson {

    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
            .build();

    private JobJson() {}

    static ObjectNode object() {
        return MAPPER.createObjectNode();
    }

    static String text(ObjectNode node) throws Unreadable {
        try {
            return MAPPER.writeValueAsString(node);
        } catch (JsonProcessingException failure) {
            throw new Unreadable(new LineFlaw.NotWritable(firstLine(failure.getOriginalMessage())));
        }
    }

    static ObjectNode object(byte[] line) throws Unreadable {
        JsonNode node;
        try {
            node = MAPPER.readTree(line);
        } catch (JsonProcessingException failure) {
            throw new Unreadable(new LineFlaw.NoJson(firstLine(failure.getOriginalMessage())));
        } catch (IOException failure) {
            throw new Unreadable(new LineFlaw.NoUtf8(firstLine(failure.getMessage())));
        }
        if (node instanceof ObjectNode object) {
            return object;
        }
        throw new Unreadable(LineFlaw.Whole.NO_OBJECT);
    }

    private static String firstLine(String message) {
        return message == null ? "" : message.lines().findFirst().orElse("");
    }
}
