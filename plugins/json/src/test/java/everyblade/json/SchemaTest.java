package everyblade.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Schema;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The schema and the reader say the same of a model, as far as a schema can tell. */
class SchemaTest {

    private static final String FULL = ModelText.resource("full.json");

    private final Schema schema = ModelText.schema();

    @TestFactory
    Stream<DynamicTest> judge_each_case_alike() {
        return ModelText.resource("cases.txt")
                .lines()
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .map(line -> DynamicTest.dynamicTest(line, () -> {
                    String[] parts = line.split("\\|", 4);
                    judge(parts[0].strip(), parts[1].strip(), parts[2].strip(), parts[3].strip());
                }));
    }

    private void judge(String verdict, String who, String code, String changes) {
        JsonNode model = ModelText.parse(FULL);
        for (String change : changes.split(" ; ")) {
            ModelText.change(model, change.strip());
        }
        Reading reading = ModelText.read(model);
        assertThat(schema.validate(model).isEmpty()).as("valid by the schema").isEqualTo(!who.equals("both"));
        switch (verdict) {
            case "accepted" ->
                assertThat(reading)
                        .isInstanceOfSatisfying(
                                Reading.Read.class,
                                read -> assertThat(read.warnings()).isEmpty());
            case "warned" ->
                assertThat(reading)
                        .isInstanceOfSatisfying(
                                Reading.Read.class,
                                read -> assertThat(read.warnings())
                                        .extracting(Problem::code)
                                        .containsExactly(code));
            case "refused" ->
                assertThat(reading)
                        .isInstanceOfSatisfying(
                                Reading.Unreadable.class,
                                no -> assertThat(no.problems())
                                        .filteredOn(problem -> problem.severity() == Severity.ERROR)
                                        .extracting(Problem::code)
                                        .containsOnly(code));
            default -> throw new IllegalArgumentException(verdict);
        }
    }

    @Test
    void accept_every_model_that_is_shipped() throws IOException {
        try (Stream<Path> files = Files.walk(ShippedModelsTest.FOLDER)) {
            List<Path> models =
                    files.filter(file -> file.endsWith("engine.json")).toList();
            assertThat(models)
                    .hasSize(3)
                    .allSatisfy(file -> assertThat(schema.validate(ModelText.parse(Files.readString(file))))
                            .isEmpty());
        }
    }

    @Test
    void accept_the_full_model_and_its_canonical_text() {
        assertThat(schema.validate(ModelText.parse(FULL))).isEmpty();
        Reading.Read read = (Reading.Read) ModelText.read(FULL);
        assertThat(read.warnings()).isEmpty();
        assertThat(schema.validate(ModelText.parse(EngineJsonWriter.write(read.model()))))
                .isEmpty();
    }

    @Test
    void accept_a_model_of_nothing_but_a_blade_count() {
        String least = ModelText.resource("least.json");
        assertThat(schema.validate(ModelText.parse(least))).isEmpty();
        assertThat(ModelText.read(least)).isInstanceOf(Reading.Read.class);
    }

    @Test
    void demand_the_same_keys() {
        Set<String> beyondSchemas = Set.of(
                "unknown-row", "unknown-spool", "unknown-port", "unknown-scope-tip", "unknown-word", "duplicate-id");
        int demanded = 0;
        for (String object : objectsOf(ModelText.parse(FULL), "")) {
            for (String key : keysOf(ModelText.parse(FULL).at(object))) {
                JsonNode model = ModelText.parse(FULL);
                ((ObjectNode) model.at(object)).remove(key);
                Set<String> codes = codesOf(ModelText.read(model));
                codes.removeAll(beyondSchemas);
                assertThat(!schema.validate(model).isEmpty())
                        .as("the schema refuses %s without %s", object, key)
                        .isEqualTo(!codes.isEmpty());
                demanded += codes.contains("missing-key") ? 1 : 0;
            }
        }
        assertThat(demanded).isGreaterThan(80);
    }

    @Test
    void refuse_an_unknown_key_in_every_object() {
        List<String> objects = objectsOf(ModelText.parse(FULL), "");
        assertThat(objects).hasSizeGreaterThan(50);
        for (String object : objects) {
            boolean names = object.endsWith("/positions");
            JsonNode model = ModelText.parse(FULL);
            ((ObjectNode) model.at(object)).put("xyzzy", 1);
            assertThat(schema.validate(model))
                    .as("%s with an unknown key", object)
                    .isNotEmpty();
            assertThat(ModelText.read(model))
                    .isInstanceOfSatisfying(
                            Reading.Unreadable.class,
                            no -> assertThat(no.problems()).anySatisfy(problem -> {
                                assertThat(problem.code()).isEqualTo(names ? "wrong-type" : "unknown-key");
                                assertThat(problem.pointer()).isEqualTo(object + "/xyzzy");
                            }));
        }
    }

    @Test
    void reserve_the_same_words() {
        JsonNode definitions = ModelText.parse(ModelText.resource("engine-model-1.schema.json"))
                .get("$defs");
        assertThat(wordsAt(definitions, "/id/not/enum")).isEqualTo(new TreeSet<>(Ids.JOINING));
        assertThat(wordsAt(definitions, "/rowId/not/enum")).isEqualTo(new TreeSet<>(Ids.OPENING));
    }

    private static Set<String> wordsAt(JsonNode json, String pointer) {
        Set<String> words = new TreeSet<>();
        json.at(JsonPointer.compile(pointer)).forEach(word -> words.add(word.asText()));
        return words;
    }

    private static Set<String> codesOf(Reading reading) {
        Set<String> codes = new TreeSet<>();
        if (reading instanceof Reading.Unreadable no) {
            no.problems().stream()
                    .filter(problem -> problem.severity() == Severity.ERROR)
                    .forEach(problem -> codes.add(problem.code()));
        }
        return codes;
    }

    private static List<String> keysOf(JsonNode object) {
        List<String> keys = new ArrayList<>();
        object.fieldNames().forEachRemaining(keys::add);
        return keys;
    }

    /** Pointers of every object in a value. */
    private static List<String> objectsOf(JsonNode json, String pointer) {
        List<String> objects = new ArrayList<>();
        if (json.isObject()) {
            objects.add(pointer);
            keysOf(json).forEach(key -> objects.addAll(objectsOf(json.get(key), pointer + "/" + key)));
        }
        for (int i = 0; json.isArray() && i < json.size(); i++) {
            objects.addAll(objectsOf(json.get(i), pointer + "/" + i));
        }
        return objects;
    }
}
