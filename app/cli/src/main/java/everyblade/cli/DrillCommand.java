package everyblade.cli;

import everyblade.record.RecordKind;
import everyblade.session.Opening;
import everyblade.session.around.Surroundings;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** All that is done with drills, and with nothing else. */
@Command(name = "drill", description = "${bundle:help.drill}", synopsisSubcommandLabel = "COMMAND")
final class DrillCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    private DrillCommand() {}

    /** The command with those under it. */
    static CommandLine line(Surroundings around, Everyblade everyblade, Opening window) {
        return new CommandLine(new DrillCommand())
                .addSubcommand(new DrillNewCommand(around, everyblade))
                .addSubcommand(new DrillRunCommand(around, everyblade, window))
                .addSubcommand(new LogCommand(around, RecordKind.DRILL))
                .addSubcommand(new DrillMapCommand(around))
                .addSubcommand(new ReportCommand(around, RecordKind.DRILL))
                .addSubcommand(new DrillEndCommand(around))
                .addSubcommand(new DrillResultCommand(around))
                .addSubcommand(new DrillProgressCommand(around))
                .addSubcommand(new DrillCourseCommand(around));
    }

    @Override
    public Integer call() {
        throw new Misuse(spec.commandLine(), "wrongUse.subcommand");
    }
}
