package everyblade.window.view;

import everyblade.session.JobState;
import java.util.Optional;

/**
 * A state of a replay with what is worked out of it before it is shown.
 *
 * @param state after an entry
 * @param pose of the row in view and the scope tip
 * @param aim what the scope tip has before it
 */
public record ReplayFrame(JobState state, Optional<RotorPose> pose, Optional<TipSight.Aim> aim) {

    public static ReplayFrame of(JobState state) {
        state.coverage().tally(); // a picture tells it, and whoever shows one has no time to count
        return new ReplayFrame(state, RotorPose.of(state.situation()), TipSight.aim(state));
    }

    /** How many entries led to it. */
    public int entries() {
        return state.fold().entries().size();
    }
}
