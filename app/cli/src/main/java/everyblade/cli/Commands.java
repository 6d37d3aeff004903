package everyblade.cli;

import everyblade.record.RecordKind;
import everyblade.session.Opening;
import everyblade.session.around.Failure;
import everyblade.session.around.OneLine;
import everyblade.session.around.Surroundings;
import everyblade.words.Words;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;
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

    /** Of all commands, in the order in which help tells them. */
    static final List<String> NAMES = List.of(
            "start",
            "log",
            "coverage",
            "gaps",
            "findings",
            "close",
            "review",
            "compare",
            "next",
            "plan",
            "photos",
            "measure",
            "handover",
            "map",
            "report",
            "verify",
            "pack",
            "sign",
            "stamp",
            "key",
            "models",
            "check",
            "new-model",
            "show",
            "sight",
            "mesh",
            "picture",
            "fleet",
            "drill",
            "rehearse",
            "ship");

    private Commands() {}

    /** Does what the arguments say, without any window, and gives the exit status; throws nothing. */
    public static int run(Surroundings around, String... arguments) {
        return run(around, Opening.NONE, arguments);
    }

    /** Does what the arguments say and gives the exit status; throws nothing. */
    public static int run(Surroundings here, Opening window, String... arguments) {
        Surroundings around = Spoken.in(List.of(arguments)).map(here::speaking).orElse(here);
        int status;
        try {
            status = arguments.length == 0
                    ? called(
                            around, new Everyblade(around, window)) // comes up sooner if no commands are looked through
                    : ShortLine.of(arguments)
                            .map(asked -> called(around, asked.command(around)))
                            .orElseGet(() -> line(around, window, arguments).execute(arguments));
        } catch (Throwable fault) {
            status = lastResort(around, fault);
        } finally {
            around.packed().close();
        }
        around.out().flush();
        if (around.out().checkError()) {
            around.err().println(around.words().say("fault.notWritten"));
            status = WRONG;
        }
        around.err().flush();
        return status;
    }

    private static int called(Surroundings around, Callable<Integer> asked) {
        try {
            return asked.call();
        } catch (Exception fault) {
            return stopped(around, fault);
        }
    }

    /** The command line, ready to be asked this. */
    static CommandLine line(Surroundings around, Opening window, String... arguments) {
        Everyblade everyblade = new Everyblade(around, window);
        CommandLine line = new CommandLine(everyblade);
        // Looking through a command takes as long as many of them run, so only the one that is asked for is.
        for (String name : asked(arguments)) {
            line.addSubcommand(name, command(name, around, everyblade, window));
        }
        footer(line, "start", () -> StartCommand.settingsHelp(around.words()));
        footer(line, "log", () -> EntrySheet.lines(around.words()));
        HelpTexts.speak(line, around::words);
        line.setExpandAtFiles(false); // an entry may begin with @
        line.setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF));
        line.setUsageHelpWidth(HELP_WIDTH);
        line.setOut(new PrintWriter(around.out(), true, StandardCharsets.UTF_8));
        line.setErr(new PrintWriter(around.err(), true, StandardCharsets.UTF_8));
        line.setParameterExceptionHandler((mistake, said) -> wrongUse(around, mistake));
        line.setExecutionExceptionHandler((fault, at, parsed) -> stopped(around, fault));
        return line;
    }

    private static List<String> asked(String... arguments) {
        if (arguments.length > 0 && NAMES.contains(arguments[0])) {
            return List.of(arguments[0]);
        }
        return Arrays.equals(arguments, new String[] {"--version"}) ? List.of() : NAMES;
    }

    /** All that was said to a command, its name first. */
    static List<String> question(CommandSpec asked) {
        return Stream.concat(
                        Stream.of(asked.qualifiedName()), asked.commandLine().getParseResult().originalArgs().stream())
                .toList();
    }

    private static void footer(CommandLine line, String name, Supplier<String[]> lines) {
        CommandLine command = line.getSubcommands().get(name);
        if (command != null) {
            command.getCommandSpec().usageMessage().footer(lines.get());
        }
    }

    private static Object command(String name, Surroundings around, Everyblade everyblade, Opening window) {
        return switch (name) {
            case "start" -> new StartCommand(around, everyblade);
            case "log" -> new LogCommand(around, RecordKind.JOB);
            case "coverage" -> new CoverageCommand(around);
            case "gaps" -> new GapsCommand(around);
            case "findings" -> new FindingsCommand(around);
            case "close" -> new CloseCommand(around);
            case "review" -> new ReviewCommand(around);
            case "compare" -> new CompareCommand(around);
            case "next" -> new NextCommand(around);
            case "plan" -> new PlanCommand(around, everyblade);
            case "photos" -> new PhotosCommand(around);
            case "measure" -> new MeasureCommand(around);
            case "handover" -> new HandoverCommand(around);
            case "map" -> new MapCommand(around);
            case "report" -> new ReportCommand(around, RecordKind.JOB);
            case "verify" -> new VerifyCommand(around);
            case "pack" -> new PackCommand(around);
            case "sign" -> new SignCommand(around);
            case "stamp" -> new StampCommand(around);
            case "key" -> new KeyCommand(around);
            case "models" -> new ModelsCommand(around, everyblade);
            case "check" -> new CheckCommand(around, everyblade);
            case "new-model" -> new NewModelCommand(around);
            case "show" -> new ShowCommand(around, everyblade);
            case "sight" -> new SightCommand(around, everyblade);
            case "mesh" -> new MeshCommand(around, everyblade);
            case "picture" -> new PictureCommand(around, everyblade);
            case "fleet" -> FleetCommand.line(around);
            case "drill" -> DrillCommand.line(around, everyblade, window);
            case "rehearse" -> new RehearseCommand(around, window);
            case "ship" -> new ShipCommand(around, everyblade);
            default -> throw new IllegalArgumentException("there is no command " + name);
        };
    }

    private static int wrongUse(Surroundings around, ParameterException mistake) {
        String command = mistake.getCommandLine().getCommandSpec().qualifiedName();
        Words words = around.words();
        around.err().println(OneLine.of(words.say("wrongUse.seeHelp", command, Misuse.told(mistake, words))));
        return WRONG;
    }

    private static int stopped(Surroundings around, Exception fault) {
        if (fault instanceof Failure failure) {
            around.out().flush();
            around.err().println(OneLine.of(failure.line(around.words())));
            return WRONG;
        }
        return lastResort(around, fault);
    }

    private static int lastResort(Surroundings around, Throwable fault) {
        Optional<String> named = around.variable(DEBUG);
        Optional<Path> kept = named.flatMap(file -> keep(around, file, fault));
        around.err().println(OneLine.of(around.words().say("fault.stopped", fault.toString(), kept, named)));
        return WRONG;
    }

    /** Where the details are; empty if they could not be written. */
    private static Optional<Path> keep(Surroundings around, String file, Throwable fault) {
        StringWriter details = new StringWriter();
        fault.printStackTrace(new PrintWriter(details));
        try {
            Path path = around.folder().resolve(file);
            Files.write(path, List.of(details.toString()), StandardOpenOption.CREATE, StandardOpenOption.APPEND);
            return Optional.of(path);
        } catch (IOException | InvalidPathException failure) {
            return Optional.empty();
        }
    }
}
