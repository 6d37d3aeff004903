package everyblade.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import everyblade.session.around.Failure;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OutputFormatTest {

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({"map.svg, SVG", "MAP.Png, PNG", "a.svg.pdf, PDF"})
    void aNameSaysInWhichFormatADrawingIsWritten(Path named, OutputFormat format) {
        assertThat(OutputFormat.ofDrawing("--out", named)).isEqualTo(format);
    }

    @Test
    void onlyWhatCanBeWrittenInAFormatIs() {
        assertThat(OutputFormat.ofPages("--out", Path.of("r.html"))).isEqualTo(OutputFormat.HTML);
        assertThatThrownBy(() -> OutputFormat.ofDrawing("--out", Path.of("m.html")))
                .isInstanceOf(Failure.class)
                .hasMessage("--out m.html: it is not said what kind of file this is; end the name with .svg, .png or"
                        + " .pdf");
        assertThatThrownBy(() -> OutputFormat.ofPages("--out", Path.of("r.png")))
                .hasMessage("--out r.png: it is not said what kind of file this is; end the name with .pdf or .html");
    }

    @Test
    void aFileOfOneKindIsCalledWhatItIs() {
        OutputFormat.ZIP.require("--out", Path.of("JOB.ZIP"));
        OutputFormat.ZIP.require("--out", Path.of("job.everyblade"));
        assertThatThrownBy(() -> OutputFormat.ZIP.require("--out", Path.of("job.pdf")))
                .hasMessage("--out job.pdf: what is written is a zip; end the name with .zip or .everyblade");
    }

    @Test
    void helpTellsTheFormats() {
        Console console = Console.in(folder);
        for (String command : List.of("map", "show", "picture")) {
            assertThat(console.run(command, "--help").out())
                    .as(command)
                    .contains("the file to write: .svg, .png, .pdf");
        }
        assertThat(console.run("report", "--help").out()).contains(".pdf, .html");
    }
}
