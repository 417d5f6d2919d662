package shaftwright.cli;

import java.io.PrintStream;

/** Says on standard error what is being done, once it has taken longer than a second. */
final class Progress implements AutoCloseable {
    private static final long PATIENCE_MS = 1_000;

    private final PrintStream err;
    private String step = "";
    private boolean said;
    private boolean over;

    private Progress(PrintStream err) {
        this.err = err;
    }

    static Progress start(Terminal terminal) {
        Progress progress = new Progress(terminal.err());
        Thread watch = new Thread(progress::watch, "progress");
        watch.setDaemon(true);
        watch.start();
        return progress;
    }

    /** Goes on to the next step. */
    synchronized void step(String words) {
        step = words;
        said = false;
        notifyAll();
    }

    @Override
    public synchronized void close() {
        over = true;
        notifyAll();
    }

    private synchronized void watch() {
        try {
            while (!over) {
                String watched = step;
                wait(PATIENCE_MS);
                if (!over && !said && !step.isEmpty() && step.equals(watched)) {
                    said = true;
                    err.println(step + " …");
                    err.flush();
                }
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
