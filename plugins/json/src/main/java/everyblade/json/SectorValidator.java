package everyblade.json;

import everyblade.spi.Station;
import everyblade.spi.Station.Sector;
import everyblade.spi.View;
import java.util.List;
import java.util.Locale;

/** Judges the clock sectors in which the stations of a travelling view hold: at every angle just one should. */
record SectorValidator(ProblemLog log) {

    void judge(Located<View> located) {
        View view = located.value();
        List<Station> stations = view.stations();
        if (!view.travels()) {
            for (int i = 0; i < stations.size(); i++) {
                if (stations.get(i).forClock().isPresent()) {
                    log.warning(
                            "sector-without-travel",
                            located.from().placeAt("/stations/" + i + "/forClock"),
                            ViewValidator.named(view) + " states a sector for its station "
                                    + Wording.plain(stations.get(i).id()) + " but does not travel",
                            "the scope tip stays where it was put",
                            "delete \"forClock\" or set \"travels\" to true");
                }
            }
            return;
        }
        if (!stations.isEmpty()
                && stations.stream().allMatch(one -> one.forClock().isPresent())) {
            List<Sector> sectors =
                    stations.stream().map(one -> one.forClock().orElseThrow()).toList();
            warnOfGap(located, sectors);
            warnOfOverlap(located, sectors);
        }
    }

    /** The end of a sector that lies in no other one is where a gap begins. */
    private void warnOfGap(Located<View> view, List<Sector> sectors) {
        sectors.stream()
                .filter(one -> length(one) < 360)
                .map(Sector::to)
                .filter(end -> sectors.stream().noneMatch(other -> from(other, end) < length(other)))
                .findFirst()
                .ifPresent(end -> log.warning(
                        "sectors-leave-gap",
                        view.from().placeOf("stations"),
                        "no station of " + ViewValidator.named(view.value()) + " holds beyond "
                                + String.format(Locale.ROOT, "%.6g°", end),
                        "what the scope tip shows there is not known",
                        "widen a \"forClock\" or add a station"));
    }

    private void warnOfOverlap(Located<View> view, List<Sector> sectors) {
        for (int i = 1; i < sectors.size(); i++) {
            Sector one = sectors.get(i);
            boolean shared = sectors.subList(0, i).stream()
                    .anyMatch(
                            other -> from(other, one.from()) < length(other) || from(one, other.from()) < length(one));
            if (shared) {
                log.warning(
                        "sectors-overlap",
                        view.from().placeAt("/stations/" + i + "/forClock"),
                        "two stations of " + ViewValidator.named(view.value()) + " hold at the same clock angles",
                        "the scope tip is at one place at a time",
                        "let one sector begin where the other ends");
                return;
            }
        }
    }

    /** Degrees clockwise from where a sector begins, 0 to below 360. */
    private static double from(Sector sector, double clock) {
        double degrees = (clock - sector.from()) % 360;
        return degrees < 0 ? degrees + 360 : degrees;
    }

    /** Degrees; a sector that ends where it begins is a full turn if that is written as such, else nothing. */
    private static double length(Sector sector) {
        double degrees = from(sector, sector.to());
        return degrees == 0 && sector.to() != sector.from() ? 360 : degrees;
    }
}
