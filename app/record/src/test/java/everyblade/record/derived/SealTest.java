package everyblade.record.derived;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Random;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SealTest {

    private static final String NAME = "sight\nwhatever it depends on, ± in UTF-8";

    @TempDir
    Path folder;

    /** What Java's own HMAC-SHA-256 makes of name and content. */
    private byte[] expected(byte[] content) throws Exception {
        Mac mac = Mac.getInstance("HmacSHA256");
        mac.init(new SecretKeySpec(Files.readAllBytes(folder.resolve("seal.key")), "HmacSHA256"));
        byte[] name = NAME.getBytes(StandardCharsets.UTF_8);
        mac.update((name.length + " ").getBytes(StandardCharsets.US_ASCII));
        mac.update(name);
        return mac.doFinal(content);
    }

    @Test
    void isTheOneThatJavaItselfMakes() throws Exception {
        Seal seal = Seal.in(folder);
        Random random = new Random(4);
        for (int length : new int[] {0, 1, 31, 32, 55, 56, 63, 64, 65, 1000, 100_000}) {
            byte[] content = new byte[length];
            random.nextBytes(content);
            assertThat(seal.of(NAME, content)).as(length + " bytes").isEqualTo(expected(content));
        }
    }

    @Test
    void opensWhatItSealedUnderThisNameAndNothingElse() throws Exception {
        Seal seal = Seal.in(folder);
        byte[] content = {1, 2, 3};
        ByteArrayOutputStream sealed = new ByteArrayOutputStream();
        sealed.writeBytes(seal.of(NAME, content));
        sealed.writeBytes(content);
        byte[] changed = sealed.toByteArray();
        changed[changed.length - 1]++;

        assertThat(Seal.in(folder).opened(NAME, sealed.toByteArray()))
                .hasValueSatisfying(found -> assertThat(found).isEqualTo(content));
        assertThat(seal.opened("another", sealed.toByteArray())).isEmpty();
        assertThat(seal.opened(NAME, changed)).isEmpty();
        assertThat(seal.opened(NAME, Arrays.copyOf(changed, 5))).isEmpty();
    }
}
