package shaftwright.xlsx;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.zip.CRC32;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;
import org.apache.commons.compress.archivers.zip.UnparseableExtraFieldData;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;
import org.apache.commons.compress.archivers.zip.ZipExtraField;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.apache.commons.compress.utils.SeekableInMemoryByteChannel;

/**
 * The bytes of a zip archive, read once, with its entries; writes the same archive with some
 * entries' content replaced.
 *
 * <p>Reads by hand what archive libraries let pass: entries that overlap, stand there twice or
 * under two names, sizes that nothing legitimate has. Layout: PKWARE APPNOTE 6.3.10, sections 4.3
 * and 4.5.3.
 */
final class ZipSnapshot {
    static final String A_WORKBOOK = "an .xlsx workbook";

    /** Largest archive read, and largest part inflated; a sheet of 100,000 rows is near 30 MB. */
    private static final long LARGEST_FILE = 512L << 20;

    private static final long LARGEST_PART = 512L << 20;
    private static final long LARGEST_TOTAL = 4L << 30;

    /** Ratio refused for parts above the size; our sheets reach 20, deflate's utmost is 1032. */
    private static final long BOMB_RATIO = 400;

    private static final long BOMB_SIZE = 32L << 20;

    private static final int BUFFER = 32 * 1024;

    private static final int LOCAL = 0x04034b50;
    private static final int CENTRAL = 0x02014b50;
    private static final int END = 0x06054b50;
    private static final int LOCATOR = 0x07064b50;
    private static final int WIDE_END = 0x06064b50;
    private static final int LOCATOR_LENGTH = 20;
    private static final int WIDE_END_LENGTH = 56;
    private static final int MOST_ENTRIES = 65_534;
    private static final int LOCAL_LENGTH = 30;
    private static final int CENTRAL_LENGTH = 46;
    private static final int END_LENGTH = 22;
    private static final int ENCRYPTED = 1;
    private static final int ZIP64_EXTRA = 1;

    /** What a 32-bit field holds whose value is in a 64-bit one elsewhere. */
    private static final long FULL = 0xFFFFFFFFL;

    private final String title;
    private final byte[] bytes;
    private final int directory;
    private final int end;
    private int count;
    private final List<ZipEntryRecord> entries = new ArrayList<>();
    private final Map<String, ZipEntryRecord> byName = new HashMap<>();

    /** Entries whose checksum was found right, by where they start. */
    private final Set<Integer> sound = ConcurrentHashMap.newKeySet();

    /** Where each local header's region ends: the next one's start, in the entries' file order. */
    private int[] starts = {};

    private ZipSnapshot(String title, byte[] bytes) {
        this.title = title;
        this.bytes = bytes;
        this.end = findEnd();
        this.directory = findDirectory();
        readDirectory();
        checkRegions();
    }

    /**
     * Reads the archive's directory.
     *
     * @throws UnreadableBookException if it is no whole zip archive, or one that plays tricks:
     *     duplicate, encrypted or overlapping entries, paths that leave the archive, sizes that no
     *     workbook has
     */
    static ZipSnapshot of(String title, byte[] bytes) {
        if (!FileKind.startsLikeZip(bytes)) {
            throw new UnreadableBookException(title, FileKind.describe(bytes), A_WORKBOOK);
        }
        if (bytes.length > LARGEST_FILE) {
            throw new UnreadableBookException(title, "more than 512 MB", A_WORKBOOK);
        }
        return new ZipSnapshot(title, bytes);
    }

    /** Entries in directory order. */
    Collection<ZipEntryRecord> entries() {
        return Collections.unmodifiableList(entries);
    }

    /** The entry of this part, upper and lower case being the same (ECMA-376 part 2), or null. */
    ZipEntryRecord find(String part) {
        return byName.get(key(part));
    }

    private static String key(String name) {
        return name.toLowerCase(Locale.ROOT);
    }

    /** The compressed size, as a hint for buffers. */
    static int hint(ZipEntryRecord entry) {
        return entry.compressedSize() + entry.compressedSize() / 2 + 64;
    }

    /** A part's whole text, its checksum verified. */
    PartText text(ZipEntryRecord entry) {
        return PartText.of(title, entry.name(), inflate(entry));
    }

    /** A part's whole content, its checksum verified. */
    byte[] inflate(ZipEntryRecord entry) {
        refuseBomb(entry);
        int from = dataOffset(entry);
        byte[] content;
        if (entry.method() == 0) {
            content = Arrays.copyOfRange(bytes, from, from + entry.compressedSize());
        } else if (entry.method() == 8) {
            content = inflate(entry, from);
        } else {
            throw damaged("part " + entry.name() + " compressed by method " + entry.method());
        }
        CRC32 crc = new CRC32();
        crc.update(content, 0, content.length);
        if ((int) crc.getValue() != entry.crc() || content.length != entry.size()) {
            throw wrongChecksum(entry);
        }
        sound.add(entry.local());
        return content;
    }

    private UnreadableBookException wrongChecksum(ZipEntryRecord entry) {
        return damaged("part " + entry.name() + " with a wrong checksum");
    }

    /**
     * Verifies the checksums of all entries that were not inflated yet. Those that another archive,
     * already verified, has byte for byte the same are sound without it. An entry compressed by a
     * method of which nothing is known here is left to those who know it.
     *
     * @throws UnreadableBookException naming the first one that is damaged
     */
    void verify(Optional<ZipSnapshot> verified) {
        for (ZipEntryRecord entry : entries) {
            boolean known =
                    sound.contains(entry.local())
                            || (verified.isPresent() && sameAsIn(verified.get(), entry));
            if (!known && (entry.method() == 0 || entry.method() == 8)) {
                ends(entry);
            }
        }
    }

    private boolean sameAsIn(ZipSnapshot other, ZipEntryRecord entry) {
        ZipEntryRecord same = other.find(entry.name());
        if (same == null
                || same.method() != entry.method()
                || same.crc() != entry.crc()
                || same.size() != entry.size()) {
            return false;
        }
        int from = dataOffset(entry);
        int otherFrom = other.dataOffset(same);
        return Arrays.equals(
                bytes,
                from,
                from + entry.compressedSize(),
                other.bytes,
                otherFrom,
                otherFrom + same.compressedSize());
    }

    /**
     * How a part's content begins and ends, its checksum verified, whatever its size: no more than
     * that is kept.
     */
    PartEnds ends(ZipEntryRecord entry) {
        PartEnds ends = new PartEnds();
        CRC32 crc = new CRC32();
        long size = 0;
        byte[] buffer = new byte[BUFFER];
        Inflater inflater = new Inflater(true);
        try {
            inflater.setInput(bytes, dataOffset(entry), entry.compressedSize());
            int at = dataOffset(entry);
            int stop = at + entry.compressedSize();
            boolean more = true;
            while (more) {
                int count;
                if (entry.method() == 0) {
                    count = Math.min(buffer.length, stop - at);
                    System.arraycopy(bytes, at, buffer, 0, count);
                    at += count;
                } else {
                    count = inflater.inflate(buffer);
                }
                crc.update(buffer, 0, count);
                ends.add(buffer, count);
                size += count;
                more = count > 0;
            }
        } catch (DataFormatException e) {
            throw new UnreadableBookException(
                    title, "part " + entry.name() + " damaged", A_WORKBOOK, e);
        } finally {
            inflater.end();
        }
        if ((int) crc.getValue() != entry.crc() || size != (entry.size() & FULL)) {
            throw wrongChecksum(entry);
        }
        sound.add(entry.local());
        return ends;
    }

    private byte[] inflate(ZipEntryRecord entry, int from) {
        byte[] content = new byte[entry.size()];
        Inflater inflater = new Inflater(true);
        try {
            inflater.setInput(bytes, from, entry.compressedSize());
            int done = 0;
            while (done < content.length && !inflater.finished()) {
                int count = inflater.inflate(content, done, content.length - done);
                if (count == 0 && (inflater.needsInput() || inflater.needsDictionary())) {
                    break;
                }
                done += count;
            }
            if (done < content.length) {
                throw damaged("part " + entry.name() + " cut off");
            }
            return content;
        } catch (DataFormatException e) {
            throw new UnreadableBookException(
                    title, "part " + entry.name() + " damaged", A_WORKBOOK, e);
        } finally {
            inflater.end();
        }
    }

    /** An inflater over a part that is not needed as a whole; the caller ends it. */
    Inflater inflater(ZipEntryRecord entry) {
        refuseBomb(entry);
        Inflater inflater = new Inflater(true);
        inflater.setInput(bytes, dataOffset(entry), entry.compressedSize());
        return inflater;
    }

    private void refuseBomb(ZipEntryRecord entry) {
        long size = entry.size() & 0xFFFFFFFFL;
        if (size > LARGEST_PART
                || (size > BOMB_SIZE && size / BOMB_RATIO > entry.compressedSize())) {
            throw new UnreadableBookException(
                    title,
                    "part " + entry.name() + " inflating to " + (size >> 20) + " MB",
                    "the sizes of a workbook (this looks like a decompression bomb)");
        }
    }

    /**
     * Writes the archive with these parts' content replaced. Order, times, comments and extra
     * fields of all entries stay, and so do the compressed bytes of all others; sizes that stood
     * behind an entry's bytes come to stand before them.
     */
    void writeTo(OutputStream out, Map<String, Deflated> replaced) throws IOException {
        Map<Long, ZipEntryRecord> byLocal = new HashMap<>();
        entries.forEach(entry -> byLocal.put((long) entry.local(), entry));
        ZipFile.Builder source =
                ZipFile.builder().setSeekableByteChannel(new SeekableInMemoryByteChannel(bytes));
        ZipArchiveOutputStream copy = new ZipArchiveOutputStream(out);
        try (ZipFile zip = source.get()) {
            copy.setComment(comment());
            for (ZipArchiveEntry entry : Collections.list(zip.getEntriesInPhysicalOrder())) {
                ZipEntryRecord record = byLocal.get(entry.getLocalHeaderOffset());
                entry.setExtraFields(new ZipExtraField[] {extra(record)});
                Deflated content = replaced.get(record.name());
                if (content == null) {
                    copy.addRawArchiveEntry(entry, zip.getRawInputStream(entry));
                } else {
                    entry.setMethod(ZipArchiveOutputStream.DEFLATED);
                    entry.setCrc(content.crc() & FULL);
                    entry.setSize(content.size());
                    entry.setCompressedSize(content.compressedSize());
                    copy.addRawArchiveEntry(entry, content.compressed());
                }
            }
        }
        copy.finish();
    }

    /**
     * What an entry's two headers hold beside the usual, as it is: parsed, it comes out changed.
     */
    private ZipExtraField extra(ZipEntryRecord entry) {
        UnparseableExtraFieldData extra = new UnparseableExtraFieldData();
        int local = entry.local();
        byte[] here = withoutZip64(local + LOCAL_LENGTH + u16(local + 26), u16(local + 28));
        extra.parseFromLocalFileData(here, 0, here.length);
        int central = entry.central();
        byte[] there =
                withoutZip64(central + CENTRAL_LENGTH + u16(central + 28), u16(central + 30));
        extra.parseFromCentralDirectoryData(there, 0, there.length);
        return extra;
    }

    /** Extra fields but that of sizes of 64 bits, which are written anew where they are needed. */
    private byte[] withoutZip64(int from, int length) {
        ByteArrayOutputStream kept = new ByteArrayOutputStream(length);
        int at = from;
        while (at + 4 <= from + length) {
            int field = Math.min(4 + u16(at + 2), from + length - at);
            if (u16(at) != ZIP64_EXTRA) {
                kept.write(bytes, at, field);
            }
            at += field;
        }
        kept.write(bytes, at, from + length - at);
        return kept.toByteArray();
    }

    /** The archive's own comment, which ends it. */
    private String comment() {
        int from = end + END_LENGTH;
        return new String(bytes, from, bytes.length - from, StandardCharsets.UTF_8);
    }

    private int findEnd() {
        int lowest = Math.max(0, bytes.length - END_LENGTH - 0xFFFF);
        for (int at = bytes.length - END_LENGTH; at >= lowest; at--) {
            if (i32(at) == END && at + END_LENGTH + u16(at + 20) == bytes.length) {
                return at;
            }
        }
        int behind = behindTheEnd();
        throw damaged(
                behind < 0
                        ? "a zip archive whose end is missing (a copy or download cut off?)"
                        : counted(behind)
                                + " behind the end of the zip archive, added by another program or"
                                + " on the way here");
    }

    private static String counted(int bytes) {
        return bytes == 1 ? "1 byte" : bytes + " bytes";
    }

    /** How much stands behind a whole archive; -1 where there is none. */
    private int behindTheEnd() {
        for (int at = bytes.length - END_LENGTH; at >= 0; at--) {
            if (bytes[at] == 'P' && i32(at) == END) {
                long directory = u32(at + 16) + u32(at + 12);
                int stop = at + END_LENGTH + u16(at + 20);
                if (directory <= at && i32((int) u32(at + 16)) == CENTRAL && stop < bytes.length) {
                    return bytes.length - stop;
                }
            }
        }
        return -1;
    }

    /** Some writers describe the directory in 64-bit numbers without need. */
    private int findDirectory() {
        long offset = u32(end + 16);
        long length = u32(end + 12);
        count = u16(end + 10);
        int locator = end - LOCATOR_LENGTH;
        if (locator >= 0 && i32(locator) == LOCATOR) {
            long wide = u32(locator + 8);
            if (wide + WIDE_END_LENGTH > locator || i32((int) wide) != WIDE_END) {
                throw damaged("a zip archive whose directory is damaged");
            }
            count = i32((int) wide + 32);
            length = u32((int) wide + 40);
            offset = u32((int) wide + 48);
        }
        if (offset + length > end || count < 0 || count > MOST_ENTRIES) {
            throw damaged("a zip archive whose directory is damaged");
        }
        return (int) offset;
    }

    private void readDirectory() {
        int at = directory;
        long total = 0;
        for (int i = 0; i < count; i++) {
            if (at + CENTRAL_LENGTH > end || i32(at) != CENTRAL) {
                throw damaged("a zip archive whose directory is damaged");
            }
            ZipEntryRecord entry = readEntry(at);
            total += entry.size() & 0xFFFFFFFFL;
            entries.add(entry);
            if (byName.put(key(entry.name()), entry) != null) {
                throw damaged("part " + entry.name() + " twice");
            }
            at += CENTRAL_LENGTH + u16(at + 28) + u16(at + 30) + u16(at + 32);
        }
        if (total > LARGEST_TOTAL) {
            throw damaged("parts inflating to " + (total >> 20) + " MB (a decompression bomb?)");
        }
    }

    private ZipEntryRecord readEntry(int at) {
        int nameLength = u16(at + 28);
        int extra = at + CENTRAL_LENGTH + nameLength;
        int extraLength = u16(at + 30);
        if (extra + extraLength > end) {
            throw damaged("a zip archive whose directory is damaged");
        }
        String name =
                new String(bytes, at + CENTRAL_LENGTH, nameLength, StandardCharsets.UTF_8)
                        .replace('\\', '/');
        refusePathTricks(name);
        long[] sizes = {u32(at + 24), u32(at + 20), u32(at + 42)};
        // Sizes and offset in this order, each present only where the plain field is full.
        int field = zip64Field(extra, extraLength);
        for (int i = 0; i < sizes.length; i++) {
            if (sizes[i] == FULL) {
                if (field < 0 || field + 8 > end || i32(field + 4) != 0) {
                    throw damaged("part " + name + " of more than 4 GB");
                }
                sizes[i] = u32(field);
                field += 8;
            }
        }
        if ((u16(at + 8) & ENCRYPTED) != 0) {
            throw damaged("part " + name + " encrypted");
        }
        if (sizes[1] > bytes.length || sizes[2] > bytes.length) {
            throw damaged("a zip archive cut off within part " + name);
        }
        return new ZipEntryRecord(
                name,
                u16(at + 8),
                u16(at + 10),
                i32(at + 16),
                (int) sizes[1],
                (int) sizes[0],
                (int) sizes[2],
                at);
    }

    private int zip64Field(int from, int length) {
        int at = from;
        while (at + 4 <= from + length) {
            if (u16(at) == ZIP64_EXTRA) {
                return at + 4;
            }
            at += 4 + u16(at + 2);
        }
        return -1;
    }

    private void refusePathTricks(String name) {
        if (name.isEmpty()
                || name.startsWith("/")
                || name.startsWith("../")
                || name.contains("/../")
                || name.endsWith("/..")
                || name.indexOf(':') == 1
                || name.indexOf('\0') >= 0) {
            throw damaged("an entry with the path \"" + name + "\"");
        }
    }

    /** Entries must lie one after another: overlapping ones are a known way to make bombs. */
    private void checkRegions() {
        starts = new int[entries.size()];
        for (int i = 0; i < starts.length; i++) {
            starts[i] = entries.get(i).local();
        }
        Arrays.sort(starts);
        for (ZipEntryRecord entry : entries) {
            int index = Arrays.binarySearch(starts, entry.local());
            int at = entry.local();
            boolean sound = at + LOCAL_LENGTH <= directory && i32(at) == LOCAL;
            if (!sound || (long) dataOffset(entry) + entry.compressedSize() > regionEnd(index)) {
                throw damaged("a zip archive damaged at part " + entry.name());
            }
            if (!sameName(entry)) {
                throw damaged("part " + entry.name() + " under two names");
            }
        }
    }

    private boolean sameName(ZipEntryRecord entry) {
        int length = u16(entry.local() + 26);
        if (length != u16(entry.central() + 28)) {
            return false;
        }
        for (int i = 0; i < length; i++) {
            if (bytes[entry.local() + LOCAL_LENGTH + i]
                    != bytes[entry.central() + CENTRAL_LENGTH + i]) {
                return false;
            }
        }
        return true;
    }

    private int regionEnd(int index) {
        return index + 1 < starts.length ? starts[index + 1] : directory;
    }

    private int dataOffset(ZipEntryRecord entry) {
        int at = entry.local();
        return at + LOCAL_LENGTH + u16(at + 26) + u16(at + 28);
    }

    private UnreadableBookException damaged(String found) {
        return new UnreadableBookException(title, found, A_WORKBOOK);
    }

    private int u16(int at) {
        return (bytes[at] & 0xFF) | (bytes[at + 1] & 0xFF) << 8;
    }

    private int i32(int at) {
        return u16(at) | u16(at + 2) << 16;
    }

    private long u32(int at) {
        return i32(at) & 0xFFFFFFFFL;
    }
}
