package everyblade.core.entry;

import everyblade.fact.Fact;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** Which zones of an airfoil, in as few words as a person would take. */
public sealed interface ZonePhrase extends Fact {

    /** As an entry says them, such as {@code tip and pressure/leading}; an entry that says so means the same zones. */
    String written();

    /** All zones of an airfoil. */
    enum Whole implements ZonePhrase {
        EVERYTHING;

        @Override
        public String written() {
            return "everything";
        }
    }

    /** Several parts together. */
    record Parts(List<Part> parts) implements ZonePhrase {

        public Parts {
            parts = List.copyOf(parts);
        }

        @Override
        public String written() {
            return parts.stream().map(Part::written).collect(Collectors.joining(" and "));
        }
    }

    /** Where these bands meet, at most one of each kind. */
    record Part(List<Band> bands) implements ZonePhrase {

        public Part {
            bands = List.copyOf(bands);
        }

        @Override
        public String written() {
            return bands.stream().map(Band::written).collect(Collectors.joining("/"));
        }
    }

    /** A band or a side. */
    sealed interface Band extends ZonePhrase {}

    /** One that has a name. */
    enum Named implements Band {
        ALL,
        ROOT,
        TIP,
        OUTER,
        INNER,
        PRESSURE,
        SUCTION,
        LEADING,
        MIDDLE,
        TRAILING,
        FORWARD,
        AFT;

        @Override
        public String written() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** One that is told by its number, such as {@code s3}, or that this row does not have. */
    record Other(String written) implements Band {}

    /** The largest parts that hold nothing else. */
    static ZonePhrase of(Zoning zoning, ZoneSet zones) {
        return zones.equals(zoning.all()) ? Whole.EVERYTHING : new Parts(LargestParts.of(zoning, zones));
    }

    /** A single zone by the name that it has in {@link Zoning#names()}, or a band by its own. */
    static Part named(String name) {
        return new Part(Arrays.stream(name.split("/")).map(ZonePhrase::band).toList());
    }

    private static Band band(String word) {
        Optional<Named> named = Arrays.stream(Named.values())
                .filter(band -> band.written().equals(word))
                .findFirst();
        return named.isPresent() ? named.get() : new Other(word);
    }
}
