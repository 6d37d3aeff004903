package everyblade.core.entry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EntryTextTest {

    @Test
    void what_is_written_is_read_back_but_for_columns() throws Refusal {
        EntryGenerator generator = new EntryGenerator(20_240_601);
        for (int count = 0; count < 100 * generator.kinds(); count++) {
            Entry entry = generator.next();
            String text = EntryText.of(entry);
            assertThat(EntryParser.parse(text))
                    .as(text)
                    .usingRecursiveComparison()
                    .withStrictTypeChecking()
                    .ignoringFieldsMatchingRegexes("(.*\\.)?column")
                    .isEqualTo(entry);
        }
    }

    @Test
    void what_is_read_back_is_written_the_same() throws Refusal {
        EntryGenerator generator = new EntryGenerator(7);
        for (int count = 0; count < 20 * generator.kinds(); count++) {
            String text = EntryText.of(generator.next());
            assertThat(EntryText.of(EntryParser.parse(text))).isEqualTo(text);
        }
    }

    @Test
    void every_record_of_an_entry_is_of_a_kind_of_its_own() {
        List<String> records = Stream.of(Entry.class.getPermittedSubclasses())
                .flatMap(group -> Stream.of(group.getPermittedSubclasses()))
                .map(Class::getName)
                .toList();
        assertThat(types()).doesNotHaveDuplicates().hasSameElementsAs(records);
    }

    @Test
    void the_generator_makes_every_kind_of_entry() {
        EntryGenerator generator = new EntryGenerator(1);
        assertThat(Stream.generate(generator::next).limit(generator.kinds()))
                .extracting(entry -> entry.getClass().getName())
                .containsExactlyElementsOf(types());
    }

    private static List<String> types() {
        return EntryKind.all().stream().map(kind -> kind.type().getName()).toList();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    TURN  ON 38,50 Deg +-1,9 through a b in 45 s | turn on 38.50 ± 1.9 in 45s through a b
                    skip back 1 blade                            | skip back 1 blades
                    turn to 210°                                 | turn to 210
                    Nick 3 TIP 0,8                               | find nick 3 TIP length 0.8
                    c2 crack 3 tip width 1 length 2 ± 0.1 in     | find c2 crack 3 tip length 2 width 1 ± 0.1 in
                    noaccess tip 3-3, because worn               | noaccess tip 3 because worn
                    noaccess all because built in                | noaccess all all because built in
                    noaccess unshown because built in            | noaccess unshown all because built in
                    noaccess c2 unshown because built in         | noaccess c2 unshown all because built in
                    noaccess tip and p/l 3-5 because worn        | noaccess tip and p/l 3-5 because worn
                    noaccess c2 tip AND root all because worn    | noaccess c2 tip and root all because worn
                    heat 104°F                                   | heat 104 F
                    fact "eye test" 20/20                        | fact "eye test" 20/20
                    fact scope serial 123                        | fact "scope serial" 123
                    fact "scope" serial 123                      | fact "scope" serial 123
                    TURN on 90 tooldeg                           | turn on 90 tooldeg
                    lost "screw"                                 | lost screw
                    takeover "Ann held" held                     | takeover "Ann held" held
                    view "with space" with 'x'                   | view "with space" with 'x'
                    """, quoteCharacter = '`')
    void an_entry_has_one_plain_text(String typed, String text) throws Refusal {
        assertThat(EntryText.of(EntryParser.parse(typed))).isEqualTo(text);
    }

    @Test
    void the_text_does_not_depend_on_the_locale() throws Refusal {
        Entry entry = EntryParser.parse("skip on 1,5 blades +-0,5");
        Locale before = Locale.getDefault();
        try {
            for (String language : new String[] {"de", "tr", "ar-EG-u-nu-arab"}) {
                Locale.setDefault(Locale.forLanguageTag(language));
                assertThat(EntryText.of(entry)).isEqualTo("skip on 1.5 blades \u00b1 0.5");
            }
        } finally {
            Locale.setDefault(before);
        }
    }
}
