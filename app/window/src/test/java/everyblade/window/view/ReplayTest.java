package everyblade.window.view;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.coverage.RowCoverage;
import everyblade.session.Answer;
import everyblade.session.JobState;
import everyblade.session.Session;
import everyblade.session.Workshop;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReplayTest {

    @TempDir
    Path folder;

    /** A record with a void, a slip and identifications that move what was counted before. */
    private static List<String> entries() {
        List<String> entries = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            entries.add("turn on 30");
            if (i % 7 == 3) {
                entries.add("here 4 ± 200");
            }
            if (i == 20) {
                entries.add("void 6 because typed twice");
            }
            if (i == 30) {
                entries.add("slip");
            }
            if (i % 10 == 9) {
                entries.add("nick " + (i % 12 + 1) + " tip 0.4");
            }
        }
        return entries;
    }

    private static String states(JobState state) {
        StringBuilder cells = new StringBuilder();
        for (RowCoverage row : state.coverage().rows()) {
            for (int n = 1; n <= row.row().count(); n++) {
                for (int zone = 0; zone < row.zoning().size(); zone++) {
                    cells.append(row.state(n, zone).ordinal());
                }
            }
        }
        return cells.toString();
    }

    @Test
    void showsTheRecordAsItStoodAfterEachEntryWhateverTheOrderInWhichItIsAsked() {
        try (Session session = Workshop.in(folder).counting()) {
            List<String> then = new ArrayList<>(List.of(states(session.state())));
            int first = session.state().fold().entries().size();
            for (String entry : entries()) {
                assertThat(session.say(entry)).as(entry).isInstanceOf(Answer.Kept.class);
                then.add(states(session.state()));
            }
            Replay replay = new Replay(session.state());
            Random random = new Random(7);

            for (int i = 0; i < 200; i++) {
                int k = i < then.size() ? then.size() - 1 - i : random.nextInt(then.size());
                JobState state = replay.at(first + k);
                assertThat(state.fold().entries()).hasSize(first + k);
                assertThat(states(state)).as("after entry %d", first + k).isEqualTo(then.get(k));
            }
            assertThat(replay.at(0).fold().entries()).isEmpty();
            assertThat(replay.after(first, 3, 1))
                    .extracting(state -> state.fold().entries().size())
                    .containsExactly(first + 1, first + 2, first + 3);
            assertThat(replay.after(replay.length() - 5, 9, 4))
                    .extracting(state -> state.fold().entries().size())
                    .containsExactly(replay.length() - 1, replay.length());
            assertThat(replay.after(replay.length(), 3, 1)).isEmpty();
        }
    }

    @Test
    void theRotorGoesTheWholeWayThatItWasTurnedAndTheScopeTipThatItWasDrawn() {
        try (Session session = Workshop.in(folder).counting("round 1", "view p-v", "datum v 1", "draw 400 ± 0")) {
            Replay replay = new Replay(session.state());
            RotorPose before = RotorPose.of(replay.at(3).situation()).orElseThrow();
            RotorPose after = RotorPose.of(replay.at(4).situation()).orElseThrow();
            assertThat(after.first() - before.first()).isEqualTo(360);
            assertThat(before.towards(after, 0.25).clock(1)).isEqualTo((before.clock(1) + 90) % 360);

            RotorPose still = RotorPose.of(replay.at(6).situation()).orElseThrow();
            RotorPose drawn = RotorPose.of(replay.at(7).situation()).orElseThrow();
            assertThat(drawn.tip() - still.tip()).isEqualTo(400);
            assertThat(drawn.clock(1)).isEqualTo(still.clock(1));
        }
    }

    @Test
    void theClockWaitsForWhatIsNotWorkedOutAndLeavesNothingOut() {
        ReplayClock clock = ReplayClock.atEnd(10).turned();
        assertThat(clock.entry()).isZero();
        assertThat(clock.playing()).isTrue();

        clock = clock.later(10, 3);
        assertThat(clock.entry()).isEqualTo(3);
        assertThat(clock.playing()).isTrue();
        assertThat(clock.later(10, 3)).isEqualTo(clock);

        clock = clock.with(2).later(0.25, 10);
        assertThat(clock.entry()).isEqualTo(3);
        assertThat(clock.share()).isEqualTo(0.5);

        clock = clock.later(60, 10);
        assertThat(clock.entry()).isEqualTo(10);
        assertThat(clock.playing()).isFalse();
        assertThat(clock.turned().entry()).isZero();
        assertThat(clock.to(-3).entry()).isZero();
        assertThat(clock.to(99).entry()).isEqualTo(10);
    }
}
