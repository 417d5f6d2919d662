package shaftwright.xlsx;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.util.Arrays;
import java.util.Objects;
import java.util.Optional;

/**
 * What a file was when it was looked at, to find out later whether it still is.
 *
 * @param key the file system's own number of the file, empty where it has none
 * @param size bytes; -1 where there was no file
 * @param modified when it was last written
 * @param content its bytes, where they were read as well; not to be changed
 */
record FileState(Optional<Object> key, long size, FileTime modified, Optional<byte[]> content) {
    private static final FileState ABSENT =
            new FileState(Optional.empty(), -1, FileTime.fromMillis(0), Optional.empty());

    private static final int BUFFER = 64 * 1024;

    /** A file, or the lack of one, by what its folder says of it. */
    static FileState of(Path file) throws IOException {
        if (!Files.exists(file)) {
            return ABSENT;
        }
        try {
            BasicFileAttributes now = Files.readAttributes(file, BasicFileAttributes.class);
            return new FileState(
                    Optional.ofNullable(now.fileKey()),
                    now.size(),
                    now.lastModifiedTime(),
                    Optional.empty());
        } catch (NoSuchFileException e) {
            return ABSENT;
        }
    }

    /** A file that is read as a whole, its content included. */
    static FileState read(Path file) throws IOException {
        // Looked at before it is read: what is written meanwhile is then seen later.
        FileState before = of(file);
        return new FileState(
                before.key, before.size, before.modified, Optional.of(Files.readAllBytes(file)));
    }

    /** Whether the file is at the same place of the disk, of the same time and size. */
    boolean looksTheSameAs(Path file) throws IOException {
        FileState now = of(file);
        return now.key.equals(key) && now.size == size && now.modified.equals(modified);
    }

    /** Whether the file looks the same and holds the same, as far as that was read. */
    boolean isStill(Path file) throws IOException {
        return looksTheSameAs(file) && (content.isEmpty() || holds(file, content.get()));
    }

    private static boolean holds(Path file, byte[] bytes) throws IOException {
        byte[] buffer = new byte[BUFFER];
        int at = 0;
        try (InputStream in = Files.newInputStream(file)) {
            int count = in.read(buffer);
            while (count >= 0) {
                int to = at + count;
                if (to > bytes.length || !Arrays.equals(buffer, 0, count, bytes, at, to)) {
                    return false;
                }
                at = to;
                count = in.read(buffer);
            }
        }
        return at == bytes.length;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof FileState state
                && state.key.equals(key)
                && state.size == size
                && state.modified.equals(modified)
                && Arrays.equals(state.content.orElse(null), content.orElse(null));
    }

    @Override
    public int hashCode() {
        return Objects.hash(key, size, modified);
    }
}
