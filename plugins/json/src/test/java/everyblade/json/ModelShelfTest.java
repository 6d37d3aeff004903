package everyblade.json;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import everyblade.json.jar.CodeDoor;
import everyblade.spi.EngineModel;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ModelShelfTest {

    /** That never loses its patience. */
    private static final CodeDoor DOOR = ModelShelf.ownProcess((clock, processor) -> false);

    @TempDir
    Path folder;

    @Nested
    class A_folder_of_models {

        @Test
        void yields_each_folder_with_a_model_and_each_jar_by_name() throws IOException {
            writeModel("b", model("second"));
            writeJar("c.jar", Map.of("engine.json", model("third").getBytes(UTF_8)));
            writeModel("a", model("first"));
            Files.createDirectories(folder.resolve("empty"));
            Files.writeString(folder.resolve("notes.txt"), "no model");
            assertThat(ModelShelf.of(List.of(folder)).models())
                    .extracting(EngineModel::id)
                    .containsExactly("first", "second", "third");
        }

        @Test
        void keeps_a_broken_model_in_sight_while_the_others_load() throws IOException {
            writeModel("a", "{ broken");
            writeModel("b", model("good"));
            writeJar("c.jar", Map.of("engine.json", "{}".getBytes(UTF_8)));
            Files.writeString(folder.resolve("d.jar"), "no zip file");
            ModelShelf shelf = ModelShelf.of(List.of(folder));
            assertThat(shelf.models()).extracting(EngineModel::id).containsExactly("good");
            assertThat(codes(shelf)).containsExactly("a unquoted-key", "c.jar missing-key", "d.jar bad-jar");
        }

        @Test
        void loads_the_first_of_two_models_with_one_id_and_names_both_places_at_the_second() throws IOException {
            writeModel("a", model("same"));
            writeModel("b", model("same"));
            ModelShelf shelf = ModelShelf.of(List.of(folder));
            assertThat(shelf.found().get(0)).isInstanceOf(Found.Loaded.class);
            assertThat(shelf.found().get(1))
                    .isInstanceOfSatisfying(
                            Found.Refused.class,
                            refused -> assertThat(refused.problems())
                                    .singleElement()
                                    .satisfies(problem -> {
                                        assertThat(problem.code()).isEqualTo("duplicate-model");
                                        assertThat(problem.toString())
                                                .contains(folder.resolve("a").toString())
                                                .contains(folder.resolve("b").toString());
                                    }));
        }

        @Test
        void is_refused_itself_if_it_is_not_there() {
            assertThat(codes(ModelShelf.of(List.of(folder.resolve("missing"))))).containsExactly("missing cannot-read");
        }

        @Test
        void hands_warnings_on() throws IOException {
            writeModel("a", model("bare"));
            assertThat(ModelShelf.of(List.of(folder)).found().get(0))
                    .isInstanceOfSatisfying(
                            Found.Loaded.class,
                            loaded -> assertThat(loaded.warnings())
                                    .extracting(Problem::code)
                                    .containsExactly("no-landmark", "no-view"));
        }
    }

    @Nested
    class A_model_given_directly {

        @Test
        void opens_as_a_folder_a_file_or_a_jar() throws IOException {
            Path file = writeModel("a", model("m"));
            Path jar = writeJar("x.jar", Map.of("engine.json", model("j").getBytes(UTF_8)));
            assertThat(ModelShelf.open(file).model("m")).isPresent();
            assertThat(ModelShelf.open(file.getParent()).model("m")).isPresent();
            assertThat(ModelShelf.open(jar).model("j")).isPresent();
        }

        @Test
        void is_refused_if_there_is_none() {
            assertThat(codes(ModelShelf.open(folder.resolve("nothing")))).containsExactly("nothing no-such-file");
            assertThat(codes(ModelShelf.open(folder))).containsExactly(folder.getFileName() + " no-such-file");
        }

        @Test
        void in_a_jar_that_unpacks_to_more_than_a_model_may_be_is_refused() throws IOException {
            Path jar = writeJar("bomb.jar", Map.of("engine.json", new byte[(64 << 20) + 1]));
            assertThat(codes(ModelShelf.open(jar))).containsExactly("bomb.jar too-large");
        }
    }

    @Nested
    class A_jar_of_classes {

        @Test
        void hands_its_models_over_and_shows_which_of_its_sources_fail() throws IOException {
            Path jar = pluginJar(
                    List.of("Missing", "Throws", "Good", "WillNotStart", "Links", "Empty", "Bad"),
                    PluginJars.source("Good", "return " + PluginJars.MODEL.formatted("coded", 19) + ";"),
                    PluginJars.source("Bad", "return " + PluginJars.MODEL.formatted("worse", 0) + ";"),
                    PluginJars.source("Throws", "throw new java.io.IOException(\"no licence\");"),
                    PluginJars.source("Empty", "return java.util.List.of();"),
                    PluginJars.source("Links", "throw new NoClassDefFoundError(\"gone\");"),
                    PluginJars.source("WillNotStart", "return null;")
                            .replace(
                                    "{ static",
                                    "{ public WillNotStart() { throw new IllegalStateException(); } static"));
            ModelShelf shelf = ModelShelf.open(jar, DOOR);
            assertThat(shelf.models()).extracting(EngineModel::id).containsExactly("coded");
            assertThat(codes(shelf))
                    .containsExactly(
                            "plugin.jar plugin-failed",
                            "plugin.jar plugin-failed",
                            "plugin.jar plugin-failed",
                            "plugin.jar plugin-failed",
                            "plugin.jar plugin-failed",
                            "plugin.jar out-of-range");
        }

        @Test
        void sees_the_interface_and_nothing_else_of_the_program() throws IOException {
            Path jar = pluginJar(List.of("Curious"), PluginJars.source("Curious", """
                            for (String hidden : new String[] {"everyblade.json.ModelShelf",
                                    "com.fasterxml.jackson.core.JsonFactory", "org.junit.jupiter.api.Test"}) {
                                try {
                                    Class.forName(hidden);
                                    throw new java.io.IOException("saw " + hidden);
                                } catch (ClassNotFoundException asItShouldBe) { }
                            }
                            return %s;""".formatted(
                            PluginJars.MODEL.formatted("curious", 19))));
            ModelShelf shelf = ModelShelf.open(jar, DOOR);
            assertThat(codes(shelf)).isEmpty();
            assertThat(shelf.model("curious")).isPresent();
        }

        @Test
        void is_refused_if_it_holds_no_source() throws IOException {
            assertThat(codes(ModelShelf.open(writeJar("empty.jar", Map.of("readme.txt", new byte[0])))))
                    .containsExactly("empty.jar no-model-in-jar");
        }

        @Test
        void is_given_up_after_a_hundred_failures() throws IOException {
            String names = Stream.iterate(1, i -> i + 1)
                    .limit(5000)
                    .map(i -> "Missing" + i)
                    .collect(Collectors.joining("\n"));
            assertThat(codes(ModelShelf.open(
                            writeJar("long.jar", Map.of(PluginJars.SERVICE, names.getBytes(UTF_8))), DOOR)))
                    .hasSize(100);
        }
    }

    private static String model(String id) {
        return "{\"schema\": \"everyblade/engine-model/1\", \"id\": \"" + id + "\", \"name\": \"N\","
                + " \"rows\": [{\"id\": \"c1\", \"kind\": \"rotor\", \"count\": 19}]}";
    }

    /** Where and what was refused, in order. */
    private static List<String> codes(ModelShelf shelf) {
        return shelf.found().stream()
                .filter(Found.Refused.class::isInstance)
                .map(found -> found.origin().getFileName() + " "
                        + ((Found.Refused) found).problems().get(0).code())
                .toList();
    }

    private Path writeModel(String name, String text) throws IOException {
        Path file = Files.createDirectories(folder.resolve(name)).resolve("engine.json");
        return Files.writeString(file, text);
    }

    private Path writeJar(String name, Map<String, byte[]> entries) throws IOException {
        return PluginJars.write(folder.resolve(name), entries);
    }

    private Path pluginJar(List<String> services, String... sources) throws IOException {
        return new PluginJars(folder).of("plugin.jar", services, sources);
    }
}
