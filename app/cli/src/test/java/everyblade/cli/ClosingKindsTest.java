package everyblade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import everyblade.cli.Console.Ran;
import everyblade.session.photo.CameraPicture;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ClosingKindsTest {

    private static final String[] WHOLE = {
        "fact hours 1",
        "fact cycles 1",
        "fact position left",
        "fact manual Invented",
        "fact revision 1",
        "view p-r",
        "round 1",
        "view p-v",
        "datum v 1",
        "draw 360"
    };

    @TempDir
    Path folder;

    private Console console;

    @BeforeEach
    void begin() {
        console = Console.in(folder);
        console.job(WHOLE);
    }

    private List<String> open() throws IOException {
        Ran closed = console.run("close", "job", "--json");
        List<String> kinds = new ArrayList<>();
        for (JsonNode item : new ObjectMapper().readTree(closed.out()).get("open")) {
            kinds.add(item.get("kind").textValue() + " " + item.get("entry").asText());
        }
        assertThat(closed.status()).isEqualTo(kinds.isEmpty() ? 0 : 1);
        return kinds;
    }

    @Test
    void areNoneOfAWholeRecordThatWasTypedInOneGo() throws IOException {
        assertThat(open()).isEmpty();
        assertThat(console.run("close", "job").outLines()).containsExactly("nothing is open");
    }

    @Test
    void nameATimeThatRunsBackAndWhatWasTypedLongAfter() throws IOException {
        console.run("log", "job", "note earlier", "--at", "2026-05-14T04:00:00Z");
        assertThat(open()).containsExactly("time 11");

        console.run("log", "job", "settle 11 because the watch was read wrongly, Bo saw it");
        console.run("log", "job", "note to come", "--at", "2026-05-14T09:00:00Z");
        assertThat(console.run("close", "job").outLines())
                .anyMatch(line -> line.startsWith("time, not open: time runs back at entry 11; entry 11, note earlier"))
                .anyMatch(line -> line.startsWith("time: 1 entry was typed before the time at which it is said"));
    }

    @Test
    void nameAPictureOfAnotherDay() throws IOException {
        console.write("then.jpg", CameraPicture.jpeg(1, "2025:05:14 06:00:00"));
        console.write("now.jpg", CameraPicture.jpeg(1, "2026:05:14 05:59:00"));
        console.run("log", "job", "photo now.jpg", "photo then.jpg");

        assertThat(open()).containsExactly("photo 12");
        assertThat(console.run("close", "job").outLines())
                .anyMatch(line ->
                        line.startsWith("photo: the picture then.jpg was taken on another day, 2025-05-14T06:00"));
    }

    @Test
    void nameAFindingOfTheLastRecordThatNobodyLookedAtAgain() throws IOException {
        console.run("log", "job", "r crack 3 tip 2", "settle 11 because watched, the engineer decided");
        console.startNext("next", "job");
        console.run("log", "next", "view p-r");

        assertThat(console.run("close", "next").outLines())
                .anyMatch(line ->
                        line.startsWith("finding: the crack of the last record, its entry 11 of 2026-05-14, was not"
                                + " looked at again (Rotor (r), blade 3, tip);"));

        console.run("log", "next", "round 1");
        assertThat(console.run("close", "next").out()).doesNotContain("last record");
    }

    @Test
    void echoTheRowAndTheCountOfWhatIsAccepted() {
        console.run("log", "job", "slip");
        console.start();
        Ran logged = console.run("log", "job", "r noaccess tip and root 3-4 because the lens was misted over");

        assertThat(logged.status()).isZero();
        assertThat(logged.errLines())
                .containsExactly(
                        "entry 12: 4 cells of row r, blades 3, 4, are accepted as not seen; of these views can show 4");
        assertThat(console.run("log", "job", "noaccess unshown because no view shows it")
                        .errLines())
                .containsExactly("entry 13: there is no cell here that no view shows, so nothing is accepted");
    }
}
