package shaftwright.workbook.xlsx;

import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;

/** Runs independent pieces of work on this thread and one more; a pool would start slower. */
final class TwoAtOnce implements Runnable {
    private final List<? extends Runnable> work;
    private final AtomicInteger next = new AtomicInteger();
    private volatile Throwable failure;

    private TwoAtOnce(List<? extends Runnable> work) {
        this.work = work;
    }

    /** Runs all; the first failure is thrown once both threads have stopped. */
    static void run(List<? extends Runnable> work) {
        TwoAtOnce both = new TwoAtOnce(work);
        Thread second = null;
        if (work.size() > 1) {
            second = new Thread(both, "second");
            second.setDaemon(true);
            second.start();
        }
        both.run();
        if (second != null) {
            both.join(second);
        }
        if (both.failure instanceof Error error) {
            throw error;
        }
        if (both.failure instanceof RuntimeException exception) {
            throw exception;
        }
    }

    private void join(Thread second) {
        boolean interrupted = false;
        while (second.isAlive()) {
            try {
                second.join();
            } catch (InterruptedException e) {
                interrupted = true;
            }
        }
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    @Override
    public void run() {
        int index = next.getAndIncrement();
        while (index < work.size() && failure == null) {
            try {
                work.get(index).run();
            } catch (RuntimeException | Error e) {
                failure = e;
            }
            index = next.getAndIncrement();
        }
    }
}
