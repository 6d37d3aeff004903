package everyblade.record.photo;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PhotoNameTest {

    /** "Naming Files, Paths, and Namespaces", Windows: what no name may be before its first dot. */
    private static final Set<String> DEVICES =
            Set.of("CON", "PRN", "AUX", "NUL", "COM1", "COM9", "LPT1", "LPT9", "COM0", "LPT0");

    @ParameterizedTest
    @ValueSource(
            strings = {
                "IMG_0042.JPG",
                "blade 14, tip.png",
                "Schaufel-Ä.jpg",
                "ブレード.jpg",
                "شفرة.jpg",
                "console.jpg",
                "a.b.c",
                "x"
            })
    void aNameThatEverySystemCanHoldStays(String name) {
        assertThat(PhotoName.of(name)).isEqualTo(name);
    }

    @ParameterizedTest
    @CsvSource({
        "a:b?.jpg, a_b_.jpg",
        "con.jpg, _con.jpg",
        "Lpt1, _Lpt1",
        "'ends.', ends_",
        "'ends ', ends_",
        ".hidden, _.hidden",
        "'<html>.jpg', _html_.jpg",
        "a\u202egpj.exe, a_gpj.exe",
        "A\u0308.jpg, \u00c4.jpg",
        "x.part, x.part_"
    })
    void whatCannotBeInOneIsReplaced(String name, String kept) {
        assertThat(PhotoName.of(name)).isEqualTo(kept);
    }

    @Test
    void aLongOneKeepsItsEnding() {
        String name = "翼".repeat(120) + ".jpeg";
        assertThat(PhotoName.of(name)).startsWith("翼翼").endsWith("_.jpeg");
        assertThat(PhotoName.of(name).getBytes(StandardCharsets.UTF_8).length).isLessThanOrEqualTo(140);
    }

    @Test
    void whateverTheNameIsAnySystemCanHoldWhatComesOfItAndItIsChangedOnlyOnce() {
        SplittableRandom random = new SplittableRandom(14);
        String[] parts = {
            "CON",
            ".",
            " ",
            "a",
            "Ä",
            "A\u0308",
            ":",
            "*",
            "\u202e",
            "\u0000",
            "翼",
            "\ud83d\ude00",
            "\ud800",
            "/",
            "\\",
            ".part",
            "lpt1",
            "\u200b",
            "\n",
            "x".repeat(50),
            "\u2028",
            "com\u00b9"
        };
        for (int i = 0; i < 20_000; i++) {
            StringBuilder name = new StringBuilder();
            for (int length = random.nextInt(8); length > 0; length--) {
                name.append(parts[random.nextInt(parts.length)]);
            }
            String kept = PhotoName.of(name.toString());

            assertThat(kept)
                    .as("%s", name)
                    .isNotEmpty()
                    .doesNotContainPattern("[<>:\"/\\\\|?*\\p{Cntrl}\\p{Cf}]")
                    .doesNotEndWith(".")
                    .doesNotEndWith(" ")
                    .doesNotEndWith(".part")
                    .doesNotStartWith(".");
            assertThat(DEVICES).doesNotContain(kept.split("\\.")[0].strip().toUpperCase(java.util.Locale.ROOT));
            assertThat(Normalizer.isNormalized(kept, Normalizer.Form.NFC)).isTrue();
            assertThat(kept.getBytes(StandardCharsets.UTF_8).length).isLessThanOrEqualTo(140);
            assertThat(new String(kept.getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8))
                    .isEqualTo(kept);
            assertThat(PhotoName.of(kept)).isEqualTo(kept);
        }
    }
}
