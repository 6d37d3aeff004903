package everyblade.window;

import everyblade.session.around.Failure;
import everyblade.session.around.Surroundings;
import everyblade.session.around.UserFolders;
import everyblade.window.view.Choices;
import everyblade.words.Words;
import java.awt.Component;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JFileChooser;

/** Where the window finds and puts things on this machine. */
final class Places {

    private final Surroundings around;

    Places(Surroundings around) {
        this.around = around;
    }

    private Path home() {
        return around.variable("HOME")
                .or(() -> around.variable("USERPROFILE"))
                .map(Path::of)
                .orElseGet(() -> around.folder().toAbsolutePath());
    }

    private Path choicesFile() {
        Path configuration = UserFolders.configuration(around).orElseGet(() -> home().resolve(".config"));
        return configuration.resolve("everyblade").resolve("window.properties");
    }

    /** Where faults of the program are kept for whoever can mend them. */
    Path faults() {
        return UserFolders.state(around).orElseGet(this::home).resolve("faults.log");
    }

    /** What the person chose before. */
    Choices choices() {
        return Choices.read(choicesFile(), around.words().locale());
    }

    void keep(Choices choices) {
        choices.write(choicesFile());
    }

    private Path jobs() {
        return home().resolve("Everyblade");
    }

    /** A folder for the next job that is not there yet. */
    Path proposed() {
        return free("job-" + LocalDate.ofInstant(around.clock().instant(), ZoneId.systemDefault()));
    }

    /** A folder for the next drill that is not there yet. */
    Path proposedDrill() {
        return free("drill-" + LocalDate.ofInstant(around.clock().instant(), ZoneId.systemDefault()));
    }

    private Path free(String name) {
        Path first = jobs().resolve(name);
        return Files.exists(first)
                ? Stream.iterate(2, number -> number + 1)
                        .map(number -> jobs().resolve(name + "-" + number))
                        .filter(path -> !Files.exists(path))
                        .findFirst()
                        .orElseThrow()
                : first;
    }

    /** The demo job that came with the program. */
    Optional<Path> demo() {
        return around.home().map(home -> home.resolve("demo")).filter(Files::isDirectory);
    }

    /** A copy of the demo job, to be worked on as one likes. */
    Path copyOfDemo() throws IOException {
        Path demo = demo().orElseThrow();
        Path copy = free("demo");
        try (Stream<Path> paths = Files.walk(demo)) {
            List<Path> all = paths.toList();
            Files.createDirectories(copy.getParent());
            for (Path path : all) {
                Files.copy(path, copy.resolve(demo.relativize(path).toString()));
            }
            return copy;
        } catch (IOException failure) {
            throw Failure.of("stopped.places.demoNotCopied", copy);
        }
    }

    /** Asks for a folder that is there. */
    Optional<Path> askFolder(Component parent, String title) {
        JFileChooser chooser = new JFileChooser(jobs().toFile());
        chooser.setFileSelectionMode(JFileChooser.DIRECTORIES_ONLY);
        return asked(chooser, parent, title);
    }

    /** Asks for a folder that is not there yet. */
    Optional<Path> askNew(Component parent, Words words, Path beside) {
        JFileChooser chooser = new JFileChooser(beside.getParent().toFile());
        chooser.setFileSelectionMode(JFileChooser.FILES_AND_DIRECTORIES);
        chooser.setSelectedFile(new File(beside.getParent().toFile(), beside.getFileName() + "-saved"));
        return asked(chooser, parent, words.say("keeping.elsewhere"));
    }

    /** Asks for a folder that is not there yet, in which a job is to be; {@code name} is what is proposed. */
    Optional<Path> askPlace(Component parent, String title, String name) {
        JFileChooser chooser = new JFileChooser(jobs().toFile());
        chooser.setFileSelectionMode(JFileChooser.FILES_AND_DIRECTORIES);
        chooser.setSelectedFile(new File(jobs().toFile(), name));
        return asked(chooser, parent, title);
    }

    /** Asks for a file for a page about a job; {@code kind} goes into the name that is proposed. */
    Optional<Path> askFile(Component parent, String title, Path job, String kind) {
        JFileChooser chooser = new JFileChooser(job.getParent().toFile());
        chooser.setSelectedFile(new File(job.getParent().toFile(), job.getFileName() + "-" + kind + ".pdf"));
        return asked(chooser, parent, title);
    }

    private static Optional<Path> asked(JFileChooser chooser, Component parent, String title) {
        chooser.setDialogTitle(title);
        return chooser.showDialog(parent, title) == JFileChooser.APPROVE_OPTION
                ? Optional.of(chooser.getSelectedFile().toPath())
                : Optional.empty();
    }
}
