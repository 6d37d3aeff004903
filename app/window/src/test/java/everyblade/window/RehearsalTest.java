package everyblade.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is loaded by name for a quick start, because only a display would have it loaded. */
class RehearsalTest {

    private static List<String> names() throws IOException {
        try (InputStream file = Rehearsal.class.getResourceAsStream("on-screen.txt")) {
            return new String(file.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .toList();
        }
    }

    @Test
    void eachIsNamedOnceInOrder() throws IOException {
        assertThat(names()).isSorted().doesNotHaveDuplicates().contains("javax.swing.JFrame");
    }

    /** Those of Java are other ones elsewhere; ours and those of libraries are here, or nobody looked since one was renamed. */
    @Test
    void thoseThatAreNotOfJavaAreThere() throws IOException {
        assertThat(names())
                .filteredOn(name -> name.startsWith("everyblade.") || name.startsWith("com.formdev."))
                .isNotEmpty()
                .allSatisfy(name -> assertThatCode(() -> Class.forName(name, false, Rehearsal.class.getClassLoader()))
                        .doesNotThrowAnyException());
    }
}
