package everyblade.session.around;

import everyblade.record.Disk;
import everyblade.record.derived.DerivedFiles;
import everyblade.record.derived.SeenHeads;
import everyblade.words.Words;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * All that a command sees of the world outside.
 *
 * @param in standard input, UTF-8
 * @param out standard output, UTF-8; flushed when a command ends
 * @param err standard error, UTF-8
 * @param clock what time it is
 * @param environment variables by name
 * @param folder relative paths are meant from here
 * @param home the folder that the program was installed in, with its {@code models}; empty if it runs from elsewhere
 * @param disk where jobs are
 * @param terminal asks the person who sits before it
 * @param packed jobs that are unpacked for as long as the program runs
 */
public record Surroundings(
        InputStream in,
        PrintStream out,
        PrintStream err,
        InstantSource clock,
        Map<String, String> environment,
        Path folder,
        Optional<Path> home,
        Disk disk,
        Terminal terminal,
        PackedJobs packed) {

    /** The variable that names the language, such as {@code de}. */
    public static final String LANGUAGE = "EVERYBLADE_LANG";

    /** What every zip begins with. */
    private static final byte[] ZIP = {'P', 'K'};

    /** Where nobody sits. */
    public Surroundings(
            InputStream in,
            PrintStream out,
            PrintStream err,
            InstantSource clock,
            Map<String, String> environment,
            Path folder,
            Optional<Path> home,
            Disk disk) {
        this(in, out, err, clock, environment, folder, home, disk, prompt -> Optional.empty(), new PackedJobs());
    }

    /** The same where people read this language. */
    public Surroundings speaking(Locale language) {
        Map<String, String> spoken = new HashMap<>(environment);
        spoken.put(LANGUAGE, language.toLanguageTag());
        return new Surroundings(in, out, err, clock, spoken, folder, home, disk, terminal, packed);
    }

    /** The same where nobody hears what is said. */
    public Surroundings unheard() {
        PrintStream nobody = new PrintStream(OutputStream.nullOutputStream());
        return new Surroundings(
                in,
                nobody,
                nobody,
                clock,
                environment,
                folder,
                home,
                disk,
                prompt -> Optional.empty(),
                new PackedJobs());
    }

    /** What is said, in the language of whoever reads it. */
    public Words words() {
        return Words.of(Locale.forLanguageTag(variable(LANGUAGE).orElse("en")));
    }

    /** Asks a person at a terminal, where there is one. */
    @FunctionalInterface
    public interface Terminal {

        /** What a person types without its being shown; empty if nobody can be asked. */
        Optional<char[]> secret(String prompt);

        /** Whether a person sees what goes to standard error as it comes. */
        default boolean watches() {
            return false;
        }
    }

    /** A path as it was named, from the folder. */
    public Path path(Path named) {
        return folder.resolve(named);
    }

    /** The folder of a job that is to be read; one that is packed is unpacked. */
    public Path job(Path named) {
        return isPacked(named) ? packed.folder(this, named) : path(named);
    }

    /** Whether a job is named that is no folder, so that nothing can be added to it. */
    public boolean isPacked(Path named) {
        return Files.isRegularFile(path(named));
    }

    /**
     * Whether a job is named and no engine model: a folder with a journal, whatever else is in it, or a zip; one that is called a
     * jar holds models.
     */
    public boolean isJob(Path named) {
        Path place = path(named);
        if (!isPacked(named)) {
            return Files.exists(place.resolve("journal.jsonl"));
        }
        if (place.toString().endsWith(".jar")) {
            return false;
        }
        try (InputStream begin = Files.newInputStream(place)) {
            return Arrays.equals(begin.readNBytes(ZIP.length), ZIP);
        } catch (IOException unreadable) {
            return false;
        }
    }

    /** A variable that is set and not empty. */
    public Optional<String> variable(String name) {
        return Optional.ofNullable(environment.get(name)).filter(value -> !value.isEmpty());
    }

    /** What this user's program computed before and may find again. */
    public DerivedFiles derived() {
        return derived(ProgramMark::of);
    }

    /** Which heads of journals this user's program has seen, of whatever version it was. */
    public SeenHeads seenHeads() {
        return new SeenHeads(derived(() -> "any version"));
    }

    private DerivedFiles derived(Supplier<String> program) {
        return UserFolders.cache(this)
                .map(cache -> DerivedFiles.in(cache, program))
                .orElseGet(DerivedFiles::none);
    }
}
