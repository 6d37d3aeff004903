package everyblade.record.drill;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;

/** A JSON object of a drill's files, read strictly. */
record Node(ObjectNode object) {

    private static final JsonMapper MAPPER = new JsonMapper();

    static Node empty() {
        return new Node(MAPPER.createObjectNode());
    }

    static Node read(byte[] bytes) throws Garbled {
        try {
            if (MAPPER.readTree(bytes) instanceof ObjectNode object) {
                return new Node(object);
            }
        } catch (IOException unreadable) {
            throw new Garbled();
        }
        throw new Garbled();
    }

    byte[] bytes() {
        try {
            return MAPPER.writeValueAsString(object).getBytes(StandardCharsets.UTF_8);
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    boolean has(String key) {
        return object.has(key);
    }

    String text(String key) throws Garbled {
        return require(key, JsonNode::isTextual).textValue();
    }

    double number(String key) throws Garbled {
        return require(key, node -> node.isNumber() && Double.isFinite(node.doubleValue()))
                .doubleValue();
    }

    long whole(String key) throws Garbled {
        return require(key, JsonNode::isIntegralNumber).longValue();
    }

    boolean flag(String key) throws Garbled {
        return require(key, JsonNode::isBoolean).booleanValue();
    }

    Node node(String key) throws Garbled {
        return new Node((ObjectNode) require(key, JsonNode::isObject));
    }

    List<String> texts(String key) throws Garbled {
        List<String> texts = new ArrayList<>();
        for (JsonNode each : require(key, JsonNode::isArray)) {
            if (!each.isTextual()) {
                throw new Garbled();
            }
            texts.add(each.textValue());
        }
        return texts;
    }

    List<Node> nodes(String key) throws Garbled {
        List<Node> nodes = new ArrayList<>();
        for (JsonNode each : require(key, JsonNode::isArray)) {
            if (!(each instanceof ObjectNode one)) {
                throw new Garbled();
            }
            nodes.add(new Node(one));
        }
        return nodes;
    }

    Map<String, Double> numbers(String key) throws Garbled {
        Map<String, Double> numbers = new TreeMap<>();
        Node node = node(key);
        for (Map.Entry<String, JsonNode> each : node.object.properties()) {
            numbers.put(each.getKey(), node.number(each.getKey()));
        }
        return numbers;
    }

    /** Makes a value of words, which must be among those that there are. */
    static <T> T word(String word, Function<String, T> of) throws Garbled {
        try {
            return of.apply(word);
        } catch (IllegalArgumentException unknown) {
            throw new Garbled();
        }
    }

    private JsonNode require(String key, java.util.function.Predicate<JsonNode> fits) throws Garbled {
        JsonNode node = object.get(key);
        if (node == null || !fits.test(node)) {
            throw new Garbled();
        }
        return node;
    }

    /** A file that does not say what such a file says; nobody is told why, so it says nothing. */
    static final class Garbled extends Exception {

        private static final long serialVersionUID = 1L;

        Garbled() {
            super(null, null, false, false);
        }
    }
}
