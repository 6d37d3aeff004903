package everyblade.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import everyblade.record.SimulatedDisk.PowerCut;
import everyblade.record.SimulatedDisk.Step;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/**
 * Cuts the power at every step and at every byte of every write, each time with what was not forced kept, lost, or
 * kept in part: every part if few changes are open, else none, all and a seeded choice.
 */
class PowerCutTest {

    private static final int EVERY_PART_UP_TO = 4;
    private static final int SOME_PARTS = 14;
    private static final Path JOURNAL = Shift.JOB.resolve(Journal.FILE);

    private final SplittableRandom random = new SplittableRandom(20260301);

    @Test
    void losesNothingThatWasAcknowledged() {
        SimulatedDisk rehearsal = emptyDisk().with(Fault.NONE);
        new Shift(rehearsal).work();
        int points = 0;
        for (Fault cut : cuts(rehearsal.steps())) {
            SimulatedDisk disk = emptyDisk().with(cut);
            Shift shift = new Shift(disk);
            assertThatThrownBy(shift::work).isInstanceOf(PowerCut.class);
            for (BitSet kept : parts(disk.pending())) {
                shift.promisesHold(disk.afterPowerCut(kept));
                points++;
            }
        }
        assertThat(points).isGreaterThan(20_000);
    }

    @Test
    void losesNothingWhenItComesAgainWhileTheJobIsTakenUpAndGoneOnWith() {
        SimulatedDisk rehearsal = emptyDisk().with(Fault.NONE);
        new Shift(rehearsal).work();
        List<Fault> cuts = cuts(rehearsal.steps());
        int points = 0;
        for (int first = 0; first < 8; first++) {
            SimulatedDisk disk = emptyDisk().with(cuts.get(random.nextInt(cuts.size() / 2, cuts.size())));
            Shift shift = new Shift(disk);
            assertThatThrownBy(shift::work).isInstanceOf(PowerCut.class);
            BitSet kept = somePart(disk.pending());
            SimulatedDisk second = disk.afterPowerCut(kept).with(Fault.NONE);
            shift.on(second).work();
            for (Fault cut : cuts(second.steps())) {
                SimulatedDisk again = disk.afterPowerCut(kept).with(cut);
                Shift resumed = shift.on(again);
                assertThatThrownBy(resumed::work).isInstanceOf(PowerCut.class);
                resumed.promisesHold(again.afterPowerCut(somePart(again.pending())));
                points++;
            }
        }
        assertThat(points).isGreaterThan(2_000);
    }

    @Test
    void keepsALongFileAsAWholeOrNothingOfIt() {
        List<Addition> many = Samples.notes(3, 252);
        SimulatedDisk rehearsal = twoNotes();
        Jobs.keep(new JobFolder(rehearsal.with(Fault.NONE), Shift.JOB), many.toArray(Addition[]::new));
        assertThat(rehearsal.steps())
                .filteredOn(step -> step.what().startsWith("force"))
                .hasSizeLessThan(10);
        Set<Integer> found = new HashSet<>();
        for (Fault cut : cuts(rehearsal.steps())) {
            if (cut.bytes() % 797 != 0) {
                continue;
            }
            SimulatedDisk disk = twoNotes().with(cut);
            assertThatThrownBy(() -> Jobs.keep(new JobFolder(disk, Shift.JOB), many.toArray(Addition[]::new)))
                    .isInstanceOf(PowerCut.class);
            int changes = disk.pending();
            for (BitSet kept : changes <= EVERY_PART_UP_TO ? parts(changes) : Set.of(somePart(changes))) {
                SimulatedDisk after = disk.afterPowerCut(kept);
                JobFolder folder = new JobFolder(after, Shift.JOB);
                assertThat(folder.verify(Optional.empty())).isInstanceOf(JobFolder.Sound.class);
                int there = Jobs.entries(folder).size();
                found.add(there);
                Jobs.keep(folder, Samples.note(there + 1));
                assertThat(Jobs.entries(folder)).isEqualTo(Samples.notes(1, there + 1));
                assertThat(after.exists(Shift.JOB.resolve("journal.jsonl.new"))).isFalse();
            }
        }
        assertThat(found).containsExactlyInAnyOrder(2, 252);
    }

    private static SimulatedDisk twoNotes() {
        SimulatedDisk disk = emptyDisk();
        Jobs.keep(Jobs.started(new JobFolder(disk, Shift.JOB)), Samples.note(1), Samples.note(2));
        return disk;
    }

    @Test
    void losesNoFolderThatWasMadeOnTheWayToAJob() {
        SimulatedDisk disk = emptyDisk();
        Path deep = Shift.JOB.resolve("2026/march");
        Jobs.keep(Jobs.started(new JobFolder(disk, deep)), Samples.note(1));

        SimulatedDisk found = disk.afterPowerCut(new BitSet());

        assertThat(Jobs.entries(new JobFolder(found, deep))).containsExactly(Samples.note(1));
    }

    @Test
    void leavesATornLineInTheJournalOrWholeBesideIt() throws IOException {
        int points = 0;
        for (int torn : List.of(1, 70, 200)) {
            SimulatedDisk rehearsal = tornDisk(torn).with(Fault.NONE);
            Jobs.writer(new JobFolder(rehearsal, Shift.JOB)).close();
            for (Fault cut : cuts(rehearsal.steps())) {
                SimulatedDisk disk = tornDisk(torn).with(cut);
                JobFolder folder = new JobFolder(disk, Shift.JOB);
                assertThatThrownBy(() -> folder.write("Ada Vane", Samples.TIME)).isInstanceOf(PowerCut.class);
                for (BitSet kept : parts(disk.pending())) {
                    SimulatedDisk found = disk.afterPowerCut(kept);
                    assertThat(contents(found)).anyMatch(content -> content.endsWith("x".repeat(torn)));
                    Jobs.keep(new JobFolder(found, Shift.JOB), Samples.note(2));
                    assertThat(contents(found)).anyMatch(content -> content.equals("x".repeat(torn)));
                    assertThat(Jobs.entries(new JobFolder(found, Shift.JOB))).isEqualTo(Samples.notes(1, 2));
                    points++;
                }
            }
        }
        assertThat(points).isGreaterThan(1_000);
    }

    private static List<Fault> cuts(List<Step> steps) {
        List<Fault> cuts = new ArrayList<>();
        for (int step = 0; step < steps.size(); step++) {
            for (int bytes = 0; bytes <= steps.get(step).bytes(); bytes++) {
                cuts.add(new Fault(step, bytes, Fault.Kind.POWER_CUT));
            }
        }
        return cuts;
    }

    private Set<BitSet> parts(int changes) {
        Set<BitSet> parts = new HashSet<>();
        if (changes <= EVERY_PART_UP_TO) {
            for (long bits = 0; bits < 1L << changes; bits++) {
                parts.add(BitSet.valueOf(new long[] {bits}));
            }
            return parts;
        }
        BitSet all = new BitSet();
        all.set(0, changes);
        parts.add(all);
        parts.add(new BitSet());
        for (int i = 0; i < SOME_PARTS; i++) {
            parts.add(somePart(changes));
        }
        return parts;
    }

    private BitSet somePart(int changes) {
        BitSet part = new BitSet();
        for (int change = 0; change < changes; change++) {
            part.set(change, random.nextBoolean());
        }
        return part;
    }

    static SimulatedDisk emptyDisk() {
        try {
            SimulatedDisk disk = new SimulatedDisk();
            disk.createFolder(Shift.JOB.getParent());
            disk.forceFolder(Shift.JOB.getRoot());
            return disk;
        } catch (IOException impossible) {
            throw new AssertionError(impossible);
        }
    }

    private static SimulatedDisk tornDisk(int torn) throws IOException {
        SimulatedDisk disk = emptyDisk();
        Jobs.keep(Jobs.started(new JobFolder(disk, Shift.JOB)), Samples.note(1));
        try (Disk.OpenFile journal = disk.open(JOURNAL)) {
            journal.write(disk.size(JOURNAL), "x".repeat(torn).getBytes(StandardCharsets.US_ASCII));
            journal.force();
        }
        return disk;
    }

    private static List<String> contents(SimulatedDisk disk) throws IOException {
        List<String> contents = new ArrayList<>();
        for (String name : disk.list(Shift.JOB)) {
            if (name.endsWith(".txt") || name.equals(Journal.FILE)) {
                contents.add(new String(disk.read(Shift.JOB.resolve(name)), StandardCharsets.UTF_8));
            }
        }
        return contents;
    }
}
