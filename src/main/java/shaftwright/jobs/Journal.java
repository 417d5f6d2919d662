package shaftwright.jobs;

/** Where a job says how far it is, and what came of it, line by line. */
public interface Journal {
    /**
     * Goes on to the next step. Until then nothing that the job has begun can be seen in any file.
     *
     * @throws JobStoppedException if somebody wants no more of it
     */
    void step(String doing);

    /** A line of the answer. */
    void say(String line);

    /** A line about what went wrong. */
    void complain(String line);
}
