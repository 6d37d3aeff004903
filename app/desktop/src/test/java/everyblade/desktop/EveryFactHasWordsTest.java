package everyblade.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import com.ibm.icu.text.MessagePattern;
import com.ibm.icu.text.MessagePattern.Part;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import everyblade.fact.Fact;
import everyblade.fact.Keyed;
import everyblade.words.Words;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.lang.reflect.RecordComponent;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Holds facts and the bundles of words together, which see nothing of each other. */
class EveryFactHasWordsTest {

    /** What facts can be told, by key: the names of their parts. */
    private static final Map<String, Set<String>> FACTS = facts();

    /** Facts are told by the names of classes, which begin with a capital; what else is said is not. */
    private static final String FACT_KEY = "[a-z]+\\.[A-Z].*";

    private static Map<String, Set<String>> facts() {
        Map<String, Set<String>> facts = new TreeMap<>();
        new ClassFileImporter()
                .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS).importPackages("everyblade").stream()
                        .filter(type -> type.isAssignableTo(Fact.class) && !type.isInterface())
                        .filter(type -> !type.isAnonymousClass() && !type.isEquivalentTo(Keyed.class))
                        .map(JavaClass::reflect)
                        .forEach(type -> add(type, facts));
        return facts;
    }

    private static void add(Class<?> type, Map<String, Set<String>> facts) {
        if (type.isEnum()) {
            for (Object constant : type.getEnumConstants()) {
                facts.put(((Fact) constant).key(), Set.of());
            }
        } else {
            assertThat(type.isRecord()).as("%s is a record or an enum", type).isTrue();
            Set<String> parts = Arrays.stream(type.getRecordComponents())
                    .map(RecordComponent::getName)
                    .collect(Collectors.toCollection(TreeSet::new));
            facts.put(Fact.key(type), parts);
        }
    }

    private static Map<String, String> bundle(String file) {
        Properties properties = new Properties();
        try (InputStream in = Words.class.getResourceAsStream(file)) {
            properties.load(new InputStreamReader(in, StandardCharsets.UTF_8));
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
        Map<String, String> bundle = new TreeMap<>();
        properties.forEach((key, text) -> bundle.put((String) key, (String) text));
        return bundle;
    }

    /** English, and each other language beside it. */
    private static List<Map<String, String>> bundles() {
        return Words.languages().stream()
                .map(language -> language.equals(Words.languages().get(0)) ? "" : "_" + language.getLanguage())
                .map(suffix -> bundle("words" + suffix + ".properties"))
                .toList();
    }

    @Test
    void everyFactIsSaidInEveryLanguage() {
        assertThat(FACTS).hasSizeGreaterThan(100);
        assertThat(bundles())
                .hasSize(Words.languages().size())
                .allSatisfy(bundle -> assertThat(bundle.keySet()).containsAll(FACTS.keySet()));
    }

    @Test
    void everyPlaceIsAPartOfItsFact() {
        bundles()
                .forEach(bundle -> FACTS.forEach((key, parts) ->
                        assertThat(places(bundle.getOrDefault(key, ""))).as(key).isSubsetOf(parts)));
    }

    /** Also those within what a plural or a choice says. */
    private static Set<String> places(String text) {
        MessagePattern pattern = new MessagePattern(text);
        Set<String> places = new TreeSet<>();
        for (int i = 0; i < pattern.countParts(); i++) {
            Part.Type type = pattern.getPart(i).getType();
            if (type == Part.Type.ARG_NAME || type == Part.Type.ARG_NUMBER) {
                places.add(pattern.getSubstring(pattern.getPart(i)));
            }
        }
        return places;
    }

    @Test
    void nothingIsWordedThatNobodyTells() {
        assertThat(bundles())
                .allSatisfy(bundle -> assertThat(bundle.keySet())
                        .filteredOn(key -> key.matches(FACT_KEY))
                        .isSubsetOf(FACTS.keySet()));
    }

    /** By its whole key, by its beginning with a dot at the end, or by its end with a dot before it. */
    @Test
    void everySentenceIsAskedForSomewhere() throws IOException {
        Set<String> asked = texts();
        assertThat(bundles().get(0).keySet())
                .filteredOn(key -> !key.matches(FACT_KEY) && !asked.contains(key))
                .filteredOn(key -> IntStream.range(1, key.length())
                        .filter(i -> key.charAt(i) == '.')
                        .noneMatch(i -> asked.contains(key.substring(0, i + 1)) || asked.contains(key.substring(i))))
                .isEmpty();
    }

    /** All texts in the sources of the program. */
    private static Set<String> texts() throws IOException {
        Pattern literal = Pattern.compile("\"((?:[^\"\\\\\n]|\\\\.)*)\"");
        Set<String> texts = new TreeSet<>();
        try (Stream<Path> modules = Files.list(Path.of(".."))) {
            for (Path sources : modules.map(module -> module.resolve("src/main/java"))
                    .filter(Files::isDirectory)
                    .toList()) {
                try (Stream<Path> files = Files.walk(sources)) {
                    for (Path file : files.filter(Files::isRegularFile).toList()) {
                        literal.matcher(Files.readString(file)).results().forEach(found -> texts.add(found.group(1)));
                    }
                }
            }
        }
        return texts;
    }
}
