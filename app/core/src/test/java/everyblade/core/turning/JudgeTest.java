package everyblade.core.turning;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.entry.EntryKind;
import everyblade.core.entry.RecordEntry;
import org.junit.jupiter.api.Test;

class JudgeTest {

    @Test
    void no_entry_that_says_more_than_words_stands_in_the_record_unjudged() {
        assertThat(EntryKind.all())
                .filteredOn(kind -> kind.moves()
                        || kind.watches()
                        || kind.isBreak()
                        || kind.weight().isPresent())
                .hasSizeGreaterThan(10)
                .allMatch(kind -> Judge.judges(kind.type()));
    }

    @Test
    void a_note_is_but_words() {
        assertThat(Judge.judges(RecordEntry.Note.class)).isFalse();
    }
}
