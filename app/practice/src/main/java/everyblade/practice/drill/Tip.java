package everyblade.practice.drill;

/**
 * How a scope tip is held: where a person's hands have brought it from the station of a view.
 *
 * @param view id of the view
 * @param station id of the station that it began at
 * @param push along the scope from there, mm, in positive
 * @param up bent towards the top of the picture, degrees
 * @param right bent to the right of the picture, degrees
 * @param roll of the whole scope, degrees, clockwise as one looks along it
 * @param round fed round the annulus, degrees, clockwise seen from aft
 */
public record Tip(String view, String station, double push, double up, double right, double roll, double round) {

    /** At a station of a view. */
    public static Tip at(String view, String station) {
        return new Tip(view, station, 0, 0, 0, 0, 0);
    }

    /** Pushed in, or pulled out. */
    public Tip pushed(double mm) {
        return new Tip(view, station, push + mm, up, right, roll, round);
    }

    /** Bent further. */
    public Tip bent(double moreUp, double moreRight) {
        return new Tip(view, station, push, up + moreUp, right + moreRight, roll, round);
    }

    /** Rolled further. */
    public Tip rolled(double degrees) {
        return new Tip(view, station, push, up, right, roll + degrees, round);
    }

    /** Fed round. */
    public Tip fed(double degrees) {
        return new Tip(view, station, push, up, right, roll, round + degrees);
    }

    /** Straightened, where it is. */
    public Tip straight() {
        return new Tip(view, station, push, 0, 0, roll, round);
    }
}
