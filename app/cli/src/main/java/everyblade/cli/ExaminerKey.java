package everyblade.cli;

import everyblade.session.around.Failure;
import everyblade.session.around.Surroundings;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The words with which an examiner keeps the truth of a drill, in a file of the examiner's. */
final class ExaminerKey {

    private static final int LEAST = 8;
    private static final long LARGEST = 4096;

    @Option(names = "--key", paramLabel = "F", description = "${bundle:help.examinerKey}")
    private Path file;

    /** The words; empty if no file is named. */
    Optional<String> words(Surroundings around) {
        if (file == null) {
            return Optional.empty();
        }
        try {
            Path path = around.path(file);
            if (Files.size(path) > LARGEST) {
                throw Failure.of("stopped.examinerKey.tooLongForFewWords", file);
            }
            String words = Files.readString(path, StandardCharsets.UTF_8).strip();
            if (words.length() < LEAST) {
                throw Failure.of("stopped.examinerKey.fewerThanCharactersAreSoon", file, LEAST);
            }
            return Optional.of(words);
        } catch (IOException unreadable) {
            throw Failure.of("stopped.examinerKey.cannotBeReadCheckThat", file);
        }
    }
}
