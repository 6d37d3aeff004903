package everyblade.json.jar;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * Runs the code in a jar in a process of its own, and takes nothing from it but a {@link Transcript}: whether it ends the
 * process, never ends, starts threads, changes the locale or fills the memory, the program goes on as before. The process
 * is a Java like this one with 512 MB for all that Java counts, no streams, none of the environment but the character set
 * of file names, and its working directory is an empty folder that is deleted with everything in it.
 *
 * <p>That keeps mistakes from spreading. It is no wall against malice: the process may do what the user may do.
 *
 * @param main its {@code main} takes the jar and the transcript, and does {@link PluginSide#run}
 * @param sees classes of each jar or folder of classes that {@code main} needs
 */
public record OwnProcess(Class<?> main, List<Class<?>> sees, JarPatience patience) implements CodeDoor {

    private static final Set<String> INHERITED = Set.of("LANG", "LC_ALL", "LC_CTYPE", "SystemRoot");

    /** For Java itself to come up, on a machine however busy. */
    private static final Duration UNTIL_IT_BEGINS = Duration.ofMinutes(1);

    private static final int LOOK_AGAIN_MILLIS = 10;

    public OwnProcess {
        sees = List.copyOf(sees);
    }

    @Override
    public List<Handed> open(CodeJar jar) {
        Path room = null;
        try {
            room = Files.createTempDirectory("everyblade-jar");
            return run(jar, room);
        } catch (IOException e) {
            return List.of(failed(
                    jar,
                    "cannot be run",
                    JarRefusal.of(e),
                    "see to it that Java may start another Java, and" + " write into its folder for temporary files"));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return List.of(tooSlow(jar, "it was not waited for"));
        } finally {
            clear(room);
        }
    }

    private List<Handed> run(CodeJar jar, Path room) throws IOException, InterruptedException {
        Path copy = Files.createDirectory(room.resolve("jar")).resolve(jar.jar().getFileName());
        Files.copy(jar.jar(), copy);
        if (!Sha256.of(copy).equals(jar.sha256())) { // consent is to these bytes, not to this name
            return List.of(failed(jar, "has just changed", "its jar is another one now", "try again"));
        }
        Path transcript = room.resolve("transcript");
        Process process = start(copy, transcript, Files.createDirectory(room.resolve("work")));
        List<Handed> handed = new ArrayList<>();
        try {
            String over = await(process, transcript);
            boolean ended = !process.isAlive();
            end(process);
            Transcript told = Transcript.read(jar, bytes(transcript));
            handed.addAll(told.handed());
            if (!ended) {
                handed.add(tooSlow(jar, over));
            } else if (!told.whole()) {
                handed.add(failed(
                        jar,
                        "ended before it had handed everything over",
                        "its process ended with status " + process.exitValue(),
                        "its author must let it return, and not end Java"));
            }
        } finally {
            end(process);
        }
        return handed;
    }

    private Process start(Path jar, Path transcript, Path folder) throws IOException {
        Path java = Path.of(System.getProperty("java.home"), "bin", "java");
        List<String> command = new ArrayList<>(List.of(
                java.toString(),
                "-Xmx384m",
                "-XX:MaxMetaspaceSize=64m",
                "-XX:MaxDirectMemorySize=64m",
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-XX:-UsePerfData",
                "-Xshare:auto",
                "-Dfile.encoding=UTF-8",
                "-Djava.awt.headless=true"));
        command.addAll(List.of("-cp", classPath(), main.getName(), jar.toString(), transcript.toString()));
        ProcessBuilder builder = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(ProcessBuilder.Redirect.DISCARD);
        builder.environment().keySet().retainAll(INHERITED);
        return builder.start();
    }

    private String classPath() throws IOException {
        List<String> places = new ArrayList<>();
        try {
            for (Class<?> seen : sees) {
                places.add(Path.of(seen.getProtectionDomain()
                                .getCodeSource()
                                .getLocation()
                                .toURI())
                        .toString());
            }
        } catch (URISyntaxException unknown) {
            throw new IOException(unknown);
        }
        return String.join(java.io.File.pathSeparator, places);
    }

    /** Until the process has ended, or must be; gives why it must. */
    private String await(Process process, Path transcript) throws IOException, InterruptedException {
        long started = System.nanoTime();
        long begun = 0;
        while (!process.waitFor(LOOK_AGAIN_MILLIS, TimeUnit.MILLISECONDS)) {
            long now = System.nanoTime();
            long size = Files.exists(transcript) ? Files.size(transcript) : 0;
            if (size > Transcript.LARGEST) {
                return "it has handed over more than " + (Transcript.LARGEST >> 20) + " MB";
            }
            if (size > 0 && begun == 0) {
                begun = now;
            }
            Duration clock = Duration.ofNanos(begun == 0 ? 0 : now - begun);
            Duration processor = process.info().totalCpuDuration().orElse(Duration.ZERO);
            if (patience.isOver(clock, processor) || now - started - clock.toNanos() > UNTIL_IT_BEGINS.toNanos()) {
                return String.format(
                        Locale.ROOT,
                        "it has taken %.1f s of processor time, and %.1f s by the clock",
                        processor.toMillis() / 1000.0,
                        clock.toMillis() / 1000.0);
            }
        }
        return "";
    }

    /** Ends it and whatever it has started; by the handles, for these leave its streams alone. */
    private static void end(Process process) {
        process.descendants().forEach(ProcessHandle::destroyForcibly);
        process.toHandle().destroyForcibly();
        process.onExit().join();
    }

    private static byte[] bytes(Path transcript) throws IOException {
        return Files.isRegularFile(transcript) && Files.size(transcript) <= Transcript.LARGEST
                ? Files.readAllBytes(transcript)
                : new byte[0];
    }

    private static void clear(Path room) {
        if (room == null) {
            return;
        }
        try (Stream<Path> all = Files.walk(room)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(path);
            }
        } catch (IOException | java.io.UncheckedIOException held) {
            // the system clears its folder of temporary files in time
        }
    }

    private static Handed tooSlow(CodeJar jar, String why) {
        return new Handed.Failed(new Complaint(
                Fault.PLUGIN_TOO_SLOW,
                "the plugin " + jar.plugin() + " does not come to an end",
                why + ", and was ended",
                "take it out of the folder, and ask its author to compute less when it is loaded"));
    }

    private static Handed failed(CodeJar jar, String what, String why, String mend) {
        return new Handed.Failed(
                new Complaint(Fault.PLUGIN_FAILED, "the plugin " + jar.plugin() + " " + what, why, mend));
    }
}
