package everyblade.picture.report;

import everyblade.core.entry.FindingEntry;
import everyblade.core.entry.Refusal;
import everyblade.core.entry.ZoneSet;
import everyblade.core.entry.ZoneWords;
import everyblade.core.entry.Zoning;
import everyblade.core.finding.photo.PhotoPlace;
import everyblade.core.finding.photo.Taken;
import everyblade.core.turning.Logged;
import everyblade.spi.Row;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A picture with where it was taken.
 *
 * @param shown the picture
 * @param logged the entry that names it
 * @param when it was taken, and where the scope tip and the rotor were then
 */
record PlacedPhoto(ShownPhoto shown, Logged logged, Taken when) {

    /** Those of a job whose entries count. */
    static List<PlacedPhoto> of(Reported job) {
        Map<Integer, ShownPhoto> shown =
                job.exhibits().photos().stream().collect(Collectors.toMap(ShownPhoto::entry, photo -> photo));
        return Taken.of(job.fold(), named(job.exhibits())).stream()
                .map(taken -> new PlacedPhoto(shown.get(taken.entry()), job.entry(taken.entry()), taken))
                .toList();
    }

    /** The pictures that entries name, as far as the camera tells of them. */
    static List<Taken.Named> named(Exhibits exhibits) {
        return exhibits.photos().stream()
                .map(photo -> new Taken.Named(photo.entry(), photo.taken()))
                .toList();
    }

    Instant taken() {
        return when.at();
    }

    boolean byCamera() {
        return when.byCamera();
    }

    PhotoPlace place() {
        return when.place();
    }

    /** The airfoil that the entry names, confirmed by a person. */
    Optional<Integer> confirmed() {
        return logged.entry() instanceof FindingEntry.Photo photo
                ? photo.airfoil().map(airfoil -> airfoil.value())
                : Optional.empty();
    }

    /**
     * What it shows, in a line. A person's word goes before what is likely by the time, and is doubted only if the
     * camera wrote that: an entry may be typed long after.
     */
    String airfoil(Reported job) {
        if (logged.entry() instanceof FindingEntry.Saw) {
            return logged.text();
        }
        if (confirmed().isEmpty()) {
            return place().airfoil().isPresent() ? job.say("sheet.byTime", place().likely()) : job.say("sheet.unknown");
        }
        String entered = job.say(
                "sheet.entered",
                place().row().map(job.map()::airfoil).orElse(job.say("sheet.blade")),
                confirmed().get());
        return when.disagrees() ? job.say("sheet.but", entered, place().likely()) : entered;
    }

    /** The zones that the entry names, and how their row is divided. */
    Optional<Named> zone(Reported job) {
        Optional<Row> row = job.rowInView(logged.number())
                .map(id -> job.situation().engine().rows().get(id));
        if (row.isEmpty()
                || !(logged.entry() instanceof FindingEntry.Photo photo)
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
