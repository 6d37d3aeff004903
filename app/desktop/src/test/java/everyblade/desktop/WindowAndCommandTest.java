package everyblade.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import everyblade.cli.Commands;
import everyblade.core.sight.Progress;
import everyblade.session.Session;
import everyblade.session.Workshop;
import everyblade.session.around.Surroundings;
import everyblade.window.view.NextToDo;
import everyblade.window.view.Panels;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whoever asks the window what is next and whoever asks the command are told the same. */
class WindowAndCommandTest {

    private static final List<String> SAID = List.of(
            "view p-r",
            "view p-v",
            "datum r 1",
            "datum v 1",
            "here 4",
            "turn on 40 ± 3",
            "turn back 130",
            "round 1",
            "skip on 75",
            "turn on 3 blades",
            "watch tip",
            "watch all",
            "draw 100",
            "draw -370",
            "feed 90",
            "look",
            "slip",
            "out",
            "in",
            "clear",
            "r noaccess 3 all because it is gone",
            "handover Bob",
            "pause",
            "undo");

    @TempDir
    Path folder;

    @Test
    void tellTheSameNextStepWhateverWasSaidBefore() throws IOException {
        Random random = new Random(1_612);
        int states = Boolean.getBoolean("everyblade.campaign") ? 1_000 : 48;
        int moves = 0;
        for (int job = 0; job * 8 < states; job++) {
            Workshop workshop = Workshop.in(folder.resolve("job" + job));
            try (Session session = workshop.open("heat 20 C")) {
                for (int asked = 0; asked < 8; asked++) {
                    for (int i = random.nextInt(4); i >= 0; i--) {
                        session.say(SAID.get(random.nextInt(SAID.size()))); // some of it is refused
                    }
                    moves += agree(workshop, session) ? 1 : 0;
                }
            }
        }
        assertThat(moves).as("states of %d in which there was a move", states).isGreaterThan(states / 2);
    }

    /** Whether there was a move to tell. */
    private boolean agree(Workshop workshop, Session session) throws IOException {
        NextToDo window = NextToDo.of(Panels.of(session), Workshop.ENGLISH, Progress.NONE);
        JsonNode told = next(workshop).get("moves");
        if (told.isEmpty()) {
            assertThat(window.words()).as("%s", workshop.kept()).doesNotStartWith("1. ");
            return false;
        }
        StringBuilder steps = new StringBuilder();
        int number = 1;
        for (JsonNode entry : told.get(0).get("entries")) {
            steps.append(number == 1 ? "" : "  ").append(number++).append(". ").append(entry.textValue());
        }
        assertThat(window.words()).as("%s", workshop.kept()).startsWith(steps.toString());
        assertThat(window.entry()).contains(told.get(0).get("entries").get(0).textValue());
        return true;
    }

    private static JsonNode next(Workshop workshop) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Surroundings around = new Surroundings(
                new ByteArrayInputStream(new byte[0]),
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                () -> Workshop.NOW,
                Map.of("HOME", workshop.folder().toString()),
                workshop.folder(),
                Optional.empty(),
                workshop.disk());
        assertThat(Commands.run(around, "next", "job", "--json"))
                .as(err.toString(StandardCharsets.UTF_8))
                .isZero();
        return new ObjectMapper().readTree(out.toString(StandardCharsets.UTF_8));
    }
}
