package everyblade.core.entry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.Stream;

/** The fewest parts that make up some zones, the largest first. */
final class LargestParts {

    /** Some kinds of bands said, the others left out; what it is called as an entry says it. */
    private record Held(List<String> bands, ZoneSet zones) {

        Held within(String band, ZoneSet ofBand) {
            return new Held(Stream.concat(bands.stream(), Stream.of(band)).toList(), zones.intersection(ofBand));
        }

        String name() {
            return String.join("/", bands);
        }
    }

    private LargestParts() {}

    static List<ZonePhrase.Part> of(Zoning zoning, ZoneSet zones) {
        List<Held> within = parts(zoning).stream()
                .filter(part -> part.zones().minus(zones).isEmpty())
                .toList();
        List<Held> parts = new ArrayList<>();
        ZoneSet rest = zones;
        while (!rest.isEmpty()) {
            ZoneSet left = rest;
            Held largest = within.stream()
                    .max(Comparator.comparingInt((Held part) ->
                                    part.zones().intersection(left).size())
                            .thenComparing(part -> -part.name().length()))
                    .orElseThrow();
            parts.add(largest);
            rest = rest.minus(largest.zones());
        }
        return parts.stream().map(part -> ZonePhrase.named(part.name())).toList();
    }

    private static List<Held> parts(Zoning zoning) {
        List<Held> parts = List.of(new Held(List.of(), zoning.all()));
        parts = divided(parts, zoning.spans(), zoning::span);
        parts = divided(parts, zoning.sides(), zoning::side);
        return divided(parts, zoning.chords(), zoning::chord);
    }

    private static List<Held> divided(List<Held> parts, List<String> bands, IntFunction<ZoneSet> zonesOf) {
        List<Held> all = new ArrayList<>(parts);
        for (Held part : parts) {
            for (int band = 0; band < bands.size(); band++) {
                all.add(part.within(bands.get(band), zonesOf.apply(band)));
            }
        }
        return all;
    }
}
