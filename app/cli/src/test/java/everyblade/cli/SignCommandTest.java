package everyblade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.cli.Console.Ran;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SignCommandTest {

    private static final String PASSPHRASE = "correct horse";

    @TempDir
    Path folder;

    Console console;

    @BeforeEach
    void aJobAndAKey() {
        console = Console.in(folder)
                .with("EVERYBLADE_PASSPHRASE", PASSPHRASE)
                .with("EVERYBLADE_TRUSTED_KEYS", "trusted.txt");
        console.job("view p-r", "datum r 1", "turn 100", "nick 3 tip 0.8");
        key("ann.p12", "Ann Vane", "Part-66 B1", "X.1234");
    }

    private String key(String file, String name, String licence, String number) {
        Ran made = console.run("key", "new", file, "--name", name, "--licence", licence, "--number", number);
        assertThat(made.err()).isEmpty();
        assertThat(made.out()).doesNotContain(PASSPHRASE);
        return made.outLines().get(0).replaceAll(".*fingerprint ", "");
    }

    private Ran sign(String as, String file, String... more) {
        return console.run(Stream.concat(Stream.of("sign", "job", "--as", as, "--key", file), Stream.of(more))
                .toArray(String[]::new));
    }

    private List<String> verified() {
        Ran verified = console.run("verify", "job");
        assertThat(verified.err()).isEmpty();
        return verified.outLines().subList(1, verified.outLines().size());
    }

    private String head() {
        return console.journal().get(4).replaceAll(".*\"hash\":\"|\"}$", "");
    }

    @Test
    void aSignatureSaysWhoSaysWhatOfWhichRecordAndWithWhichFigures() {
        Ran signed = sign("inspected", "ann.p12");

        assertThat(signed.err()).isEmpty();
        assertThat(signed.outLines().get(0))
                .isEqualTo("signature 1: inspected by Ann Vane, entries 1…4, head " + head());
        assertThat(console.read("job/signatures/1.json"))
                .contains(
                        "\"as\":\"inspected\"",
                        "\"name\":\"Ann Vane\"",
                        "\"licence\":\"Part-66 B1\"",
                        "\"number\":\"X.1234\"",
                        "\"at\":\"2026-05-14T06:00:00Z\"",
                        "\"entries\":4",
                        head(),
                        "\"findings\":\"1\"");
        assertThat(console.run("verify", "job").status()).isZero();
        assertThat(verified())
                .singleElement()
                .asString()
                .startsWith(
                        "signature 1: inspected by Ann Vane, Part-66 B1 X.1234, at 2026-05-14T06:00:00Z, entries 1…4;"
                                + " nothing after it; declared, left of what these views can show ")
                .contains("is not on your list");
    }

    @Test
    void whatCameAfterASignatureIsPlainEverywhere() throws IOException {
        sign("inspected", "ann.p12");
        console.run("log", "job", "look", "look");

        assertThat(verified()).singleElement().asString().contains("entries 1…4; 2 ENTRIES AFTER IT;");
        assertThat(pageOne())
                .contains(
                        "Signature 1: inspected by Ann Vane, Part-66 B1 X.1234, 2026-05-14 06:00 UTC; it covers the first 4"
                                + " entries, and 2 entries came after it.");
    }

    private String pageOne() throws IOException {
        return words(1);
    }

    private String words(int pages) throws IOException {
        assertThat(console.run("report", "job", "--out", "r.pdf").status()).isZero();
        try (PDDocument report = Loader.loadPDF(console.file("r.pdf").toFile())) {
            PDFTextStripper words = new PDFTextStripper();
            words.setEndPage(pages);
            return words.getText(report).replaceAll("\\s+", " ");
        }
    }

    @Test
    void thoseWhoSignedStandOnPageOneOfTheReport() throws IOException {
        String key = key("bo.p12", "Bo Stator", "Part-66 C", "Y.77");
        sign("inspected", "ann.p12");
        sign("returned", "bo.p12", "--because", "blade 9 was not seen");

        assertThat(pageOne())
                .contains(
                        "Signature 1: inspected by Ann Vane, Part-66 B1 X.1234, 2026-05-14 06:00 UTC; it covers every")
                .contains("Signature 2: sent back by Bo Stator, Part-66 C Y.77, 2026-05-14 06:00 UTC, because blade 9");
        assertThat(words(100))
                .contains("inspected by Ann Vane Part-66 B1 X.1234 no. 1, key ")
                .contains("sent back by Bo Stator Part-66 C Y.77 no. 2, key ", key.substring(0, 12) + "…")
                .contains("key of signature 2 " + key)
                .doesNotContain("reviewed by");
    }

    @Test
    void nobodyAcceptsTheirOwnWork() {
        sign("inspected", "ann.p12");
        for (String as : List.of("reviewed", "returned", "sent back")) {
            Ran refused = sign(as, "ann.p12");
            assertThat(refused.status()).isEqualTo(2);
            assertThat(refused.errLines())
                    .singleElement()
                    .asString()
                    .startsWith("--key ann.p12: it made signature 1 as inspected, and nobody accepts their own work");
        }
        assertThat(console.file("job/signatures/2.json")).doesNotExist();
    }

    @Test
    void theListOfTrustedKeysSaysWhoseAKeyIs() {
        String bo = key("bo.p12", "Bo Stator", "Part-66 C", "Y.77");
        String ann = console.run("key", "show", "ann.p12").out().strip().replaceAll(".*fingerprint ", "");
        sign("inspected", "ann.p12");
        sign("reviewed", "bo.p12");

        assertThat(console.run("key", "trust", ann, "--name", "Ann Vane").status())
                .isZero();
        assertThat(console.run("key", "trust", bo, "--name", "Someone Else").status())
                .isZero();

        assertThat(console.run("key", "list").outLines()).containsExactly(ann + "  Ann Vane", bo + "  Someone Else");
        assertThat(verified().get(0)).endsWith("its key is on your list");
        assertThat(verified().get(1))
                .endsWith("its key is on your list as that of Someone Else, who signs here as Bo Stator");

        assertThat(console.run("key", "distrust", ann).status()).isZero();
        assertThat(verified().get(0)).contains("is not on your list");
        assertThat(console.run("key", "distrust", ann).status()).isEqualTo(2);
    }

    @Test
    void aRecordWrittenAnewAfterItWasSignedIsFoundThoughItsChainIsSound() throws IOException {
        sign("inspected", "ann.p12");
        Console other = Console.in(Files.createDirectory(folder.resolve("other")));
        other.job("view p-r", "datum r 1", "turn 360", "note nothing found");
        Files.copy(
                other.file("job/journal.jsonl"),
                console.file("job/journal.jsonl"),
                java.nio.file.StandardCopyOption.REPLACE_EXISTING);

        Ran verified = console.run("verify", "job");

        assertThat(verified.status()).isEqualTo(1);
        assertThat(verified.outLines().get(0)).startsWith("sound: ");
        assertThat(verified.outLines().get(1))
                .startsWith("signature 1: COUNTS FOR NOTHING: entry 4 is no longer the one that was signed");
    }

    @Test
    void aWrongPassphraseOrAKeyThatIsNoneSignsNothing() {
        console.write("no.p12", "nothing");
        Map<String, String> before = console.everything();

        Ran wrong = console.with("EVERYBLADE_PASSPHRASE", "wrong horse")
                .run("sign", "job", "--as", "inspected", "--key", "ann.p12");
        Ran none = sign("inspected", "no.p12");
        Ran missing = sign("inspected", "missing.p12");
        Ran asked = Console.in(folder).run("sign", "job", "--as", "inspected", "--key", "ann.p12");

        assertThat(wrong.errLines()).containsExactly("ann.p12: the passphrase does not open it");
        assertThat(none.errLines()).containsExactly("no.p12: it is no PKCS12 file, or it is damaged");
        assertThat(missing.errLines()).singleElement().asString().startsWith("missing.p12: it cannot be read");
        assertThat(asked.errLines()).singleElement().asString().startsWith("no passphrase for ann.p12; set ");
        assertThat(List.of(wrong.status(), none.status(), missing.status(), asked.status()))
                .containsOnly(2);
        assertThat(console.everything()).isEqualTo(before);
    }

    @Test
    void aPassphraseComesFromAFileOrFromStandardInputToo() {
        console.write("secret", PASSPHRASE + "\nmore\n");
        Console plain = Console.in(folder);

        assertThat(plain.run("sign", "job", "--as", "inspected", "--key", "ann.p12", "--passphrase-file", "secret")
                        .err())
                .isEmpty();
        assertThat(plain.say(PASSPHRASE + "\n", "sign", "job", "--as", "inspected", "--key", "ann.p12")
                        .err())
                .isEmpty();
        assertThat(console.file("job/signatures/2.json")).exists();
    }

    @Test
    void aKeyIsNeverOverwrittenNorReadableByOthersNorOpenedByAShortPassphrase() throws IOException {
        byte[] before = Files.readAllBytes(console.file("ann.p12"));

        Ran again = console.run("key", "new", "ann.p12", "--name", "Eve");
        Ran weak = console.with("EVERYBLADE_PASSPHRASE", "short").run("key", "new", "eve.p12", "--name", "Eve");

        assertThat(List.of(again.status(), weak.status())).containsOnly(2);
        assertThat(weak.err()).doesNotContain("short");
        assertThat(console.file("eve.p12")).doesNotExist();
        assertThat(console.file("ann.p12")).hasBinaryContent(before);
        if (folder.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(console.file("ann.p12"))))
                    .isEqualTo("rw-------");
        }
    }

    @Test
    void whatIsNotSoundOrPackedIsNotSigned() {
        console.run("pack", "job", "--out", "job.zip");
        Ran packed = console.run("sign", "job.zip", "--as", "inspected", "--key", "ann.p12");
        console.write(
                "job/journal.jsonl", console.read("job/journal.jsonl").replace("\"live\":false", "\"live\":true"));
        Ran broken = sign("inspected", "ann.p12");
        Ran unknown = sign("approved", "ann.p12");

        assertThat(packed.errLines()).singleElement().asString().startsWith("job.zip: it is one file");
        assertThat(broken.errLines()).singleElement().asString().startsWith("Damaged line: ");
        assertThat(unknown.errLines()).singleElement().asString().startsWith("--as \"approved\": ");
        assertThat(console.file("job/signatures")).doesNotExist();
    }

    @Test
    void theSignaturesTravelInTheZip() {
        sign("inspected", "ann.p12");
        console.run("pack", "job", "--out", "job.zip");
        assertThat(console.run("verify", "job.zip")).isEqualTo(console.run("verify", "job"));
    }
}
