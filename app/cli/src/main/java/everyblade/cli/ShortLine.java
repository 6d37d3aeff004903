package everyblade.cli;

import everyblade.session.around.Surroundings;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Stream;

/**
 * What scripts and editors ask again and again: a command that only reads, of one job, as JSON or not. It takes as long to
 * look through how a command may be asked as to answer, and here is nothing to look for; every other line is read by picocli,
 * and this one to the same effect ({@code ShortLineTest}).
 *
 * @param name of the command
 * @param arguments all of them
 */
record ShortLine(String name, Path job, boolean json, List<String> arguments) {

    private static final String JSON = "--json";
    private static final Set<String> WITH_JSON = Set.of("coverage", "gaps", "next");
    private static final String VERIFY = "verify";

    /** A line that is one; empty if it is longer, or any other. */
    static Optional<ShortLine> of(String... line) {
        List<String> words = new ArrayList<>(List.of(line));
        String name = words.isEmpty() ? "" : words.remove(0);
        boolean json = WITH_JSON.contains(name) && words.remove(JSON);
        boolean one = words.size() == 1 && !words.get(0).startsWith("-");
        if (!one || !WITH_JSON.contains(name) && !name.equals(VERIFY)) {
            return Optional.empty();
        }
        try {
            return Optional.of(new ShortLine(name, Path.of(words.get(0)), json, List.of(line)));
        } catch (InvalidPathException toBeTold) {
            return Optional.empty();
        }
    }

    /** What does it. */
    Callable<Integer> command(Surroundings around) {
        return switch (name) {
            case "coverage" -> new CoverageCommand(around, this);
            case "gaps" -> new GapsCommand(around, this);
            case "next" -> new NextCommand(around, this);
            default -> new VerifyCommand(around, this);
        };
    }

    /** The same as {@link Commands#question}. */
    List<String> question() {
        return Stream.concat(Stream.of("everyblade " + name), arguments.stream())
                .toList();
    }
}
