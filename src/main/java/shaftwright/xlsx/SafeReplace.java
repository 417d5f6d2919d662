package shaftwright.xlsx;

import java.io.BufferedOutputStream;
import java.io.File;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Replaces a file in one step. The new content goes to a temporary file in the same folder, is
 * forced to disk and checked there; the previous file is copied to {@code name.backup.xlsx} beside
 * it, where it stays until the next replacement; then one atomic move puts the new file in place.
 * Right before that the target is looked at again: one that another program has written meanwhile
 * stays. Whatever fails before that move leaves the old file and the old backup as they were.
 *
 * <p>Owner, group and permissions go over to the new file where the system lets us. Symbolic links
 * are written through; of several hard links the one that was named gets the new file.
 */
final class SafeReplace {
    static final String CHANGED = "another program has changed it since it was read: try again";

    private static final String UNFINISHED = ".filling";
    private static final String LOCK = "lock";
    private static final int BUFFER = 64 * 1024;

    /** Links behind links that are followed; Linux follows as many. */
    private static final int MOST_LINKS = 40;

    private final Path asked;
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

    private SafeReplace(Path asked) throws IOException {
        this.asked = asked;
        this.target = behindLinks(asked);
        this.folder = target.getParent();
        this.name = target.getFileName().toString();
    }

    /** The file behind a link, whether it is there or not; anything else as it is. */
    private static Path behindLinks(Path asked) throws IOException {
        Path at = asked.toAbsolutePath();
        for (int i = 0; i < MOST_LINKS; i++) {
            if (Files.exists(at)) {
                return at.toRealPath();
            }
            if (!Files.isSymbolicLink(at)) {
                return at;
            }
            at = at.resolveSibling(Files.readSymbolicLink(at));
        }
        throw new BookNotWritableException(asked, "it is a link that leads back to itself");
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
     * Refuses a file that a spreadsheet program has open: its lock file lies beside it, or beside
     * the link to it through which it was opened.
     *
     * @throws BookNotWritableException naming the lock file
     */
    static void refuseIfOpenElsewhere(Path target) {
        try {
            refuseIfLocked(target, target.toAbsolutePath());
            refuseIfLocked(target, behindLinks(target));
        } catch (IOException e) {
            throw BookNotWritableException.because(target, e);
        }
    }

    private static void refuseIfLocked(Path target, Path place) {
        String name = place.getFileName().toString();
        String[] locks = {".~lock." + name + "#", "~$" + name};
        for (String lock : locks) {
            if (new File(place.getParent().toFile(), lock).exists()) {
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
     * Creates the target or replaces whatever stands there when this begins.
     *
     * @throws BookNotWritableException if any step fails; the previous file is then untouched
     */
    static Replaced replace(Path target, Content content, Check check) {
        try {
            return replace(target, FileState.of(target), content, check);
        } catch (IOException e) {
            throw BookNotWritableException.because(target, e);
        }
    }

    /**
     * Replaces or creates the target, if it is still what it was.
     *
     * @param expected what the target was when it was read
     * @throws BookNotWritableException if another program has changed it since, or any step fails;
     *     the file that stands there is then untouched
     */
    static Replaced replace(Path target, FileState expected, Content content, Check check) {
        refuseIfOpenElsewhere(target);
        try {
            SafeReplace replace = new SafeReplace(target);
            replace.refuseUnwritable();
            TargetLock lock = TargetLock.take(replace.lock(), target);
            try {
                replace.sweepLeftovers();
                return replace.run(expected, content, check);
            } finally {
                lock.close();
            }
        } catch (IOException e) {
            throw BookNotWritableException.because(target, e);
        }
    }

    /** Removes what earlier, killed runs left beside a file that is not replaced this time. */
    static void tidy(Path target) {
        try {
            SafeReplace replace = new SafeReplace(target);
            if (!replace.leftovers().isEmpty() && Files.isWritable(replace.folder)) {
                TargetLock lock = TargetLock.take(replace.lock(), target);
                try {
                    replace.sweepLeftovers();
                } finally {
                    lock.close();
                }
            }
        } catch (IOException | BookNotWritableException e) {
            // Another run is at work, or the folder is not ours: nothing hangs on it.
            return;
        }
    }

    /** Marked like what a killed run leaves, but with a word where that has a process. */
    private Path lock() {
        return folder.resolve("." + name + "." + LOCK + UNFINISHED);
    }

    private void refuseUnwritable() {
        if (!Files.isDirectory(folder)) {
            throw new BookNotWritableException(asked, "there is no folder " + folder);
        }
        if (Files.isDirectory(target)) {
            throw new BookNotWritableException(asked, "it is a folder");
        }
        if (!Files.isWritable(folder)) {
            throw new BookNotWritableException(asked, "its folder is not writable: " + folder);
        }
        if (Files.exists(target) && !Files.isWritable(target)) {
            throw new BookNotWritableException(asked, "it is read-only");
        }
    }

    private Replaced run(FileState expected, Content content, Check check) throws IOException {
        String mark = "." + name + "." + ownProcess();
        Path temporary = folder.resolve(mark + UNFINISHED);
        Path copy = folder.resolve(mark + ".backup" + UNFINISHED);
        temporary.toFile().deleteOnExit();
        try {
            write(temporary, content);
            check.check(temporary);
            boolean replaces = Files.exists(target);
            if (replaces) {
                FileOwnership.of(target).giveTo(temporary);
                Files.copy(
                        target,
                        copy,
                        StandardCopyOption.COPY_ATTRIBUTES,
                        StandardCopyOption.REPLACE_EXISTING);
            }
            int otherNames = replaces ? otherNames() : 0;
            // The last thing before the moves: whoever saves the target from here on comes after.
            refuseChanged(expected);
            refuseIfOpenElsewhere(asked);
            Optional<Path> backup = Optional.empty();
            if (replaces) {
                backup = Optional.of(backupOf(target));
                move(copy, backup.get());
            }
            move(temporary, target);
            return new Replaced(backup, otherNames);
        } finally {
            deleteQuietly(temporary);
            deleteQuietly(copy);
        }
    }

    private void refuseChanged(FileState expected) throws IOException {
        if (!expected.isStill(target)) {
            throw new BookNotWritableException(asked, CHANGED);
        }
    }

    private static void move(Path from, Path to) throws IOException {
        Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }

    /** Hard links to the target beside itself, where the file system counts them. */
    private int otherNames() throws IOException {
        return target.getFileSystem().supportedFileAttributeViews().contains("unix")
                ? (int) Files.getAttribute(target, "unix:nlink") - 1
                : 0;
    }

    private static void write(Path temporary, Content content) throws IOException {
        try (FileOutputStream file = new FileOutputStream(temporary.toFile());
                OutputStream out = new BufferedOutputStream(file, BUFFER)) {
            content.writeTo(out);
            out.flush();
            file.getFD().sync();
        }
    }

    /** Removes what an earlier, killed run left behind; a running one keeps its file. */
    private void sweepLeftovers() {
        for (String left : leftovers()) {
            int start = name.length() + 2;
            if (!isRunning(left.substring(start, left.indexOf('.', start)))) {
                deleteQuietly(folder.resolve(left));
            }
        }
    }

    /** Names of unfinished files for this target, the lock's among them. */
    private List<String> leftovers() {
        List<String> left = new ArrayList<>();
        String[] names = folder.toFile().list();
        String start = "." + name + ".";
        for (int i = 0; names != null && i < names.length; i++) {
            if (names[i].startsWith(start) && names[i].endsWith(UNFINISHED)) {
                left.add(names[i]);
            }
        }
        return left;
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
