package everyblade.session.photo;

import everyblade.core.entry.FindingEntry;
import everyblade.core.entry.Said;
import everyblade.core.finding.photo.PhotoPlace;
import everyblade.core.finding.photo.Taken;
import everyblade.core.turning.Fold;
import everyblade.record.JournalLine;
import everyblade.record.KeptPhoto;
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
 * @param doubted whether the camera's time speaks against what a person named
 */
public record JobPhoto(
        int entry,
        KeptPhoto kept,
        Instant taken,
        boolean byCamera,
        PhotoPlace place,
        Optional<Integer> stated,
        Optional<String> zone,
        boolean doubted) {

    /** Those whose entries count, in the order of the entries. */
    public static List<JobPhoto> of(Fold fold, List<JournalLine> lines) {
        return Taken.of(fold, named(lines)).stream()
                .map(taken -> of(lines.get(taken.entry() - 1), taken))
                .toList();
    }

    /** The pictures that lines of a journal name, as far as the camera tells of them. */
    public static List<Taken.Named> named(List<JournalLine> lines) {
        return lines.stream()
                .filter(line -> line.entry().photo().isPresent())
                .map(line -> new Taken.Named(
                        line.k(), line.entry().photo().orElseThrow().facts().taken()))
                .toList();
    }

    private static JobPhoto of(JournalLine line, Taken taken) {
        Optional<FindingEntry.Photo> named =
                line.means() instanceof FindingEntry.Photo photo ? Optional.of(photo) : Optional.empty();
        return new JobPhoto(
                line.k(),
                line.entry().photo().orElseThrow(),
                taken.at(),
                taken.byCamera(),
                taken.place(),
                named.flatMap(FindingEntry.Photo::airfoil).map(Said::value),
                named.flatMap(FindingEntry.Photo::zone).map(Said::value),
                taken.disagrees());
    }

    /** The airfoil that a person named, else the likely one. */
    public Optional<Integer> airfoil() {
        return stated.or(place::airfoil);
    }
}
