package everyblade.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The picture in the README is what the program draws of the demo job; the build with {@code -Prun} draws it anew. */
class ReadmePictureIT {

    @Test
    void isTheMapOfTheDemoJob() throws IOException, InterruptedException {
        Path runnable = Path.of(System.getProperty("everyblade.runnable"));
        Path drawn = Path.of("target", "readme-picture.svg");
        Process map = new ProcessBuilder(
                        runnable.resolve("bin/everyblade").toString(),
                        "map",
                        runnable.resolve("demo").toString(),
                        "--out",
                        drawn.toString())
                .inheritIO()
                .start();
        assertThat(map.waitFor()).isZero();
        assertThat(Files.readString(drawn))
                .as("app/picture/pictures/demo-map.svg; renew it with mvn -Prun and a copy of demo-map.svg")
                .isEqualTo(Files.readString(Path.of("..", "picture", "pictures", "demo-map.svg")));
    }
}
