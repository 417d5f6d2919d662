package shaftwright.badinput;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/** The parts of a workbook file, to look at or to edit as another program might. */
final class FileParts {
    private final Map<String, byte[]> parts = new LinkedHashMap<>();

    static FileParts of(Path file) {
        FileParts parts = new FileParts();
        try (ZipFile zip = new ZipFile(file.toFile())) {
            for (ZipEntry entry : zip.stream().toList()) {
                parts.parts.put(entry.getName(), zip.getInputStream(entry).readAllBytes());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return parts;
    }

    Map<String, byte[]> parts() {
        return parts;
    }

    String text(String part) {
        return new String(parts.get(part), StandardCharsets.UTF_8);
    }

    FileParts put(String part, byte[] bytes) {
        parts.put(part, bytes);
        return this;
    }

    FileParts put(String part, String text) {
        return put(part, text.getBytes(StandardCharsets.UTF_8));
    }

    /** Replaces a text that the part must have. */
    FileParts replace(String part, String old, String now) {
        String text = text(part);
        if (!text.contains(old)) {
            throw new IllegalArgumentException(part + " has no " + old);
        }
        return put(part, text.replace(old, now));
    }

    Path write(Path file) {
        try (ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(file))) {
            for (Map.Entry<String, byte[]> part : parts.entrySet()) {
                out.putNextEntry(new ZipEntry(part.getKey()));
                out.write(part.getValue());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return file;
    }
}
