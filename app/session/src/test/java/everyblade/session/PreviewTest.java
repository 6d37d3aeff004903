package everyblade.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PreviewTest {

    @TempDir
    Path folder;

    private Workshop workshop;
    private Session session;

    @BeforeEach
    void open() {
        workshop = Workshop.in(folder);
        session = workshop.counting();
    }

    @AfterEach
    void close() {
        session.close();
    }

    private Preview of(String typed) {
        return Preview.of(session.state(), typed, Workshop.NOW, Workshop.ENGLISH);
    }

    private Preview.Will will(String typed) {
        assertThat(of(typed)).isInstanceOf(Preview.Will.class);
        return (Preview.Will) of(typed);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "turn on 60 | watched: +60° (2 blades), shaft then at 60° | blade 11 of r at the reference, ± 1°",
                "60 | watched: +60° (2 blades), shaft then at 60° | blade 11 of r at the reference, ± 1°",
                "skip back 1 blades | not watched: −30° (1 blades), shaft then at 330° | blade 2 of r at the reference, ± 0°",
                "view p-v | looking through p-v at Vanes; watching everything | it is not known which of the vanes is at the reference",
            })
    void tellsTheAngleAndTheBladeThatWillBeReached(String typed, String effect, String standing) {
        assertThat(will(typed).effects()).containsExactly(effect, standing);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "watch tip | watching tip from now on",
                "in | the scope tip is among the blades; turning is barred",
                "heat 140 F | metal at 60 °C",
                "look | watched at rest",
                "out | the scope is out; nothing is watched until the next view",
                "ask r tip | of row r the task now asks only for tip; no longer for root",
                "turn on 180 tooldeg | watched: +180° (6 blades), shaft then at 180°",
                "void 3 because wrong | entry 3 will not count",
                "note a word | is kept as it is said"
            })
    void tellsWhatEveryOtherEntryWillDo(String typed, String effect) {
        assertThat(will(typed).effects()).contains(effect);
    }

    @Test
    void tellsTheCountErrorThatAnIdentificationWillFind() {
        session.say("turn on 31 ± 2");

        assertThat(will("here 12").effects()).anyMatch(line -> line.startsWith("count less seen: +1°"));
    }

    @Test
    void tellsWhyALineWillBeRefused() {
        session.say("in");

        assertThat(of("turn on 3"))
                .isInstanceOfSatisfying(
                        Preview.Not.class, not -> assertThat(not.message()).contains("among the"));
    }

    @Test
    void saysNothingOfABlankLine() {
        assertThat(of("  ")).isInstanceOf(Preview.Empty.class);
    }

    @Test
    void writesNothing() {
        of("turn on 60");
        of("void 3 because wrong");

        assertThat(workshop.kept()).hasSize(3);
        assertThat(session.state().fold().entries()).hasSize(3);
    }

    @Test
    void writesNumbersAsThePersonDoes() {
        Preview preview = Preview.of(
                session.state(), "turn on 12,5", Workshop.NOW, everyblade.words.Words.of(java.util.Locale.GERMAN));

        assertThat(((Preview.Will) preview).effects()).first().asString().startsWith("angesehen: +12,5°");
    }
}
