package everyblade.desktop.photo;

import everyblade.core.entry.Entry;
import everyblade.core.entry.Said;
import everyblade.core.finding.photo.CameraClock;
import everyblade.core.finding.photo.PhotoPlace;
import everyblade.core.finding.photo.PhotoPlacing;
import everyblade.core.turning.Fold;
import everyblade.record.KeptPhoto;
import everyblade.record.Line;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * A picture that an entry of a job names, with where it was taken.
 *
 * @param entry that names it
 * @param kept the picture as it was then
 * @param taken when, by the camera's clock if it wrote a time, else the time of the entry
 * @param byCamera whether the camera wrote it
 * @param place where the scope tip and the rotor were then
 * @param stated airfoil that a person named with it
 * @param zone that a person named with it, as typed
 */
public record JobPhoto(
        int entry,
        KeptPhoto kept,
        Instant taken,
        boolean byCamera,
        PhotoPlace place,
        Optional<Integer> stated,
        Optional<String> zone) {

    /** Those whose entries count, in the order of the entries. */
    public static List<JobPhoto> of(Fold fold, List<Line> lines) {
        CameraClock clock = CameraClock.of(fold);
        PhotoPlacing placing = PhotoPlacing.of(fold);
        return lines.stream()
                .filter(line -> line.entry().photo().isPresent() && !fold.isVoid(line.k()))
                .map(line -> of(line, clock, placing))
                .toList();
    }

    private static JobPhoto of(Line line, CameraClock clock, PhotoPlacing placing) {
        KeptPhoto kept = line.entry().photo().orElseThrow();
        Optional<Instant> written = kept.facts().taken().flatMap(clock::taken);
        Instant taken = written.orElse(line.at());
        Optional<Entry.Photo> named = line.means() instanceof Entry.Photo photo ? Optional.of(photo) : Optional.empty();
        return new JobPhoto(
                line.k(),
                kept,
                taken,
                written.isPresent(),
                placing.at(taken),
                named.flatMap(Entry.Photo::airfoil).map(Said::value),
                named.flatMap(Entry.Photo::zone).map(Said::value));
    }

    /** The airfoil that a person named, else the likely one. */
    public Optional<Integer> airfoil() {
        return stated.or(place::airfoil);
    }

    /** Whether the camera's time speaks against what a person named; an entry may be typed long after, and never does. */
    public boolean doubted() {
        return byCamera && stated.isPresent() && !place.agreesWith(stated.get());
    }
}
