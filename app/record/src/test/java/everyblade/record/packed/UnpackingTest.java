package everyblade.record.packed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.fail;

import everyblade.record.English;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A zip that somebody else made. */
class UnpackingTest {

    private static final int NAME_OF_CENTRAL = 46;

    @TempDir
    Path temporary;

    private final Map<String, byte[]> files = new LinkedHashMap<>();

    @BeforeEach
    void ofAJob() {
        files.put("journal.jsonl", "{}\n".repeat(500).getBytes(StandardCharsets.US_ASCII));
        files.put("model/engine.json", "{}".getBytes(StandardCharsets.US_ASCII));
    }

    private byte[] zip() {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (var file : files.entrySet()) {
                zip.putNextEntry(new ZipEntry(file.getKey()));
                zip.write(file.getValue());
                zip.closeEntry();
            }
        } catch (IOException impossible) {
            throw new AssertionError(impossible);
        }
        return bytes.toByteArray();
    }

    /** What is unpacked, by name. */
    private Map<String, byte[]> unpacked(byte[] zip) throws IOException, UnfitZip {
        Path folder = Files.createTempDirectory(temporary, "into");
        Unpacking.into(folder, Files.write(temporary.resolve("job.zip"), zip));
        Map<String, byte[]> all = new LinkedHashMap<>();
        try (Stream<Path> paths = Files.walk(folder)) {
            for (Path path : paths.filter(Files::isRegularFile).sorted().toList()) {
                all.put(folder.relativize(path).toString().replace('\\', '/'), Files.readAllBytes(path));
            }
        }
        return all;
    }

    private void refused(byte[] zip, String why) throws IOException {
        assertThatThrownBy(() -> unpacked(zip))
                .isInstanceOfSatisfying(
                        UnfitZip.class,
                        unfit -> assertThat(English.said(unfit.why())).contains(why));
        try (Stream<Path> paths = Files.walk(temporary)) {
            assertThat(paths.filter(Files::isRegularFile)
                            .map(path -> path.getFileName().toString()))
                    .as("judged before anything is written")
                    .containsExactly("job.zip");
        }
    }

    @Test
    void byAnotherPackerIsUnpacked() throws Exception {
        files.put("photos/", new byte[0]);
        files.put("photos/Blätter 1.png", new byte[] {1, 2, 3});
        assertThat(unpacked(zip())).containsOnlyKeys("journal.jsonl", "model/engine.json", "photos/Blätter 1.png");
        assertThat(unpacked(zip()).get("journal.jsonl")).isEqualTo(files.get("journal.jsonl"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "../outside", "photos/../../outside", "/outside", "C:/outside", "photos\\..\\outside", "notes.txt",
                "photos/a/b.png", "photos/..", "model/engine.json/x", "photos/x\u0007.png", "photos/CON:", "x/",
                "writer.lock", "../", "previous/previous/journal.jsonl", "signatures/0.json", "photos/a.png "
            })
    void withANameThatAJobDoesNotHaveIsRefused(String name) throws IOException {
        files.put(name, new byte[] {1});
        refused(zip(), "in it is no file of a job");
    }

    @Test
    void withANameTwiceIsRefused() throws IOException {
        files.put("photos/a.png", new byte[] {1});
        files.put("photos/A.png", new byte[] {1});
        refused(zip(), "is in it twice");
    }

    @Test
    void withoutAJournalIsRefused() throws IOException {
        files.remove("journal.jsonl");
        refused(zip(), "there is no journal.jsonl in it");
    }

    @Test
    void thatSwellsIsRefused() throws IOException {
        files.put("photos/a.png", new byte[20 << 20]);
        refused(zip(), "\"photos/a.png\" in it would be 20 MB");
    }

    @Test
    void thatSaysItIsSmallerThanItIsWritesNoMoreThanItSays() throws IOException {
        files.put("photos/a.png", new byte[20 << 20]);
        byte[] zip = zip();
        little(zip).putInt(central(zip, "photos/a.png") + 24, 1000);
        assertThatThrownBy(() -> unpacked(zip))
                .isInstanceOfSatisfying(
                        UnfitZip.class,
                        unfit -> assertThat(English.said(unfit.why())).contains("damaged"));
        try (Stream<Path> paths = Files.walk(temporary)) {
            assertThat(paths.filter(path -> path.endsWith("a.png")))
                    .singleElement()
                    .satisfies(path -> assertThat(path.toFile().length()).isLessThan(1 << 18));
        }
    }

    @Test
    void withALinkIsRefused() throws IOException {
        files.put("photos/a.png", "/etc/hostname".getBytes(StandardCharsets.US_ASCII));
        byte[] zip = zip();
        little(zip).putInt(central(zip, "photos/a.png") + 38, 0xa1ff << 16);
        refused(zip, "\"photos/a.png\" in it is a link");
    }

    @Test
    void whoseFilesShareTheirBytesIsRefused() throws IOException {
        files.put("photos/a.png", new byte[] {1, 2, 3});
        files.put("photos/b.png", new byte[] {1, 2, 3});
        byte[] zip = zip();
        int a = central(zip, "photos/a.png");
        int b = central(zip, "photos/b.png");
        little(zip).putInt(b + 42, little(zip).getInt(a + 42));
        zip[b + NAME_OF_CENTRAL + 7] = 'a';
        refused(zip, "its files overlap");
    }

    @Test
    void thatIsEncryptedIsRefused() throws IOException {
        byte[] zip = zip();
        zip[central(zip, "journal.jsonl") + 8] |= 1;
        refused(zip, "it is encrypted");
    }

    @Test
    void thatIsCutShortAnywhereIsRefused() throws IOException {
        byte[] whole = zip();
        for (int length = 0; length < whole.length; length += 5) {
            byte[] cut = Arrays.copyOf(whole, length);
            assertThatThrownBy(() -> unpacked(cut)).isInstanceOf(UnfitZip.class);
        }
    }

    @Test
    void withAByteChangedIsRefusedOrHoldsTheSame() throws IOException {
        byte[] whole = zip();
        for (int at = 0; at < whole.length; at += 3) {
            byte[] changed = whole.clone();
            changed[at] ^= 0x10;
            try {
                assertThat(unpacked(changed).get("journal.jsonl")).isEqualTo(files.get("journal.jsonl"));
            } catch (UnfitZip refused) {
                assertThat(English.said(refused.why())).isNotEmpty().doesNotContain("\n");
            } catch (RuntimeException fault) {
                fail("byte " + at, fault);
            }
        }
    }

    private static ByteBuffer little(byte[] zip) {
        return ByteBuffer.wrap(zip).order(ByteOrder.LITTLE_ENDIAN);
    }

    private static int central(byte[] zip, String name) {
        byte[] wanted = name.getBytes(StandardCharsets.UTF_8);
        for (int at = zip.length - NAME_OF_CENTRAL; at >= 0; at--) {
            boolean header = zip[at] == 'P' && zip[at + 1] == 'K' && zip[at + 2] == 1 && zip[at + 3] == 2;
            int from = at + NAME_OF_CENTRAL;
            if (header && Arrays.equals(zip, from, from + wanted.length, wanted, 0, wanted.length)) {
                return at;
            }
        }
        throw new AssertionError(name);
    }
}
