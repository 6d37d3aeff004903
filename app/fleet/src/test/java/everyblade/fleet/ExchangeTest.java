package everyblade.fleet;

import static everyblade.fleet.Inspections.TIME;
import static everyblade.fleet.Inspections.files;
import static everyblade.fleet.Inspections.journal;
import static everyblade.fleet.Inspections.log;
import static everyblade.fleet.Inspections.notes;
import static everyblade.fleet.Inspections.started;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import everyblade.core.finding.review.ReviewRemark;
import everyblade.fleet.StoreExchange.Done;
import everyblade.fleet.StoreRefusal.Reason;
import everyblade.record.JobFolder;
import everyblade.record.JobFolder.Sound;
import everyblade.record.JournalWriter;
import everyblade.record.LocalDisk;
import everyblade.record.ReviewFile;
import everyblade.record.ReviewWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Jobs go to the store and come back byte for byte, and what was gone on with in two ways is refused. */
@WithPostgres
class ExchangeTest {

    @TempDir
    Path temp;

    private final PostgresServer server;
    private final String database;
    private Store ada;
    private JobFolder folder;

    ExchangeTest(PostgresServer server) {
        this.server = server;
        this.database = server.store();
    }

    @BeforeEach
    void aJob() {
        ada = server.as("ada", database);
        folder = started(temp.resolve("job"), "SN " + temp.getFileName());
    }

    @AfterEach
    void goodBye() {
        ada.close();
    }

    private static StoreExchange exchange(Store store) {
        return new StoreExchange(store, "a machine of the tests");
    }

    private Done push(JobFolder from) throws StoreRefusal {
        return exchange(ada).push(from, Optional.empty());
    }

    private JobFolder brought(Store by, String name, String job) throws StoreRefusal {
        JobFolder there = new JobFolder(new LocalDisk(), temp.resolve(name));
        StoreArrival arrival = new StoreArrival(by);
        assertThat(arrival.into(there, arrival.find(job))).isInstanceOf(Sound.class);
        return there;
    }

    private static StoreRefusal refusal(ThrowingCallable of) {
        return catchThrowableOfType(StoreRefusal.class, of);
    }

    private void picture(JobFolder in, String name, int colour) {
        try (JournalWriter writer = Inspections.writer(in, "Ada Vane")) {
            assertThat(writer.keepPhoto(name, Inspections.picture(colour))).isEmpty();
        }
        log(in, "Ada Vane", "photo " + name);
    }

    @Test
    void aJobComesBackAsItWent() throws Exception {
        log(
                folder,
                "Ada Vane",
                "view p1-c1",
                "datum c1 1",
                "round 1",
                "nick 3 tip 0.4",
                "note 'x'; DROP TABLE line; -- \\ \"ü\"");
        picture(folder, "nick.png", 0xff0000);

        Done done = push(folder);
        JobFolder there = brought(ada, "there", done.job());

        assertThat(done.sent()).isEqualTo(7);
        assertThat(done.entries()).isEqualTo(6);
        assertThat(done.head()).isEqualTo(journal(folder).head());
        assertThat(files(there)).isEqualTo(files(folder));
    }

    @Test
    void whatIsThereIsNotSentAgain() throws Exception {
        log(folder, "Ada Vane", notes(1, 5));
        push(folder);
        log(folder, "Ada Vane", notes(6, 7));

        assertThat(push(folder).sent()).isEqualTo(2);
        assertThat(push(folder).sent()).isZero();
    }

    @Test
    void linesThatCameFromElsewhereAreBroughtWithTheirPictures() throws Exception {
        log(folder, "Ada Vane", "note one");
        JobFolder there = brought(ada, "there", push(folder).job());
        picture(there, "late.png", 0xff);
        assertThat(exchange(ada).sync(there, Optional.empty(), "Ada Vane", TIME).sent())
                .isEqualTo(1);

        Done done = exchange(ada).sync(folder, Optional.empty(), "Ada Vane", TIME);

        assertThat(done.brought()).isEqualTo(1);
        assertThat(files(folder)).isEqualTo(files(there));
        assertThat(folder.verify(Optional.empty())).isInstanceOf(Sound.class);
    }

    @Test
    void twoContinuationsAreNeverMergedAndPeopleAreToldWhoWhereAndWhen() throws Exception {
        log(folder, "Ada Vane", notes(1, 3));
        JobFolder there = brought(ada, "there", push(folder).job());
        log(there, "Ben Stator", "note from there", "note more from there");
        log(folder, "Ada Vane", "note from here");
        try (Store ben = server.as("ben", database)) {
            exchange(ben).push(there, Optional.empty());
        }
        var before = files(folder);

        StoreRefusal refusal = refusal(() -> exchange(ada).sync(folder, Optional.empty(), "Ada Vane", TIME));

        assertThat(refusal.reason()).isEqualTo(Reason.PARTED);
        assertThat(refusal.facts()).startsWith("4", "Ben Stator", "2026-03-01T08:04:00Z", "ben", "north");
        assertThat(files(folder)).isEqualTo(before);
        assertThat(new StoreArrival(ada).find(journal(folder).firstHash()).head())
                .isEqualTo(journal(there).head());
        assertThat(new StorePartings(ada).all())
                .filteredOn(one -> one.chain().equals(journal(folder).firstHash()))
                .singleElement()
                .satisfies(parting -> {
                    assertThat(parting.at()).isEqualTo(4);
                    assertThat(parting.by()).isEqualTo("Ada Vane");
                    assertThat(parting.toldBy()).isEqualTo("ada");
                    assertThat(parting.place()).isEqualTo("a machine of the tests, " + folder.path());
                });
        assertThat(refusal(() -> push(folder)).reason()).isEqualTo(Reason.PARTED);
    }

    @Test
    void aJobOfAnotherSiteIsNeitherSeenNorWritten() throws Exception {
        log(folder, "Ada Vane", "note one");
        String job = push(folder).job();

        try (Store carl = server.as("carl", database);
                Store otto = server.as("otto", database)) {
            assertThat(new StoreArrival(carl).jobs()).isEmpty();
            assertThat(refusal(() -> new StoreArrival(carl).find(job)).reason()).isEqualTo(Reason.NO_JOB);
            assertThat(refusal(() -> exchange(carl).push(folder, Optional.empty()))
                            .reason())
                    .isEqualTo(Reason.ELSEWHERE);
            assertThat(refusal(() -> exchange(carl).push(folder, Optional.of("north")))
                            .reason())
                    .isEqualTo(Reason.WHICH_SITE);
            assertThat(new StoreArrival(otto).find(job).site()).isEqualTo("north");
        }
    }

    @Test
    void aReviewTravelsBothWaysAndItsReviewerCannotAddToTheJournal() throws Exception {
        log(folder, "Ada Vane", "note one");
        String job = push(folder).job();
        try (Store rita = server.as("rita", database)) {
            JobFolder hers = brought(rita, "hers", job);
            review(hers, "which blade?");
            assertThat(exchange(rita).push(hers, Optional.empty()).sent()).isEqualTo(2);

            assertThat(exchange(ada)
                            .pull(folder, new StoreArrival(ada).find(job), "Ada Vane", TIME)
                            .brought())
                    .isEqualTo(2);
            assertThat(files(folder)).isEqualTo(files(hers));
            assertThat(files(brought(ada, "fresh", job))).isEqualTo(files(hers));

            log(hers, "Rita", "note not hers to say");
            assertThat(refusal(() -> exchange(rita).push(hers, Optional.empty()))
                            .reason())
                    .isEqualTo(Reason.NOT_ALLOWED);
        }
    }

    private static void review(JobFolder of, String text) {
        var journal = journal(of);
        try (ReviewWriter writer =
                ((ReviewFile.Writable) of.review().write("Rita", TIME, journal.firstHash())).writer()) {
            assertThat(writer.append(List.of(new ReviewWriter.Said(
                            TIME,
                            "Rita",
                            journal.head(),
                            journal.lines().size(),
                            ReviewRemark.What.values()[0],
                            text,
                            Optional.empty(),
                            OptionalInt.empty()))))
                    .isInstanceOf(ReviewWriter.Kept.class);
        }
    }

    @Test
    void nothingIsMadeOverWhatIsThere() throws Exception {
        log(folder, "Ada Vane", "note one");
        String job = push(folder).job();
        var before = files(folder);
        StoreArrival arrival = new StoreArrival(ada);

        assertThat(arrival.into(folder, arrival.find(job))).isInstanceOf(JobFolder.Broken.class);
        assertThat(files(folder)).isEqualTo(before);
        assertThat(temp).isDirectoryNotContaining(path -> path.toString().contains("arriving"));
    }

    @Test
    void anotherFileOfTheSameNameIsRefused() throws Exception {
        JobFolder there = brought(ada, "there", push(folder).job());
        Files.createDirectories(folder.path().resolve("signatures"));
        Files.writeString(folder.path().resolve("signatures/1.json"), "{}");
        Files.createDirectories(there.path().resolve("signatures"));
        Files.writeString(there.path().resolve("signatures/1.json"), "{ }");
        push(folder);

        StoreRefusal refusal = refusal(() -> push(there));

        assertThat(refusal.reason()).isEqualTo(Reason.OTHER_FILE);
        assertThat(refusal.facts()).containsExactly("signatures/1.json");
    }

    @Test
    void othersAreToldOfAnEntryAtOnce() throws Exception {
        log(folder, "Ada Vane", "note one");
        try (Store otto = server.as("otto", database)) {
            otto.awaitNews(Duration.ofMillis(1));
            String job = push(folder).job();

            assertThat(otto.awaitNews(Duration.ofSeconds(10))).contains(job);
        }
    }

    @Test
    void anUnsoundFolderIsNotSent() throws IOException {
        log(folder, "Ada Vane", notes(1, 3));
        Path file = folder.path().resolve("journal.jsonl");
        Files.writeString(file, Files.readString(file).replace("number 2", "number 7"));

        assertThat(refusal(() -> push(folder)).reason()).isEqualTo(Reason.UNSOUND);
    }

    @Test
    void aServerWithoutStoreAndAWrongPasswordAreToldApart() {
        StoreAddress none = server.address("postgres", "ada");
        StoreAddress wrong = server.address(database, "nobody");

        assertThat(refusal(() -> Store.open(none, PostgresServer.secret())).reason())
                .isEqualTo(Reason.NO_STORE);
        assertThat(refusal(() -> Store.open(wrong, PostgresServer.secret())).reason())
                .isEqualTo(Reason.NOT_LET_IN);
    }
}
