package shaftwright.cli;

import picocli.CommandLine.ParameterException;
import shaftwright.jobs.Failure;

/** What the process ends with, for scripts; the help tells what each stands for. */
final class ExitCode {
    static final int SUCCESS = 0;
    static final int PROBLEMS = 1;
    static final int USAGE = 2;
    static final int UNREADABLE = 3;
    static final int NOT_WRITTEN = 4;
    static final int FAULT = 5;

    private ExitCode() {}

    /** That of a command which this ended. */
    static int of(Throwable e) {
        if (e instanceof ParameterException || e instanceof UsageException) {
            return USAGE;
        }
        if (e instanceof UnreadableInputException) {
            return UNREADABLE;
        }
        return switch (Failure.of(e)) {
            case REFUSED -> USAGE;
            case UNREADABLE -> UNREADABLE;
            case NOT_WRITTEN -> NOT_WRITTEN;
            case STOPPED, FAULT -> FAULT;
        };
    }
}
