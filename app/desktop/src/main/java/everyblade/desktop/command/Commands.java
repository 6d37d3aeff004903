package everyblade.desktop.command;

import everyblade.record.RecordKind;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.ParameterException;

/** Every command by its name, and what becomes of mistakes: one line on standard error and exit status 2. */
public final class Commands {

    /** All is well. */
    static final int FINE = 0;
    /** The answer is "not complete". */
    static final int NOT_COMPLETE = 1;
    /** Wrong use, or input that cannot be read. */
    static final int WRONG = 2;

    private static final String DEBUG = "EVERYBLADE_DEBUG";
    private static final int HELP_WIDTH = 120;

    private Commands() {}

    /** Does what the arguments say, without any window, and gives the exit status; throws nothing. */
    public static int run(Surroundings around, String... arguments) {
        return run(around, Opening.NONE, arguments);
    }

    /** Does what the arguments say and gives the exit status; throws nothing. */
    public static int run(Surroundings around, Opening window, String... arguments) {
        int status;
        try {
            status = arguments.length == 0
                    ? window(around, window)
                    : line(around, window).execute(arguments);
        } catch (Throwable fault) {
            status = lastResort(around, fault);
        } finally {
            around.packed().close();
        }
        around.out().flush();
        if (around.out().checkError()) {
            around.err()
                    .println("everyblade: not everything could be written to standard output; see whether it was"
                            + " closed or its disk is full");
            status = WRONG;
        }
        around.err().flush();
        return status;
    }

    /** The window alone, which comes up sooner if no commands are looked through. */
    private static int window(Surroundings around, Opening window) {
        try {
            return new Everyblade(around, window).call();
        } catch (Failure failure) {
            return stopped(around, failure);
        }
    }

    /** The commands, ready to be asked. */
    static CommandLine line(Surroundings around, Opening window) {
        Everyblade everyblade = new Everyblade(around, window);
        CommandLine line = new CommandLine(everyblade);
        line.addSubcommand(new StartCommand(around, everyblade))
                .addSubcommand(new LogCommand(around, RecordKind.JOB))
                .addSubcommand(new CoverageCommand(around))
                .addSubcommand(new GapsCommand(around))
                .addSubcommand(new FindingsCommand(around))
                .addSubcommand(new CloseCommand(around))
                .addSubcommand(new ReviewCommand(around))
                .addSubcommand(new CompareCommand(around))
                .addSubcommand(new NextCommand(around))
                .addSubcommand(new PlanCommand(around, everyblade))
                .addSubcommand(new PhotosCommand(around))
                .addSubcommand(new MeasureCommand(around))
                .addSubcommand(new HandoverCommand(around))
                .addSubcommand(new MapCommand(around, RecordKind.JOB))
                .addSubcommand(new ReportCommand(around, RecordKind.JOB))
                .addSubcommand(new VerifyCommand(around))
                .addSubcommand(new PackCommand(around))
                .addSubcommand(new SignCommand(around))
                .addSubcommand(new StampCommand(around))
                .addSubcommand(new KeyCommand(around))
                .addSubcommand(new ModelsCommand(around, everyblade))
                .addSubcommand(new CheckCommand(around, everyblade))
                .addSubcommand(new NewModelCommand(around))
                .addSubcommand(new ShowCommand(around, everyblade))
                .addSubcommand(new SightCommand(around, everyblade))
                .addSubcommand(new MeshCommand(around, everyblade))
                .addSubcommand(new PictureCommand(around, everyblade))
                .addSubcommand(DrillCommand.line(around, everyblade, window))
                .addSubcommand(new RehearseCommand(around, window))
                .addSubcommand(new ShipCommand(around, everyblade));
        line.getSubcommands().get("start").getCommandSpec().usageMessage().footer(StartCommand.settingsHelp());
        line.getSubcommands().get("log").getCommandSpec().usageMessage().footer(EntrySheet.lines());
        line.setExpandAtFiles(false); // an entry may begin with @
        line.setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF));
        line.setUsageHelpWidth(HELP_WIDTH);
        line.setOut(new PrintWriter(around.out(), true, StandardCharsets.UTF_8));
        line.setErr(new PrintWriter(around.err(), true, StandardCharsets.UTF_8));
        line.setParameterExceptionHandler((mistake, arguments) -> wrongUse(around, mistake));
        line.setExecutionExceptionHandler((fault, at, parsed) -> stopped(around, fault));
        return line;
    }

    private static int wrongUse(Surroundings around, ParameterException mistake) {
        String command = mistake.getCommandLine().getCommandSpec().qualifiedName();
        around.err().println(OneLine.of(command + ": " + mistake.getMessage() + "; see " + command + " --help"));
        return WRONG;
    }

    private static int stopped(Surroundings around, Exception fault) {
        if (fault instanceof Failure failure) {
            around.out().flush();
            around.err().println(OneLine.of(failure.getMessage()));
            return WRONG;
        }
        return lastResort(around, fault);
    }

    private static int lastResort(Surroundings around, Throwable fault) {
        String kept = around.variable(DEBUG)
                .map(file -> keep(around, file, fault))
                .orElse("set " + DEBUG + " to the name of a file to have the details written there");
        around.err()
                .println(OneLine.of("everyblade: stopped by a fault of the program, " + fault
                        + "; what was acknowledged is kept; " + kept));
        return WRONG;
    }

    private static String keep(Surroundings around, String file, Throwable fault) {
        StringWriter details = new StringWriter();
        fault.printStackTrace(new PrintWriter(details));
        try {
            Path path = around.folder().resolve(file);
            Files.write(path, List.of(details.toString()), StandardOpenOption.CREATE, StandardOpenOption.APPEND);
            return "the details are in " + path;
        } catch (IOException | InvalidPathException failure) {
            return "the details could not be written to " + file;
        }
    }
}
