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
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** All that is done with a shop's store; what it takes to reach one is loaded only then. */
@Command(
        name = "fleet",
        description =
                "A shop's jobs in one store on PostgreSQL, brought there and back line by line, and questions over"
                        + " all of them. A job folder is complete without it.",
        synopsisSubcommandLabel = "COMMAND")
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

        @Option(
                names = "--store",
                paramLabel = "URL",
                description = "postgresql://USER@HOST:PORT/DATABASE, else what the variable EVERYBLADE_STORE says; the"
                        + " password is in EVERYBLADE_STORE_PASSWORD, a password file, or the keyring")
        private String store;

        @Option(names = "--password-file", paramLabel = "F", description = "a file that only you may read")
        private Path passwordFile;
    }

    /** How a list is told. */
    static final class Form {

        @Option(names = "--json", description = "prints JSON")
        private boolean json;

        @Option(names = "--csv", description = "prints comma-separated values")
        private boolean csv;

        FleetTable.Form form() {
            Csv.requireOnly(json && csv);
            return json ? FleetTable.Form.JSON : csv ? FleetTable.Form.CSV : FleetTable.Form.TEXT;
        }
    }

    private FleetStore at(At at) {
        return FleetStore.at(around, Optional.ofNullable(at.store), Optional.ofNullable(at.passwordFile));
    }

    @Command(
            name = "init",
            description =
                    "Makes the store in a database that is there, or brings it up to this version; lets somebody in."
                            + " Only a superuser of the server can.")
    int init(
            @Mixin At at,
            @Option(names = "--member", paramLabel = "NAME", description = "a role of the server that can log in")
                    String member,
            @Option(
                            names = "--site",
                            paramLabel = "SITE",
                            description = "where that one works; * is all sites, to read")
                    String site,
            @Option(names = "--role", paramLabel = "ROLE", description = "technician, reviewer or reader")
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

    @Command(name = "push", description = "Sends to the store what it lacks of these jobs.")
    int push(
            @Mixin At at,
            @Option(
                            names = "--site",
                            paramLabel = "SITE",
                            description = "where new jobs are kept, if you work at several")
                    String site,
            @Parameters(arity = "1..*", paramLabel = JOB, description = "a job folder, or a folder of them")
                    List<Path> jobs) {
        return new FleetExchange(at(at)).push(jobs, Optional.ofNullable(site));
    }

    @Command(
            name = "pull",
            description =
                    "Brings a job of the store into a folder, verified before it is there; to a folder that has the"
                            + " job, what it lacks.")
    int pull(
            @Mixin At at,
            @Parameters(index = "0", paramLabel = "ID", description = "how the job begins in fleet list") String job,
            @Parameters(index = "1", paramLabel = "FOLDER", description = "where it is to be") Path folder) {
        return new FleetExchange(at(at)).pull(job, folder);
    }

    @Command(
            name = "sync",
            description =
                    "Brings these jobs and the store to the same. What was gone on with in two ways is left as it is,"
                            + " refused, and told with who, where and when; the others are brought all the same.")
    int sync(
            @Mixin At at,
            @Option(
                            names = "--site",
                            paramLabel = "SITE",
                            description = "where new jobs are kept, if you work at several")
                    String site,
            @Option(names = "--follow", description = "goes on until it is ended, every 30 s and as the store tells")
                    boolean follow,
            @Parameters(arity = "1..*", paramLabel = JOB, description = "a job folder, or a folder of them")
                    List<Path> jobs) {
        return new FleetExchange(at(at)).sync(jobs, Optional.ofNullable(site), follow);
    }

    @Command(name = "list", description = "Tells the jobs of the store that you may see.")
    int list(@Mixin At at, @Mixin Form form) {
        return new FleetView(at(at)).list(form.form());
    }

    @Command(
            name = "verify",
            description = "Brings each job into a folder for a moment and verifies it there, trusting nothing that the"
                    + " server computed; exit status 1 if one is not sound.")
    int verify(
            @Mixin At at,
            @Option(names = "--heads", paramLabel = "F", description = "heads that were noted outside the store before")
                    Path heads,
            @Option(names = "--note", paramLabel = "F", description = "writes the heads of the jobs, if all are sound")
                    Path note,
            @Parameters(
                            arity = "0..*",
                            paramLabel = "ID",
                            description = "how a job begins in fleet list; all, unless said")
                    List<String> jobs) {
        return new FleetView(at(at))
                .verify(jobs == null ? List.of() : jobs, Optional.ofNullable(heads), Optional.ofNullable(note));
    }

    @Command(
            name = "ask",
            description =
                    "Asks something of all jobs that you may see: unseen-twice (blades of which the same zones were not"
                            + " seen at the last two inspections of their engine), growth (findings that grew since the inspection"
                            + " before, mm), recurring-gaps (by model and view: the station to improve), open (by site and age), due"
                            + " (repeat inspections), engines (each row as its last inspection left it).")
    int ask(
            @Mixin At at,
            @Mixin Form form,
            @Option(names = "--renew", description = "first computes what the store lacks of jobs at your sites")
                    boolean renew,
            @Parameters(index = "0", paramLabel = "QUESTION", description = "one of these") String question) {
        return new FleetView(at(at)).ask(question, form.form(), renew);
    }

    @Command(
            name = "export",
            description =
                    "Writes everything that you may see as CSV, in folders by table, site and year, for programs that"
                            + " analyse.")
    int export(
            @Mixin At at,
            @Option(names = "--out", required = true, paramLabel = "FOLDER", description = "one that is not there yet")
                    Path out) {
        return new FleetView(at(at)).export(out);
    }

    @Override
    public Integer call() {
        throw new ParameterException(spec.commandLine(), "Missing required subcommand");
    }
}
