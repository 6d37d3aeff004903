package everyblade.window;

import everyblade.session.CommandRun;
import everyblade.session.around.Surroundings;
import everyblade.session.model.Shelf;
import everyblade.window.view.NewJob;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Starts jobs and writes reports by the commands that do it, so that a window and a command line cannot differ.
 *
 * @param around the world outside
 * @param shelf where engine models are
 * @param commands does them
 */
record JobStarting(Surroundings around, Shelf shelf, CommandRun commands) {

    /** Starts a job with its first entries; gives why it could not be, if it could not. */
    Optional<String> start(NewJob wanted) {
        List<String> command = new ArrayList<>();
        shelf.folders().stream().filter(java.nio.file.Files::isDirectory).forEach(folder -> {
            command.add("--models");
            command.add(folder.toString());
        });
        shelf.consent().given().forEach(hash -> command.addAll(List.of("--trust-jar", hash)));
        command.addAll(wanted.command());
        Optional<String> problem = run(command);
        if (problem.isPresent() || wanted.entries().isEmpty()) {
            return problem;
        }
        List<String> log = new ArrayList<>(List.of("log", wanted.folder()));
        log.addAll(wanted.entries());
        return run(log);
    }

    /** Writes a page about a job by this command; gives why it could not be, if it could not. */
    Optional<String> write(List<String> command, Path job, Path file) {
        List<String> whole = new ArrayList<>(command);
        whole.addAll(List.of(job.toString(), "--out", file.toString()));
        return run(whole);
    }

    /** Signs a job as it stands on disk; gives why it could not be, if it could not. */
    Optional<String> sign(Path job, SignForm.Filled filled) {
        List<String> command = new ArrayList<>(
                List.of("sign", job.toString(), "--as", filled.as().word(), "--key", filled.key()));
        if (!filled.because().isEmpty()) {
            command.add("--because=" + filled.because());
        }
        return run(command, filled.passphrase() + "\n");
    }

    private Optional<String> run(List<String> command) {
        return run(command, "");
    }

    /** With this on standard input; a passphrase that is typed goes before one that the environment has. */
    private Optional<String> run(List<String> command, String input) {
        Map<String, String> environment = new TreeMap<>(around.environment());
        environment.remove("EVERYBLADE_PASSPHRASE");
        ByteArrayOutputStream told = new ByteArrayOutputStream();
        PrintStream nowhere = new PrintStream(new ByteArrayOutputStream(), false, StandardCharsets.UTF_8);
        Surroundings quiet = new Surroundings(
                new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8)),
                nowhere,
                new PrintStream(told, true, StandardCharsets.UTF_8),
                around.clock(),
                environment,
                around.folder(),
                around.home(),
                around.disk());
        int status = commands.run(quiet, command.toArray(String[]::new));
        return status == 0
                ? Optional.empty()
                : Optional.of(told.toString(StandardCharsets.UTF_8).strip());
    }
}
