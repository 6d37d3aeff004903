package everyblade.core.coverage;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.English;
import everyblade.core.entry.Refusal;
import everyblade.core.entry.Settings;
import everyblade.core.turning.Engine;
import everyblade.core.turning.Fold;
import everyblade.core.turning.FoldSnapshot;
import everyblade.core.turning.Logged;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** A fold that goes on from a snapshot is the fold that never stopped. */
class FoldSnapshotTest {

    private static final int JOBS = Boolean.getBoolean("everyblade.campaign") ? 5_000 : 100;

    @Test
    void goesOnAsIfItHadNeverStopped() throws Refusal {
        for (int seed = 0; seed < JOBS; seed++) {
            Fold whole = new RandomJob(seed).job().fold();
            int cut = new SplittableRandom(seed).nextInt(whole.entries().size() + 1);

            Fold stopped = folded(Fold.start(engine(whole)), whole.entries().subList(0, cut), new ArrayList<>());
            Fold resumed = resumed(stopped, whole);
            List<String> warnings = new ArrayList<>();
            List<String> expected = new ArrayList<>();
            Fold on =
                    folded(resumed, whole.entries().subList(cut, whole.entries().size()), warnings);
            folded(stopped, whole.entries().subList(cut, whole.entries().size()), expected);

            assertThat(warnings).as("job %d, cut at %d", seed, cut).isEqualTo(expected);
            assertThat(on.entries()).isEqualTo(whole.entries());
            assertThat(states(on)).as("job %d, cut at %d", seed, cut).isEqualTo(states(whole));
        }
    }

    @Test
    void holdsAllThatTheFoldHeld() {
        for (int seed = 0; seed < JOBS; seed++) {
            Fold whole = new RandomJob(seed).job().fold();
            byte[] bytes = FoldSnapshot.write(whole);
            assertThat(FoldSnapshot.write(resumed(whole, whole))).isEqualTo(bytes);
        }
    }

    private static Engine engine(Fold fold) {
        return fold.situation().engine();
    }

    private static Fold resumed(Fold stopped, Fold whole) {
        return FoldSnapshot.read(FoldSnapshot.write(stopped), engine(whole), List.copyOf(stopped.entries()));
    }

    private static Fold folded(Fold from, List<Logged> entries, List<String> warnings) throws Refusal {
        Fold fold = from;
        for (Logged entry : entries) {
            fold = fold.with(entry);
            warnings.addAll(English.say(fold.warnings()));
        }
        return fold;
    }

    private static List<State> states(Fold fold) {
        List<State> states = new ArrayList<>();
        for (RowCoverage row :
                Coverage.of(fold.situation(), Settings.of(Map.of())).rows()) {
            for (int n = 1; n <= row.row().count(); n++) {
                for (int zone = 0; zone < row.zoning().size(); zone++) {
                    states.add(row.state(n, zone));
                }
            }
        }
        return states;
    }
}
