package everyblade.cli;

import static org.assertj.core.api.Assertions.assertThat;

import everyblade.cli.Console.Ran;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** What is wrong with a picture is told when its entry is kept, and again on the page that shows it. */
class OddPicturesTest {

    @TempDir
    Path folder;

    private Console console;

    @BeforeEach
    void aJob() {
        console = Console.in(folder);
        console.job("view p-r", "datum r 1");
    }

    private static byte[] jpeg() throws IOException {
        BufferedImage image = new BufferedImage(640, 480, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        for (int i = 0; i < 64; i++) {
            g.setColor(new Color(i * 4, 255 - i * 3, i * 7 % 256));
            g.fillOval(i * 9, i * 7, 40, 30);
        }
        g.dispose();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(image, "jpeg", out);
        return out.toByteArray();
    }

    private String report() throws IOException {
        assertThat(console.run("report", "job", "--out", "r.pdf").status()).isZero();
        try (PDDocument document = Loader.loadPDF(folder.resolve("r.pdf").toFile())) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }

    @Test
    void oneThatIsCutOffIsKeptAndToldAtTheEntryAndInTheReport() throws IOException {
        byte[] whole = jpeg();
        console.write("whole.jpg", whole);
        console.write("cut.jpg", Arrays.copyOf(whole, whole.length / 2));

        assertThat(console.run("log", "job", "photo whole.jpg of 3").err()).isEmpty();
        assertThat(report()).contains("whole.jpg").doesNotContain("cut off");
        Ran ran = console.run("log", "job", "photo cut.jpg of 3");

        assertThat(ran.status()).isZero();
        assertThat(ran.err()).startsWith("entry 4: the picture is kept, but it is cut off or damaged");
        assertThat(report()).contains("cut.jpg, entry 4 it is cut off or damaged");
    }

    @Test
    @DisabledOnOs(OS.WINDOWS) // which cannot hold the first name
    void oneWhoseNameNotEverySystemCanHoldIsKeptUnderAnotherAndFoundByBoth() throws IOException {
        console.write("tip? 14.jpg", jpeg());

        Ran ran = console.run("log", "job", "photo \"tip? 14.jpg\" of 3");

        assertThat(ran.status()).as(ran.err()).isZero();
        assertThat(ran.err())
                .isEqualTo("entry 3: its name cannot be held by every system, so the picture is kept as tip_ 14.jpg\n");
        assertThat(Files.exists(folder.resolve("job/photos/tip_ 14.jpg"))).isTrue();
        assertThat(console.journal().get(3)).contains("tip? 14.jpg", "\"file\":\"tip_ 14.jpg\"");
        assertThat(console.run("verify", "job").status()).isZero();
        assertThat(console.run("photos", "job").out()).contains("tip_ 14.jpg");
    }
}
