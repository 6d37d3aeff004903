package everyblade.fleet;

import static everyblade.fleet.Inspections.log;
import static everyblade.fleet.Inspections.notes;
import static everyblade.fleet.Inspections.started;
import static org.assertj.core.api.Assertions.assertThat;

import everyblade.core.finding.growth.Usage;
import everyblade.record.JobFolder;
import everyblade.record.SealedLine;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;

/** How long it takes at the size of a shop: 1,000 jobs of 500 engines, 500 airfoils each. Asked for by a property. */
@WithPostgres
@EnabledIfSystemProperty(named = "everyblade.figures", matches = "true")
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class FiguresTest {

    private static final int ENGINES = 500;
    private static final List<String> ZONES =
            IntStream.range(0, 12).mapToObj(i -> "z" + i).toList();

    /** Of Linux, ms. */
    private static final double TICK = 10;
    /** Where the time for the program stands in what Linux tells of a process, behind its name; that for the system follows. */
    private static final int USER = 11;

    @TempDir
    Path temp;

    private PostgresServer server;
    private String database;

    @BeforeAll
    void aShop() throws StoreRefusal, SQLException {
        server = PostgresServer.start("-c shared_buffers=256MB");
        database = server.store();
        Random random = new Random(19);
        try (Connection chief = server.chief(database);
                PreparedStatement insert = chief.prepareStatement(
                        "INSERT INTO everyblade.chain (first, kind, job, site, year, entries, head, model, serial, begun)"
                                + " VALUES (?, 'journal', ?, 'north', ?, 0, ?, 'big-1', ?, make_timestamptz(?, 3, 1, 8, 0, 0))");
                Store ada = server.as("ada", database)) {
            for (int job = 0; job < 2 * ENGINES; job++) {
                String first = String.format("%064x", job + 1);
                int year = 2024 + job / ENGINES;
                insert.setString(1, first);
                insert.setString(2, first);
                insert.setInt(3, year);
                insert.setString(4, first);
                insert.setString(5, "S " + job % ENGINES);
                insert.setInt(6, year);
                insert.executeUpdate();
                assertThat(new DerivedTables(ada, "1").keep(first, facts(first, random)))
                        .isTrue();
            }
        }
        server.execute(database, "VACUUM ANALYZE");
    }

    @AfterAll
    void theEnd() {
        server.close();
    }

    private static JobFacts facts(String head, Random random) {
        List<JobFacts.BladeRow> rows = new ArrayList<>();
        List<JobFacts.Airfoil> airfoils = new ArrayList<>();
        List<JobFacts.Found> findings = new ArrayList<>();
        for (int row = 0; row < 10; row++) {
            rows.add(new JobFacts.BladeRow("r" + row, "computed", 50, ZONES));
            for (int n = 1; n <= 50; n++) {
                long unseen = random.nextInt(20) == 0 ? random.nextInt(1 << 12) : 0;
                airfoils.add(new JobFacts.Airfoil("r" + row, n, 0xfff & ~unseen, 0, 0, unseen, 0, 0));
            }
            if (row >= 4) {
                continue;
            }
            findings.add(new JobFacts.Found(
                    row + 1,
                    "nick",
                    "r" + row,
                    7,
                    1,
                    Optional.of(BigDecimal.valueOf(random.nextInt(100), 2)),
                    Optional.empty(),
                    Optional.empty()));
        }
        return new JobFacts(
                head,
                new Usage(Optional.empty(), Optional.empty()),
                rows,
                airfoils,
                findings,
                List.of(new JobFacts.Left("r1", 3, 7, "skipped", Optional.of("v1"))),
                List.of(),
                List.of(),
                List.of());
    }

    private interface Work {

        void run() throws Exception;
    }

    private static double median(int times, Work work) throws Exception {
        List<Double> milliseconds = new ArrayList<>();
        for (int i = 0; i < times; i++) {
            long start = System.nanoTime();
            work.run();
            milliseconds.add((System.nanoTime() - start) / 1e6);
        }
        Collections.sort(milliseconds);
        return milliseconds.get(times / 2);
    }

    /** What one time takes of the server's processor, ms: on a machine that others use, waiting for it says nothing. */
    private static double processorTime(Store store, int times, Work work) throws Exception {
        Path told = Path.of(
                "/proc",
                store.ask("SELECT pg_backend_pid()", row -> row.getString(1)).get(0),
                "stat");
        double before = ticks(told);
        for (int i = 0; i < times; i++) {
            work.run();
        }
        return (ticks(told) - before) * TICK / times;
    }

    private static double ticks(Path stat) throws java.io.IOException {
        String[] fields =
                java.nio.file.Files.readString(stat).replaceFirst(".*\\) ", "").split(" ");
        return Double.parseDouble(fields[USER]) + Double.parseDouble(fields[USER + 1]);
    }

    private static void tell(String what, double milliseconds) {
        System.out.printf("FIGURE %s: %.1f ms%n", what, milliseconds);
    }

    @Test
    void questionsOverAThousandJobs() throws Exception {
        try (Store otto = server.as("otto", database)) {
            double unseen = median(5, () -> FleetAnswer.of(otto, FleetQuestion.UNSEEN_TWICE));
            double growth = median(9, () -> FleetAnswer.of(otto, FleetQuestion.GROWTH));
            tell(
                    "unseen twice, "
                            + FleetAnswer.of(otto, FleetQuestion.UNSEEN_TWICE)
                                    .rows()
                                    .size() + " rows",
                    unseen);
            tell("growth, " + FleetAnswer.of(otto, FleetQuestion.GROWTH).rows().size() + " rows", growth);
            tell("recurring gaps", median(5, () -> FleetAnswer.of(otto, FleetQuestion.RECURRING_GAPS)));
            tell("engines", median(5, () -> FleetAnswer.of(otto, FleetQuestion.ENGINES)));

            double worked = processorTime(otto, 20, () -> FleetAnswer.of(otto, FleetQuestion.GROWTH));
            tell("growth, time of the server's processor", worked);

            assertThat(unseen).isLessThan(1000);
            assertThat(worked).isLessThan(50);
        }
    }

    @Test
    void aPushBesideABareInsertOfTheSameRows() throws Exception {
        int[] count = {0};
        List<JobFolder> folders = new ArrayList<>();
        for (int i = 0; i < 9; i++) {
            folders.add(started(temp.resolve("push" + i), "P " + i));
            log(folders.get(i), "Ada Vane", notes(1, 400));
        }
        server.execute(
                database,
                "CREATE TABLE bare (year int, chain text, n int, raw bytea, hash text, PRIMARY KEY (chain, n, year))");
        try (Store ada = server.as("ada", database);
                Connection chief = server.chief(database)) {
            Chains chains = new Chains(ada);
            List<Double> whole = new ArrayList<>();
            List<Double> inserts = new ArrayList<>();
            List<Double> bares = new ArrayList<>();
            for (JobFolder folder : folders) {
                List<SealedLine> lines = StoreExchange.read(folder).journal();
                bares.add(median(1, () -> bare(chief, lines, "bare" + count[0]++)));
                whole.add(median(1, () -> new StoreExchange(ada, "here").push(folder, Optional.empty())));
            }
            for (int i = 0; i < 9; i++) {
                JobFolder folder = started(temp.resolve("lines" + i), "L " + i);
                log(folder, "Ada Vane", notes(1, 400));
                List<SealedLine> lines = StoreExchange.read(folder).journal();
                String first = lines.get(0).hash();
                chains.open(first, "journal", first, "north", Inspections.TIME);
                KeptChain chain = chains.find(first).orElseThrow();
                inserts.add(median(1, () -> assertThat(chains.add(chain, lines)).isTrue()));
            }
            Collections.sort(whole);
            Collections.sort(inserts);
            Collections.sort(bares);
            tell("push of 400 entries, folder read and files sent", whole.get(4));
            tell("its lines alone", inserts.get(4));
            tell("bare batch insert of the same rows", bares.get(4));

            assertThat(whole.get(4)).isLessThan(200);
            assertThat(inserts.get(4) / bares.get(4)).isLessThan(3);
        }
    }

    private static void bare(Connection connection, List<SealedLine> lines, String chain) throws SQLException {
        connection.setAutoCommit(false);
        try (PreparedStatement insert = connection.prepareStatement("INSERT INTO bare VALUES (2026, ?, ?, ?, ?)")) {
            for (SealedLine line : lines) {
                insert.setString(1, chain);
                insert.setInt(2, line.n());
                insert.setBytes(3, line.bytes());
                insert.setString(4, line.hash());
                insert.addBatch();
            }
            insert.executeBatch();
            connection.commit();
        }
    }

    @Test
    void oneEntry() throws Exception {
        JobFolder folder = started(temp.resolve("single"), "E 1");
        log(folder, "Ada Vane", notes(1, 300));
        List<SealedLine> lines = StoreExchange.read(folder).journal();
        String first = lines.get(0).hash();
        try (Store ada = server.as("ada", database)) {
            Chains chains = new Chains(ada);
            chains.open(first, "journal", first, "north", Inspections.TIME);
            KeptChain chain = chains.find(first).orElseThrow();
            int[] next = {0};
            double entry = median(300, () -> {
                SealedLine line = lines.get(next[0]++);
                assertThat(chains.add(chain, List.of(line))).isTrue();
            });
            tell("one entry", entry);

            assertThat(entry).isLessThan(5);
        }
    }
}
