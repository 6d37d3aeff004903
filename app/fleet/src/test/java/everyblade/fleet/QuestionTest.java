package everyblade.fleet;

import static everyblade.fleet.Inspections.log;
import static everyblade.fleet.Inspections.started;
import static org.assertj.core.api.Assertions.assertThat;

import everyblade.record.JobFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two inspections of one engine and one of another, and what a shop asks of them. */
@WithPostgres
class QuestionTest {

    private static final Instant SPRING = Instant.parse("2026-03-01T08:00:00Z");
    private static final Instant SUMMER = Instant.parse("2026-07-01T08:00:00Z");

    @TempDir
    Path temp;

    private final PostgresServer server;
    private final String database;
    private Store ada;

    QuestionTest(PostgresServer server) {
        this.server = server;
        this.database = server.store();
    }

    /** At both inspections only some blades pass the view's middle: 1 to 4 in spring, 1 to 3 in summer. */
    @BeforeEach
    void aFleet() throws StoreRefusal {
        ada = server.as("ada", database);
        keep(
                "spring",
                "A 1",
                SPRING,
                "view p1-c1",
                "datum c1 1",
                "fact cycles 1000",
                "turn back 45 ±0",
                "nick 3 tip 0.4",
                "dent 2 root 1.0");
        keep(
                "summer",
                "A 1",
                SUMMER,
                "view p1-c1",
                "datum c1 1",
                "fact cycles 1200",
                "turn back 30 ±0",
                "nick 3 tip 0.7",
                "again in 50 cycles",
                "recheck 3");
        keep("other", "A 2", SPRING, "view p1-c1", "datum c1 1", "round 1", "again in 30 days");
    }

    @AfterEach
    void goodBye() {
        ada.close();
    }

    private JobFolder keep(String name, String serial, Instant at, String... entries) throws StoreRefusal {
        JobFolder folder = started(temp.resolve(name), serial, at);
        log(folder, "Ada Vane", entries);
        String job =
                new StoreExchange(ada, "here").push(folder, Optional.empty()).job();
        assertThat(new DerivedTables(ada, "1").keep(job, Inspections.facts(folder)))
                .isTrue();
        return folder;
    }

    /** The answer without what depends on hashes and on today. */
    private static List<List<Object>> rows(Store store, FleetQuestion question, String... columns) throws StoreRefusal {
        FleetAnswer answer = FleetAnswer.of(store, question);
        return answer.rows().stream()
                .map(row -> List.of(columns).stream()
                        .map(column -> row.get(answer.columns().indexOf(column)))
                        .toList())
                .toList();
    }

    @Test
    void bladesThatWereNotSeenTwiceAreThoseThatTheFoldsSay() throws StoreRefusal {
        List<Object> expected = IntStream.rangeClosed(5, 24)
                .filter(n -> n != 24)
                .boxed()
                .map(Object.class::cast)
                .toList();

        List<List<Object>> rows = rows(ada, FleetQuestion.UNSEEN_TWICE, "serial", "row", "airfoil", "zones");

        assertThat(rows)
                .allSatisfy(row -> assertThat(row).startsWith("A 1", "c1").endsWith("all"));
        assertThat(rows.stream().map(row -> row.get(2)).toList()).containsAll(expected);
    }

    @Test
    void aFindingThatGrewIsToldWithItsSizesThenAndNow() throws StoreRefusal {
        assertThat(rows(
                        ada,
                        FleetQuestion.GROWTH,
                        "serial",
                        "row",
                        "airfoil",
                        "kind",
                        "zones",
                        "length_before",
                        "length_now"))
                .hasToString("[[A 1, c1, 3, nick, tip, 0.4, 0.7]]");
    }

    @Test
    void gapsThatRecurAreToldByModelAndView() throws StoreRefusal {
        assertThat(rows(
                        ada,
                        FleetQuestion.RECURRING_GAPS,
                        "model",
                        "row",
                        "view",
                        "why",
                        "left in",
                        "of jobs",
                        "engines"))
                .hasToString("[[sedge-2, c1, p1-c1, skipped, 2, 3, 1]]");
    }

    @Test
    void whatIsDueIsToldWithWhereTheCyclesStandThen() throws StoreRefusal {
        assertThat(rows(ada, FleetQuestion.DUE, "serial", "number", "unit", "at"))
                .hasToString("[[A 2, 30, days, 2026-03-31], [A 1, 50, cycles, 1250 cycles]]");
    }

    @Test
    void whatIsOpenIsToldBySite() throws StoreRefusal {
        assertThat(rows(ada, FleetQuestion.OPEN, "site", "serial", "kind", "entry")
                        .toString())
                .contains("[north, A 1, recheck, 7]");
    }

    @Test
    void eachEngineIsToldAsItsLastInspectionLeftIt() throws StoreRefusal {
        List<List<Object>> rows = rows(ada, FleetQuestion.ENGINES, "serial", "row", "seen", "unseen", "findings");

        assertThat(rows).hasSize(2);
        assertThat(rows.get(1)).hasToString("[A 2, c1, 48, 0, 0]");
        assertThat(rows.get(0).get(4)).hasToString("1");
    }

    @Test
    void whatWasComputedOfAnEarlierHeadCountsNoMoreUntilItIsComputedAgain() throws StoreRefusal {
        JobFolder folder = keep("third", "A 3", SPRING, "view p1-c1", "datum c1 1", "round 1");
        DerivedTables tables = new DerivedTables(ada, "1");
        assertThat(tables.behind()).isEmpty();
        assertThat(new DerivedTables(ada, "2").behind()).hasSize(4);
        JobFacts early = Inspections.facts(folder);
        log(folder, "Ada Vane", "nick 3 tip 0.4");
        String job =
                new StoreExchange(ada, "here").push(folder, Optional.empty()).job();

        assertThat(tables.behind()).extracting(KeptChain::serial).containsExactly("A 3");
        assertThat(rows(ada, FleetQuestion.ENGINES, "serial")).hasSize(2);
        assertThat(tables.keep(job, early)).isFalse();
        assertThat(tables.keep(job, Inspections.facts(folder))).isTrue();
        assertThat(tables.behind()).isEmpty();
    }

    @Test
    void throwingAwayWhatWasComputedAndComputingItAgainOfTheLinesAloneGivesTheSameAnswers() throws StoreRefusal {
        StringBuilder before = new StringBuilder();
        StringBuilder after = new StringBuilder();
        for (FleetQuestion question : FleetQuestion.values()) {
            before.append(FleetAnswer.of(ada, question));
        }
        server.execute(database, "DELETE FROM everyblade.derived");
        DerivedTables tables = new DerivedTables(ada, "1");
        assertThat(tables.behind()).hasSize(3);
        for (KeptChain job : tables.behind()) {
            JobFolder folder = new JobFolder(new everyblade.record.LocalDisk(), temp.resolve(job.first()));
            assertThat(new StoreArrival(ada).into(folder, job)).isInstanceOf(JobFolder.Sound.class);
            assertThat(tables.keep(job.first(), Inspections.facts(folder))).isTrue();
        }
        for (FleetQuestion question : FleetQuestion.values()) {
            after.append(FleetAnswer.of(ada, question));
        }

        assertThat(after).hasToString(before.toString());
    }

    @Test
    void anExportLiesByTableSiteAndYearAndHoldsWhatTheUserMaySee() throws StoreRefusal, IOException {
        Path folder = temp.resolve("export");
        try (Store otto = server.as("otto", database)) {
            assertThat(new StoreExport(otto).into(folder)).isEqualTo(9);
        }

        List<String> airfoils = Files.readAllLines(folder.resolve("airfoil/site=north/year=2026/part.csv"));
        assertThat(airfoils).hasSize(1 + 3 * 24);
        assertThat(airfoils.get(0))
                .isEqualTo("job,model,serial,begun,row_id,n,seen,part,maybe,unseen,no_view,accepted");
        List<String> lines = Files.readAllLines(folder.resolve("line/site=north/year=2026/part.csv"));
        assertThat(lines).hasSize(1 + 7 + 8 + 5);
        try (Store carl = server.as("carl", database)) {
            assertThat(new StoreExport(carl).into(temp.resolve("nothing"))).isZero();
        }
    }
}
