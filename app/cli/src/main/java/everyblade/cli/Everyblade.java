package everyblade.cli;

import everyblade.session.Opening;
import everyblade.session.around.Failure;
import everyblade.session.around.ProgramVersion;
import everyblade.session.around.Surroundings;
import everyblade.session.model.Consent;
import everyblade.session.model.Shelf;
import everyblade.words.Words;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Stack;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.IParameterConsumer;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

/** The program without a command, and the options that all commands share. */
@Command(
        name = "everyblade",
        versionProvider = Everyblade.Version.class,
        description = "${bundle:help.everyblade}",
        synopsisSubcommandLabel = "COMMAND",
        footer = {"", "${bundle:help.exitStatus}"})
final class Everyblade implements Callable<Integer> {

    private final Surroundings around;
    private final Opening window;

    @Spec
    private CommandSpec line;

    /** More than one is taken in so that a mistyped command is told as such. */
    @Parameters(index = "0..*", paramLabel = "JOB", description = "${bundle:help.everyblade.job}")
    private List<Path> named = List.of();

    @Option(
            names = "--models",
            paramLabel = "DIR",
            scope = ScopeType.INHERIT,
            parameterConsumer = Added.class,
            description = "${bundle:help.everyblade.models}")
    private final List<Path> models = new ArrayList<>();

    @Option(
            names = "--trust-jar",
            paramLabel = "HASH",
            scope = ScopeType.INHERIT,
            parameterConsumer = Added.class,
            description = "${bundle:help.everyblade.trustJar}")
    private final List<String> trusted = new ArrayList<>();

    /** Taken in before the commands are made, see {@link Commands}; here for help and for what is no language of ours. */
    @Option(
            names = "--lang",
            paramLabel = "LANGUAGE",
            scope = ScopeType.INHERIT,
            description = "${bundle:help.everyblade.lang}")
    private void language(String tag) {
        if (Spoken.of(tag).isEmpty()) {
            throw new Misuse(
                    line.commandLine(),
                    "wrongUse.language",
                    tag,
                    Words.languages().stream().map(Locale::getLanguage).toList());
        }
    }

    @Option(names = "--review", description = "${bundle:help.everyblade.review}")
    private boolean review;

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            scope = ScopeType.INHERIT,
            description = "${bundle:help.everyblade.help}")
    private boolean help;

    @Option(names = "--version", versionHelp = true, description = "${bundle:help.everyblade.version}")
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
                throw new Misuse(command.commandLine(), "wrongUse.valueMissing", quoted(option));
            }
            try {
                option.<List<Object>>getValue().add(name(option).equals("--models") ? Path.of(left.pop()) : left.pop());
            } catch (InvalidPathException unusable) {
                throw new Misuse(command.commandLine(), "wrongUse.noFolder");
            }
        }

        private static String quoted(ArgSpec option) {
            return "'" + name(option) + "'";
        }

        private static String name(ArgSpec option) {
            return ((OptionSpec) option).longestName();
        }
    }

    /** Says the version that stands in the jar. */
    static final class Version implements IVersionProvider {

        @Override
        public String[] getVersion() {
            return new String[] {"everyblade " + ProgramVersion.number()};
        }
    }
}
