package shaftwright.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import picocli.CommandLine.ParameterException;
import shaftwright.book.NoSuchCellException;
import shaftwright.jobs.JobRefusedException;
import shaftwright.xlsx.BookNotWritableException;
import shaftwright.xlsx.UnreadableBookException;

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
        if (e instanceof ParameterException
                || e instanceof UsageException
                || e instanceof JobRefusedException
                || e instanceof NoSuchCellException) {
            return USAGE;
        }
        if (e instanceof UnreadableBookException || e instanceof UnreadableInputException) {
            return UNREADABLE;
        }
        boolean unwritten =
                e instanceof BookNotWritableException
                        || e instanceof IOException
                        || e instanceof UncheckedIOException;
        return unwritten ? NOT_WRITTEN : FAULT;
    }
}
