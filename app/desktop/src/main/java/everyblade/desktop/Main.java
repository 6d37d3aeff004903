package everyblade.desktop;

import everyblade.cli.Commands;
import everyblade.record.LocalDisk;
import everyblade.session.around.PackedJobs;
import everyblade.session.around.Surroundings;
import everyblade.window.ScreenOpening;
import java.io.BufferedOutputStream;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Starts the program: hands the process's streams, clock and environment to the commands, and a screen to the window. */
public final class Main {

    private static final String HEADLESS = "java.awt.headless";

    private Main() {}

    public static void main(String[] arguments) {
        boolean left = System.getProperty(HEADLESS) == null;
        if (left) {
            System.setProperty(HEADLESS, "true"); // commands draw pictures on no screen, whatever DISPLAY says
        }
        System.setProperty("picocli.disable.closures", "true"); // else every jar is searched for a Groovy that none has
        System.setProperty("picocli.converters.excludes", "java[.](sql|time)[.].*"); // no option is of such a type
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
                environment(),
                Path.of(""),
                Optional.ofNullable(System.getProperty("everyblade.home")).map(Path::of),
                new LocalDisk(),
                new Person(isWatched(System.getProperty("everyblade.watched", ""))),
                new PackedJobs());
        // Whatever stops the program, such as Ctrl+C, what it unpacked for itself goes.
        Runtime.getRuntime().addShutdownHook(new Thread(around.packed()::close));
        ScreenOpening window = new ScreenOpening(Commands::run, () -> {
            if (left) {
                System.clearProperty(HEADLESS);
            }
        });
        System.exit(Commands.run(around, window, arguments));
    }

    /** The variables, and the system's language where none names another. */
    private static Map<String, String> environment() {
        Map<String, String> environment = new HashMap<>(System.getenv());
        environment.putIfAbsent(Surroundings.LANGUAGE, Locale.getDefault().toLanguageTag());
        return environment;
    }

    /** A launcher knows whether standard error is a terminal, which Java cannot ask, or leaves it to what Java can. */
    private static boolean isWatched(String told) {
        return told.equals("true") || told.equals("console") && System.console() != null;
    }

    /** @param watches whether a person sees standard error as it comes */
    private record Person(boolean watches) implements Surroundings.Terminal {

        @Override
        public Optional<char[]> secret(String prompt) {
            return Optional.ofNullable(System.console()).map(console -> console.readPassword("%s", prompt));
        }
    }

    private static PrintStream utf8(FileDescriptor file) {
        return new PrintStream(
                new BufferedOutputStream(new FileOutputStream(file), 1 << 16), false, StandardCharsets.UTF_8);
    }
}
