package shaftwright.xlsx;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * The right to replace a file: one process at a time has it, by the operating system's lock on a
 * small file beside. A process that is killed loses the lock; the file that it left behind is used
 * and removed by the next one.
 */
final class TargetLock {
    /** Another process may remove the file between opening and locking it, but not for ever. */
    private static final int TRIES = 8;

    private final Path file;
    private final FileChannel channel;

    private TargetLock(Path file, FileChannel channel) {
        this.file = file;
        this.channel = channel;
    }

    /**
     * Takes the lock.
     *
     * @param file the lock's own file
     * @param target what is to be replaced, for messages
     * @throws BookNotWritableException if another process or thread has it
     */
    static TargetLock take(Path file, Path target) throws IOException {
        for (int i = 0; i < TRIES; i++) {
            FileChannel channel =
                    FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            boolean taken = false;
            try {
                if (!locked(channel)) {
                    break;
                }
                taken = Files.exists(file);
                if (taken) {
                    return new TargetLock(file, channel);
                }
            } finally {
                if (!taken) {
                    channel.close();
                }
            }
        }
        throw new BookNotWritableException(
                target, "another run of this program is writing it just now: try again");
    }

    private static boolean locked(FileChannel channel) {
        try {
            FileLock lock = channel.tryLock();
            return lock != null;
        } catch (OverlappingFileLockException e) {
            return false;
        } catch (IOException e) {
            // A file system without locks: looking at the target before the move has to do.
            return true;
        }
    }

    /** Removes the file first: whoever opens it afterwards makes a new one. */
    void close() throws IOException {
        file.toFile().delete();
        channel.close();
    }
}
