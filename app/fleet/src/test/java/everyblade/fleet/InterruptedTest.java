package everyblade.fleet;

import static everyblade.fleet.Inspections.TIME;
import static everyblade.fleet.Inspections.files;
import static everyblade.fleet.Inspections.journal;
import static everyblade.fleet.Inspections.log;
import static everyblade.fleet.Inspections.notes;
import static everyblade.fleet.Inspections.started;
import static org.assertj.core.api.Assertions.assertThat;

import everyblade.record.JobFolder;
import everyblade.record.JobFolder.Sound;
import everyblade.record.JournalWriter;
import everyblade.record.LocalDisk;
import everyblade.record.SealedLine;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Wherever an exchange breaks, the next one goes on: no acknowledged line is lost and none is kept twice. */
@WithPostgres
class InterruptedTest {

    @TempDir
    Path temp;

    private final PostgresServer server;
    private final String database;

    InterruptedTest(PostgresServer server) {
        this.server = server;
        this.database = server.store();
    }

    private Store through(int port) throws StoreRefusal {
        return Store.open(PostgresServer.address(database, "ada", port), PostgresServer.secret());
    }

    private static void picture(JobFolder in, String name) {
        try (JournalWriter writer = Inspections.writer(in, "Ada Vane")) {
            assertThat(writer.keepPhoto(name, Inspections.picture(name.hashCode())))
                    .isEmpty();
        }
        log(in, "Ada Vane", "photo " + name);
    }

    private interface Attempt {

        void over(Store store) throws StoreRefusal;
    }

    /** Tries with the network cut after ever more messages until it was not cut, and once more over a sound one each time. */
    private int cutEverywhere(Attempt attempt, Attempt afterwards) throws IOException, StoreRefusal {
        for (int cutAfter = 0; ; cutAfter++) {
            boolean whole;
            try (CuttingProxy proxy = new CuttingProxy(server.port(), cutAfter);
                    Store store = through(proxy.port())) {
                attempt.over(store);
                whole = proxy.isWhole();
            } catch (StoreRefusal cut) {
                assertThat(cut.reason())
                        .isIn(StoreRefusal.Reason.CUT, StoreRefusal.Reason.UNREACHABLE, StoreRefusal.Reason.NOT_LET_IN);
                whole = false;
            }
            try (Store store = through(server.port())) {
                afterwards.over(store);
            }
            if (whole) {
                return cutAfter;
            }
        }
    }

    @Test
    void aPushThatIsCutAtAnyMessageGoesOnFromThere() throws Exception {
        int[] count = {0};
        JobFolder[] folder = {null};
        Runnable another = () -> {
            folder[0] = started(temp.resolve("push" + ++count[0]), "SN " + count[0]);
            log(folder[0], "Ada Vane", notes(1, 6));
            picture(folder[0], "one.png");
        };
        another.run();

        int messages =
                cutEverywhere(store -> new StoreExchange(store, "here").push(folder[0], Optional.empty()), store -> {
                    new StoreExchange(store, "here").push(folder[0], Optional.empty());
                    requireSame(store, folder[0]);
                    another.run();
                });

        assertThat(messages).isGreaterThan(15);
    }

    private static void requireSame(Store store, JobFolder folder) throws StoreRefusal {
        KeptChain kept = new StoreArrival(store).find(journal(folder).firstHash());
        assertThat(kept.head()).isEqualTo(journal(folder).head());
        List<SealedLine> here = StoreExchange.read(folder).journal();
        List<byte[]> there = new Chains(store).lines(kept.first(), 0);
        assertThat(there).hasSameSizeAs(here);
        for (int n = 0; n < here.size(); n++) {
            assertThat(there.get(n)).isEqualTo(here.get(n).bytes());
        }
    }

    @Test
    void aSyncThatIsCutAtAnyMessageLeavesFolderAndStoreSound() throws Exception {
        int[] count = {0};
        JobFolder[] folder = {null};
        Runnable another = () -> {
            try (Store store = through(server.port())) {
                JobFolder elsewhere = started(temp.resolve("elsewhere" + ++count[0]), "SN " + count[0]);
                log(elsewhere, "Ada Vane", notes(1, 3));
                StoreArrival arrival = new StoreArrival(store);
                String job = new StoreExchange(store, "there")
                        .push(elsewhere, Optional.empty())
                        .job();
                folder[0] = new JobFolder(new LocalDisk(), temp.resolve("here" + count[0]));
                assertThat(arrival.into(folder[0], arrival.find(job))).isInstanceOf(Sound.class);
                picture(elsewhere, "late.png");
                log(elsewhere, "Ada Vane", notes(4, 6));
                new StoreExchange(store, "there").push(elsewhere, Optional.empty());
            } catch (StoreRefusal refusal) {
                throw new IllegalStateException(refusal);
            }
        };
        another.run();

        int messages = cutEverywhere(
                store -> new StoreExchange(store, "here").sync(folder[0], Optional.empty(), "Ada Vane", TIME),
                store -> {
                    assertThat(folder[0].verify(Optional.empty())).isInstanceOf(Sound.class);
                    new StoreExchange(store, "here").sync(folder[0], Optional.empty(), "Ada Vane", TIME);
                    requireSame(store, folder[0]);
                    another.run();
                });

        assertThat(messages).isGreaterThan(10);
    }

    @Test
    void aPullThatIsCutAtAnyMessageLeavesNothingBehind() throws Exception {
        JobFolder folder = started(temp.resolve("job"), "SN pull");
        picture(folder, "one.png");
        try (Store store = through(server.port())) {
            new StoreExchange(store, "here").push(folder, Optional.empty());
        }
        String job = journal(folder).firstHash();
        JobFolder there = new JobFolder(new LocalDisk(), temp.resolve("places").resolve("there"));

        int messages = cutEverywhere(
                store -> new StoreArrival(store).into(there, new StoreArrival(store).find(job)), store -> {
                    if (there.path().toFile().exists()) {
                        assertThat(there.verify(Optional.empty())).isInstanceOf(Sound.class);
                    } else {
                        assertThat(temp.resolve("places").toFile().list()).isNullOrEmpty();
                    }
                });

        assertThat(messages).isGreaterThan(5);
        assertThat(files(there)).isEqualTo(files(folder));
    }

    @Test
    void aServerThatIsKilledAgainAndAgainLosesNoLineThatItAcknowledged() throws Exception {
        int kills = Integer.getInteger("everyblade.kills", 8);
        try (PostgresServer own = PostgresServer.start("")) {
            String name = own.store();
            StoreAddress address = own.address(name, "ada");
            JobFolder folder = started(temp.resolve("job"), "SN kills");
            List<String> acknowledged = Collections.synchronizedList(new ArrayList<>());
            AtomicBoolean over = new AtomicBoolean();
            ExecutorService writer = Executors.newSingleThreadExecutor();
            Future<?> writing = writer.submit(() -> {
                int number = 0;
                while (!over.get()) {
                    log(folder, "Ada Vane", notes(++number, number));
                    try (Store store = Store.open(address, PostgresServer.secret())) {
                        acknowledged.add(new StoreExchange(store, "here")
                                .push(folder, Optional.empty())
                                .head());
                    } catch (StoreRefusal cut) {
                        TimeUnit.MILLISECONDS.sleep(20);
                    }
                }
                return null;
            });
            for (int kill = 0; kill < kills; kill++) {
                int before = acknowledged.size();
                while (acknowledged.size() < before + 2 && !writing.isDone()) {
                    TimeUnit.MILLISECONDS.sleep(5);
                }
                own.kill();
                own.up();
            }
            over.set(true);
            writing.get(60, TimeUnit.SECONDS);
            writer.shutdown();

            try (Store store = Store.open(address, PostgresServer.secret())) {
                new StoreExchange(store, "here").push(folder, Optional.empty());
                requireSame(store, folder);
                List<String> kept = store.ask("SELECT hash FROM everyblade.line ORDER BY n", row -> row.getString(1));
                assertThat(kept).doesNotHaveDuplicates().containsAll(acknowledged);
                assertThat(new StoreCheck(store, new LocalDisk(), new Workshop(temp.resolve("check")))
                                .verify(new StoreArrival(store).jobs().get(0), Optional.empty()))
                        .isInstanceOf(Sound.class);
            }
        }
    }

    @Test
    void twentyWritersAtOnceEachGetTheirJobWholeAndThoseOfOneJobDoNotTangle() throws Exception {
        JobFolder shared = started(temp.resolve("shared"), "SN shared");
        log(shared, "Ada Vane", notes(1, 40));
        ExecutorService writers = Executors.newFixedThreadPool(20);
        List<Future<JobFolder>> all = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            int number = i;
            all.add(writers.submit(() -> {
                JobFolder own = started(temp.resolve("own" + number), "SN " + number);
                try (Store store = through(server.port())) {
                    for (int piece = 0; piece < 5; piece++) {
                        log(own, "Ada Vane", notes(piece * 10 + 1, piece * 10 + 10));
                        new StoreExchange(store, "here").push(own, Optional.empty());
                    }
                    new StoreExchange(store, "here").push(shared, Optional.empty());
                }
                return own;
            }));
        }

        try (Store store = through(server.port())) {
            for (Future<JobFolder> one : all) {
                requireSame(store, one.get(60, TimeUnit.SECONDS));
            }
            requireSame(store, shared);
        }
        writers.shutdown();
    }
}
