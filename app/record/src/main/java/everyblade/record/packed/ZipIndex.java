package everyblade.record.packed;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * What the central directory of a zip says of its entries, as PKWARE's APPNOTE 6.3.10 lays it out; and only if each entry
 * says the same at its own place and no two share bytes. So whoever reads an entry gets what everybody else gets, and
 * nothing can be far more than the zip holds. Zips beyond 4 GB or 65,534 entries, in parts, or encrypted are refused.
 */
final class ZipIndex {

    static final int STORED = 0;
    static final int DEFLATED = 8;

    private static final int END = 22;
    private static final int LONGEST_COMMENT = 0xffff;
    private static final int CENTRAL = 46;
    private static final int LOCAL = 30;
    private static final int ENCRYPTED = 0x2041;
    private static final int KIND_OF_FILE = 0xf000;
    private static final int LINK = 0xa000;
    private static final int PLAIN = 0x8000;
    private static final int FOLDER = 0x4000;

    private ZipIndex() {}

    /**
     * An entry.
     *
     * @param at where its bytes begin in the zip
     * @param packed how many bytes it takes there
     * @param size how many bytes it is unpacked
     */
    record Entry(String name, int method, long crc, long at, long packed, long size) {

        boolean isFolder() {
            return name.endsWith("/");
        }
    }

    static List<Entry> read(FileChannel zip) throws IOException, UnfitZip {
        ByteBuffer end = end(zip);
        int count = end.getShort(10) & 0xffff;
        long length = end.getInt(12) & 0xffffffffL;
        long start = end.getInt(16) & 0xffffffffL;
        if (count == 0xffff || length == 0xffffffffL || start == 0xffffffffL) {
            throw new UnfitZip(ZipFlaw.Whole.TOO_LARGE);
        }
        if (end.getInt(4) != 0 || (end.getShort(8) & 0xffff) != count || start + length > zip.size()) {
            throw damaged();
        }
        ByteBuffer directory = bytes(zip, start, Math.toIntExact(Math.min(length, Integer.MAX_VALUE - 8)));
        List<Entry> entries = new ArrayList<>();
        long free = 0;
        for (int i = 0; i < count; i++) {
            if (directory.remaining() < CENTRAL || directory.getInt(directory.position()) != 0x02014b50) {
                throw damaged();
            }
            Entry entry = entry(zip, directory);
            // As they are written: each after the one before, and all before the directory.
            if (entry.at() < free || entry.at() + entry.packed() > start) {
                throw new UnfitZip(ZipFlaw.Whole.OVERLAPPING);
            }
            free = entry.at() + entry.packed();
            entries.add(entry);
        }
        return entries;
    }

    /** The record that a zip ends with. */
    private static ByteBuffer end(FileChannel zip) throws IOException, UnfitZip {
        int length = (int) Math.min(zip.size(), END + LONGEST_COMMENT);
        ByteBuffer last = bytes(zip, zip.size() - length, length);
        for (int at = length - END; at >= 0; at--) {
            if (last.getInt(at) == 0x06054b50 && (last.getShort(at + 20) & 0xffff) == length - END - at) {
                return last.position(at).slice().order(ByteOrder.LITTLE_ENDIAN);
            }
        }
        throw new UnfitZip(ZipFlaw.Whole.NO_ZIP);
    }

    private static Entry entry(FileChannel zip, ByteBuffer directory) throws IOException, UnfitZip {
        int at = directory.position();
        int flags = directory.getShort(at + 8) & 0xffff;
        int method = directory.getShort(at + 10) & 0xffff;
        int nameLength = directory.getShort(at + 28) & 0xffff;
        int rest = (directory.getShort(at + 30) & 0xffff) + (directory.getShort(at + 32) & 0xffff);
        int kind = directory.getInt(at + 38) >>> 16 & KIND_OF_FILE;
        long local = directory.getInt(at + 42) & 0xffffffffL;
        if (directory.remaining() < CENTRAL + nameLength + rest) {
            throw damaged();
        }
        byte[] raw = new byte[nameLength];
        directory.position(at + CENTRAL).get(raw);
        directory.position(directory.position() + rest);
        String name = name(raw);
        if (kind == LINK) {
            throw UnfitZip.within(name, ZipFlaw.Kind.LINK);
        }
        if (kind != 0 && kind != PLAIN && kind != FOLDER) {
            throw UnfitZip.within(name, ZipFlaw.Kind.DEVICE);
        }
        if ((flags & ENCRYPTED) != 0) {
            throw new UnfitZip(ZipFlaw.Whole.ENCRYPTED);
        }
        if (method != STORED && method != DEFLATED) {
            throw UnfitZip.within(name, ZipFlaw.Kind.UNKNOWN_METHOD);
        }
        ByteBuffer here = bytes(zip, local, LOCAL + nameLength);
        byte[] sameName = new byte[nameLength];
        here.position(LOCAL).get(sameName);
        if (here.getInt(0) != 0x04034b50
                || (here.getShort(26) & 0xffff) != nameLength
                || (here.getShort(8) & 0xffff) != method
                || !java.util.Arrays.equals(raw, sameName)) {
            throw damaged();
        }
        return new Entry(
                name,
                method,
                directory.getInt(at + 16) & 0xffffffffL,
                local + LOCAL + nameLength + (here.getShort(28) & 0xffff),
                directory.getInt(at + 20) & 0xffffffffL,
                directory.getInt(at + 24) & 0xffffffffL);
    }

    private static String name(byte[] raw) throws UnfitZip {
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(raw))
                    .toString();
        } catch (CharacterCodingException unreadable) {
            throw new UnfitZip(ZipFlaw.Whole.NAME_NOT_UTF8);
        }
    }

    private static ByteBuffer bytes(FileChannel zip, long at, int length) throws IOException, UnfitZip {
        if (at < 0 || at + length > zip.size()) {
            throw damaged();
        }
        ByteBuffer bytes = ByteBuffer.allocate(length).order(ByteOrder.LITTLE_ENDIAN);
        while (bytes.hasRemaining()) {
            if (zip.read(bytes, at + bytes.position()) < 0) {
                throw damaged();
            }
        }
        return bytes.flip();
    }

    static UnfitZip damaged() {
        return new UnfitZip(ZipFlaw.Whole.DAMAGED);
    }
}
