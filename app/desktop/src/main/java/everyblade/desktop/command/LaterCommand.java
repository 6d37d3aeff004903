package everyblade.desktop.command;

import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/**
 * A command whose time has not come: it takes its arguments and says so.
 *
 * @param name of the command
 * @param description what it will do
 * @param parameter its one positional parameter
 * @param required options that must be given, each with a value
 * @param further options that may be given, with a value where an {@code =} stands
 */
record LaterCommand(String name, String description, String parameter, List<String> required, List<String> further) {

    static List<LaterCommand> all() {
        return List.of(new LaterCommand(
                "next", "the moves that close all gaps, with the bound", "JOB", List.of(), List.of("--json")));
    }

    CommandLine commandLine() {
        Callable<Integer> say = () -> {
            throw new Failure("everyblade: " + name + " is not in this version");
        };
        CommandSpec spec = CommandSpec.wrapWithoutInspection(say).name(name);
        spec.usageMessage().description("Not in this version: " + description + ".");
        spec.addPositional(PositionalParamSpec.builder()
                .index("0")
                .arity("1")
                .required(true)
                .type(String.class)
                .paramLabel(parameter)
                .description(parameter.equals("JOB") ? "a job folder" : "an engine model")
                .build());
        required.forEach(option -> spec.addOption(option(option, true)));
        further.forEach(option -> spec.addOption(option(option, false)));
        return new CommandLine(spec);
    }

    private static OptionSpec option(String option, boolean isRequired) {
        String[] parts = option.split("=", 2);
        OptionSpec.Builder builder = OptionSpec.builder(parts[0]).required(isRequired);
        return parts.length == 2
                ? builder.arity("1").type(String.class).paramLabel(parts[1]).build()
                : builder.arity("0").type(boolean.class).build();
    }
}
