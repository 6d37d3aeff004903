package everyblade.fleet;

import static everyblade.fleet.Inspections.log;
import static everyblade.fleet.Inspections.notes;
import static everyblade.fleet.Inspections.started;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import everyblade.record.FrozenFile;
import everyblade.record.JobFolder;
import everyblade.record.JobFolder.Broken;
import everyblade.record.JobFolder.Sound;
import everyblade.record.JobFolder.Verification;
import everyblade.record.LocalDisk;
import everyblade.record.RecordProblem;
import everyblade.record.SealedLine;
import everyblade.record.SentJob;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whoever wants something else in the store than what was recorded is refused by the server, or found by verifying. */
@WithPostgres
class AttackTest {

    private static final List<String> TABLES =
            List.of("chain", "line", "content", "file", "parting", "member", "derived", "airfoil", "line_2026");

    @TempDir
    Path temp;

    private final PostgresServer server;
    private final String database;
    private String job;
    private JobFolder folder;

    AttackTest(PostgresServer server) {
        this.server = server;
        this.database = server.store();
    }

    @BeforeEach
    void aJobInTheStore() throws StoreRefusal {
        folder = started(temp.resolve("job"), "SN 1");
        log(folder, "Ada Vane", notes(1, 4));
        try (Store ada = server.as("ada", database)) {
            job = new StoreExchange(ada, "here").push(folder, Optional.empty()).job();
            assertThat(new DerivedTables(ada, "1").keep(job, Inspections.facts(folder)))
                    .isTrue();
        }
    }

    private void refused(String user, String sqlState, String sql, Object... values) {
        try (Store store = server.as(user, database)) {
            assertThatThrownBy(() -> store.execute(sql, values))
                    .as(user + ": " + sql)
                    .isInstanceOfSatisfying(
                            SQLException.class,
                            thrown -> assertThat(thrown.getSQLState()).isEqualTo(sqlState));
        }
    }

    private Verification verified() throws StoreRefusal {
        return verified(NotedHeads.NONE);
    }

    private Verification verified(NotedHeads noted) throws StoreRefusal {
        try (Store otto = server.as("otto", database)) {
            return new StoreCheck(otto, new LocalDisk(), new Workshop(temp.resolve("check")))
                    .verify(
                            new StoreArrival(otto).find(job),
                            Optional.ofNullable(noted.heads().get(job)));
        }
    }

    private List<SealedLine> more(int entries) throws StoreRefusal {
        log(folder, "Ada Vane", notes(5, 4 + entries));
        SentJob sent = StoreExchange.read(folder);
        return sent.journal().subList(5, sent.journal().size());
    }

    private static final String INSERT =
            "INSERT INTO everyblade.line (year, chain, n, raw, hash) VALUES (?, ?, ?, ?, ?)";

    @ParameterizedTest
    @CsvSource({"ada", "rita", "otto"})
    void nobodyChangesRemovesOrEmptiesAnything(String user) throws StoreRefusal {
        for (String table : TABLES) {
            refused(user, "42501", "DELETE FROM everyblade." + table);
            refused(user, "42501", "TRUNCATE everyblade." + table + " CASCADE");
            refused(user, "42501", "DROP TABLE everyblade." + table + " CASCADE");
            refused(user, "42501", "ALTER TABLE everyblade." + table + " DISABLE TRIGGER ALL");
        }
        refused(user, "42501", "UPDATE everyblade.chain SET head = head");
        refused(user, "42501", "UPDATE everyblade.line SET raw = raw");
        refused(user, "42501", "UPDATE everyblade.content SET bytes = bytes");
        refused(user, "42501", "SELECT everyblade.open_year(2031)");
        refused(user, "42501", "SET session_replication_role TO replica");
        refused(user, "42501", "SET ROLE everyblade_owner");
        refused(user, "42501", "CREATE TABLE everyblade.mine (x int)");
        refused(user, "42501", "INSERT INTO everyblade.member VALUES (current_user, 'south')");
        refused(user, "42501", "INSERT INTO everyblade.line_2026 SELECT * FROM everyblade.line");
        assertThat(verified()).isInstanceOf(Sound.class);
    }

    @Test
    void aReaderAddsNothing() throws StoreRefusal {
        SealedLine next = more(1).get(0);

        refused("otto", "42501", INSERT, 2026, job, next.n(), next.bytes(), next.hash());
        refused("otto", "42501", "INSERT INTO everyblade.content (hash, bytes) VALUES ('', '')");
        refused(
                "otto",
                "42501",
                "INSERT INTO everyblade.chain (first, kind, job, site, year) VALUES (?, 'journal', ?, 'north', 2026)",
                "a".repeat(64),
                "a".repeat(64));
    }

    @Test
    void nobodyAddsAtAnotherSiteOrOtherThanWhatIsTheirsToSay() throws StoreRefusal {
        String head = Inspections.journal(folder).head();
        SealedLine next = more(1).get(0);

        refused("carl", "42501", INSERT, 2026, job, next.n(), next.bytes(), next.hash());
        refused("rita", "42501", INSERT, 2026, job, next.n(), next.bytes(), next.hash());
        String open = "INSERT INTO everyblade.chain (first, kind, job, site, year) VALUES (?, ?, ?, ?, ?)";
        String other = "b".repeat(64);
        refused("carl", "42501", open, other, "journal", other, "north", 2026);
        refused("rita", "42501", open, other, "journal", other, "north", 2026);
        refused("carl", "42501", open, other, "review", job, "south", 2026);
        refused(
                "rita",
                "42501",
                "INSERT INTO everyblade.file (job, name, hash) SELECT job, 'photos/x.png', hash FROM everyblade.file");
        refused("carl", "42501", "INSERT INTO everyblade.derived (chain, head, program) VALUES (?, ?, '1')", job, head);
        refused(
                "ben",
                "42501",
                "INSERT INTO everyblade.airfoil SELECT id, 'c9', 1, 0, 0, 0, 0, 0, 0 FROM everyblade.derived");
        refused("ada", "42501", "UPDATE everyblade.derived SET head = head");
        refused(
                "ada",
                "42501",
                "INSERT INTO everyblade.line (year, chain, n, raw, hash, kept_by) VALUES (2026, '', 0, '', '', 'ben')");
    }

    @Test
    void aPersonOfAnotherSiteSeesNothingOfIt() throws StoreRefusal {
        try (Store carl = server.as("carl", database)) {
            for (String table :
                    List.of("chain", "line", "content", "file", "parting", "derived", "airfoil", "blade_row")) {
                assertThat(carl.ask("SELECT count(*) FROM everyblade." + table, row -> row.getInt(1)))
                        .as(table)
                        .containsExactly(0);
            }
        }
    }

    @Test
    void aLineThatWasNotSealedAfterTheLastOneIsRefused() throws StoreRefusal {
        List<SealedLine> next = more(3);
        SealedLine fifth = next.get(0);
        byte[] forged = new String(fifth.bytes(), StandardCharsets.UTF_8)
                .replace("number 5", "number 6")
                .getBytes(StandardCharsets.UTF_8);
        byte[] twoLines = new String(fifth.bytes(), StandardCharsets.UTF_8)
                .replace(",\"by\"", "\n,\"by\"")
                .getBytes(StandardCharsets.UTF_8);

        refused("ada", "EB002", INSERT, 2026, job, 5, forged, fifth.hash());
        refused("ada", "EB002", INSERT, 2026, job, 5, fifth.bytes(), "c".repeat(64));
        refused(
                "ada",
                "EB002",
                INSERT,
                2026,
                job,
                5,
                next.get(1).bytes(),
                next.get(1).hash());
        refused(
                "ada",
                "EB001",
                INSERT,
                2026,
                job,
                6,
                next.get(1).bytes(),
                next.get(1).hash());
        refused("ada", "23505", INSERT, 2026, job, 4, fifth.bytes(), fifth.hash());
        refused("ada", "23514", INSERT, 2026, job, 5, twoLines, fifth.hash());
        refused("ada", "23514", INSERT, 2026, job, 5, new byte[0], fifth.hash());
        refused("ada", "23514", INSERT, 2025, job, 5, fifth.bytes(), fifth.hash());
        refused("ada", "42501", INSERT, 2026, "d".repeat(64), 0, fifth.bytes(), fifth.hash());
    }

    @Test
    void linesInAnotherOrderAreRefusedAsAWhole() throws StoreRefusal {
        List<SealedLine> next = new ArrayList<>(more(3));
        Collections.swap(next, 0, 2);
        List<SealedLine> renumbered = List.of(
                new SealedLine(5, next.get(0).bytes(), next.get(0).hash()),
                new SealedLine(6, next.get(1).bytes(), next.get(1).hash()),
                new SealedLine(7, next.get(2).bytes(), next.get(2).hash()));

        try (Store ada = server.as("ada", database)) {
            Chains chains = new Chains(ada);
            KeptChain there = chains.find(job).orElseThrow();
            assertThatThrownBy(() -> chains.add(there, renumbered)).isInstanceOf(StoreRefusal.class);
            assertThat(chains.find(job)).contains(there);
        }
    }

    @Test
    void aFirstLineBeginsOnlyTheChainThatIsCalledByIt() throws StoreRefusal {
        JobFolder other = started(temp.resolve("other"), "SN 2");
        SealedLine first = StoreExchange.read(other).journal().get(0);
        String open = "INSERT INTO everyblade.chain (first, kind, job, site, year) VALUES (?, ?, ?, 'north', ?)";
        try (Store ada = server.as("ada", database)) {
            ada.together(() -> ada.execute(open, "e".repeat(64), "journal", "e".repeat(64), 2026));
            ada.together(() -> ada.execute(open, first.hash(), "journal", first.hash(), 2025));
        }

        refused("ada", "EB002", INSERT, 2026, "e".repeat(64), 0, first.bytes(), first.hash());
        refused("ada", "EB003", INSERT, 2025, first.hash(), 0, first.bytes(), first.hash());
        refused("ada", "EB003", open, "f".repeat(64), "journal", "f".repeat(64), 2199);
    }

    @Test
    void aContentIsWhatItsHashSays() {
        refused(
                "ada",
                "23514",
                "INSERT INTO everyblade.content (hash, bytes) VALUES (?, ?)",
                FrozenFile.of(new byte[] {1}).hash(),
                new byte[] {2});
        String file = "INSERT INTO everyblade.file (job, name, hash) SELECT job, ?, hash FROM everyblade.file";
        refused("ada", "23514", file, "../../etc/passwd");
        refused("ada", "23514", file, "photos/..\\x");
    }

    @ParameterizedTest
    @CsvSource({
        "UPDATE line SET raw = overlay(raw PLACING '\\x37' FROM position('number 2'::bytea IN raw) + 7) WHERE n = 2, DAMAGED_LINE",
        "DELETE FROM line WHERE n = 4, STORE_CHANGED",
        "DELETE FROM line WHERE n = 2, DAMAGED_LINE",
        "UPDATE line SET hash = repeat('0'; 64) WHERE n = 3, STORE_CHANGED",
        "UPDATE line SET n = n + 10 WHERE n > 2, STORE_CHANGED",
        "UPDATE chain SET head = repeat('0'; 64), STORE_CHANGED",
        "UPDATE chain SET entries = 3, STORE_CHANGED",
        "DELETE FROM file, FILE_NOT_READ"
    })
    void whatAnOwnerChangesByHandIsFound(String sql, RecordProblem.What what) throws StoreRefusal {
        server.execute(
                database,
                "SET search_path TO everyblade; ALTER TABLE line DISABLE TRIGGER ALL; " + sql.replace(';', ','));

        assertThat(verified())
                .isInstanceOfSatisfying(
                        Broken.class,
                        broken -> assertThat(broken.problem().what()).isEqualTo(what));
    }

    @Test
    void anOwnerWhoSealsEverythingAgainIsFoundByHeadsThatWereNotedOutside() throws StoreRefusal {
        NotedHeads noted;
        try (Store otto = server.as("otto", database)) {
            noted = NotedHeads.read(
                    NotedHeads.text(new StoreArrival(otto).jobs()).lines().toList());
        }
        JobFolder again = started(temp.resolve("again"), "SN 1");
        log(again, "Ada Vane", "note number 1", "note something else", "note number 3", "note number 4");
        SentJob forged = StoreExchange.read(again);
        assertThat(forged.journal().get(0).hash()).isEqualTo(job);
        for (SealedLine line : forged.journal()) {
            server.execute(
                    database,
                    "ALTER TABLE everyblade.line DISABLE TRIGGER ALL; UPDATE everyblade.line SET raw = '\\x"
                            + java.util.HexFormat.of().formatHex(line.bytes()) + "', hash = '" + line.hash()
                            + "' WHERE n = " + line.n() + "; UPDATE everyblade.chain SET head = '" + line.hash() + "'");
        }

        assertThat(verified()).isInstanceOf(Sound.class);
        assertThat(verified(noted))
                .isInstanceOfSatisfying(
                        Broken.class,
                        broken -> assertThat(broken.problem().what()).isEqualTo(RecordProblem.What.JOURNAL_REWRITTEN));
    }

    @Test
    void aNewChainWithADisabledTriggerIsFound() throws StoreRefusal {
        List<SealedLine> next = more(1);
        server.execute(
                database,
                "ALTER TABLE everyblade.line DISABLE TRIGGER ALL; INSERT INTO everyblade.line (year, chain, n, raw, hash)"
                        + " VALUES (2026, '" + job + "', 5, '\\x"
                        + java.util.HexFormat.of().formatHex(next.get(0).bytes())
                        + "', '" + next.get(0).hash() + "')");

        assertThat(verified())
                .isInstanceOfSatisfying(
                        Broken.class,
                        broken -> assertThat(broken.problem().what()).isEqualTo(RecordProblem.What.STORE_CHANGED));
    }

    @ParameterizedTest
    @CsvSource({"' OR '1'='1", "'; DROP TABLE everyblade.line; --", "$$ || pg_sleep(10)", "abcd%", "abcd_", "\\"})
    void whatIsAskedForIsNeverTakenForSomethingElse(String text) throws StoreRefusal {
        try (Store otto = server.as("otto", database)) {
            assertThatThrownBy(() -> new StoreArrival(otto).find(text)).isInstanceOf(StoreRefusal.class);
            assertThatThrownBy(() -> otto.site(Optional.of(text))).isInstanceOf(StoreRefusal.class);
        }
        JobFolder odd = started(temp.resolve("odd"), text);
        log(odd, text, "note " + text, "view p1-c1");
        try (Store ada = server.as("ada", database)) {
            String first =
                    new StoreExchange(ada, text).push(odd, Optional.empty()).job();
            assertThat(new DerivedTables(ada, text).keep(first, Inspections.facts(odd)))
                    .isTrue();
            assertThat(new StoreArrival(ada).find(first).serial()).isEqualTo(text);
            assertThat(FleetAnswer.of(ada, FleetQuestion.ENGINES).rows())
                    .anySatisfy(row -> assertThat(row).contains(text));
        }
        assertThat(verified()).isInstanceOf(Sound.class);
    }

    @Test
    void offTheMachineAServerWithoutTlsIsToldNothing() {
        StoreAddress usual = server.address(database, "ada");
        // The machine itself by none of its usual names, so whoever is there must prove who they are.
        StoreAddress off = new StoreAddress(usual.user(), "127.1", usual.port(), usual.database(), Optional.empty());

        assertThatThrownBy(() -> Store.open(off, PostgresServer.secret()))
                .isInstanceOfSatisfying(
                        StoreRefusal.class,
                        refusal -> assertThat(refusal.reason()).isEqualTo(StoreRefusal.Reason.NO_TLS));
    }
}
