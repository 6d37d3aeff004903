package everyblade.core.move;

import everyblade.core.entry.Settings;

/**
 * What steps take, minutes. Common practice, no source; a job that knows better sets its own.
 *
 * @param watched a whole turn while watching
 * @param unwatched a whole turn without watching
 * @param move to begin and end a move, however far it goes
 * @param station to bring the scope tip to another station of a view
 * @param view to bring it to another view
 * @param port to open a port and shut it again
 * @param identification to bring a known airfoil to the reference
 */
public record Prices(
        double watched,
        double unwatched,
        double move,
        double station,
        double view,
        double port,
        double identification) {

    private static final double TURN = 360;

    /** The prices of a job; what it does not set costs as usual. */
    public static Prices of(Settings settings) {
        return new Prices(
                minutes(settings, "minutes-watched"),
                minutes(settings, "minutes-unwatched"),
                minutes(settings, "minutes-move"),
                minutes(settings, "minutes-station"),
                minutes(settings, "minutes-view"),
                minutes(settings, "minutes-port"),
                minutes(settings, "minutes-identify"));
    }

    private static double minutes(Settings settings, String name) {
        return settings.number(name).orElseGet(() -> Settings.USUAL.number(name).orElseThrow());
    }

    /** A watched move by so many degrees, whichever way. */
    double watching(double degrees) {
        return move + watched * Math.abs(degrees) / TURN;
    }

    /** To turn until a known airfoil comes by: half a turn, taken all round. */
    double searching() {
        return turning(TURN / 2);
    }

    /** An unwatched move by so many degrees; nothing if it is none. */
    double turning(double degrees) {
        return degrees == 0 ? 0 : move + unwatched * Math.abs(degrees) / TURN;
    }
}
