package everyblade.window.view;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.coverage.Why;
import everyblade.core.sight.Progress;
import everyblade.session.JobState;
import everyblade.session.Session;
import everyblade.session.Workshop;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NextToDoTest {

    @TempDir
    Path folder;

    /** All that its views show they show too coarsely: looking through them again would change nothing, for ever. */
    @Test
    void doesNotWaitForWhatEveryViewShowsTooCoarsely() {
        Workshop workshop = Workshop.shaped(folder, Map.of("detail", new BigDecimal("0.02")));
        try (Session session = workshop.open("view p-r", "datum r 1", "turn 360")) {
            JobState state = session.state();
            List<Left> left = Left.of(state.coverage(), Left.Order.AT_WORK, Workshop.ENGLISH);
            assertThat(left).isNotEmpty().allMatch(one -> one.gap().why().outOfReach());
            assertThat(left).anyMatch(one -> one.gap().why() == Why.COARSE);

            NextToDo next = NextToDo.of(Panels.of(session), Workshop.ENGLISH, Progress.NONE);

            assertThat(next.entry())
                    .hasValueSatisfying(entry -> assertThat(entry).doesNotStartWith("view"));
        }
    }
}
