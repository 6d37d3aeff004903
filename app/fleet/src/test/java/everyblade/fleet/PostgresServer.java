package everyblade.fleet;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * A real server of our own: its own data folder and port, as another user where we are root, since PostgreSQL refuses to run
 * as root. Ended, and its folder removed, when it is closed.
 */
public final class PostgresServer implements AutoCloseable {

    /** For tests in which no power is cut. */
    static final String QUICK = "-c fsync=off";

    public static final String CHIEF = "chief";
    public static final String PASSWORD = "a secret of the tests";

    private static final String TEMPLATE = "empty_store";
    private static final Path DEBIAN = Path.of("/usr/lib/postgresql");

    private final Path programs;
    private final Path folder;
    private final int port;
    private final String options;
    private int databases;

    private PostgresServer(Path programs, Path folder, int port, String options) {
        this.options = options;
        this.programs = programs;
        this.folder = folder;
        this.port = port;
    }

    /** Where the programs of a server are; empty if none is installed. */
    static Optional<Path> programs() {
        if (!Files.isDirectory(DEBIAN)) {
            return Optional.empty();
        }
        try (Stream<Path> versions = Files.list(DEBIAN)) {
            return versions.map(version -> version.resolve("bin"))
                    .filter(bin -> Files.exists(bin.resolve("initdb")))
                    .max(java.util.Comparator.comparingInt(bin ->
                            Integer.parseInt(bin.getParent().getFileName().toString())));
        } catch (IOException failure) {
            return Optional.empty();
        }
    }

    /**
     * Starts a new one.
     *
     * @param options beside the usual ones, as the server takes them
     */
    static PostgresServer start(String options) {
        Path programs = programs().orElseThrow();
        String made = run(List.of("mktemp", "-d", "/tmp/everyblade-postgres-XXXXXX"));
        Path folder = Path.of(made.strip());
        run(List.of("sh", "-c", "printf '%s' '" + PASSWORD + "' > " + folder + "/password"));
        run(List.of(
                programs.resolve("initdb").toString(),
                "--pgdata=" + folder.resolve("data"),
                "--username=" + CHIEF,
                "--pwfile=" + folder.resolve("password"),
                "--auth=scram-sha-256",
                "--encoding=UTF8",
                "--locale=C.UTF-8",
                "--no-sync"));
        PostgresServer server = new PostgresServer(programs, folder, freePort(), options);
        server.up();
        return server;
    }

    /** Another one of the data in a folder, which is below this one's. */
    PostgresServer on(Path data) {
        PostgresServer other = new PostgresServer(programs, data.getParent(), freePort(), options);
        other.up();
        return other;
    }

    /** A folder for copies of it. */
    Path folder() {
        return folder;
    }

    /** Runs one of PostgreSQL's programs against it, and gives what it said. */
    String program(String name, String... arguments) {
        List<String> command = new ArrayList<>(List.of("env", "PGPASSWORD=" + PASSWORD));
        command.add(programs.resolve(name).toString());
        command.addAll(List.of("--host=127.0.0.1", "--port=" + port, "--username=" + CHIEF));
        command.addAll(List.of(arguments));
        return run(command);
    }

    /** Runs a command as the user of the server. */
    static String run(List<String> command) {
        List<String> as = new ArrayList<>();
        if (System.getProperty("user.name").equals("root")) {
            as.addAll(List.of("setpriv", "--reuid=postgres", "--regid=postgres", "--init-groups"));
        }
        as.addAll(command);
        try {
            Path said = Files.createTempFile("postgres", ".txt");
            Process process = new ProcessBuilder(as)
                    .directory(Path.of("/tmp").toFile())
                    .redirectErrorStream(true)
                    .redirectOutput(said.toFile())
                    .start();
            boolean ended = process.waitFor(60, TimeUnit.SECONDS);
            String text = Files.readString(said);
            Files.delete(said);
            if (!ended || process.exitValue() != 0) {
                process.destroyForcibly();
                throw new IllegalStateException(command + ": " + text);
            }
            return text;
        } catch (IOException failure) {
            throw new IllegalStateException(failure);
        } catch (InterruptedException givenUp) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(givenUp);
        }
    }

    private static int freePort() {
        try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            return socket.getLocalPort();
        } catch (IOException failure) {
            throw new IllegalStateException(failure);
        }
    }

    /** Starts it, after it ended as well. */
    void up() {
        run(List.of(
                programs.resolve("pg_ctl").toString(),
                "--pgdata=" + folder.resolve("data"),
                "--log=" + folder.resolve("log"),
                "--options=-p " + port + " -k " + folder + " -c listen_addresses=127.0.0.1 " + options,
                "--wait",
                "--timeout=60",
                "start"));
    }

    /** Kills all of it at once, as a cut in power does to programs. */
    void kill() {
        String mine = run(List.of(
                "sh",
                "-c",
                "head -1 " + folder + "/data/postmaster.pid; pgrep -P $(head -1 " + folder + "/data/postmaster.pid)"));
        List<ProcessHandle> all = mine.lines()
                .map(Long::parseLong)
                .flatMap(pid -> ProcessHandle.of(pid).stream())
                .toList();
        all.forEach(ProcessHandle::destroyForcibly);
        while (all.stream().anyMatch(ProcessHandle::isAlive)) {
            Thread.onSpinWait();
        }
    }

    int port() {
        return port;
    }

    /** The address of a database as this user. */
    public StoreAddress address(String database, String user) {
        return address(database, user, port);
    }

    static StoreAddress address(String database, String user, int port) {
        return new StoreAddress(user, "127.0.0.1", port, database, Optional.empty());
    }

    static StoreSecret secret() {
        return new StoreSecret(Map.of(StoreSecret.VARIABLE, PASSWORD), Optional.empty());
    }

    Connection chief(String database) throws SQLException {
        return DriverManager.getConnection("jdbc:postgresql://127.0.0.1:" + port + "/" + database, CHIEF, PASSWORD);
    }

    public void execute(String database, String sql) {
        try (Connection connection = chief(database);
                Statement statement = connection.createStatement()) {
            statement.execute(sql);
        } catch (SQLException failure) {
            throw new IllegalStateException(failure);
        }
    }

    /** A new store with people at two sites: ada, ben and a reviewer in the north, carl in the south, a reader of all. */
    public synchronized String store() {
        if (databases == 0) {
            execute("postgres", "CREATE DATABASE " + TEMPLATE);
            fill(TEMPLATE);
        }
        String database = "store" + ++databases;
        execute("postgres", "CREATE DATABASE " + database + " TEMPLATE " + TEMPLATE);
        return database;
    }

    private void fill(String database) {
        try {
            StoreSchema.make(address(database, CHIEF), secret());
            admit(database, "ada", "north", StoreSchema.Role.TECHNICIAN);
            admit(database, "ben", "north", StoreSchema.Role.TECHNICIAN);
            admit(database, "carl", "south", StoreSchema.Role.TECHNICIAN);
            admit(database, "rita", "north", StoreSchema.Role.REVIEWER);
            admit(database, "otto", "*", StoreSchema.Role.READER);
        } catch (StoreRefusal refusal) {
            throw new IllegalStateException(refusal);
        }
    }

    private void admit(String database, String login, String site, StoreSchema.Role role) throws StoreRefusal {
        execute(
                database,
                "DO $$ BEGIN IF NOT EXISTS (SELECT FROM pg_roles WHERE rolname = '" + login + "') THEN CREATE ROLE "
                        + login + " LOGIN PASSWORD '" + PASSWORD + "'; END IF; END $$");
        StoreSchema.admit(address(database, CHIEF), secret(), login, site, role);
    }

    /** A connection of one of these people. */
    Store as(String user, String database) {
        try {
            return Store.open(address(database, user), secret());
        } catch (StoreRefusal refusal) {
            throw new IllegalStateException(refusal);
        }
    }

    @Override
    public void close() {
        try {
            run(List.of(
                    programs.resolve("pg_ctl").toString(),
                    "--pgdata=" + folder.resolve("data"),
                    "--mode=immediate",
                    "--wait",
                    "stop"));
        } finally {
            run(List.of("rm", "-rf", folder.toString()));
        }
    }
}
