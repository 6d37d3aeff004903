package everyblade.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class DemoPhotoTest {

    private static final Path DEMO = Path.of("src", "demo");
    private static final Pattern NAMED = Pattern.compile("\\bphoto (\\S+)");

    @Test
    void everyPictureThatTheDemoNamesIsThereAndSmall() throws IOException {
        List<String> names = Files.readAllLines(DEMO.resolve("entries.txt")).stream()
                .flatMap(line -> NAMED.matcher(line).results())
                .map(found -> found.group(1))
                .toList();

        assertThat(names).isNotEmpty();
        for (String name : names) {
            byte[] bytes = Files.readAllBytes(DEMO.resolve(name));
            assertThat(bytes).as(name).startsWith(0xff, 0xd8, 0xff).hasSizeLessThan(60_000);
        }
    }
}
