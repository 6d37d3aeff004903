package everyblade.record;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.record.SimulatedDisk.Step;
import java.io.IOException;
import java.nio.file.Path;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** A disk that is full or fails, at every step: before, halfway through and at the end of a write, at every force. */
class RefusingDiskTest {

    private final SplittableRandom random = new SplittableRandom(20260302);

    private static List<Step> rehearsal() {
        SimulatedDisk disk = PowerCutTest.emptyDisk().with(Fault.NONE);
        new Shift(disk).work();
        return disk.steps();
    }

    private static int[] bytesDone(Step step) {
        return IntStream.of(0, step.bytes() / 2, step.bytes()).distinct().toArray();
    }

    @Test
    void refusesOnceAndTheWorkGoesOnToItsEndAfterOpeningAgain() {
        List<Step> steps = rehearsal();
        for (int step = 0; step < steps.size(); step++) {
            for (int bytes : bytesDone(steps.get(step))) {
                SimulatedDisk disk = PowerCutTest.emptyDisk().with(new Fault(step, bytes, Fault.Kind.REFUSED_ONCE));
                Shift shift = new Shift(disk);

                shift.work();

                assertThat(shift.refusals()).as("step %s", steps.get(step)).isEqualTo(1);
                assertThat(shift.promised()).isEqualTo(Shift.LAST);
                afterACutInPowerToo(shift, disk);
                shift.promisesHold(disk);
            }
        }
    }

    @Test
    void refusesTheCutBackTooAndWhatIsThenFoundStands() {
        List<Step> steps = rehearsal();
        for (int step = 0; step < steps.size(); step++) {
            for (int bytes : bytesDone(steps.get(step))) {
                SimulatedDisk disk = PowerCutTest.emptyDisk().with(new Fault(step, bytes, Fault.Kind.REFUSED_TWICE));
                Shift shift = new Shift(disk);

                shift.work();

                if (shift.started()) {
                    assertThat(shift.promised()).as("step %s", steps.get(step)).isEqualTo(Shift.LAST);
                }
                afterACutInPowerToo(shift, disk);
                shift.promisesHold(disk);
            }
        }
    }

    @Test
    void refusesForGoodAndWhatWasPromisedStands() {
        List<Step> steps = rehearsal();
        for (int step = 0; step < steps.size(); step++) {
            for (int bytes : bytesDone(steps.get(step))) {
                SimulatedDisk disk = PowerCutTest.emptyDisk().with(new Fault(step, bytes, Fault.Kind.REFUSED_FOR_GOOD));
                Shift shift = new Shift(disk);

                shift.work();

                assertThat(shift.refusals()).as("step %s", steps.get(step)).isGreaterThan(1);
                afterACutInPowerToo(shift, disk);
                shift.promisesHold(disk.with(Fault.NONE));
            }
        }
    }

    @Test
    void takesALongFileLineByLineWhereThereIsNoRoomForACopy() throws IOException {
        Addition[] many = Samples.notes(1, 250).toArray(Addition[]::new);
        SimulatedDisk rehearsal = PowerCutTest.emptyDisk();
        JobFolder job = Jobs.started(new JobFolder(rehearsal, Shift.JOB));
        rehearsal.with(Fault.NONE);
        Jobs.keep(job, many);
        List<Step> steps = rehearsal.steps();
        int refused = 0;
        for (int step = 0; step < steps.size(); step++) {
            if (steps.get(step).what().contains(".new")) {
                SimulatedDisk disk = PowerCutTest.emptyDisk();
                JobFolder folder = Jobs.started(new JobFolder(disk, Shift.JOB));
                disk.with(new Fault(step, steps.get(step).bytes() / 2, Fault.Kind.REFUSED_ONCE));
                Jobs.keep(folder, many);
                assertThat(Jobs.entries(folder)).as("step %s", steps.get(step)).containsExactly(many);
                assertThat(disk.list(Shift.JOB)).doesNotContain("journal.jsonl.new");
                refused++;
            }
        }
        assertThat(refused).isGreaterThanOrEqualTo(5);
    }

    private void afterACutInPowerToo(Shift shift, SimulatedDisk disk) {
        for (int i = 0; i < 8; i++) {
            BitSet kept = new BitSet();
            for (int change = 0; change < disk.pending(); change++) {
                kept.set(change, i == 0 || i > 1 && random.nextBoolean());
            }
            shift.promisesHold(disk.afterPowerCut(kept));
        }
    }

    @Test
    void leavesNothingBehindWhenAJobCannotBeStarted() throws IOException {
        Path deep = Shift.JOB.resolve("2026/march");
        SimulatedDisk rehearsal = PowerCutTest.emptyDisk().with(Fault.NONE);
        Jobs.started(new JobFolder(rehearsal, deep));
        for (int step = 0; step < rehearsal.steps().size(); step++) {
            SimulatedDisk disk = PowerCutTest.emptyDisk().with(new Fault(step, 7, Fault.Kind.REFUSED_ONCE));

            Optional<RecordProblem> problem = new JobFolder(disk, deep).start(Samples.BEGINNING, Samples.ENGINE);

            assertThat(English.said(problem.orElseThrow()))
                    .isEqualTo(
                            "Job not started: /disk/job/2026/march: the disk refused (No space left on device); check"
                                    + " the disk, or name another folder");
            assertThat(disk.list(Shift.JOB.getParent())).as("step %d", step).isEmpty();
        }
    }

    @Test
    void namesWhatIsLeftBehindWhenItCannotBeRemoved() {
        SimulatedDisk disk = PowerCutTest.emptyDisk().with(new Fault(2, 0, Fault.Kind.REFUSED_FOR_GOOD));

        Optional<RecordProblem> problem = new JobFolder(disk, Shift.JOB).start(Samples.BEGINNING, Samples.ENGINE);

        assertThat(English.said(problem.orElseThrow()))
                .contains("/disk/job.starting-1/model is left over, which could not be removed");
    }
}
