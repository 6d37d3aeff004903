package everyblade.fleet;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.logging.Level;
import java.util.logging.Logger;
import javax.sql.DataSource;
import org.postgresql.PGConnection;
import org.postgresql.PGNotification;
import org.postgresql.ds.PGSimpleDataSource;

/** A connection to a shop's store. For one thread at a time. */
public final class Store implements AutoCloseable {

    /** Every statement is a transaction of its own unless {@link #together} says otherwise. */
    private final Connection connection;

    private final StoreAddress address;
    private boolean listening;

    private Store(Connection connection, StoreAddress address) {
        this.connection = connection;
        this.address = address;
    }

    /**
     * Connects to a store that {@link StoreSchema} has made.
     *
     * @throws StoreRefusal if that cannot be, or the store is of another version
     */
    public static Store open(StoreAddress address, StoreSecret secret) throws StoreRefusal {
        Store store = connect(address, secret);
        try {
            store.requireVersion();
            return store;
        } catch (StoreRefusal refusal) {
            store.close();
            throw refusal;
        }
    }

    /** Connects to a database in which there may be no store yet. */
    static Store connect(StoreAddress address, StoreSecret secret) throws StoreRefusal {
        Optional<String> password = secret.of(address);
        // What it has to say is told by the refusal, in one line.
        Logger driver = Logger.getLogger("org.postgresql");
        driver.setLevel(Level.OFF);
        try {
            return new Store(DriverManager.getConnection(address.jdbc(), address.properties(password)), address);
        } catch (SQLException failure) {
            throw notConnected(address, failure);
        }
    }

    /** Connections for who needs several of them. */
    static DataSource source(StoreAddress address, StoreSecret secret) throws StoreRefusal {
        Properties properties = address.properties(secret.of(address));
        PGSimpleDataSource source = new PGSimpleDataSource();
        source.setUrl(address.jdbc());
        try {
            for (String name : properties.stringPropertyNames()) {
                source.setProperty(name, properties.getProperty(name));
            }
        } catch (SQLException unknown) {
            throw StoreRefusal.of(unknown);
        }
        return source;
    }

    private static StoreRefusal notConnected(StoreAddress address, SQLException failure) {
        String state = String.valueOf(failure.getSQLState());
        boolean letIn = !state.startsWith("28");
        // The driver tells a server without TLS by the state of one that turns somebody away.
        if (letIn && !address.isLoopback() && isByTls(failure)) {
            return new StoreRefusal(StoreRefusal.Reason.NO_TLS, address.toString(), StoreRefusal.said(failure));
        }
        if (!letIn || state.equals("08004")) {
            return new StoreRefusal(StoreRefusal.Reason.NOT_LET_IN, address.toString(), address.user());
        }
        return state.equals("3D000")
                ? new StoreRefusal(StoreRefusal.Reason.NO_STORE, address.toString())
                : new StoreRefusal(StoreRefusal.Reason.UNREACHABLE, address.toString());
    }

    private static boolean isByTls(SQLException failure) {
        String said = String.valueOf(failure.getMessage());
        return said.contains("SSL")
                || said.contains("hostnameverifier")
                || failure.getCause() instanceof javax.net.ssl.SSLException;
    }

    private void requireVersion() throws StoreRefusal {
        String found = ask(
                        "SELECT coalesce(obj_description(to_regnamespace('everyblade')::oid, 'pg_namespace'), ''),"
                                + " has_schema_privilege(to_regnamespace('everyblade')::oid, 'USAGE')",
                        row -> row.getBoolean(2) ? row.getString(1) : "")
                .get(0);
        if (found.isEmpty()) {
            throw new StoreRefusal(StoreRefusal.Reason.NO_STORE, address.toString());
        }
        if (!found.equals(StoreSchema.VERSION)) {
            throw new StoreRefusal(StoreRefusal.Reason.OTHER_VERSION, found, StoreSchema.VERSION);
        }
    }

    /** Where it is. */
    public StoreAddress address() {
        return address;
    }

    /** The sites at which the user works; {@code *} is all of them, to read. */
    public List<String> sites() throws StoreRefusal {
        return ask("SELECT unnest(everyblade.sites()) ORDER BY 1", row -> row.getString(1));
    }

    /**
     * The site at which the user's jobs are kept.
     *
     * @param named as the user named it; needed only by who works at several
     */
    public String site(Optional<String> named) throws StoreRefusal {
        List<String> own = sites().stream().filter(site -> !site.equals("*")).toList();
        if (named.isEmpty() ? own.size() == 1 : own.contains(named.get())) {
            return named.orElseGet(() -> own.get(0));
        }
        throw new StoreRefusal(StoreRefusal.Reason.WHICH_SITE, named.orElse(""), String.join(", ", own));
    }

    /**
     * Waits for others to add to a chain. That is a hint: who relies on it looks all the same from time to time, since what was
     * told while the connection was broken is never told again.
     *
     * @return hashes of the first lines of chains that were added to; none once the time is over
     */
    public Set<String> awaitNews(Duration longest) throws StoreRefusal {
        try {
            if (!listening) {
                run("LISTEN everyblade");
                listening = true;
            }
            Set<String> news = new HashSet<>();
            PGNotification[] told = connection
                    .unwrap(PGConnection.class)
                    .getNotifications(Math.max(1, Math.toIntExact(longest.toMillis())));
            for (PGNotification one : told == null ? new PGNotification[0] : told) {
                news.add(one.getParameter());
            }
            return news;
        } catch (SQLException failure) {
            throw StoreRefusal.of(failure);
        }
    }

    /** Reads a row of an answer. */
    @FunctionalInterface
    interface Reader<T> {

        T read(ResultSet row) throws SQLException;
    }

    /** Puts what a statement needs in its places. */
    @FunctionalInterface
    interface Filling {

        void into(PreparedStatement statement) throws SQLException;
    }

    /** Something that is done as a whole or not at all. */
    @FunctionalInterface
    interface Together {

        void run() throws SQLException;
    }

    <T> List<T> ask(String sql, Reader<T> reader, Object... values) throws StoreRefusal {
        List<T> rows = new java.util.ArrayList<>();
        try (PreparedStatement statement = connection.prepareStatement(sql)) {
            fill(statement, values);
            try (ResultSet answer = statement.executeQuery()) {
                while (answer.next()) {
                    rows.add(reader.read(answer));
                }
            }
            return rows;
        } catch (SQLException failure) {
            throw StoreRefusal.of(failure);
        }
    }

    /** Executes a statement; gives how many rows it concerned. */
    int execute(String sql, Object... values) throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement(sql)) {
            fill(statement, values);
            return statement.executeUpdate();
        }
    }

    private void fill(PreparedStatement statement, Object... values) throws SQLException {
        for (int i = 0; i < values.length; i++) {
            if (values[i] instanceof Filled array) {
                statement.setArray(i + 1, connection.createArrayOf(array.type(), array.values()));
            } else {
                statement.setObject(i + 1, values[i]);
            }
        }
    }

    /** An array of the database. */
    record Filled(String type, Object[] values) {

        @Override
        public boolean equals(Object other) {
            return this == other;
        }

        @Override
        public int hashCode() {
            return System.identityHashCode(this);
        }
    }

    /** All or nothing. */
    void together(Together work) throws StoreRefusal {
        try {
            connection.setAutoCommit(false);
            try {
                work.run();
                connection.commit();
            } catch (SQLException failure) {
                if (!StoreRefusal.isCut(failure)) {
                    connection.rollback();
                }
                throw failure;
            } finally {
                if (!connection.isClosed()) {
                    connection.setAutoCommit(true);
                }
            }
        } catch (SQLException failure) {
            throw StoreRefusal.of(failure);
        }
    }

    Connection connection() {
        return connection;
    }

    private void run(String sql) throws SQLException {
        try (var statement = connection.createStatement()) {
            statement.execute(sql);
        }
    }

    /** What was acknowledged is safe, so a failure to close loses nothing. */
    @Override
    public void close() {
        try {
            connection.close();
        } catch (SQLException nothingLost) {
            // nothing to do and nothing to say
        }
    }
}
