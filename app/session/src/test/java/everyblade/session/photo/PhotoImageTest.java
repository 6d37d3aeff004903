package everyblade.session.photo;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.record.KeptPhoto;
import everyblade.record.photo.PhotoFacts;
import everyblade.record.photo.PhotoFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PhotoImageTest {

    @TempDir
    Path job;

    private KeptPhoto keep(byte[] bytes) throws Exception {
        Files.createDirectories(job.resolve("photos"));
        Files.write(job.resolve("photos/one.jpg"), bytes);
        PhotoFacts facts = ((PhotoFile.Sound) PhotoFile.look(bytes)).facts();
        String hash =
                HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        return new KeptPhoto("one.jpg", hash, bytes.length, facts);
    }

    @ParameterizedTest
    @CsvSource({"1, 64, 48, 8, 8", "3, 64, 48, 56, 40", "6, 48, 64, 40, 8", "8, 48, 64, 8, 56"})
    void standsUprightHoweverTheCameraWasHeld(int orientation, int width, int height, int redX, int redY)
            throws Exception {
        PhotoImage upright =
                PhotoImage.of(job, keep(CameraPicture.jpeg(orientation, ""))).orElseThrow();

        assertThat(upright.width()).isEqualTo(width).isEqualTo(upright.image().getWidth());
        assertThat(upright.height()).isEqualTo(height).isEqualTo(upright.image().getHeight());
        assertThat(upright.image().getRGB(redX, redY) >> 16 & 0xff).isGreaterThan(200);
        assertThat(upright.image().getRGB(width - redX, height - redY) >> 16 & 0xff)
                .isLessThan(50);
    }

    @Test
    void isNotShownOnceTheFileIsNoLongerTheOneThatWasKept() throws Exception {
        KeptPhoto kept = keep(CameraPicture.jpeg(1, ""));
        Files.write(job.resolve("photos/one.jpg"), CameraPicture.jpeg(3, ""));

        assertThat(PhotoImage.of(job, kept)).isEmpty();
    }

    @Test
    void isNotShownIfItIsNotThere() throws Exception {
        KeptPhoto kept = keep(CameraPicture.jpeg(1, ""));
        Files.delete(job.resolve("photos/one.jpg"));

        assertThat(PhotoImage.of(job, kept)).isEqualTo(Optional.empty());
    }

    @Test
    void isNotDecodedIfItsHeaderClaimsMorePixelsThanACameraHas() throws Exception {
        byte[] bomb = CameraPicture.jpeg(1, "");
        KeptPhoto kept = keep(bomb);
        int frame = frame(bomb);
        bomb[frame + 5] = (byte) 0xff;
        bomb[frame + 7] = (byte) 0xff;
        Files.write(job.resolve("photos/one.jpg"), bomb);
        String hash =
                HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bomb));

        assertThat(PhotoFile.look(bomb)).isInstanceOf(PhotoFile.Refused.class);
        assertThat(PhotoImage.of(job, new KeptPhoto("one.jpg", hash, bomb.length, kept.facts())))
                .isEmpty();
    }

    /** Where the frame begins that says how large the picture is (ITU-T T.81, B.2.2). */
    private static int frame(byte[] jpeg) throws IOException {
        for (int i = 0; i + 1 < jpeg.length; i++) {
            if (jpeg[i] == (byte) 0xff && jpeg[i + 1] == (byte) 0xc0) {
                return i;
            }
        }
        throw new IOException("there is no frame");
    }
}
