package shaftwright.xlsx;

import java.io.IOException;
import java.nio.file.Path;

/**
 * A workbook that is looked at again and again, to see when another program saves it. A save counts
 * once two looks running find the same: some programs write a file in several goes, or put another
 * in its place.
 */
public final class WatchedFile {
    /** What a look found. */
    public enum Look {
        /** Nothing new. */
        SAME,
        /** Another program has saved it since it was last known. */
        SAVED,
        /** It is not there, renamed perhaps. */
        GONE
    }

    private final Path file;
    private FileState known;
    private FileState last;

    private WatchedFile(Path file) throws IOException {
        this.file = file;
        known = FileState.of(file);
        last = known;
    }

    /**
     * A file as it is now.
     *
     * @throws IOException if it can't be looked at
     */
    public static WatchedFile of(Path file) throws IOException {
        return new WatchedFile(file);
    }

    /**
     * Looks at it.
     *
     * @throws IOException if it can't be looked at
     */
    public Look look() throws IOException {
        FileState now = FileState.of(file);
        boolean settled = now.equals(last);
        last = now;
        if (!settled || now.equals(known)) {
            return Look.SAME;
        }
        known = now;
        return now.size() < 0 ? Look.GONE : Look.SAVED;
    }

    /** Whether a spreadsheet program has it open, as far as its lock file tells. */
    public boolean isOpenElsewhere() {
        try {
            SafeReplace.refuseIfOpenElsewhere(file);
            return false;
        } catch (BookNotWritableException e) {
            return true;
        }
    }
}
