package everyblade.fleet;

import java.sql.SQLException;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;

/** Makes the tables and roles of a store, and brings those of an earlier version up to this one. */
public final class StoreSchema {

    /** Of the tables; it stands as the comment of their schema. */
    static final String VERSION = "3";

    /** What somebody may do in the store. */
    public enum Role {
        TECHNICIAN,
        REVIEWER,
        READER;

        /** The role of the database. */
        public String group() {
            return "everyblade_" + word();
        }

        /** As it is said on the command line. */
        public String word() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    private StoreSchema() {}

    /**
     * Makes the store, or brings it up to date; does nothing where it is. Its user must be a superuser of the server.
     *
     * @return how many steps that took
     */
    public static int make(StoreAddress address, StoreSecret secret) throws StoreRefusal {
        try (Store store = Store.connect(address, secret)) {
            if (!store.ask("SELECT rolsuper FROM pg_roles WHERE rolname = current_user", row -> row.getBoolean(1))
                    .get(0)) {
                throw new StoreRefusal(StoreRefusal.Reason.NOT_ALLOWED, new StoreFlaw.NoSuperuser(address.user()));
            }
            Logger silent = Logger.getLogger("org.flywaydb");
            silent.setLevel(Level.WARNING);
            int steps = Flyway.configure(StoreSchema.class.getClassLoader())
                    .dataSource(Store.source(address, secret))
                    .locations("classpath:everyblade/fleet/schema")
                    .defaultSchema("everyblade")
                    .createSchemas(true)
                    .load()
                    .migrate()
                    .migrationsExecuted;
            store.execute("COMMENT ON SCHEMA everyblade IS '" + VERSION + "'");
            return steps;
        } catch (FlywayException failure) {
            throw new StoreRefusal(StoreRefusal.Reason.REFUSED, StoreRefusal.said(failure));
        } catch (SQLException failure) {
            throw StoreRefusal.of(failure);
        }
    }

    /**
     * Lets somebody work at a site.
     *
     * @param login a role of the server that is there and can log in
     * @param site its name, or {@code *} for all sites, to read
     */
    public static void admit(StoreAddress address, StoreSecret secret, String login, String site, Role role)
            throws StoreRefusal {
        try (Store store = Store.open(address, secret)) {
            store.together(() -> {
                store.execute(
                        "INSERT INTO everyblade.member (login, site) VALUES (?, ?) ON CONFLICT DO NOTHING",
                        login,
                        site);
                store.execute("GRANT " + role.group() + " TO \"" + login.replace("\"", "\"\"") + "\"");
            });
        }
    }
}
