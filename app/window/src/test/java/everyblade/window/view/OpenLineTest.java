package everyblade.window.view;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.session.Answer;
import everyblade.session.Session;
import everyblade.session.Workshop;
import everyblade.session.job.ClosingText;
import everyblade.window.map.CellAt;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OpenLineTest {

    private static final List<String> LEAVING_OPEN = List.of(
            "in",
            "tool out hand lamp",
            "lost split pin",
            "open \"inner plug\"",
            "nick 5 tip 0.5 ± 0.1 mm",
            "dent 7 root 3 ± 1 mm",
            "recheck 3 tip",
            "refer is a blue root normal",
            "again in 50 hours",
            "noaccess root 2-3 because the port is too narrow",
            "handover Bo");

    /** What a person would add to an entry that the list begins, by its first word. */
    private static final Map<String, String> ADDED = Map.of(
            "settle",
            "it was done",
            "shut",
            "torqued and sealed",
            "takeover",
            "Bo",
            "fact",
            "7",
            "clear",
            "",
            "tool",
            "");

    @TempDir
    Path folder;

    private Session session;

    @BeforeEach
    void leaveThingsOpen() {
        session = Workshop.limited(folder).counting(LEAVING_OPEN.toArray(String[]::new));
    }

    @AfterEach
    void close() {
        session.close();
    }

    private List<OpenLine> lines() {
        return OpenLine.of(session.state(), Workshop.ENGLISH);
    }

    private OpenLine line(String kind) {
        return lines().stream()
                .filter(line -> line.kind().equals(kind))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void saysWhatTheCommandSaysInTheSameOrder() {
        var list = session.state().closing();

        assertThat(lines().stream().filter(OpenLine::open))
                .extracting(line -> line.kind() + ": " + line.what() + "; to close it: " + line.toDo())
                .hasSizeGreaterThan(15)
                .isEqualTo(list.items().stream()
                        .map(item -> ClosingText.open(item, Workshop.ENGLISH))
                        .toList());
        assertThat(lines().stream().filter(line -> !line.open()))
                .extracting(line -> line.kind() + ": " + line.what())
                .isNotEmpty()
                .isEqualTo(Stream.concat(
                                list.told().stream().map(item -> ClosingText.line(item, Workshop.ENGLISH)),
                                list.accepted().stream()
                                        .map(accepted -> ClosingText.accepted(accepted, Workshop.ENGLISH)))
                        .toList());
    }

    @Test
    void namesTheEntryThatOpenedAThingAndWhoMadeIt() {
        assertThat(lines())
                .filteredOn(line -> line.kind().equals("tool"))
                .extracting(OpenLine::what)
                .containsExactly(
                        "the scope tip is still among the blades (view p-r), entry 4 by Ann",
                        "hand lamp is out, entry 5 by Ann");
    }

    @Test
    void beginsForEachThingTheEntryThatClosesIt() {
        assertThat(lines().stream().filter(OpenLine::open))
                .filteredOn(line -> !List.of("gap", "count").contains(line.kind()))
                .allSatisfy(line -> assertThat(line.entry()).as(line.toDo()).isNotBlank());
        assertThat(line("opening").entry()).isEqualTo("shut \"inner plug\" ");
        assertThat(line("interval").entry()).isEqualTo("again in 25 cycles");
        assertThat(line("handover").entry()).isEqualTo("takeover ");
        assertThat(line("fact").entry()).isEqualTo("fact hours ");
    }

    @Test
    void isShorterByOneThingAfterEachEntryThatItBegan() {
        for (Optional<OpenLine> next = closable(); next.isPresent(); next = closable()) {
            OpenLine line = next.get();
            String entry = line.entry() + ADDED.getOrDefault(line.entry().split(" ")[0], "");

            assertThat(session.say(entry)).as(entry).isInstanceOf(Answer.Kept.class);
            assertThat(lines()).as(entry).doesNotContain(line);
        }
        assertThat(lines()).extracting(OpenLine::kind).containsOnly("gap", "accepted as not seen");
    }

    private Optional<OpenLine> closable() {
        return lines().stream().filter(line -> !line.entry().isEmpty()).findFirst();
    }

    @Test
    void beginsNoEntryForAGapSinceAcceptingItIsNotTheFirstThought() {
        assertThat(line("gap").entry()).isEmpty();
        assertThat(line("gap").cell())
                .hasValueSatisfying(cell -> assertThat(cell.row()).isEqualTo("r"));
    }

    @Test
    void knowsWhereOnTheMapAFindingARecheckAndAnAcceptedCellAre() {
        assertThat(line("finding").cell()).contains(new CellAt("r", 7, 0));
        assertThat(line("recheck").cell()).contains(new CellAt("r", 3, 1));
        assertThat(line("accepted as not seen").cell()).contains(new CellAt("r", 2, 0));
        assertThat(line("tool").cell()).isEmpty();
    }
}
