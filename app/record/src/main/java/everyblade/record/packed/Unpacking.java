package everyblade.record.packed;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.zip.CRC32;
import java.util.zip.Inflater;
import java.util.zip.InflaterInputStream;
import java.util.zip.ZipException;

/**
 * Makes a folder of a packed job that somebody may have sent: everything is judged before anything is written, names by
 * {@link PackedName}, sizes by what such files have, and no file may be more than a hundred times what it takes in the zip.
 */
public final class Unpacking {

    private static final long MOST = 4L << 30;
    private static final long MOST_TIMES = 100;
    private static final long SMALL = 1 << 20;
    private static final int CHUNK = 1 << 16;

    private Unpacking() {}

    /**
     * Unpacks a job.
     *
     * @param folder an empty folder of our own
     * @throws UnfitZip if it is no packed job, or not a sound one; the folder may then hold part of it
     */
    public static void into(Path folder, Path zip) throws IOException, UnfitZip {
        try (FileChannel channel = FileChannel.open(zip, StandardOpenOption.READ)) {
            List<ZipIndex.Entry> entries = ZipIndex.read(channel);
            judge(entries);
            for (ZipIndex.Entry entry : entries) {
                if (!entry.isFolder()) {
                    Path place = folder.resolve(entry.name());
                    Files.createDirectories(place.getParent());
                    unpack(channel, entry, place);
                }
            }
        }
    }

    private static void judge(List<ZipIndex.Entry> entries) throws UnfitZip {
        Set<String> names = new HashSet<>();
        long all = 0;
        for (ZipIndex.Entry entry : entries) {
            if (!names.add(entry.name().toLowerCase(Locale.ROOT))) {
                throw UnfitZip.within(entry.name(), ZipFlaw.Kind.TWICE);
            }
            if (entry.isFolder() && entry.size() == 0 && isFolderOfAJob(entry.name())) {
                continue;
            }
            long largest = PackedName.largest(entry.name())
                    .orElseThrow(() -> UnfitZip.within(entry.name(), ZipFlaw.Kind.NOT_OF_A_JOB));
            boolean swells = entry.size() > SMALL && entry.size() > entry.packed() * MOST_TIMES;
            all += entry.size();
            if (entry.size() > largest || swells || all > MOST) {
                throw new UnfitZip(new ZipFlaw.Swells(UnfitZip.plain(entry.name()), entry.size() >> 20));
            }
        }
        if (!names.contains("journal.jsonl")) {
            throw new UnfitZip(ZipFlaw.Whole.NO_JOURNAL);
        }
    }

    private static boolean isFolderOfAJob(String name) {
        return PackedName.FOLDERS.contains(name.substring(0, name.length() - 1));
    }

    private static void unpack(FileChannel zip, ZipIndex.Entry entry, Path place) throws IOException, UnfitZip {
        Inflater inflater = new Inflater(true);
        CRC32 crc = new CRC32();
        long length = 0;
        try (InputStream raw = new Part(zip, entry.at(), entry.at() + entry.packed());
                InputStream in =
                        entry.method() == ZipIndex.DEFLATED ? new InflaterInputStream(raw, inflater, CHUNK) : raw;
                OutputStream out =
                        Files.newOutputStream(place, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            byte[] chunk = new byte[CHUNK];
            for (int read = in.read(chunk); read >= 0 && length <= entry.size(); read = in.read(chunk)) {
                length += read;
                crc.update(chunk, 0, read);
                out.write(chunk, 0, read);
            }
        } catch (ZipException | java.io.EOFException damaged) {
            throw ZipIndex.damaged();
        } finally {
            inflater.end();
        }
        if (length != entry.size() || crc.getValue() != entry.crc()) {
            throw ZipIndex.damaged();
        }
    }

    /** A part of a file as a stream. */
    private static final class Part extends InputStream {

        private final FileChannel file;
        private final long end;
        private long at;

        Part(FileChannel file, long from, long end) {
            this.file = file;
            this.at = from;
            this.end = end;
        }

        @Override
        public int read() throws IOException {
            byte[] one = new byte[1];
            return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
        }

        @Override
        public int read(byte[] into, int from, int length) throws IOException {
            int most = (int) Math.min(length, end - at);
            if (most <= 0) {
                return -1;
            }
            int read = file.read(ByteBuffer.wrap(into, from, most), at);
            at += Math.max(0, read);
            return read;
        }
    }
}
