package everyblade.cli;

import everyblade.picture.report.ShownPhoto;
import everyblade.record.JobFolder;
import everyblade.record.JournalLine;
import everyblade.record.KeptPhoto;
import everyblade.record.photo.Thumbnail;
import everyblade.session.job.OpenedJob;
import everyblade.session.photo.PhotoBytes;
import everyblade.words.Words;
import java.util.List;
import java.util.Optional;

/** The pictures that a job's entries name, made ready to be shown. */
final class JobPhotos {

    private static final int SMALL = 300;

    private JobPhotos() {}

    /** In the order of the entries, each with its small copy if it is there as it was kept. */
    static List<ShownPhoto> of(OpenedJob job, Words words) {
        return job.journal().lines().stream()
                .filter(line -> line.entry().photo().isPresent())
                .map(line -> shown(job.folder(), line, words))
                .toList();
    }

    private static ShownPhoto shown(JobFolder folder, JournalLine line, Words words) {
        KeptPhoto photo = line.entry().photo().orElseThrow();
        Optional<Thumbnail.Decoded> decoded = PhotoBytes.of(folder.path(), photo)
                .flatMap(bytes -> Thumbnail.decoded(bytes, SMALL, photo.facts().orientation()));
        return new ShownPhoto(
                line.k(),
                photo.file(),
                photo.facts().taken(),
                decoded.map(Thumbnail.Decoded::image),
                decoded.flatMap(Thumbnail.Decoded::damage).map(words::say));
    }
}
