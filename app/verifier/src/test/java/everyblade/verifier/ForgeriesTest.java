package everyblade.verifier;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HexFormat;
import java.util.List;
import java.util.function.UnaryOperator;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What somebody may do to a signed record whose whole folder they have, and what program and verifier find: the table in
 * README. The record has six entries, the fifth with a picture.
 */
class ForgeriesTest {

    private static final String MODEL = """
            { "schema": "everyblade/engine-model/1", "id": "ring", "name": "Ring", "notice": "Invented.",
              "rows": [ { "id": "r", "kind": "rotor", "count": 12 } ],
              "views": [ { "id": "p", "row": "r", "reference": 90, "window": { "halfWidth": 5, "shows": ["root", "tip"] } } ] }
            """;

    @TempDir
    Path folder;

    private Shop shop;
    private List<String> lines;

    @BeforeEach
    void aSignedRecord() throws IOException {
        shop = new Shop(folder);
        Files.createDirectories(folder.resolve("ring"));
        Files.writeString(folder.resolve("ring/engine.json"), MODEL);
        Files.write(folder.resolve("blade.png"), png(0x336699));
        shop.done("start", "job", "--model", "ring", "--serial", "7", "--task", "look", "--by", "Ann");
        shop.done("log", "job", "view p", "datum r 1", "turn on 38", "crack 2 tip 1.2", "photo blade.png of 2", "look");
        shop.done("key", "new", "ann.p12", "--name", "Ann");
        shop.done("sign", "job", "--as", "inspected", "--key", "ann.p12");
        lines = new ArrayList<>(Files.readAllLines(journal()));
        assertThat(shop.program("", "verify", "job").status()).isZero();
        assertThat(shop.verifier("job").status()).isZero();
    }

    private static byte[] png(int colour) throws IOException {
        BufferedImage image = new BufferedImage(2, 2, BufferedImage.TYPE_INT_RGB);
        image.setRGB(1, 1, colour);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(image, "png", bytes);
        return bytes.toByteArray();
    }

    private Path journal() {
        return folder.resolve("job/journal.jsonl");
    }

    private void write(List<String> changed) throws IOException {
        Files.writeString(journal(), String.join("\n", changed) + "\n");
    }

    /** Each line sealed anew after the one before: what a forger does who knows the format. */
    private void resealed(List<String> changed) throws IOException {
        List<String> sealed = new ArrayList<>();
        String head = "";
        for (String line : changed) {
            String body = line.replaceFirst(",\"hash\":\"[0-9a-f]{64}\"}$", "");
            try {
                head = HexFormat.of()
                        .formatHex(MessageDigest.getInstance("SHA-256")
                                .digest((head + body).getBytes(StandardCharsets.UTF_8)));
            } catch (GeneralSecurityException impossible) {
                throw new AssertionError(impossible);
            }
            sealed.add(body + ",\"hash\":\"" + head + "\"}");
        }
        write(sealed);
    }

    private void resealed(int line, UnaryOperator<String> change) throws IOException {
        List<String> changed = new ArrayList<>(lines);
        changed.set(line - 1, change.apply(changed.get(line - 1)));
        assertThat(changed).isNotEqualTo(lines);
        resealed(changed);
    }

    private void found(String byProgram, String byVerifier) {
        Shop.Ran program = shop.program("", "verify", "job");
        assertThat(program.status()).isEqualTo(1);
        assertThat(program.out()).contains(byProgram);
        Shop.Ran verifier = shop.verifier("job");
        assertThat(verifier.status()).isEqualTo(1);
        assertThat(verifier.out()).contains("WRONG: " + byVerifier);
    }

    @Test
    void bytes() throws IOException {
        lines.set(3, lines.get(3).replace("turn on 38", "turn on 39"));
        write(lines);
        found("Damaged line: journal.jsonl line 4", "journal.jsonl line 4: its hash does not fit");
    }

    @Test
    void order() throws IOException {
        Collections.swap(lines, 3, 4);
        write(lines);
        found("Damaged line: journal.jsonl line 4", "journal.jsonl line 4: its hash does not fit");
    }

    @Test
    void tail() throws IOException {
        write(lines.subList(0, 5));
        found(
                "the journal ends with entry 4, so the journal was cut short",
                "signature 1 is of another journal, or of entries");
    }

    @Test
    void duplicate() throws IOException {
        lines.add(5, lines.get(4));
        write(lines);
        found("Damaged line: journal.jsonl line 6", "journal.jsonl line 6: its hash does not fit");
    }

    @Test
    void rebuiltChain() throws IOException {
        resealed(4, line -> line.replace("turn on 38", "turn on 360").replace("\"number\":38", "\"number\":360"));
        found("COUNTS FOR NOTHING: entry 6 is no longer the one that was signed", "signature 1 is of another journal");
        assertThat(shop.done("verify", "job")).startsWith("sound: 6 entries");
    }

    @Test
    void textAgainstMeaning() throws IOException {
        resealed(4, line -> line.replace("\"number\":38", "\"number\":360"));
        found("Text and meaning differ: journal.jsonl line 4", "entry 3: text and meaning say two different things");
        resealed(5, line -> line.replace("crack 2 tip 1.2", "deposit 2 tip 1.2"));
        found("Text and meaning differ: journal.jsonl line 5", "entry 4: text and meaning say two different things");
    }

    @Test
    void model() throws IOException {
        String wider = MODEL.replace("\"halfWidth\": 5", "\"halfWidth\": 50");
        Files.writeString(folder.resolve("job/model/engine.json"), wider);
        found("Engine model changed: model/engine.json", "model/engine.json is not there as it was kept");

        String hash = Job.sha256(wider.getBytes(StandardCharsets.UTF_8));
        resealed(1, line -> line.replaceFirst("(\"modelHash\":\")[0-9a-f]{64}", "$1" + hash));
        found("COUNTS FOR NOTHING: it is of another job", "signature 1 is of another journal");
    }

    @Test
    void settings() throws IOException {
        resealed(1, line -> line.replace("\"grazing\":30", "\"grazing\":3"));
        found("COUNTS FOR NOTHING: it is of another job", "signature 1 is of another journal");
    }

    @Test
    void photo() throws IOException {
        Files.write(folder.resolve("job/photos/blade.png"), png(0x993366));
        found("Picture changed: journal.jsonl line 6", "photos/blade.png is not there as it was kept");
    }

    @Test
    void sight() throws IOException {
        String before = shop.done("coverage", "job", "--json");
        for (String name : List.of("sight", "derived", "cache", "model/sight.bin")) {
            Path place = folder.resolve("job").resolve(name);
            Files.createDirectories(place.getParent());
            Files.write(place, new byte[] {1});
        }
        assertThat(shop.done("coverage", "job", "--json")).isEqualTo(before);
        assertThat(shop.done("verify", "job")).contains("signature 1: inspected by Ann", "nothing after it");
    }

    @Test
    void appendedVoids() {
        shop.done("log", "job", "void 4 because it was only dirt");
        Shop.Ran program = shop.program("", "verify", "job");
        assertThat(program.status()).isZero();
        assertThat(program.out()).contains("signature 1: inspected by Ann", "entries 1…6; 1 ENTRY AFTER IT; ");
        assertThat(shop.verified("job")).anyMatch(line -> line.contains("inspected by Ann, entries 1 to 6 of 7"));
        assertThat(shop.done("close", "job")).contains("entry 4");
    }

    @Test
    void times() throws IOException {
        resealed(4, line -> line.replace("\"at\":\"2026-05-14T06:00:00Z\"", "\"at\":\"2026-05-14T09:00:00Z\""));
        found("COUNTS FOR NOTHING: entry 6 is no longer the one that was signed", "signature 1 is of another journal");
    }

    @Test
    void theSignatureItself() throws IOException {
        Path file = folder.resolve("job/signatures/1.json");
        Files.writeString(file, Files.readString(file).replace("\"findings\":\"1\"", "\"findings\":\"0\""));
        found(
                "signature 1: COUNTS FOR NOTHING: it does not fit what it signs",
                "signature 1 does not fit what it signs");
    }
}
