package everyblade.core.finding.closing;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.Job;
import everyblade.core.finding.LimitsUnderTest;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The entry that the closing list suggests is one that closes the item, whatever the thing is called. */
class ClosingEntriesTest {

    @ParameterizedTest
    @ValueSource(strings = {"lid", "inner lid", "box \"A\" lid", "\"A\"", "a,b", "\u00a0lid"})
    void shutsWhatWasOpened(String thing) {
        String opened = "open \"" + thing.replace("\"", "\"\"") + "\"";
        OpenItem open = only(OpenItem.Kind.OPENING, opened);

        assertThat(items(OpenItem.Kind.OPENING, opened, open.entry() + "torqued"))
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"lamp", "lamp of 5 mm", "box \"A\"", "\"A\" key"})
    void putsBackWhatWasTakenOut(String tool) {
        String out = "tool out \"" + tool.replace("\"", "\"\"") + "\"";
        OpenItem open = only(OpenItem.Kind.TOOL, out);

        assertThat(items(OpenItem.Kind.TOOL, out, open.entry())).isEmpty();
    }

    private static OpenItem only(OpenItem.Kind kind, String... lines) {
        List<OpenItem> items = items(kind, lines);
        assertThat(items).hasSize(1);
        return items.get(0);
    }

    private static List<OpenItem> items(OpenItem.Kind kind, String... lines) {
        Job job = new Job(LimitsUnderTest.ENGINE).enter(lines);
        return ClosingList.of(job.fold(), job.coverage(), Optional.empty(), List.of())
                .of(kind);
    }
}
