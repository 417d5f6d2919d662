package shaftwright.jobs;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import shaftwright.xlsx.BookNotWritableException;

/** A workbook that is laid out beside its place, to be put there when all is well. */
final class NewFile {
    /** Lays a workbook out in a file. */
    interface Layout<T> {
        T in(Path laid) throws IOException;
    }

    private NewFile() {}

    /**
     * An empty file beside the target, which the caller deletes.
     *
     * @throws IOException if there is no such folder, or nothing may be written into it
     */
    static Path beside(Path target) throws IOException {
        Path folder = target.toAbsolutePath().getParent();
        if (!Files.isDirectory(folder)) {
            throw new IOException(folder + ": folder not found.");
        }
        if (!Files.isWritable(folder)) {
            throw new IOException(folder + ": nothing may be written into this folder.");
        }
        return Files.createTempFile(folder, ".shaftwright-", ".xlsx");
    }

    /**
     * Lays out.
     *
     * @throws BookNotWritableException naming the target when it can't be written
     */
    static <T> T layOut(Path laid, Path target, Layout<T> layout) {
        try {
            return layout.in(laid);
        } catch (IOException e) {
            throw BookNotWritableException.because(target, e);
        } catch (RuntimeException e) {
            // The library wraps some failures to write, a full disk for one.
            for (Throwable cause = e.getCause(); cause != null; cause = cause.getCause()) {
                if (cause instanceof IOException failure) {
                    throw BookNotWritableException.because(target, failure);
                }
            }
            throw e;
        }
    }
}
