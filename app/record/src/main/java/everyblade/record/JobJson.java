package everyblade.record;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;

/** JSON as the journal has it: one object a line, members in the order given, numbers plain and never rounded. */
final class JobJson {

    private static final JsonFactory READER = JsonFactory.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build();
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    /** Apart, since a mapper takes longer to be made than most commands to read a whole journal. */
    private static final class Writer {

        static final JsonMapper MAPPER = JsonMapper.builder()
                .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
                .build();
    }

    private JobJson() {}

    static ObjectNode object() {
        return NODES.objectNode();
    }

    static String text(ObjectNode node) throws Unreadable {
        try {
            return Writer.MAPPER.writeValueAsString(node);
        } catch (JsonProcessingException failure) {
            throw new Unreadable(new LineFlaw.NotWritable(firstLine(failure.getOriginalMessage())));
        }
    }

    static ObjectNode object(byte[] line) throws Unreadable {
        try (JsonParser json = READER.createParser(line)) {
            JsonToken first = json.nextToken();
            if (first == null) {
                throw new Unreadable(LineFlaw.Whole.NO_OBJECT);
            }
            if (node(json, first) instanceof ObjectNode object && json.nextToken() == null) {
                return object;
            }
            throw new Unreadable(LineFlaw.Whole.NO_OBJECT);
        } catch (JsonProcessingException failure) {
            throw new Unreadable(new LineFlaw.NoJson(firstLine(failure.getOriginalMessage())));
        } catch (IOException failure) {
            throw new Unreadable(new LineFlaw.NoUtf8(firstLine(failure.getMessage())));
        }
    }

    /** The value that begins with this token, up to its end; no deeper than the parser lets anything nest. */
    private static JsonNode node(JsonParser json, JsonToken token) throws IOException {
        return switch (token) {
            case START_OBJECT -> {
                ObjectNode object = NODES.objectNode();
                while (json.nextToken() == JsonToken.FIELD_NAME) {
                    String name = json.currentName();
                    object.set(name, node(json, json.nextToken()));
                }
                yield object;
            }
            case START_ARRAY -> {
                ArrayNode array = NODES.arrayNode();
                for (JsonToken next = json.nextToken(); next != JsonToken.END_ARRAY; next = json.nextToken()) {
                    array.add(node(json, next));
                }
                yield array;
            }
            case VALUE_STRING -> NODES.textNode(json.getText());
            case VALUE_NUMBER_INT ->
                switch (json.getNumberType()) {
                    case INT -> NODES.numberNode(json.getIntValue());
                    case LONG -> NODES.numberNode(json.getLongValue());
                    default -> NODES.numberNode(json.getBigIntegerValue());
                };
            case VALUE_NUMBER_FLOAT -> NODES.numberNode(json.getDecimalValue());
            case VALUE_TRUE, VALUE_FALSE -> NODES.booleanNode(token == JsonToken.VALUE_TRUE);
            default -> NODES.nullNode();
        };
    }

    private static String firstLine(String message) {
        return message == null ? "" : message.lines().findFirst().orElse("");
    }
}
