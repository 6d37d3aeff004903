package everyblade.json;

import everyblade.spi.Station;
import everyblade.spi.Station.Heading;
import everyblade.spi.Station.Sector;
import everyblade.spi.Station.Tolerance;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads poses of the scope tip. */
final class StationReader {

    /** Sine of the smallest angle between two headings that still tells which way is up. */
    private static final double LEAST_SINE = 1e-6;

    private static final Tolerance TYPICAL = new Tolerance(0.5, 2);

    private StationReader() {}

    static List<Station> stations(Fields view) {
        Ids ids = new Ids("station of " + view.subject(), Set.of());
        List<Station> stations = new ArrayList<>();
        List<Fields> objects =
                view.objects("stations", "station", "id", "x", "r", "clock", "forward", "up", "within", "forClock");
        for (Fields fields : objects) {
            String id = ids.required(fields);
            Optional<Heading> forward = heading(fields, "forward");
            Optional<Heading> up = heading(fields, "up");
            boolean bothPoint = pointsSomewhere(fields, "forward", forward) & pointsSomewhere(fields, "up", up);
            if (bothPoint && areParallel(forward.orElseThrow(), up.orElseThrow())) {
                fields.log()
                        .error(
                                "parallel-headings",
                                fields.place("up"),
                                "\"up\" of " + fields.subject() + " lies along \"forward\"",
                                "the picture would have no top",
                                "correct one of the two");
            }
            Heading none = new Heading(0, 0, 0);
            stations.add(new Station(
                    id,
                    fields.requiredNumber("x", Range.AXIAL),
                    fields.requiredNumber("r", Range.LENGTH),
                    fields.requiredNumber("clock", Range.ANGLE),
                    forward.orElse(none),
                    up.orElse(none),
                    within(fields),
                    forClock(fields)));
        }
        return stations;
    }

    private static Optional<Heading> heading(Fields station, String key) {
        return station.required(key)
                .flatMap(json -> Tuples.tuple(
                        station, key, json, "[axial, tangential, radial]", Range.HEADING, Range.HEADING, Range.HEADING))
                .map(parts -> new Heading(parts[0], parts[1], parts[2]));
    }

    private static boolean pointsSomewhere(Fields station, String key, Optional<Heading> heading) {
        boolean points = heading.filter(one -> length(one) > 0).isPresent();
        if (heading.isPresent() && !points) {
            station.log()
                    .error(
                            "heading-without-length",
                            station.place(key),
                            Wording.quoted(key) + " of " + station.subject() + " is zero in every part",
                            "it points nowhere",
                            "write its axial, tangential and radial parts");
        }
        return points;
    }

    private static boolean areParallel(Heading a, Heading b) {
        double axial = a.tangential() * b.radial() - a.radial() * b.tangential();
        double tangential = a.radial() * b.axial() - a.axial() * b.radial();
        double radial = a.axial() * b.tangential() - a.tangential() * b.axial();
        return !(length(axial, tangential, radial) > LEAST_SINE * length(a) * length(b));
    }

    private static double length(Heading heading) {
        return length(heading.axial(), heading.tangential(), heading.radial());
    }

    private static double length(double x, double y, double z) {
        return Math.hypot(Math.hypot(x, y), z);
    }

    /** As far off as a careful hand holds a scope tip; that it stands exactly has to be said. */
    private static Tolerance within(Fields station) {
        Optional<Fields> stated = station.present("within")
                .flatMap(json -> station.object("tolerance of " + station.subject(), json, "mm", "deg"));
        boolean whole = stated.isPresent()
                && stated.get().present("mm").isPresent()
                && stated.get().present("deg").isPresent();
        if (!whole && station.present("within").isPresent() == stated.isPresent()) {
            station.log()
                    .warning(
                            "tolerance-not-stated",
                            station.present("within").isPresent()
                                    ? station.place("within")
                                    : station.object().place(),
                            station.subject() + " does not say how far off the scope tip may be",
                            "nobody holds one exactly, so that ± " + TYPICAL.mm() + " mm and ± " + TYPICAL.deg()
                                    + "° are taken for what is not stated",
                            "add \"within\" with \"mm\" and \"deg\"; 0 says that it stands exactly");
        }
        return stated.map(fields -> new Tolerance(
                        fields.number("mm", TYPICAL.mm(), Range.LENGTH),
                        fields.number("deg", TYPICAL.deg(), Range.closed(0, 90))))
                .orElse(TYPICAL);
    }

    private static Optional<Sector> forClock(Fields station) {
        return station.stated("forClock")
                .flatMap(
                        json -> Tuples.tuple(station, "forClock", json, "[from, to] or null", Range.ANGLE, Range.ANGLE))
                .map(ends -> new Sector(ends[0], ends[1]));
    }
}
