package shaftwright.jobs;

import java.io.IOException;
import java.io.UncheckedIOException;
import shaftwright.book.NoSuchCellException;
import shaftwright.xlsx.BookNotWritableException;
import shaftwright.xlsx.UnreadableBookException;

/** Why a job ended before it was done. */
public enum Failure {
    /** It can't be done with what it was asked to do it with. */
    REFUSED,
    /** A file can't be read. */
    UNREADABLE,
    /** A file could not be written; the old one is whole. */
    NOT_WRITTEN,
    /** Somebody stopped it. */
    STOPPED,
    /** The program itself is at fault. */
    FAULT;

    /** What an exception stands for. */
    public static Failure of(Throwable e) {
        if (e instanceof JobRefusedException || e instanceof NoSuchCellException) {
            return REFUSED;
        }
        if (e instanceof UnreadableBookException) {
            return UNREADABLE;
        }
        if (e instanceof BookNotWritableException
                || e instanceof IOException
                || e instanceof UncheckedIOException) {
            return NOT_WRITTEN;
        }
        return e instanceof JobStoppedException ? STOPPED : FAULT;
    }

    /** What is said of an exception. */
    public static String message(Throwable e) {
        return of(e) == FAULT ? "unexpected fault: " + e : e.getMessage();
    }
}
