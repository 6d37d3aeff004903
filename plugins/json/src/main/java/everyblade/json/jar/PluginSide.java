package everyblade.json.jar;

import everyblade.spi.EngineModel;
import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;

/**
 * The other end of {@link OwnProcess}: lets the code in a jar speak, writes down what it hands over, and ends this
 * process at once, whatever threads and shutdown hooks the code has left.
 */
public final class PluginSide {

    private PluginSide() {}

    /**
     * Does not return.
     *
     * @param transcript where to write
     * @param data name of the file that its models could be
     * @param asText what it would say
     */
    public static void run(Path jar, Path transcript, String data, Function<EngineModel, byte[]> asText) {
        int status = 1;
        try (OutputStream out = Files.newOutputStream(transcript)) {
            endWithTheProgram();
            System.setIn(InputStream.nullInputStream());
            Transcript.begin(out);
            new JarReader(data, code -> {
                        handOver(code, data, asText, out);
                        return List.of();
                    })
                    .open(jar)
                    .forEach(one -> add(out, one));
            Transcript.end(out);
            status = 0;
        } catch (IOException | UncheckedIOException unwritable) {
            // what is missing in the transcript says so
        } finally {
            Runtime.getRuntime().halt(status);
        }
    }

    private static void handOver(CodeJar code, String data, Function<EngineModel, byte[]> asText, OutputStream out) {
        try {
            new Sources(code, data, asText, one -> add(out, one)).handOver();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static void add(OutputStream out, Handed one) {
        try {
            Transcript.add(out, one);
        } catch (IOException full) {
            throw new UncheckedIOException(full);
        }
    }

    /** Where the program is gone, standard input has an end, and nobody is left who would end endless code. */
    private static void endWithTheProgram() {
        Thread watch = new Thread(
                () -> {
                    try (InputStream in = new FileInputStream(FileDescriptor.in)) {
                        in.transferTo(OutputStream.nullOutputStream());
                    } catch (IOException gone) {
                        // that is what is waited for
                    }
                    Runtime.getRuntime().halt(1);
                },
                "program");
        watch.setDaemon(true);
        watch.start();
    }
}
