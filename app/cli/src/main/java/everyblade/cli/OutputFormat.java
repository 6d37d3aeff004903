package everyblade.cli;

import everyblade.picture.paint.ScenePdf;
import everyblade.picture.paint.ScenePng;
import everyblade.picture.report.page.Pages;
import everyblade.picture.scene.Scene;
import everyblade.picture.scene.Theme;
import everyblade.picture.svg.SvgWriter;
import everyblade.session.around.Failure;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** The formats of files that commands write: how a name ends, and what writes drawings or pages in it. */
enum OutputFormat {
    SVG(".svg", Optional.of(OutputFormat::svg), Optional.empty()),
    PNG(".png", Optional.of(ScenePng::write), Optional.empty()),
    PDF(".pdf", Optional.of(ScenePdf::write), Optional.of(Pages::pdf)),
    HTML(".html", Optional.empty(), Optional.of(Pages::html)),
    /** Also by the ending that machines with the program installed know a packed job by. */
    ZIP(List.of(".zip", ".everyblade"), Optional.empty(), Optional.empty()),
    PKCS12(".p12", Optional.empty(), Optional.empty());

    private final List<String> suffixes;
    private final Optional<BiFunction<Scene, Theme, byte[]>> drawing;
    private final Optional<Function<Pages, byte[]>> printing;

    OutputFormat(
            String suffix,
            Optional<BiFunction<Scene, Theme, byte[]>> drawing,
            Optional<Function<Pages, byte[]>> printing) {
        this(List.of(suffix), drawing, printing);
    }

    OutputFormat(
            List<String> suffixes,
            Optional<BiFunction<Scene, Theme, byte[]>> drawing,
            Optional<Function<Pages, byte[]>> printing) {
        this.suffixes = suffixes;
        this.drawing = drawing;
        this.printing = printing;
    }

    private static byte[] svg(Scene scene, Theme theme) {
        return SvgWriter.write(scene, theme).getBytes(StandardCharsets.UTF_8);
    }

    /** The one in which a drawing of this name is written; refuses a name that says none. */
    static OutputFormat ofDrawing(String option, Path named) {
        return of(option, named, format -> format.drawing.isPresent());
    }

    /** The one in which pages of this name are written; refuses a name that says none. */
    static OutputFormat ofPages(String option, Path named) {
        return of(option, named, format -> format.printing.isPresent());
    }

    private static OutputFormat of(String option, Path named, Predicate<OutputFormat> can) {
        return Stream.of(values())
                .filter(can)
                .filter(format -> format.isOf(named))
                .findFirst()
                .orElseThrow(() -> Failure.of("stopped.outputFormat.notSaid", option, named, suffixes(can)));
    }

    private static List<String> suffixes(Predicate<OutputFormat> can) {
        return Stream.of(values())
                .filter(can)
                .flatMap(format -> format.suffixes.stream())
                .toList();
    }

    /** Refuses a file whose name says another one. */
    void require(String option, Path named) {
        if (!isOf(named)) {
            throw Failure.of("stopped.outputFormat.another", option, named, this, suffixes);
        }
    }

    private boolean isOf(Path named) {
        String name = named.toString().toLowerCase(Locale.ROOT);
        return suffixes.stream().anyMatch(name::endsWith);
    }

    /** A scene in a format of drawings. */
    byte[] draw(Scene scene, Theme theme) {
        return drawing.orElseThrow().apply(scene, theme);
    }

    /** Pages in a format of pages. */
    byte[] print(Pages pages) {
        return printing.orElseThrow().apply(pages);
    }

    /** What names of drawings may end with, for the help of commands. */
    static final class Drawings implements Iterable<String> {

        @Override
        public Iterator<String> iterator() {
            return suffixes(format -> format.drawing.isPresent()).iterator();
        }
    }

    /** What names of pages may end with, for the help of commands. */
    static final class Printed implements Iterable<String> {

        @Override
        public Iterator<String> iterator() {
            return suffixes(format -> format.printing.isPresent()).iterator();
        }
    }
}
