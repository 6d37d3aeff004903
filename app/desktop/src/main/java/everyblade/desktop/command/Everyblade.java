package everyblade.desktop.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ScopeType;

/** The program without a command, and the options that all commands share. */
@Command(
        name = "everyblade",
        versionProvider = Everyblade.Version.class,
        description = "Keeps account of which blades of a gas turbine were seen through a borescope.",
        synopsisSubcommandLabel = "COMMAND",
        footer = {
            "",
            "Exit status: 0 fine; 1 the answer is \"not complete\" (gaps, verify, check); 2 wrong use or unreadable"
                    + " input."
        })
final class Everyblade implements Callable<Integer> {

    private final Surroundings around;

    @Parameters(index = "0", arity = "0..1", paramLabel = "JOB", description = "a job folder, opened in the window")
    private Path job;

    @Option(
            names = "--models",
            paramLabel = "DIR",
            scope = ScopeType.INHERIT,
            description = "a folder with further engine models; may be given several times")
    private List<Path> models = List.of();

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            scope = ScopeType.INHERIT,
            description = "says how to use this")
    private boolean help;

    @Option(names = "--version", versionHelp = true, description = "says which version this is")
    private boolean version;

    Everyblade(Surroundings around) {
        this.around = around;
    }

    /** Where engine models are looked for. */
    Shelf shelf() {
        return Shelf.of(around, models);
    }

    @Override
    public Integer call() {
        if (job != null && !Files.exists(around.path(job))) {
            throw new Failure("everyblade: there is neither a command nor a job folder " + job
                    + "; see everyblade --help for the commands");
        }
        throw new Failure("everyblade: window is not in this version; see everyblade --help for the commands");
    }

    /** Says the version that stands in the jar. */
    static final class Version implements IVersionProvider {

        @Override
        public String[] getVersion() {
            return new String[] {
                "everyblade "
                        + Optional.ofNullable(Everyblade.class.getPackage().getImplementationVersion())
                                .orElse("(not packaged)")
            };
        }
    }
}
