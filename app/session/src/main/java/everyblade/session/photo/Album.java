package everyblade.session.photo;

import everyblade.core.sight.ViewScene;
import everyblade.core.turning.Fold;
import everyblade.record.photo.PhotoName;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * A job's pictures with what is needed to show and measure them; immutable.
 *
 * @param folder of the job
 * @param fold of its entries
 * @param scene the surfaces of its engine
 * @param photos in the order of the entries
 */
public record Album(Path folder, Fold fold, ViewScene scene, List<JobPhoto> photos) {

    public Album {
        photos = List.copyOf(photos);
    }

    /** The picture that an entry of this number names, or else the last one of a file of this name. */
    public Optional<JobPhoto> find(String named) {
        return photos.stream()
                .filter(photo -> String.valueOf(photo.entry()).equals(named))
                .findFirst()
                .or(() -> photos.stream()
                        .filter(photo -> photo.kept().file().equals(PhotoName.of(named)))
                        .reduce((earlier, later) -> later));
    }
}
