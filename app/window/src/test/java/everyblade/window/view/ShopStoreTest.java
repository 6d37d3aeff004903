package everyblade.window.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import everyblade.core.sight.Progress;
import everyblade.fleet.PostgresServer;
import everyblade.fleet.Store;
import everyblade.fleet.StoreExchange;
import everyblade.fleet.StoreRefusal;
import everyblade.fleet.StoreSecret;
import everyblade.fleet.WithPostgres;
import everyblade.record.JobFolder;
import everyblade.record.LocalDisk;
import everyblade.session.Session;
import everyblade.session.Workshop;
import everyblade.session.around.Surroundings;
import everyblade.session.fleet.ShopStore;
import everyblade.words.Words;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A shop's store as the window has it, on a real server. */
@WithPostgres
class ShopStoreTest {

    private static final Words WORDS = Words.of(Locale.ENGLISH);

    @TempDir
    Path temp;

    private final PostgresServer server;
    private final String database;
    private ShopStore shop;
    private Workshop workshop;
    private Session session;
    private StoreFollowing following;

    ShopStoreTest(PostgresServer server) {
        this.server = server;
        this.database = server.store();
    }

    @BeforeEach
    void aJobThatIsWorkedOn() throws Exception {
        shop = at(server.address(database, "ada").toString());
        workshop = Workshop.in(temp.resolve("work"));
        session = workshop.counting();
        following =
                new StoreFollowing(shop, workshop.around(), session.state().folder(), "here", Duration.ofSeconds(1));
    }

    @AfterEach
    void theEnd() {
        following.close();
        session.close();
    }

    private static ShopStore at(String address) throws StoreRefusal {
        return ShopStore.at(address, Map.of(StoreSecret.VARIABLE, PostgresServer.PASSWORD), Optional.empty());
    }

    private static JobFolder folder(Path place) {
        return new JobFolder(new LocalDisk(), place);
    }

    private static StoreFollowing.News.AsOf asOf(StoreFollowing.News news) {
        assertThat(news).isInstanceOf(StoreFollowing.News.AsOf.class);
        return (StoreFollowing.News.AsOf) news;
    }

    @Test
    void aJobIsKeptThereWhileItIsWorkedOnEntryByEntry() throws Exception {
        int before = asOf(following.next()).entry();

        session.say("note one more");
        following.nudge();

        assertThat(asOf(following.next())).isEqualTo(new StoreFollowing.News.AsOf(before + 1, 1, 0));
    }

    @Test
    void whatAnotherMachineAddedMeanwhileIsToldOfAsWhatIsLackingHere() throws Exception {
        int before = asOf(following.next()).entry();
        shop.bring(first(), folder(temp.resolve("copy")), WORDS);
        Surroundings elsewhere = Workshop.in(temp.resolve("elsewhere")).around();
        try (Session other = Session.open(elsewhere, temp.resolve("copy"), List.of(), Progress.NONE)) {
            other.say("note made elsewhere");
            other.say("note and one more");
        }
        try (Store store = shop.open()) {
            new StoreExchange(store, "elsewhere").push(folder(temp.resolve("copy")), Optional.empty());
        }
        following.nudge();

        assertThat(asOf(following.next())).isEqualTo(new StoreFollowing.News.AsOf(before + 2, 0, 2));
    }

    @Test
    void aNetworkThatIsGoneIsToldAndTheWorkGoesOnAndArrivesOnceItIsBack() throws Exception {
        int before = asOf(following.next()).entry();
        server.execute(
                "postgres",
                "SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE datname = '" + database + "'");
        session.say("note while nobody listens");
        following.nudge();

        StoreFollowing.News gone = following.next();

        assertThat(gone)
                .isInstanceOfSatisfying(
                        StoreFollowing.News.Refused.class,
                        refused -> assertThat(ShopStore.told(refused.why(), WORDS))
                                .startsWith("the connection to the store broke"));
        following.nudge();
        assertThat(asOf(following.next()).entry()).isEqualTo(before + 1);
    }

    @Test
    void theFleetShowsWhatIsMissingAndAJobOfItIsBroughtIntoAFolder() throws Exception {
        following.next();

        FleetBoard board = FleetBoard.of(shop);

        assertThat(board.engines()).isEmpty();
        assertThat(board.missing()).isEqualTo(1);
        String first = first();
        assertThat(shop.bring(first, folder(temp.resolve("copy")), WORDS)).isEmpty();
        assertThat(Files.readAllBytes(temp.resolve("copy").resolve("journal.jsonl")))
                .isEqualTo(Files.readAllBytes(session.state().folder().resolve("journal.jsonl")));
    }

    @Test
    void onceNothingIsEnteredForAWhileTheQuestionsAreAnsweredOfItToo() throws Exception {
        following.next();
        assertThat(FleetBoard.of(shop).missing()).isEqualTo(1);

        StoreFollowing.News quiet = following.next();

        assertThat(asOf(quiet).sent()).isZero();
        assertThat(FleetBoard.of(shop).missing()).isZero();
    }

    private String first() throws Exception {
        String line = Files.readAllLines(session.state().folder().resolve("journal.jsonl"))
                .get(0);
        return line.replaceFirst(".*\"hash\":\"([0-9a-f]{12}).*", "$1");
    }

    @Test
    void whatCannotBeIsToldPlainly() throws Exception {
        ShopStore nowhere = at("postgresql://ada@127.0.0.1:1/fleet");

        assertThatThrownBy(() -> FleetBoard.of(nowhere))
                .isInstanceOfSatisfying(
                        StoreRefusal.class,
                        refusal -> assertThat(ShopStore.told(refusal, WORDS)).contains("does not answer"));
        assertThatThrownBy(() -> at("no address"))
                .isInstanceOfSatisfying(
                        StoreRefusal.class,
                        refusal -> assertThat(refusal.reason()).isEqualTo(StoreRefusal.Reason.WRONG_ADDRESS));
    }

    @Test
    void anEngineIsShownRowByRowWithWhatWasLeftThenAndBefore() throws Exception {
        following.next();
        server.execute(
                database,
                "SET search_path TO everyblade; SET session_replication_role TO replica;"
                        + " INSERT INTO derived (chain, head, program) SELECT first, head, '1' FROM chain;"
                        + " INSERT INTO blade_row SELECT id, 'r', 'stated', 2, '{root,tip}' FROM derived;"
                        + " INSERT INTO airfoil SELECT id, 'r', n, 1, 0, 0, 2, CASE n WHEN 2 THEN 2 ELSE 0 END, 0"
                        + " FROM derived, generate_series(1, 2) AS n;"
                        + " INSERT INTO open_item SELECT id, 1, 'gap', NULL, 'left', 'r 1', NULL FROM derived");

        FleetBoard board = FleetBoard.of(shop);

        assertThat(board.rows()).containsExactly("r");
        assertThat(board.missing()).isZero();
        assertThat(board.open())
                .singleElement()
                .extracting(FleetBoard.Open::where)
                .isEqualTo("r 1");
        FleetBoard.Engine engine = board.engines().get(0);
        assertThat(engine.cells()).containsEntry("r", new FleetBoard.Cell(4, 1, 1, 0));
        assertThat(engine.cells().get("r").shareLeft()).isEqualTo(1 / 3.0);
        assertThat(engine.course()).singleElement().satisfies(one -> {
            assertThat(one.left()).isEqualTo(1 / 3.0);
            assertThat(one.findings()).isZero();
        });
    }
}
