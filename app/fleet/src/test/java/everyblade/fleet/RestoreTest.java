package everyblade.fleet;

import static everyblade.fleet.Inspections.log;
import static everyblade.fleet.Inspections.notes;
import static everyblade.fleet.Inspections.started;
import static org.assertj.core.api.Assertions.assertThat;

import everyblade.record.JobFolder;
import everyblade.record.JobFolder.Sound;
import everyblade.record.LocalDisk;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The restore as the README tells it, rehearsed: all is lost but the backup, the archive and the heads that were noted. */
@WithPostgres
class RestoreTest {

    @TempDir
    Path temp;

    @Test
    void fromABaseBackupAndTheArchiveEveryJobComesBackAsItWasWhenItWasLastKept(PostgresServer shared)
            throws StoreRefusal {
        PostgresServer server =
                PostgresServer.start("-c archive_mode=on -c 'archive_command=cp %p ../archive/%f' -c fsync=off");
        Path folder = server.folder();
        try {
            PostgresServer.run(List.of("mkdir", folder + "/archive"));
            String name = server.store();
            NotedHeads noted;
            try (Store ada = server.as("ada", name)) {
                keep(ada, "before", "A 1");
                server.program("pg_basebackup", "--pgdata=" + folder + "/backup/data", "--checkpoint=fast");
                keep(ada, "after", "A 2");
                noted = NotedHeads.read(
                        NotedHeads.text(new StoreArrival(ada).jobs()).lines().toList());
            }
            server.execute("postgres", "SELECT pg_switch_wal()");
            server.execute("postgres", "CHECKPOINT");
            server.kill();
            PostgresServer.run(List.of("rm", "-rf", folder + "/data"));

            PostgresServer.run(List.of(
                    "sh",
                    "-c",
                    "touch " + folder + "/backup/data/recovery.signal; echo \"restore_command = 'cp " + folder
                            + "/archive/%f %p'\" >> " + folder + "/backup/data/postgresql.auto.conf"));
            try (PostgresServer restored = server.on(folder.resolve("backup/data"));
                    Store otto = restored.as("otto", name)) {
                List<KeptChain> jobs = new StoreArrival(otto).jobs();

                assertThat(jobs).extracting(KeptChain::serial).containsExactly("A 1", "A 2");
                assertThat(noted.heads()).hasSize(2);
                for (KeptChain job : jobs) {
                    assertThat(new StoreCheck(otto, new LocalDisk(), new Workshop(temp.resolve("check")))
                                    .verify(job, Optional.of(noted.heads().get(job.first()))))
                            .isInstanceOf(Sound.class);
                }
            }
        } finally {
            PostgresServer.run(List.of("rm", "-rf", folder.toString()));
        }
    }

    private void keep(Store store, String name, String serial) throws StoreRefusal {
        JobFolder folder = started(temp.resolve(name), serial);
        log(folder, "Ada Vane", notes(1, 5));
        new StoreExchange(store, "here").push(folder, Optional.empty());
    }
}
