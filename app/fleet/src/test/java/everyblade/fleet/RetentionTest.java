package everyblade.fleet;

import static everyblade.fleet.Inspections.log;
import static everyblade.fleet.Inspections.notes;
import static everyblade.fleet.Inspections.started;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import everyblade.fleet.StoreRefusal.Reason;
import everyblade.record.Disk;
import everyblade.record.JobFolder;
import everyblade.record.JobFolder.Sound;
import everyblade.record.LocalDisk;
import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A year is taken off only when all of it lies elsewhere, and the store does not forget that it was there. */
@WithPostgres
class RetentionTest {

    @TempDir
    Path temp;

    private final PostgresServer server;
    private final String name;

    RetentionTest(PostgresServer server) {
        this.server = server;
        this.name = server.store();
    }

    @BeforeEach
    void twoOldJobsAndANewOne() throws StoreRefusal {
        try (Store ada = server.as("ada", name)) {
            keep(ada, "old", "A 1", Instant.parse("2021-02-03T08:00:00Z"));
            keep(ada, "older", "A 2", Instant.parse("2021-01-03T08:00:00Z"));
            keep(ada, "new", "A 1", Instant.parse("2024-02-03T08:00:00Z"));
        }
    }

    private void keep(Store store, String folder, String serial, Instant at) throws StoreRefusal {
        JobFolder job = started(temp.resolve(folder), serial, at);
        log(job, "Ada Vane", notes(1, 3));
        new StoreExchange(store, "here").push(job, Optional.empty());
    }

    private StoreRetention.Done retire(Path out) throws StoreRefusal {
        try (Store chief = server.as(PostgresServer.CHIEF, name)) {
            return new StoreRetention(chief, new LocalDisk()).retire(2021, out);
        }
    }

    @Test
    void eachJobLiesInAFolderWordForWordAndTheOthersStay() throws StoreRefusal, IOException {
        StoreRetention.Done done = retire(temp.resolve("out"));

        assertThat(done).isEqualTo(new StoreRetention.Done(2, "everyblade.retired_2021_1"));
        try (Stream<Path> brought = Files.list(temp.resolve("out"));
                Store otto = server.as("otto", name)) {
            List<Path> folders = brought.sorted().toList();
            assertThat(folders).hasSize(2);
            assertThat(folders.get(0).resolve("journal.jsonl"))
                    .hasSameBinaryContentAs(temp.resolve("old/journal.jsonl"));
            for (Path folder : folders) {
                assertThat(new JobFolder(new LocalDisk(), folder).verify(Optional.empty()))
                        .isInstanceOf(Sound.class);
            }
            StoreArrival left = new StoreArrival(otto);
            assertThat(left.jobs()).extracting(KeptChain::year).containsExactly(2024);
            assertThat(left.retired()).hasSize(2);
            assertThat(new StoreCheck(otto, new LocalDisk(), new Workshop(temp.resolve("check")))
                            .verify(left.jobs().get(0), Optional.empty()))
                    .isInstanceOf(Sound.class);
        }
    }

    @Test
    void whatWasTakenOffIsNotTakenInAgainButOthersOfThatYearAre() throws StoreRefusal {
        retire(temp.resolve("out"));
        try (Store ada = server.as("ada", name)) {
            assertThatExceptionOfType(StoreRefusal.class)
                    .isThrownBy(() -> new StoreExchange(ada, "here")
                            .push(new JobFolder(new LocalDisk(), temp.resolve("old")), Optional.empty()))
                    .matches(refusal -> refusal.reason() == Reason.RETIRED);
            keep(ada, "found late", "A 3", Instant.parse("2021-06-03T08:00:00Z"));
        }

        assertThat(retire(temp.resolve("again")).table()).isEqualTo("everyblade.retired_2021_2");
    }

    @Test
    void oneThatIsNotSoundKeepsTheWholeYear() {
        server.execute(
                name,
                "SET search_path TO everyblade; ALTER TABLE line DISABLE TRIGGER ALL; UPDATE line SET raw = overlay(raw"
                        + " PLACING '\\x33' FROM position('number 2'::bytea IN raw) + 7) WHERE n = 2 AND year = 2021");

        assertThatExceptionOfType(StoreRefusal.class)
                .isThrownBy(() -> retire(temp.resolve("out")))
                .matches(refusal -> refusal.reason() == Reason.UNSOUND);
        try (Store otto = server.as("otto", name)) {
            assertThat(new StoreArrival(otto).jobs()).hasSize(3);
        } catch (StoreRefusal refusal) {
            throw new AssertionError(refusal);
        }
    }

    @Test
    void oneThatSomebodyGoesOnWithMeanwhileKeepsTheWholeYear() {
        LocalDisk disk = new LocalDisk();
        boolean[] once = {true};
        Disk meanwhile = (Disk) Proxy.newProxyInstance(
                Disk.class.getClassLoader(), new Class<?>[] {Disk.class}, (proxy, method, arguments) -> {
                    if (method.getName().equals("rename") && once[0]) {
                        once[0] = false;
                        goOnWithTheOldJob();
                    }
                    try {
                        return method.invoke(disk, arguments);
                    } catch (InvocationTargetException failure) {
                        throw failure.getCause();
                    }
                });

        try (Store chief = server.as(PostgresServer.CHIEF, name)) {
            assertThatExceptionOfType(StoreRefusal.class)
                    .isThrownBy(() -> new StoreRetention(chief, meanwhile).retire(2021, temp.resolve("out")))
                    .matches(refusal -> refusal.reason() == Reason.WENT_ON);
        }
        assertThat(once[0]).isFalse();
        assertThat(retirable()).isEqualTo(2);
    }

    private void goOnWithTheOldJob() throws StoreRefusal {
        JobFolder old = new JobFolder(new LocalDisk(), temp.resolve("old"));
        log(old, "Ada Vane", "note one more");
        try (Store ada = server.as("ada", name)) {
            new StoreExchange(ada, "here").push(old, Optional.empty());
        }
    }

    private int retirable() {
        try {
            return retire(temp.resolve("later")).jobs();
        } catch (StoreRefusal refusal) {
            throw new AssertionError(refusal);
        }
    }

    @Test
    void onlyWhoRunsTheServerTakesAnythingOffAndOnlyIntoAnEmptyFolder() throws StoreRefusal, IOException {
        try (Store ada = server.as("ada", name)) {
            assertThatExceptionOfType(StoreRefusal.class)
                    .isThrownBy(() -> new StoreRetention(ada, new LocalDisk()).retire(2021, temp.resolve("out")))
                    .matches(refusal -> refusal.reason() == Reason.NOT_ALLOWED);
        }
        Files.createDirectories(temp.resolve("full/of things"));
        assertThatExceptionOfType(StoreRefusal.class)
                .isThrownBy(() -> retire(temp.resolve("full")))
                .matches(refusal -> refusal.reason() == Reason.NOT_EMPTY);
    }
}
