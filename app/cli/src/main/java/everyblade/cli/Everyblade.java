package everyblade.cli;

import everyblade.session.Opening;
import everyblade.session.around.Failure;
import everyblade.session.around.Surroundings;
import everyblade.session.model.Consent;
import everyblade.session.model.Shelf;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Stack;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.IParameterConsumer;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

/** The program without a command, and the options that all commands share. */
@Command(
        name = "everyblade",
        versionProvider = Everyblade.Version.class,
        description = "Keeps account of which blades of a gas turbine were seen through a borescope.",
        synopsisSubcommandLabel = "COMMAND",
        footer = {
            "",
            "Exit status: 0 fine; 1 the answer is \"not complete\" (gaps, close, verify, check); 2 wrong use or unreadable"
                    + " input."
        })
final class Everyblade implements Callable<Integer> {

    private final Surroundings around;
    private final Opening window;

    @Spec
    private CommandSpec line;

    /** More than one is taken in so that a mistyped command is told as such. */
    @Parameters(
            index = "0..*",
            paramLabel = "JOB",
            description = "a job folder, or the folder of an engine model that is being written, opened in the window")
    private List<Path> named = List.of();

    @Option(
            names = "--models",
            paramLabel = "DIR",
            scope = ScopeType.INHERIT,
            parameterConsumer = Added.class,
            description = "a folder with further engine models; may be given several times")
    private final List<Path> models = new ArrayList<>();

    @Option(
            names = "--trust-jar",
            paramLabel = "HASH",
            scope = ScopeType.INHERIT,
            parameterConsumer = Added.class,
            description =
                    "says yes to running the code in the jar with this SHA-256; it may do whatever you may do, and you"
                            + " are not asked again until the jar changes; may be given several times")
    private final List<String> trusted = new ArrayList<>();

    /** Taken in before the commands are made, see {@link Commands}; here for help and for what is no language of ours. */
    @Option(
            names = "--lang",
            paramLabel = "LANGUAGE",
            scope = ScopeType.INHERIT,
            description = "the language of what is said, en or de; that of the system unless given")
    private void language(String tag) {
        if (Spoken.of(tag).isEmpty()) {
            throw new ParameterException(line.commandLine(), Spoken.refused(tag));
        }
    }

    @Option(names = "--review", description = "opens the record JOB to be reviewed: nothing of it is changed")
    private boolean review;

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            scope = ScopeType.INHERIT,
            description = "says how to use this")
    private boolean help;

    @Option(names = "--version", versionHelp = true, description = "says which version this is")
    private boolean version;

    Everyblade(Surroundings around, Opening window) {
        this.around = around;
        this.window = window;
    }

    /** Where engine models are looked for. */
    Shelf shelf() {
        return Shelf.of(around, models, consent());
    }

    /** Which jars of code may run. */
    Consent consent() {
        return Consent.of(around, trusted);
    }

    @Override
    public Integer call() {
        if (!named.isEmpty() && !Files.exists(around.path(named.get(0)))) {
            throw Failure.of("stopped.everyblade.thereNeitherCommandNorJob", named.get(0));
        }
        if (named.size() > 1) {
            throw Failure.of("stopped.everyblade.oneWindowOpensOneJob");
        }
        if (review) {
            Path record = named.stream()
                    .findFirst()
                    .map(around::path)
                    .orElseThrow(() -> Failure.of("stopped.everyblade.whichRecordNameJobFolder"));
            return window.review(around, shelf(), record);
        }
        return window.open(around, shelf(), named.stream().findFirst().map(around::path));
    }

    /** Adds to those given before the command, which picocli would put others in the place of. */
    static final class Added implements IParameterConsumer {

        @Override
        public void consumeParameters(Stack<String> left, ArgSpec option, CommandSpec command) {
            if (left.isEmpty()) {
                throw new ParameterException(
                        command.commandLine(), "Missing required parameter for option '" + name(option) + "'");
            }
            try {
                option.<List<Object>>getValue().add(name(option).equals("--models") ? Path.of(left.pop()) : left.pop());
            } catch (InvalidPathException unusable) {
                throw new ParameterException(command.commandLine(), "--models: no folder can have this name");
            }
        }

        private static String name(ArgSpec option) {
            return ((OptionSpec) option).longestName();
        }
    }

    /** Says the version that stands in the jar. */
    static final class Version implements IVersionProvider {

        @Override
        public String[] getVersion() {
            return new String[] {"everyblade " + number()};
        }

        static String number() {
            return Optional.ofNullable(Everyblade.class.getPackage().getImplementationVersion())
                    .orElse("(not packaged)");
        }
    }
}
