package everyblade.fleet;

import java.sql.SQLException;
import java.util.List;

/**
 * The store cannot do what was asked. Told to people in the words of their language by its reason; it never holds a
 * secret.
 */
public final class StoreRefusal extends Exception {

    private static final long serialVersionUID = 1L;

    /** The state of a failure that {@link Reason#WENT_ON} is told of. */
    static final String WENT_ON = "EB005";

    private final transient Reason reason;
    private final transient List<Object> facts;

    /**
     * A refusal.
     *
     * @param facts what the reason says that it tells, in that order
     */
    public StoreRefusal(Reason reason, Object... facts) {
        super(reason + " " + List.of(facts), null, false, false);
        this.reason = reason;
        this.facts = List.of(facts);
    }

    /** Why it cannot. */
    public enum Reason {
        /** The address is none; tells it. */
        WRONG_ADDRESS,
        /** A password stands in the address. */
        SECRET_IN_ADDRESS,
        /** The password file is not there, or others may read it; tells its name. */
        UNSAFE_SECRET,
        /** Nobody answers; tells the address. */
        UNREACHABLE,
        /** The server asks for no TLS that can be trusted; tells the address and what it said. */
        NO_TLS,
        /** Wrong name or password; tells the address and the user. */
        NOT_LET_IN,
        /** There is no store in this database, or this user may not see it; tells the address. */
        NO_STORE,
        /** The store is of another version; tells the one found and the one expected. */
        OTHER_VERSION,
        /** The connection broke while it was in use; tells what the driver said. */
        CUT,
        /** The user may not do that; tells what the server said. */
        NOT_ALLOWED,
        /** The user writes at no site, or at several and none was named, or not at the one that was; tells them. */
        WHICH_SITE,
        /** The store has the job at a site that the user may not see; tells the job. */
        ELSEWHERE,
        /**
         * The job was gone on with here and there; tells the number of the first line that differs, and of the one that the
         * store has who said it, when, who brought it, from which site, and when.
         */
        PARTED,
        /** The same of what reviewers said. */
        REVIEW_PARTED,
        /** The store has another file of that name; tells the name. */
        OTHER_FILE,
        /** No job of the store begins so; tells what was asked. */
        NO_JOB,
        /** The folder has another job than the one that was asked for; tells both. */
        OTHER_JOB,
        /** Several jobs begin so; tells what was asked. */
        SEVERAL_JOBS,
        /** The folder, or what is there, is not sound; tells the line for people. */
        UNSOUND,
        /** The job was taken off with its year; tells it and the day. */
        RETIRED,
        /** No job of the store began in that year; tells it. */
        NO_YEAR,
        /** Somebody went on with a job that was to be taken off; tells what the server said. */
        WENT_ON,
        /** Something is in the folder already; tells its name. */
        NOT_EMPTY,
        /** A file cannot be written; tells the line for people. */
        NOT_WRITTEN,
        /** The server refused; tells what it said. */
        REFUSED
    }

    public Reason reason() {
        return reason;
    }

    public List<Object> facts() {
        return facts;
    }

    /** What a failure of the driver is to people. */
    static StoreRefusal of(SQLException failure) {
        String state = failure.getSQLState() == null ? "" : failure.getSQLState();
        String said = said(failure);
        if (isCut(failure)) {
            return new StoreRefusal(Reason.CUT, said);
        }
        if (state.equals("42501")) {
            return new StoreRefusal(Reason.NOT_ALLOWED, said);
        }
        if (state.equals(WENT_ON)) {
            return new StoreRefusal(Reason.WENT_ON, said);
        }
        return new StoreRefusal(Reason.REFUSED, said);
    }

    /** Whether the connection is gone, and what was asked for may or may not have been done. */
    static boolean isCut(SQLException failure) {
        String state = failure.getSQLState() == null ? "" : failure.getSQLState();
        return state.startsWith("08") || state.startsWith("57P");
    }

    /** In one line, and not too long. */
    static String said(Exception failure) {
        String line = String.valueOf(failure.getMessage()).replaceAll("\\s*\\R\\s*", "; ");
        return line.length() > 300 ? line.substring(0, 300) + "…" : line;
    }
}
