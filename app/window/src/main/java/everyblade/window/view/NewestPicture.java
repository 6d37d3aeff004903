package everyblade.window.view;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** Finds the picture that was put into a folder last, as a camera or a scope does. */
public final class NewestPicture {

    private NewestPicture() {}

    /** The name of the newest picture in a folder; empty if there is none, or the folder cannot be read. */
    public static Optional<String> in(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(NewestPicture::isPicture)
                    .max(Comparator.comparing(NewestPicture::changed).thenComparing(Path::toString))
                    .map(file -> file.getFileName().toString());
        } catch (IOException | UncheckedIOException unreadable) {
            return Optional.empty();
        }
    }

    private static boolean isPicture(Path file) {
        return Files.isRegularFile(file)
                && file.getFileName().toString().toLowerCase(Locale.ROOT).matches(".+\\.(jpe?g|png|tiff?|bmp|gif)");
    }

    private static FileTime changed(Path file) {
        try {
            return Files.getLastModifiedTime(file);
        } catch (IOException gone) {
            return FileTime.fromMillis(Long.MIN_VALUE);
        }
    }
}
