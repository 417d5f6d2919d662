package shaftwright.jobs;

/** A job that can't be done with what it was asked to do it with; nothing was written. */
public final class JobRefusedException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public JobRefusedException(String message) {
        super(message);
    }
}
