package everyblade.core.finding.measure;

/**
 * A place of which only the incidence is known, not in which way it slants: a line there looks as long as it is, or
 * shorter down to the cosine of the incidence, and anything between is as likely.
 *
 * @param incidence between the line of sight and the surface's normal, degrees; below 90
 * @param distance from the scope tip, along its axis, mm, above 0; what counts is only how it compares with that of the
 *     known length
 * @param distanceError standard uncertainty of that, mm
 */
public record Slant(double incidence, double distance, double distanceError) implements Seen {

    public Slant {
        if (!(incidence >= 0 && incidence < 90 && distance > 0 && distanceError >= 0)) {
            throw new IllegalArgumentException("a surface is seen from in front of it, at a distance");
        }
    }

    @Override
    public Extension extension(PixelLine line) {
        double least = Math.cos(Math.toRadians(incidence));
        double shortening = (1 + least) / 2;
        double ofSlant = (1 - least) / 2 / Math.sqrt(3) / shortening;
        return new Extension(line.length() * distance / shortening, distanceError / distance, ofSlant);
    }
}
