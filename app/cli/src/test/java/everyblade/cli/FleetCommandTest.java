package everyblade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.cli.Console.Ran;
import everyblade.fleet.PostgresServer;
import everyblade.fleet.WithPostgres;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A shop's store as people at the command line have it. */
@WithPostgres
class FleetCommandTest {

    @TempDir
    Path folder;

    private final PostgresServer server;
    private final String database;
    private Console ada;

    FleetCommandTest(PostgresServer server) {
        this.server = server;
        this.database = server.store();
    }

    @BeforeEach
    void aJob() {
        ada = Console.in(folder)
                .with("EVERYBLADE_STORE_PASSWORD", PostgresServer.PASSWORD)
                .with("EVERYBLADE_STORE", server.address(database, "ada").toString());
        ada.job("view p-r", "datum r 1", "turn 100", "nick 3 tip 0.8");
    }

    private Console as(String user) {
        return ada.with("EVERYBLADE_STORE", server.address(database, user).toString());
    }

    private String pushed() {
        Ran ran = ada.run("fleet", "push", "job");
        assertThat(ran.err()).isEmpty();
        assertThat(ran.status()).isZero();
        return ran.out().replaceFirst("(?s).*job ([0-9a-f]{12}),.*", "$1");
    }

    private void copy(String from, String to) throws IOException {
        try (Stream<Path> all = Files.walk(ada.file(from))) {
            for (Path path : all.toList()) {
                Files.copy(path, ada.file(to).resolve(ada.file(from).relativize(path)));
            }
        }
    }

    @Test
    void aJobGoesThereAndComesBackAndIsVerified() {
        String job = pushed();

        assertThat(ada.run("fleet", "list").out()).contains(job, "north", "ring", "routine");
        assertThat(ada.run("fleet", "pull", job, "copy").out()).startsWith("copy: job " + job + ", 4 entries, head ");
        assertThat(ada.run("verify", "copy").out())
                .isEqualTo(ada.run("verify", "job").out());
        assertThat(ada.run("coverage", "copy", "--json").out())
                .isEqualTo(ada.run("coverage", "job", "--json").out());
        assertThat(as("otto").run("fleet", "verify", "--note", "heads.txt").outLines())
                .contains("1 job is sound.");
        assertThat(as("otto").run("fleet", "verify", "--heads", "heads.txt").status())
                .isZero();
    }

    @Test
    void syncGoesBothWaysAndAForkIsRefusedWithWhoWhereAndWhen() throws IOException {
        pushed();
        copy("job", "other");
        ada.run("log", "other", "--by", "Ben", "note there");
        assertThat(as("ben").run("fleet", "sync", "other").out()).contains("; 1 lines sent, 0 brought");
        assertThat(ada.run("fleet", "sync", "job").out()).contains("; 0 lines sent, 1 brought");
        ada.run("log", "job", "note here");
        ada.run("log", "other", "--by", "Ben", "note there again");
        as("ben").run("fleet", "push", "other");

        Ran refused = ada.run("fleet", "sync", "job", "other");

        assertThat(refused.status()).isEqualTo(2);
        assertThat(refused.errLines())
                .singleElement()
                .asString()
                .startsWith("job: the job was gone on with in two ways from line 6: the store has what Ben said at ")
                .contains("brought by ben to north at ");
        assertThat(refused.out()).startsWith("other: job ");
        assertThat(ada.run("fleet", "list").err()).contains("gone on with in two ways from line 6");
        assertThat(ada.run("fleet", "list", "--lang", "de").err()).contains("auf zwei Weisen fortgesetzt");
    }

    @Test
    void whoFollowsHasWhatOthersSayAtOnceAndSaysAsMuch() throws Exception {
        pushed();
        copy("job", "other");
        ByteArrayOutputStream told = new ByteArrayOutputStream();
        Thread following =
                new Thread(() -> ada.feed(InputStream.nullInputStream(), told, "fleet", "sync", "job", "--follow"));
        following.start();
        until(() -> told.toString(StandardCharsets.UTF_8).contains("0 lines sent, 0 brought"));
        ada.run("log", "other", "--by", "Ben", "note there");

        as("ben").run("fleet", "push", "other");

        until(() -> told.toString(StandardCharsets.UTF_8).contains("0 lines sent, 1 brought"));
        following.interrupt();
        following.join(20_000);
        assertThat(following.isAlive()).isFalse();
        assertThat(ada.run("verify", "job").out()).startsWith("sound: 5 entries");
    }

    /** Waits until this is so, and fails if it never is. */
    private static void until(BooleanSupplier so) throws InterruptedException {
        for (int tenth = 0; tenth < 200 && !so.getAsBoolean(); tenth++) {
            Thread.sleep(100);
        }
        assertThat(so.getAsBoolean()).isTrue();
    }

    @Test
    void questionsAreAnsweredAsTableCsvAndJsonAndCanBeComputedOfTheStoreAlone() {
        pushed();
        String table = ada.run("fleet", "ask", "engines").out();

        assertThat(table).contains("site").contains("north");
        assertThat(ada.run("fleet", "ask", "engines", "--csv").out()).startsWith("site,model,serial,row,basis,seen,");
        assertThat(ada.run("fleet", "ask", "engines", "--json").out()).contains("\"row\" : \"r\"");
        assertThat(ada.run("fleet", "ask", "unseen-twice").out()).isEqualTo("Nothing.\n");
        server.execute(database, "DELETE FROM everyblade.derived");
        Ran empty = ada.run("fleet", "ask", "engines");
        assertThat(empty.out()).isEqualTo("Nothing.\n");
        assertThat(empty.err()).startsWith("1 job is not in this answer");
        assertThat(ada.run("fleet", "ask", "engines", "--renew").out()).isEqualTo(table);
    }

    @Test
    void whatIsChangedByHandInTheStoreIsFound() {
        pushed();
        server.execute(
                database,
                "SET search_path TO everyblade; ALTER TABLE line DISABLE TRIGGER ALL; UPDATE line SET raw = overlay(raw"
                        + " PLACING '\\x33' FROM position('turn 1'::bytea IN raw) + 5) WHERE n = 3");

        Ran found = as("otto").run("fleet", "verify");

        assertThat(found.status()).isEqualTo(1);
        assertThat(found.outLines()).first().asString().contains("Damaged line: journal.jsonl line 4");
        assertThat(found.outLines()).last().isEqualTo("1 job is not sound.");
    }

    @Test
    void allIsWrittenForOtherPrograms() {
        pushed();

        assertThat(ada.run("fleet", "export", "--out", "csv").out()).isEqualTo("9 files are written to csv.\n");
        assertThat(ada.file("csv/airfoil/site=north/year=2026/part.csv")).exists();
        assertThat(ada.run("fleet", "export", "--out", "csv").err()).contains("something is there already");
    }

    @Test
    void aYearThatIsStillWorkedOnIsNotTakenOff() {
        pushed();
        Ran early = as(PostgresServer.CHIEF).run("fleet", "retire", "2026", "--out", "taken");

        assertThat(early.status()).isEqualTo(2);
        assertThat(early.err()).startsWith("everyblade fleet retire: jobs of 2026 are still worked on; name 2025");
        assertThat(as(PostgresServer.CHIEF)
                        .run("fleet", "retire", "2025", "--out", "taken")
                        .err())
                .contains("no job of this store began in 2025;");
    }

    @Test
    void whoeverRunsTheServerMakesTheStoreAndLetsPeopleIn() {
        server.execute("postgres", "CREATE DATABASE fresh");
        Console chief = ada.with(
                "EVERYBLADE_STORE",
                server.address("fresh", PostgresServer.CHIEF).toString());

        assertThat(chief.run("fleet", "list").err()).startsWith("everyblade fleet: there is no store in ");
        assertThat(chief.run("fleet", "init", "--member", "ada", "--site", "west", "--role", "technician")
                        .outLines())
                .hasSize(2)
                .last()
                .isEqualTo("ada works as technician at west.");
        assertThat(chief.run("fleet", "init").out()).isEqualTo("The store is up to date.\n");
        assertThat(chief.run("fleet", "init", "--member", "ada").status()).isEqualTo(2);
        assertThat(as("ada").run("fleet", "init").err()).contains("ada is no superuser");
    }

    @Test
    void whatCannotBeIsToldInOneLineWithoutAnySecret() {
        Console nowhere = ada.with("EVERYBLADE_STORE", "postgresql://ada@127.0.0.1:1/fleet");
        Console wrong = ada.with("EVERYBLADE_STORE_PASSWORD", "mistyped secret");

        assertThat(nowhere.run("fleet", "list").errLines())
                .singleElement()
                .asString()
                .contains("does not answer");
        assertThat(wrong.run("fleet", "list").errLines())
                .singleElement()
                .asString()
                .contains("does not let in ada")
                .doesNotContain("mistyped");
        assertThat(ada.run("fleet", "list", "--store", "postgresql://ada:hidden@db/fleet")
                        .err())
                .contains("a password stands in the address")
                .doesNotContain("hidden");
        assertThat(ada.run("fleet", "ask", "why").err())
                .contains("\"why\" is no question of a fleet; ask one of unseen-twice, growth");
        assertThat(ada.run("fleet", "push", "ring").err()).contains("there is no job in it");
        assertThat(ada.run("fleet", "pull", "00000000", "copy").err()).contains("begins with \"00000000\"");
        assertThat(ada.run("fleet").err()).contains("Missing required subcommand");
    }
}
