package everyblade.window.view;

import everyblade.core.entry.EntryText;
import everyblade.core.entry.Kind;
import everyblade.core.entry.Refusal;
import everyblade.core.finding.Measured;
import everyblade.core.finding.photo.PhotoPlace;
import everyblade.session.JobState;
import everyblade.session.photo.Album;
import everyblade.session.photo.JobPhoto;
import everyblade.session.photo.KnownLength;
import everyblade.session.photo.PictureSize;
import everyblade.session.photo.Subject;
import everyblade.spi.Row;
import everyblade.window.map.CellAt;
import everyblade.words.Words;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A picture that is being looked at and measured in: what it shows, what was set and typed, and what comes of it.
 *
 * @param album of the job
 * @param photo that is looked at
 * @param typed beside it
 */
public record PictureTask(Album album, JobPhoto photo, Typed typed) {

    /**
     * What a person types beside a picture; blank is not said.
     *
     * @param airfoil that it shows
     * @param zone that it shows
     * @param known how long the known length is
     * @param kind of finding that is measured
     */
    public record Typed(String airfoil, String zone, String known, Kind kind) {}

    /** What is likely or was named already, to begin with. */
    public static Typed first(JobPhoto photo) {
        return new Typed(
                photo.airfoil().map(String::valueOf).orElse(""), photo.zone().orElse(""), "", Kind.NICK);
    }

    /** The picture of the airfoil of a cell, the last one if there are several; one of the same zone goes first. */
    public static Optional<JobPhoto> about(Album album, JobState state, CellAt cell) {
        List<JobPhoto> ofAirfoil = album.photos().stream()
                .filter(photo -> photo.place()
                        .row()
                        .filter(row -> row.id().equals(cell.row()))
                        .isPresent())
                .filter(photo ->
                        photo.airfoil().filter(n -> n == cell.airfoil()).isPresent())
                .toList();
        return ofAirfoil.stream()
                .filter(photo ->
                        Notes.cell(state, photo.entry()).filter(cell::equals).isPresent())
                .reduce((earlier, later) -> later)
                .or(() -> ofAirfoil.stream().reduce((earlier, later) -> later));
    }

    /**
     * What the picture shows, as typed; empty if no row was in view or no airfoil is said.
     *
     * @throws Refusal if the row has no such zone
     */
    public Optional<Subject> subject() throws Refusal {
        return Subject.of(
                photo,
                Optional.of(typed.airfoil().strip())
                        .filter(text -> text.matches("[0-9]{1,6}"))
                        .map(Integer::valueOf),
                Optional.of(typed.zone().strip()).filter(text -> !text.isEmpty()));
    }

    /** When and where it was taken, and what it likely shows, a line each. */
    public List<String> told(Words words, ZoneId zone) {
        PhotoPlace place = photo.place();
        List<String> lines = new ArrayList<>();
        lines.add(words.say(
                photo.byCamera() ? "picture.byCamera" : "picture.byEntry",
                words.time(photo.taken(), zone),
                photo.entry()));
        place.view()
                .ifPresentOrElse(
                        view -> lines.add(words.say(
                                "picture.view",
                                view.id(),
                                place.row().map(Row::name).orElse(view.row()))),
                        () -> lines.add(words.say("picture.noView")));
        place.shaftAngle()
                .ifPresent(angle -> lines.add(words.say(
                        place.moving() ? "picture.turning" : "picture.shaft",
                        words.number(angle, 1),
                        words.number(place.plusMinus(), 1))));
        lines.add(likely(words));
        if (photo.doubted()) {
            lines.add(words.say("picture.doubted", photo.stated().orElseThrow()));
        }
        return lines;
    }

    private String likely(Words words) {
        PhotoPlace place = photo.place();
        String likely = place.airfoil()
                .map(n -> words.say(
                        place.lost() ? "picture.likelyLost" : "picture.likely",
                        words.airfoil(place.row().orElseThrow()),
                        n,
                        place.airfoilsOff() > 0 ? " ± " + place.airfoilsOff() : ""))
                .orElseGet(() -> words.say("picture.nobodyCounted"));
        return photo.stated().map(n -> words.say("picture.stated", n, likely)).orElse(likely);
    }

    /** How long the known length is, as typed. */
    public Optional<Measured> known() {
        return KnownLength.of(typed.known());
    }

    /** The measured size, once everything that it takes is there. */
    public Optional<PictureSize> size(Marks marks, PictureSize.Surface surface) {
        Optional<Measured> known = known();
        return marks.known().isPresent() && marks.size().isPresent() && known.isPresent()
                ? Optional.of(PictureSize.of(
                        marks.size().get(), marks.known().get(), known.get(), surface, PictureSize.POINTING))
                : Optional.empty();
    }

    /** What is to be done next for a size. */
    public String next(Marks marks, Words words) {
        if (marks.known().isEmpty()) {
            return words.say("picture.setKnown");
        }
        if (known().isEmpty()) {
            return words.say("picture.typeKnown");
        }
        return words.say(marks.size().isEmpty() ? "picture.setSize" : "picture.enter");
    }

    /** The finding with its size, as an entry to go on with; what is not known is left to be typed. */
    public String finding(JobState state, Optional<Subject> subject, PictureSize size) {
        String length = " length " + size.text();
        return subject.map(shown -> CellWords.row(state, new CellAt(shown.row().id(), shown.airfoil(), 0))
                        + typed.kind().word() + " " + shown.airfoil() + " " + shown.zone() + length)
                .orElseGet(() -> typed.kind().word() + length);
    }

    /** The picture with the airfoil that it shows, as an entry; empty if another row is in view now than was then. */
    public Optional<String> confirmation(JobState state, Optional<Subject> subject) {
        return subject.filter(
                        shown -> CellWords.row(state, new CellAt(shown.row().id(), shown.airfoil(), 0))
                                .isEmpty())
                .map(shown -> "photo " + EntryText.name(photo.kept().file()) + " of " + shown.airfoil()
                        + (typed.zone().isBlank() ? "" : " " + typed.zone().strip()));
    }
}
