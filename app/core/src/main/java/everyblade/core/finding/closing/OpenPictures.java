package everyblade.core.finding.closing;

import everyblade.core.entry.Entry;
import everyblade.core.entry.Stated;
import everyblade.core.finding.closing.OpenItem.Kind;
import everyblade.core.finding.photo.Taken;
import everyblade.core.turning.EntryTime;
import everyblade.core.turning.Fold;
import everyblade.core.turning.Logged;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * Pictures whose own time speaks against the entry that names them: taken on another day, or while another airfoil stood
 * in view.
 *
 * @param fold of the journal
 * @param pictures that its entries name
 */
record OpenPictures(Fold fold, List<Taken> pictures) {

    /** A camera's clock may be that of any zone; what is further off was taken on another day. */
    private static final Duration ANY_ZONE = Duration.ofHours(18);

    List<OpenItem> items() {
        return pictures.stream().flatMap(picture -> item(picture).stream()).toList();
    }

    private Optional<OpenItem> item(Taken picture) {
        Logged logged = fold.entries().get(picture.entry() - 1);
        Instant begun = fold.entries().get(0).at();
        if (!picture.byCamera()) {
            return Optional.empty();
        }
        boolean before = picture.at().isBefore(begun.minus(ANY_ZONE));
        if (before || picture.at().isAfter(logged.at().plus(ANY_ZONE))) {
            return Optional.of(item(
                    logged,
                    new PictureProblem.OtherDay(
                            file(logged.entry()),
                            EntryTime.told(picture.at()),
                            before,
                            EntryTime.told(before ? begun : logged.at()))));
        }
        return picture.disagrees()
                ? Optional.of(item(
                        logged,
                        new PictureProblem.OtherAirfoil(
                                file(logged.entry()),
                                picture.stated().orElseThrow(),
                                EntryTime.told(picture.at()),
                                picture.place().likely())))
                : Optional.empty();
    }

    private OpenItem item(Logged logged, PictureProblem what) {
        return new Answered(fold).item(Kind.PHOTO, logged, what, Optional.empty(), ToDo.Advice.NAME_RIGHT_PICTURE);
    }

    private static String file(Entry entry) {
        return Stated.file(entry).orElseThrow().value();
    }
}
