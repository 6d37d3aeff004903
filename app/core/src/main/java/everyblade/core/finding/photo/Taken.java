package everyblade.core.finding.photo;

import everyblade.core.entry.Entry;
import everyblade.core.entry.FindingEntry;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Logged;
import everyblade.spi.Row;
import everyblade.spi.RowKind;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * When a picture that an entry names was taken, and where the scope tip and the rotor were then.
 *
 * @param entry that names it
 * @param at when, by the camera's clock if it wrote a time, else the time of the entry
 * @param byCamera whether the camera wrote it
 * @param place where the scope tip and the rotor were
 * @param stated the airfoil that a person named with it
 * @param disagrees whether the camera's time speaks against that; an entry may be typed long after, and never does
 */
public record Taken(
        int entry, Instant at, boolean byCamera, PhotoPlace place, Optional<Stated> stated, boolean disagrees) {

    /**
     * A picture as an entry names it.
     *
     * @param entry that names it, {@code photo} or {@code saw}
     * @param written when it was taken, as the camera wrote it; empty if it wrote nothing
     */
    public record Named(int entry, Optional<String> written) {}

    /** Those whose entries count, in their order. */
    public static List<Taken> of(Fold fold, List<Named> named) {
        CameraClock clock = CameraClock.of(fold);
        PhotoPlacing placing = PhotoPlacing.of(fold);
        return named.stream()
                .filter(picture -> !fold.isVoid(picture.entry()))
                .map(picture -> of(fold.entries().get(picture.entry() - 1), picture.written(), clock, placing))
                .toList();
    }

    private static Taken of(Logged logged, Optional<String> camera, CameraClock clock, PhotoPlacing placing) {
        Optional<Instant> written = camera.flatMap(clock::taken);
        Instant at = written.orElse(logged.at());
        PhotoPlace place = placing.at(at);
        int[] said = said(logged.entry(), place);
        boolean agrees = said.length == 0 || IntStream.of(said).anyMatch(place::agreesWith);
        RowKind kind = place.row().map(Row::kind).orElse(RowKind.ROTOR);
        return new Taken(
                logged.number(),
                at,
                written.isPresent(),
                place,
                said.length == 0
                        ? Optional.empty()
                        : Optional.of(new Stated(
                                kind,
                                said[0],
                                said.length == 1 ? OptionalInt.empty() : OptionalInt.of(said[said.length - 1]))),
                written.isPresent() && !agrees);
    }

    /** The airfoils that a person named; none if all of the row may be meant, or a row other than was in view. */
    private static int[] said(Entry entry, PhotoPlace place) {
        if (entry instanceof FindingEntry.Photo photo) {
            return photo.airfoil().stream().mapToInt(airfoil -> airfoil.value()).toArray();
        }
        FindingEntry.Saw saw = (FindingEntry.Saw) entry;
        boolean inView = saw.row().isEmpty()
                || place.row()
                        .filter(row -> row.id().equals(saw.row().get().value()))
                        .isPresent();
        if (!inView || saw.airfoils().first().isEmpty()) {
            return new int[0];
        }
        int first = saw.airfoils().first().get().value();
        int last = saw.airfoils().last().map(said -> said.value()).orElse(first);
        return first <= last ? IntStream.rangeClosed(first, last).toArray() : new int[0];
    }
}
