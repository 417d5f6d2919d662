package shaftwright.xlsx;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFileAttributes;
import java.nio.file.attribute.PosixFilePermission;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

/** Owner, group and permissions of a file, where the file system has such. */
record FileOwnership(Optional<PosixFileAttributes> posix) {
    private static final Set<PosixFilePermission> GROUP =
            EnumSet.of(
                    PosixFilePermission.GROUP_READ,
                    PosixFilePermission.GROUP_WRITE,
                    PosixFilePermission.GROUP_EXECUTE);

    static FileOwnership of(Path file) throws IOException {
        PosixFileAttributeView view = view(file);
        return new FileOwnership(
                view == null ? Optional.empty() : Optional.of(view.readAttributes()));
    }

    private static PosixFileAttributeView view(Path file) {
        return Files.getFileAttributeView(file, PosixFileAttributeView.class);
    }

    /**
     * Gives a file the same, as far as the system lets this user. Where the group can't be kept,
     * the group that it has instead gets no rights: they were meant for other people.
     */
    void giveTo(Path file) throws IOException {
        if (posix.isEmpty()) {
            return;
        }
        PosixFileAttributes wanted = posix.get();
        PosixFileAttributeView view = view(file);
        PosixFileAttributes has = view.readAttributes();
        if (!has.owner().equals(wanted.owner())) {
            try {
                view.setOwner(wanted.owner());
            } catch (IOException e) {
                // Only root may give files away.
            }
        }
        Set<PosixFilePermission> permissions = new HashSet<>(wanted.permissions());
        if (!has.group().equals(wanted.group())) {
            try {
                view.setGroup(wanted.group());
            } catch (IOException e) {
                permissions.removeAll(GROUP);
            }
        }
        view.setPermissions(permissions);
    }
}
