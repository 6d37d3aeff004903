package everyblade.cli;

import everyblade.fleet.StoreSchema.Role;
import everyblade.session.around.Failure;
import everyblade.session.around.Surroundings;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** All that is done with a shop's store; what it takes to reach one is loaded only then. */
@Command(name = "fleet", description = "${bundle:help.fleet}", synopsisSubcommandLabel = "COMMAND")
final class FleetCommand implements Callable<Integer> {

    private static final String JOB = "JOB";

    private final Surroundings around;

    @Spec
    private CommandSpec spec;

    private FleetCommand(Surroundings around) {
        this.around = around;
    }

    /** The command with those under it. */
    static CommandLine line(Surroundings around) {
        return new CommandLine(new FleetCommand(around));
    }

    /** Which store, and what opens it. */
    static final class At {

        @Option(names = "--store", paramLabel = "URL", description = "${bundle:help.fleet.store}")
        private String store;

        @Option(names = "--password-file", paramLabel = "F", description = "${bundle:help.fleet.passwordFile}")
        private Path passwordFile;
    }

    /** How a list is told. */
    static final class Form {

        @Option(names = "--json", description = "${bundle:help.json}")
        private boolean json;

        @Option(names = "--csv", description = "${bundle:help.fleet.csv}")
        private boolean csv;

        FleetTable.Form form() {
            Csv.requireOnly(json && csv);
            return json ? FleetTable.Form.JSON : csv ? FleetTable.Form.CSV : FleetTable.Form.TEXT;
        }
    }

    private FleetStore at(At at) {
        return FleetStore.at(around, Optional.ofNullable(at.store), Optional.ofNullable(at.passwordFile));
    }

    @Command(name = "init", description = "${bundle:help.fleet.init}")
    int init(
            @Mixin At at,
            @Option(names = "--member", paramLabel = "NAME", description = "${bundle:help.fleet.init.member}")
                    String member,
            @Option(names = "--site", paramLabel = "SITE", description = "${bundle:help.fleet.init.site}") String site,
            @Option(names = "--role", paramLabel = "ROLE", description = "${bundle:help.fleet.init.role}")
                    String role) {
        Optional<Role> as = Arrays.stream(Role.values())
                .filter(one -> one.word().equals(role))
                .findFirst();
        if (member == null ? site != null || role != null : site == null || as.isEmpty()) {
            throw new Failure("everyblade fleet init: "
                    + around.words().say("fleet.memberNeeds", member == null ? "NAME" : member));
        }
        return new FleetExchange(at(at)).init(Optional.ofNullable(member), site, as);
    }

    @Command(name = "push", description = "${bundle:help.fleet.push}")
    int push(
            @Mixin At at,
            @Option(names = "--site", paramLabel = "SITE", description = "${bundle:help.site}") String site,
            @Parameters(arity = "1..*", paramLabel = JOB, description = "${bundle:help.jobs}") List<Path> jobs) {
        return new FleetExchange(at(at)).push(jobs, Optional.ofNullable(site));
    }

    @Command(name = "pull", description = "${bundle:help.fleet.pull}")
    int pull(
            @Mixin At at,
            @Parameters(index = "0", paramLabel = "ID", description = "${bundle:help.fleet.pull.id}") String job,
            @Parameters(index = "1", paramLabel = "FOLDER", description = "${bundle:help.fleet.pull.folder}")
                    Path folder) {
        return new FleetExchange(at(at)).pull(job, folder);
    }

    @Command(name = "sync", description = "${bundle:help.fleet.sync}")
    int sync(
            @Mixin At at,
            @Option(names = "--site", paramLabel = "SITE", description = "${bundle:help.site}") String site,
            @Option(names = "--follow", description = "${bundle:help.fleet.sync.follow}") boolean follow,
            @Parameters(arity = "1..*", paramLabel = JOB, description = "${bundle:help.jobs}") List<Path> jobs) {
        return new FleetExchange(at(at)).sync(jobs, Optional.ofNullable(site), follow);
    }

    @Command(name = "list", description = "${bundle:help.fleet.list}")
    int list(@Mixin At at, @Mixin Form form) {
        return new FleetView(at(at)).list(form.form());
    }

    @Command(name = "verify", description = "${bundle:help.fleet.verify}")
    int verify(
            @Mixin At at,
            @Option(names = "--heads", paramLabel = "F", description = "${bundle:help.fleet.verify.heads}") Path heads,
            @Option(names = "--note", paramLabel = "F", description = "${bundle:help.fleet.verify.note}") Path note,
            @Parameters(arity = "0..*", paramLabel = "ID", description = "${bundle:help.fleet.verify.id}")
                    List<String> jobs) {
        return new FleetView(at(at))
                .verify(jobs == null ? List.of() : jobs, Optional.ofNullable(heads), Optional.ofNullable(note));
    }

    @Command(name = "ask", description = "${bundle:help.fleet.ask}")
    int ask(
            @Mixin At at,
            @Mixin Form form,
            @Option(names = "--renew", description = "${bundle:help.fleet.ask.renew}") boolean renew,
            @Parameters(index = "0", paramLabel = "QUESTION", description = "${bundle:help.fleet.ask.question}")
                    String question) {
        return new FleetView(at(at)).ask(question, form.form(), renew);
    }

    @Command(name = "retire", description = "${bundle:help.fleet.retire}")
    int retire(
            @Mixin At at,
            @Parameters(index = "0", paramLabel = "YEAR", description = "${bundle:help.fleet.retire.year}") int year,
            @Option(
                            names = "--out",
                            required = true,
                            paramLabel = "FOLDER",
                            description = "${bundle:help.fleet.export.out}")
                    Path out) {
        return new FleetExchange(at(at)).retire(year, out);
    }

    @Command(name = "export", description = "${bundle:help.fleet.export}")
    int export(
            @Mixin At at,
            @Option(
                            names = "--out",
                            required = true,
                            paramLabel = "FOLDER",
                            description = "${bundle:help.fleet.export.out}")
                    Path out) {
        return new FleetView(at(at)).export(out);
    }

    @Override
    public Integer call() {
        throw new Misuse(spec.commandLine(), "wrongUse.subcommand");
    }
}
