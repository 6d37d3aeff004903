package everyblade.record;

import java.io.IOException;
import java.io.OutputStream;
import java.time.LocalDateTime;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * Packs a job into a zip: the same job gives the same bytes on every machine. So files stand in the order of their names,
 * bear no time, and are stored as they are: what a compressor makes of them depends on its version, and pictures, which are
 * most of a job, hardly get smaller.
 */
final class JobPack {

    /** One that every zip can tell, since the time of a file would be another on each machine. */
    private static final LocalDateTime NO_TIME = LocalDateTime.of(1980, 2, 1, 0, 0);

    private static final long MOST = (4L << 30) - (64L << 20);
    private static final int MOST_FILES = 60_000;

    private final JobFiles files;

    JobPack(JobFiles files) {
        this.files = files;
    }

    JobFolder.Packing write(OutputStream out) throws IOException {
        try {
            OwnFiles own = OwnFiles.of(files);
            if (own.largest().size() > MOST_FILES) {
                throw unfit(new FolderFlaw.TooManyFiles(MOST_FILES));
            }
            ZipOutputStream zip = new ZipOutputStream(out);
            zip.setMethod(ZipOutputStream.STORED);
            long all = 0;
            for (String name : own.largest().keySet()) {
                byte[] bytes = own.bytes(files, name);
                all += bytes.length;
                if (all > MOST) {
                    throw unfit(new FolderFlaw.TooLarge(MOST >> 20));
                }
                zip.putNextEntry(entry(name, bytes));
                zip.write(bytes);
                zip.closeEntry();
            }
            zip.finish();
            return new JobFolder.Packed(own.largest().size(), own.left());
        } catch (UnsoundJournal unread) {
            return new JobFolder.Refused(unread.problem());
        }
    }

    private static ZipEntry entry(String name, byte[] bytes) {
        CRC32 crc = new CRC32();
        crc.update(bytes);
        ZipEntry entry = new ZipEntry(name);
        entry.setTimeLocal(NO_TIME);
        entry.setSize(bytes.length);
        entry.setCrc(crc.getValue());
        return entry;
    }

    private UnsoundJournal unfit(FolderFlaw why) {
        return new UnsoundJournal(RecordProblem.inFile(
                RecordProblem.What.JOB_NOT_PACKED, files.root().toString(), why, Remedy.COPY_THE_FOLDER));
    }
}
