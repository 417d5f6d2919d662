package shaftwright.workbook.xlsx;

import java.io.BufferedOutputStream;
import java.io.File;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Optional;

/**
 * Replaces a file in one step. The new content goes to a temporary file in the same folder, is
 * forced to disk and checked there; the previous file is copied to {@code name.backup.xlsx} beside
 * it, where it stays until the next replacement; then one atomic move puts the new file in place.
 * Whatever fails before that move leaves the old file as it was.
 */
final class SafeReplace {
    private static final String UNFINISHED = ".filling";
    private static final int BUFFER = 64 * 1024;

    private final Path target;
    private final Path folder;
    private final String name;

    /** Writes the new content. */
    interface Content {
        void writeTo(OutputStream out) throws IOException;
    }

    /** Looks at the written file before it takes its place, and throws if it is not right. */
    interface Check {
        void check(Path written);
    }

    private SafeReplace(Path target) throws IOException {
        // Through a link the file behind it is replaced, not the link.
        this.target = Files.exists(target) ? target.toRealPath() : target.toAbsolutePath();
        this.folder = this.target.getParent();
        this.name = this.target.getFileName().toString();
    }

    /**
     * Where the previous version of a file is kept.
     *
     * @param target the file that is replaced, such as {@code forest.xlsx}
     * @return the path beside it, such as {@code forest.backup.xlsx}
     */
    static Path backupOf(Path target) {
        String name = target.getFileName().toString();
        int dot = name.lastIndexOf('.');
        String backup =
                dot <= 0
                        ? name + ".backup"
                        : name.substring(0, dot) + ".backup" + name.substring(dot);
        return target.resolveSibling(backup);
    }

    /**
     * Refuses a file that a spreadsheet program has open: its lock file lies beside it.
     *
     * @throws BookNotWritableException naming the lock file
     */
    static void refuseIfOpenElsewhere(Path target) {
        String name = target.getFileName().toString();
        String[] locks = {".~lock." + name + "#", "~$" + name};
        for (String lock : locks) {
            if (new File(target.toAbsolutePath().getParent().toFile(), lock).exists()) {
                throw new BookNotWritableException(
                        target,
                        "it is open in a spreadsheet program: close it there (if it is not open,"
                                + " delete the left-over file "
                                + lock
                                + ")");
            }
        }
    }

    /**
     * Replaces or creates the target.
     *
     * @return the backup's path, empty when there was no file before
     * @throws BookNotWritableException if any step fails; the previous file is then untouched
     */
    static Optional<Path> replace(Path target, Content content, Check check) {
        refuseIfOpenElsewhere(target);
        try {
            SafeReplace replace = new SafeReplace(target);
            replace.refuseUnwritable();
            replace.sweepLeftovers();
            return replace.run(content, check);
        } catch (IOException e) {
            throw BookNotWritableException.because(target, e);
        }
    }

    private void refuseUnwritable() {
        if (!Files.isDirectory(folder)) {
            throw new BookNotWritableException(target, "there is no folder " + folder);
        }
        if (Files.isDirectory(target)) {
            throw new BookNotWritableException(target, "it is a folder");
        }
        if (!Files.isWritable(folder)) {
            throw new BookNotWritableException(target, "its folder is not writable: " + folder);
        }
        if (Files.exists(target) && !Files.isWritable(target)) {
            throw new BookNotWritableException(target, "it is read-only");
        }
    }

    private Optional<Path> run(Content content, Check check) throws IOException {
        String mark = "." + name + "." + ownProcess();
        Path temporary = folder.resolve(mark + UNFINISHED);
        Path copy = folder.resolve(mark + ".backup" + UNFINISHED);
        temporary.toFile().deleteOnExit();
        try {
            write(temporary, content);
            check.check(temporary);
            Optional<Path> backup = Optional.empty();
            if (Files.exists(target)) {
                takeOverPermissions(temporary);
                backup = Optional.of(keep(copy));
            }
            Files.move(
                    temporary,
                    target,
                    StandardCopyOption.ATOMIC_MOVE,
                    StandardCopyOption.REPLACE_EXISTING);
            return backup;
        } finally {
            deleteQuietly(temporary);
            deleteQuietly(copy);
        }
    }

    private static void write(Path temporary, Content content) throws IOException {
        try (FileOutputStream file = new FileOutputStream(temporary.toFile());
                OutputStream out = new BufferedOutputStream(file, BUFFER)) {
            content.writeTo(out);
            out.flush();
            file.getFD().sync();
        }
    }

    private Path keep(Path copy) throws IOException {
        Path backup = backupOf(target);
        Files.copy(
                target,
                copy,
                StandardCopyOption.COPY_ATTRIBUTES,
                StandardCopyOption.REPLACE_EXISTING);
        Files.move(
                copy, backup, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        return backup;
    }

    private void takeOverPermissions(Path temporary) throws IOException {
        try {
            Files.setPosixFilePermissions(temporary, Files.getPosixFilePermissions(target));
        } catch (UnsupportedOperationException e) {
            // A file system without such permissions: the folder's own rules apply.
            return;
        }
    }

    /** Removes what an earlier, killed run left behind; a running one keeps its file. */
    private void sweepLeftovers() {
        String[] names = folder.toFile().list();
        String start = "." + name + ".";
        for (int i = 0; names != null && i < names.length; i++) {
            String other = names[i];
            if (other.startsWith(start) && other.endsWith(UNFINISHED)) {
                int end = other.indexOf('.', start.length());
                if (!isRunning(other.substring(start.length(), end))) {
                    deleteQuietly(folder.resolve(other));
                }
            }
        }
    }

    /** Where Linux tells it, it takes a tenth of the time that asking the library for it does. */
    private static String ownProcess() throws IOException {
        File self = new File("/proc/self");
        return self.exists()
                ? self.getCanonicalFile().getName()
                : Long.toString(ProcessHandle.current().pid());
    }

    private static boolean isRunning(String process) {
        try {
            return ProcessHandle.of(Long.parseLong(process)).isPresent();
        } catch (NumberFormatException e) {
            return true;
        }
    }

    private static void deleteQuietly(Path path) {
        // The file normally moved away; failing to delete must not hide the first error.
        path.toFile().delete();
    }
}
