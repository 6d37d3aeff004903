package everyblade.picture.report;

import everyblade.core.entry.Entry;
import everyblade.core.entry.Refusal;
import everyblade.core.entry.ZoneSet;
import everyblade.core.entry.ZoneWords;
import everyblade.core.entry.Zoning;
import everyblade.core.finding.photo.CameraClock;
import everyblade.core.finding.photo.PhotoPlace;
import everyblade.core.finding.photo.PhotoPlacing;
import everyblade.core.turning.Logged;
import everyblade.spi.Row;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * A picture with where it was taken.
 *
 * @param shown the picture
 * @param logged the entry that names it
 * @param taken when, by the camera's clock if it wrote a time, else the time of the entry
 * @param byCamera whether the camera wrote it
 * @param place where the scope tip and the rotor were then
 */
record PlacedPhoto(ShownPhoto shown, Logged logged, Instant taken, boolean byCamera, PhotoPlace place) {

    /** Those of a job whose entries count. */
    static List<PlacedPhoto> of(Reported job) {
        CameraClock clock = CameraClock.of(job.fold());
        PhotoPlacing placing = PhotoPlacing.of(job.fold());
        return job.exhibits().photos().stream()
                .filter(photo -> !job.fold().isVoid(photo.entry()))
                .map(photo -> {
                    Logged logged = job.entry(photo.entry());
                    Optional<Instant> written = photo.taken().flatMap(clock::taken);
                    Instant taken = written.orElse(logged.at());
                    return new PlacedPhoto(photo, logged, taken, written.isPresent(), placing.at(taken));
                })
                .toList();
    }

    /** The airfoil that the entry names, confirmed by a person. */
    Optional<Integer> confirmed() {
        return logged.entry() instanceof Entry.Photo photo
                ? photo.airfoil().map(airfoil -> airfoil.value())
                : Optional.empty();
    }

    /**
     * What it shows, in a line. A person's word goes before what is likely by the time, and is doubted only if the
     * camera wrote that: an entry may be typed long after.
     */
    String airfoil() {
        if (logged.entry() instanceof Entry.Saw) {
            return logged.text();
        }
        if (confirmed().isEmpty()) {
            return place.airfoil().isPresent() ? place.airfoilText() + " (by the time)" : "no blade named or counted";
        }
        String word = place.row().map(row -> row.kind().airfoil()).orElse("blade");
        return word + " " + confirmed().get() + " (as entered)"
                + (!byCamera || place.agreesWith(confirmed().get()) ? "" : ", but by the time " + place.airfoilText());
    }

    /** The zones that the entry names, and how their row is divided. */
    Optional<Named> zone(Reported job) {
        Optional<Row> row = job.rowInView(logged.number())
                .map(id -> job.situation().engine().rows().get(id));
        if (row.isEmpty()
                || !(logged.entry() instanceof Entry.Photo photo)
                || photo.zone().isEmpty()) {
            return Optional.empty();
        }
        Zoning zoning = Zoning.of(row.get());
        try {
            return Optional.of(
                    new Named(zoning, ZoneWords.zone(zoning, photo.zone().get())));
        } catch (Refusal notOfThisRow) {
            return Optional.empty();
        }
    }

    /**
     * Zones of a row.
     *
     * @param zoning of the row
     * @param zones of it
     */
    record Named(Zoning zoning, ZoneSet zones) {}
}
