package everyblade.core.finding.closing;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.entry.Entry;
import everyblade.core.entry.EntryKind;
import everyblade.core.entry.EntryParser;
import everyblade.core.entry.Refusal;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class OpenRecordTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "recheck 3 tip",
                "refer who knows",
                "again in 50 cycles",
                "lost lamp",
                "find nick 3 tip length 1 mm",
                "open p1",
                "tool out lamp",
                "note this"
            })
    void what_is_to_be_settled_has_a_place_in_the_closing_list(String line) throws Refusal {
        Entry entry = EntryParser.parse(line);
        assertThat(OpenRecord.question(entry).isPresent())
                .isEqualTo(EntryKind.of(entry).asks());
    }
}
