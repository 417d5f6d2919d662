package shaftwright.xlsx;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;

/** Compares two packages entry by entry, through commons-compress as an independent reader. */
final class PackageDifference {
    private PackageDifference() {}

    /**
     * Asserts that order, names, times and all raw bytes agree except for some parts' content.
     *
     * @return the changed parts' new texts by name
     */
    static Map<String, String> changedParts(Path before, Path after) throws IOException {
        Map<String, String> changed = new TreeMap<>();
        try (ZipFile old = ZipFile.builder().setPath(before).get();
                ZipFile now = ZipFile.builder().setPath(after).get()) {
            Map<String, ZipArchiveEntry> oldEntries = entries(old);
            Map<String, ZipArchiveEntry> nowEntries = entries(now);
            assertThat(nowEntries.keySet()).containsExactlyElementsOf(oldEntries.keySet());
            for (String name : oldEntries.keySet()) {
                ZipArchiveEntry was = oldEntries.get(name);
                ZipArchiveEntry is = nowEntries.get(name);
                assertThat(is.getTime()).as(name).isEqualTo(was.getTime());
                if (!new String(read(old.getInputStream(was)), StandardCharsets.ISO_8859_1)
                        .equals(
                                new String(
                                        read(now.getInputStream(is)),
                                        StandardCharsets.ISO_8859_1))) {
                    changed.put(
                            name, new String(read(now.getInputStream(is)), StandardCharsets.UTF_8));
                } else {
                    assertThat(read(now.getRawInputStream(is)))
                            .as(name)
                            .isEqualTo(read(old.getRawInputStream(was)));
                }
            }
        }
        return changed;
    }

    /** One part's text. */
    static String text(Path file, String part) throws IOException {
        return new String(bytes(file, part), StandardCharsets.UTF_8);
    }

    /** One part's bytes. */
    static byte[] bytes(Path file, String part) throws IOException {
        try (ZipFile zip = ZipFile.builder().setPath(file).get()) {
            return read(zip.getInputStream(zip.getEntry(part)));
        }
    }

    private static byte[] read(InputStream in) throws IOException {
        try (in) {
            return in.readAllBytes();
        }
    }

    private static Map<String, ZipArchiveEntry> entries(ZipFile zip) {
        Map<String, ZipArchiveEntry> entries = new LinkedHashMap<>();
        for (ZipArchiveEntry entry : Collections.list(zip.getEntriesInPhysicalOrder())) {
            entries.put(entry.getName(), entry);
        }
        return entries;
    }
}
