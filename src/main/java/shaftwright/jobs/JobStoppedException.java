package shaftwright.jobs;

/** A job ended before it was done, because somebody asked it to. */
public final class JobStoppedException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public JobStoppedException() {
        super("stopped, nothing was written.");
    }
}
