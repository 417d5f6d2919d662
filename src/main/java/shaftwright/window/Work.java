package shaftwright.window;

import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.function.Consumer;
import javax.swing.SwingWorker;
import shaftwright.jobs.Failure;
import shaftwright.jobs.JobStoppedException;
import shaftwright.jobs.Journal;

/** One job beside the window: its steps and lines come in as it goes, and it can be stopped. */
final class Work<T> extends SwingWorker<T, Work.News> {
    /** Who is told. */
    interface Listener {
        void step(String doing);

        void line(String line);

        /** It ended, whichever way. */
        void ended();
    }

    /** What a job tells on its way. */
    record News(boolean step, String text) {}

    private final Job<T> job;
    private final Listener listener;
    private final Consumer<T> then;
    private volatile boolean stopped;

    /**
     * A job that is not begun yet.
     *
     * @param then told what came of it, unless it failed
     */
    Work(Job<T> job, Listener listener, Consumer<T> then) {
        this.job = job;
        this.listener = listener;
        this.then = then;
    }

    /** Ends it before its next step; what it has begun is not seen in any file then. */
    void stop() {
        stopped = true;
    }

    @Override
    protected T doInBackground() throws Exception {
        return job.run(
                new Journal() {
                    @Override
                    public void step(String doing) {
                        if (stopped) {
                            throw new JobStoppedException();
                        }
                        publish(new News(true, doing));
                    }

                    @Override
                    public void say(String line) {
                        publish(new News(false, line));
                    }

                    @Override
                    public void complain(String line) {
                        publish(new News(false, line));
                    }
                });
    }

    @Override
    protected void process(List<News> news) {
        for (News each : news) {
            if (each.step()) {
                listener.step(each.text());
            } else {
                listener.line(each.text());
            }
        }
    }

    @Override
    protected void done() {
        listener.ended();
        try {
            then.accept(get());
        } catch (ExecutionException e) {
            listener.line(Failure.message(e.getCause()));
        } catch (InterruptedException | CancellationException e) {
            listener.line(new JobStoppedException().getMessage());
        }
    }
}
