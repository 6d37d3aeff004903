package everyblade.core.move;

import everyblade.core.entry.ZoneSet;
import everyblade.core.entry.Zoning;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;

/** Zones in the words of the entry {@code watch}: bands of one kind unite, those of different kinds intersect. */
public final class WatchWords {

    private WatchWords() {}

    /** The fewest words that say exactly these zones, at least one of them; {@code all} for every zone. */
    public static List<String> of(Zoning zoning, ZoneSet zones) {
        if (zones.equals(zoning.all())) {
            return List.of("all");
        }
        List<String> words = new ArrayList<>();
        ZoneSet said = zoning.all();
        for (Kind kind : List.of(
                new Kind(zoning.spans(), zoning::span),
                new Kind(zoning.sides(), zoning::side),
                new Kind(zoning.chords(), zoning::chord))) {
            List<Integer> bands = kind.meeting(zones);
            if (bands.size() < kind.words().size()) {
                bands.forEach(band -> words.add(kind.words().get(band)));
                said = said.intersection(kind.of(bands));
            }
        }
        return said.equals(zones) ? words : names(zoning, zones);
    }

    private static List<String> names(Zoning zoning, ZoneSet zones) {
        List<String> names = new ArrayList<>();
        for (int zone = 0; zone < zoning.size(); zone++) {
            if (zones.contains(zone)) {
                names.add(zoning.names().get(zone));
            }
        }
        return names;
    }

    /** One way in which a row is divided. */
    private record Kind(List<String> words, IntFunction<ZoneSet> zones) {

        List<Integer> meeting(ZoneSet some) {
            List<Integer> bands = new ArrayList<>();
            for (int band = 0; band < words.size(); band++) {
                if (!zones.apply(band).intersection(some).isEmpty()) {
                    bands.add(band);
                }
            }
            return bands;
        }

        ZoneSet of(List<Integer> bands) {
            return bands.stream().map(zones::apply).reduce(ZoneSet.NONE, ZoneSet::union);
        }
    }
}
