package shaftwright.window;

import java.awt.EventQueue;
import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import shaftwright.xlsx.WatchedFile;

/**
 * Looks at the open workbook once a second. Asking the system to tell of changes instead would not
 * do for network drives, and not for lock files either.
 */
final class Watch {
    /** Who is told, on the event thread. */
    interface Listener {
        /**
         * What was seen.
         *
         * @param look at the file
         * @param openElsewhere whether a spreadsheet program has it open
         */
        void seen(Path file, WatchedFile.Look look, boolean openElsewhere);
    }

    private static final long PERIOD_MS = 1_000;

    private final Listener listener;
    private final ScheduledExecutorService looks =
            Executors.newSingleThreadScheduledExecutor(
                    task -> {
                        Thread thread = new Thread(task, "watch");
                        thread.setDaemon(true);
                        return thread;
                    });
    private Followed followed;

    /** A file that is followed. */
    private record Followed(Path path, WatchedFile file) {}

    Watch(Listener listener) {
        this.listener = listener;
        var unused =
                looks.scheduleWithFixedDelay(
                        this::look, PERIOD_MS, PERIOD_MS, TimeUnit.MILLISECONDS);
    }

    /** From now on looks at this file only, as it is now. */
    synchronized void follow(Path path) {
        try {
            followed = new Followed(path, WatchedFile.of(path));
        } catch (IOException e) {
            // Whoever works with the file is told of it.
            followed = null;
        }
    }

    /** Looks at nothing any more. */
    synchronized void rest() {
        followed = null;
    }

    void close() {
        looks.shutdownNow();
    }

    private synchronized void look() {
        if (followed == null) {
            return;
        }
        Path path = followed.path();
        try {
            WatchedFile.Look look = followed.file().look();
            boolean open = followed.file().isOpenElsewhere();
            EventQueue.invokeLater(() -> listener.seen(path, look, open));
        } catch (IOException e) {
            // A drive that is away for a while comes back, or the next job says that it is gone.
            return;
        }
    }
}
