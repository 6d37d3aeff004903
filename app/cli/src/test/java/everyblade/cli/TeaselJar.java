package everyblade.cli;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import teasel.TeaselFan;

/** The engine model in code that comes with the program, as a jar; before it is packaged, one is made of its classes. */
final class TeaselJar {

    private TeaselJar() {}

    static Path copiedTo(Path jar) throws IOException {
        Files.createDirectories(jar.getParent());
        Path built = built();
        if (Files.isRegularFile(built)) {
            return Files.copy(built, jar);
        }
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(jar));
                Stream<Path> files = Files.walk(built)) {
            List<Path> entries = files.filter(Files::isRegularFile).sorted().toList();
            for (Path entry : entries) {
                zip.putNextEntry(new ZipEntry(built.relativize(entry).toString().replace('\\', '/')));
                zip.write(Files.readAllBytes(entry));
            }
        }
        return jar;
    }

    private static Path built() {
        try {
            return Path.of(TeaselFan.class
                    .getProtectionDomain()
                    .getCodeSource()
                    .getLocation()
                    .toURI());
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }
}
