package shaftwright.workbook;

import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;

/**
 * A piece of work that is done once, by whichever thread comes to it first, usually before its
 * result is needed; a pool of threads would start slower. What it throws is met by all who ask for
 * its result, and by nobody else.
 */
public final class Ahead<T> {
    private final FutureTask<T> task;

    private Ahead(Callable<T> work) {
        task = new FutureTask<>(work);
    }

    /**
     * Work to be done when it is asked for, or by {@link #inTurn} before.
     *
     * @param work which shares nothing that changes with what goes on meanwhile
     */
    public static <T> Ahead<T> of(Callable<T> work) {
        return new Ahead<>(work);
    }

    /**
     * Begins with it at once, in a thread of its own.
     *
     * @param thread what the thread is called
     * @param work which shares nothing that changes with what goes on meanwhile
     */
    public static <T> Ahead<T> begin(String thread, Callable<T> work) {
        Ahead<T> ahead = of(work);
        inTurn(thread, List.of(ahead));
        return ahead;
    }

    /** Begins with all of these, one after the other, in one thread. */
    public static void inTurn(String thread, List<? extends Ahead<?>> all) {
        Thread turns =
                new Thread(thread) {
                    @Override
                    public void run() {
                        runAll(all);
                    }
                };
        turns.setDaemon(true);
        turns.start();
    }

    /** Has all of these done by this thread and one more, and waits for the last. */
    public static void twoAtOnce(List<? extends Ahead<?>> all) {
        if (all.size() > 1) {
            inTurn("second", all);
        }
        finish(all);
    }

    /** Joins in with all of these, wherever no thread has begun yet, and waits for the last. */
    public static void finish(List<? extends Ahead<?>> all) {
        runAll(all);
        for (Ahead<?> ahead : all) {
            ahead.get();
        }
    }

    private static void runAll(List<? extends Ahead<?>> all) {
        for (Ahead<?> ahead : all) {
            // Does nothing where another thread has begun with it.
            ahead.task.run();
        }
    }

    /** The result, for which this thread waits or works. */
    public T get() {
        task.run();
        boolean interrupted = false;
        try {
            while (true) {
                try {
                    return task.get();
                } catch (InterruptedException e) {
                    interrupted = true;
                }
            }
        } catch (ExecutionException e) {
            throw thrown(e.getCause());
        } finally {
            if (interrupted) {
                Thread.currentThread().interrupt();
            }
        }
    }

    private static RuntimeException thrown(Throwable cause) {
        if (cause instanceof Error error) {
            throw error;
        }
        return cause instanceof RuntimeException exception
                ? exception
                : new IllegalStateException(cause);
    }
}
