package everyblade.desktop;

import everyblade.desktop.command.Commands;
import everyblade.desktop.command.Surroundings;
import everyblade.record.LocalDisk;
import java.io.BufferedOutputStream;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.Optional;

/** Starts the program: hands the process's streams, clock and environment to the commands. */
public final class Main {

    private Main() {}

    public static void main(String[] arguments) {
        System.setProperty("java.awt.headless", "true"); // pictures are drawn, no window is opened
        // Whatever the locale, text is UTF-8.
        PrintStream out = utf8(FileDescriptor.out);
        PrintStream err = utf8(FileDescriptor.err);
        System.setOut(out);
        System.setErr(err);
        Surroundings around = new Surroundings(
                System.in,
                out,
                err,
                InstantSource.system(),
                System.getenv(),
                Path.of(""),
                Optional.ofNullable(System.getProperty("everyblade.home")).map(Path::of),
                new LocalDisk());
        System.exit(Commands.run(around, arguments));
    }

    private static PrintStream utf8(FileDescriptor file) {
        return new PrintStream(
                new BufferedOutputStream(new FileOutputStream(file), 1 << 16), false, StandardCharsets.UTF_8);
    }
}
