package everyblade.record.photo;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.record.English;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PhotoFileTest {

    private static PhotoFacts facts(byte[] bytes) {
        assertThat(PhotoFile.look(bytes)).isInstanceOf(PhotoFile.Sound.class);
        return ((PhotoFile.Sound) PhotoFile.look(bytes)).facts();
    }

    private static String whyNot(byte[] bytes) {
        assertThat(PhotoFile.look(bytes)).isInstanceOf(PhotoFile.Refused.class);
        return English.said(((PhotoFile.Refused) PhotoFile.look(bytes)).why());
    }

    @Nested
    class APicture {

        @Test
        void saysItsTypeAndSize() {
            assertThat(facts(CameraPicture.png(0x112233)))
                    .isEqualTo(new PhotoFacts("png", 16, 12, 1, Optional.empty()));
            assertThat(facts(CameraPicture.encoded(CameraPicture.drawn(64, 48, 5), "jpeg")))
                    .isEqualTo(new PhotoFacts("jpeg", 64, 48, 1, Optional.empty()));
        }

        @Test
        void saysWhenItWasTakenAndHowItWasHeld() {
            assertThat(facts(CameraPicture.jpeg(6, "2026:05:14 06:27:15", "")))
                    .isEqualTo(new PhotoFacts("jpeg", 64, 48, 6, Optional.of("2026-05-14T06:27:15")));
            assertThat(facts(CameraPicture.jpeg(1, "2026:05:14 08:27:15", "+02:00"))
                            .taken())
                    .contains("2026-05-14T08:27:15+02:00");
        }

        @ParameterizedTest
        @ValueSource(
                strings = {"", "2026:02:30 06:27:15", "0000:00:00 00:00:00", "    :  :     :  :  ", "yesterday at noon!"
                })
        void thatSaysNoTimeSaysNone(String taken) {
            assertThat(facts(CameraPicture.jpeg(1, taken, "+02:00")).taken()).isEmpty();
        }

        @ParameterizedTest
        @ValueSource(ints = {0, 9, 255, 65535})
        void thatWasHeldInNoWayThereIsIsTakenAsUpright(int orientation) {
            assertThat(facts(CameraPicture.jpeg(orientation, "", "")).orientation())
                    .isEqualTo(1);
        }
    }

    @Nested
    class ADamagedPicture {

        private static final byte[] JPEG = CameraPicture.encoded(CameraPicture.drawn(640, 480, 5), "jpeg");
        private static final byte[] PNG = CameraPicture.encoded(CameraPicture.drawn(640, 480, 5), "png");

        private static Optional<String> damage(byte[] bytes) {
            return PhotoFile.look(bytes) instanceof PhotoFile.Sound sound
                    ? sound.damage().map(English::said)
                    : Optional.of(English.said(((PhotoFile.Refused) PhotoFile.look(bytes)).why()));
        }

        @Test
        void isToldFromASoundOne() {
            assertThat(damage(JPEG)).isEmpty();
            assertThat(damage(PNG)).isEmpty();
            assertThat(damage(CameraPicture.jpeg(6, "2026:05:14 06:27:15", "+02:00")))
                    .isEmpty();
        }

        @Test
        void isToldToBeCutOffWhereverThatIs() {
            for (byte[] whole : new byte[][] {JPEG, PNG}) {
                for (int length = 1; length < whole.length; length += Math.max(1, whole.length / 97)) {
                    assertThat(damage(Arrays.copyOf(whole, length)))
                            .as("%d of %d bytes", length, whole.length)
                            .isPresent();
                }
                assertThat(damage(Arrays.copyOf(whole, whole.length - 1))).isPresent();
            }
        }

        @Test
        void thatOnlyLostItsEndIsStillAPicture() {
            assertThat(PhotoFile.look(Arrays.copyOf(JPEG, JPEG.length / 2)))
                    .isInstanceOfSatisfying(
                            PhotoFile.Sound.class,
                            sound -> assertThat(sound.damage().map(English::said))
                                    .hasValueSatisfying(why -> assertThat(why).contains("cut off")));
        }

        @Test
        void isToldWhereItsPixelsCannotBeDecoded() {
            byte[] holed = JPEG.clone();
            Arrays.fill(holed, holed.length / 2, holed.length / 2 + 64, (byte) 0x55);
            assertThat(damage(holed)).isPresent();
            byte[] flipped = PNG.clone();
            flipped[flipped.length / 2] ^= 1;
            assertThat(damage(flipped)).isPresent();
        }

        @Test
        void isNoneForWhatStandsBehindItsEnd() {
            assertThat(damage(Arrays.copyOf(JPEG, JPEG.length + 100))).isEmpty();
            assertThat(damage(Arrays.copyOf(PNG, PNG.length + 100))).isEmpty();
        }
    }

    @Nested
    class HostileFiles {

        @Test
        void ofOtherTypesAreRefusedWhateverTheirNames() {
            for (String begin :
                    new String[] {"", "picture", "GIF89a", "%PDF-1.7", "<svg>", "MZ", "PK\u0003\u0004", "II*\0"}) {
                byte[] bytes = Arrays.copyOf(begin.getBytes(StandardCharsets.US_ASCII), begin.isEmpty() ? 0 : 5000);
                assertThat(whyNot(bytes)).contains(begin.isEmpty() ? "empty" : "no JPEG or PNG");
            }
        }

        @Test
        void thatAreTooLargeAreRefusedUnread() {
            assertThat(whyNot(new byte[PhotoFile.LARGEST + 1])).contains("larger than 64 MB");
        }

        /** A few kilobytes that would unfold to 3.6 thousand million pixels. */
        @Test
        void thatUnfoldToMorePixelsThanAScopeHasAreRefusedUndecoded() throws Exception {
            assertThat(whyNot(blankPng(60_000, 60_000, 0))).contains("60000 by 60000 pixels");
            assertThat(whyNot(blankPng(19_000, 19_000, 0))).contains("pixels");
            assertThat(whyNot(blankPng(1, 2_000_000_000, 0))).contains("pixels");
            assertThat(whyNot(blankPng(-5, 40, 0))).contains("no JPEG or PNG");
        }

        /** What is written about a picture is not unfolded at all: 200 MB of text in 200 kB do no harm. */
        @Test
        void thatHideBombsInTheirTextsAreNotUnfolded() throws Exception {
            byte[] bomb = blankPng(40, 30, 200_000_000);

            assertThat(bomb.length).isLessThan(400_000);
            assertThat(facts(bomb).width()).isEqualTo(40);
        }

        @Test
        void thatAreGoneOverThousandsOfTimesAreRefused() {
            byte[] jpeg = CameraPicture.encoded(CameraPicture.drawn(64, 48, 5), "jpeg");
            ByteArrayOutputStream many = new ByteArrayOutputStream();
            many.write(jpeg, 0, jpeg.length - 2);
            byte[] scan = {(byte) 0xff, (byte) 0xda, 0, 8, 1, 1, 0, 0, 0, 0, 1, 2, 3};
            for (int i = 0; i < 5000; i++) {
                many.writeBytes(scan);
            }
            many.write(jpeg, jpeg.length - 2, 2);

            assertThat(whyNot(many.toByteArray())).contains("passes");
        }

        @Test
        void areAnsweredHoweverTheyAreDamaged() {
            SplittableRandom random = new SplittableRandom(20260514);
            byte[][] sound = {CameraPicture.jpeg(6, "2026:05:14 06:27:15", "+02:00"), CameraPicture.png(77)};
            int refused = 0;
            for (int i = 0; i < 2000; i++) {
                byte[] bytes = sound[i % 2].clone();
                int hits = random.nextInt(1, 8);
                for (int hit = 0; hit < hits; hit++) {
                    bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
                }
                byte[] cut = random.nextInt(4) == 0 ? Arrays.copyOf(bytes, random.nextInt(bytes.length)) : bytes;
                refused += PhotoFile.look(cut) instanceof PhotoFile.Refused ? 1 : 0;
            }
            assertThat(refused).isBetween(200, 1999);
        }

        private static byte[] blankPng(int width, int height, int text) throws Exception {
            ByteArrayOutputStream png = new ByteArrayOutputStream();
            png.writeBytes(new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'});
            png.writeBytes(chunk(
                    "IHDR",
                    ByteBuffer.allocate(13)
                            .putInt(width)
                            .putInt(height)
                            .put((byte) 8)
                            .array()));
            if (text > 0) {
                ByteArrayOutputStream words = new ByteArrayOutputStream();
                words.writeBytes(new byte[] {'k', 0, 0});
                words.writeBytes(zeros(text));
                png.writeBytes(chunk("zTXt", words.toByteArray()));
            }
            png.writeBytes(chunk("IDAT", zeros(Math.min(5_000_000L, (long) height * (width + 1)))));
            png.writeBytes(chunk("IEND", new byte[0]));
            return png.toByteArray();
        }

        private static byte[] zeros(long count) throws Exception {
            ByteArrayOutputStream packed = new ByteArrayOutputStream();
            try (DeflaterOutputStream out = new DeflaterOutputStream(packed, new Deflater(9))) {
                byte[] block = new byte[100_000];
                for (long left = count; left > 0; left -= block.length) {
                    out.write(block, 0, (int) Math.min(left, block.length));
                }
            }
            return packed.toByteArray();
        }

        private static byte[] chunk(String name, byte[] data) {
            byte[] type = name.getBytes(StandardCharsets.US_ASCII);
            CRC32 crc = new CRC32();
            crc.update(type);
            crc.update(data);
            return ByteBuffer.allocate(12 + data.length)
                    .putInt(data.length)
                    .put(type)
                    .put(data)
                    .putInt((int) crc.getValue())
                    .array();
        }
    }

    @Nested
    class ASmallCopy {

        private static BufferedImage small(byte[] bytes, int orientation) {
            return Thumbnail.of(bytes, 40, orientation).orElseThrow();
        }

        @Test
        void fitsIntoItsSquareAndIsNeverEnlarged() {
            byte[] large = CameraPicture.encoded(CameraPicture.drawn(1000, 500, 7), "png");

            assertThat(small(large, 1).getWidth()).isEqualTo(40);
            assertThat(small(large, 1).getHeight()).isEqualTo(20);
            assertThat(small(CameraPicture.png(7), 1).getWidth()).isEqualTo(16);
        }

        /** EXIF 2.32, tag 0x0112: in which corner of the upright picture the stored upper left one lies. */
        @ParameterizedTest
        @CsvSource({"1, 0, 0", "2, 1, 0", "3, 1, 1", "4, 0, 1", "5, 0, 0", "6, 1, 0", "7, 1, 1", "8, 0, 1"})
        void isUpright(int orientation, int right, int bottom) {
            byte[] stored = CameraPicture.encoded(CameraPicture.drawn(80, 60, 0xff0000), "png");

            BufferedImage upright = small(stored, orientation);

            assertThat(upright.getWidth() > upright.getHeight()).isEqualTo(orientation <= 4);
            for (int x = 0; x < 2; x++) {
                for (int y = 0; y < 2; y++) {
                    int red =
                            upright.getRGB(upright.getWidth() * (1 + 2 * x) / 4, upright.getHeight() * (1 + 2 * y) / 4)
                                            >> 16
                                    & 0xff;
                    assertThat(red > 128).isEqualTo(x == right && y == bottom);
                }
            }
        }
    }
}
