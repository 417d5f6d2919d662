package shaftwright.xlsx;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** The version of a workbook from before the last save, which can be put back. */
public final class Backup {
    private final Path file;
    private final Path backup;
    private final FileState saved;
    private final FileState kept;

    private Backup(Path file, Path backup) throws IOException {
        this.file = file;
        this.backup = backup;
        saved = FileState.of(file);
        kept = FileState.of(backup);
    }

    /**
     * What a save has just kept of a file, empty when it kept nothing.
     *
     * @throws BookNotWritableException if the files can't be looked at
     */
    public static Optional<Backup> of(Path file, Replaced replaced) {
        try {
            return replaced.backup().isPresent()
                    ? Optional.of(new Backup(file, replaced.backup().get()))
                    : Optional.empty();
        } catch (IOException e) {
            throw BookNotWritableException.because(file, e);
        }
    }

    /**
     * Puts the earlier version back; what stood there until now becomes the backup.
     *
     * @return the backup by which that is undone in turn
     * @throws BookNotWritableException if either file has changed since, or the workbook is open
     *     elsewhere or can't be replaced; both are then left as they are
     */
    public Backup putBack() {
        try {
            if (!kept.looksTheSameAs(backup)) {
                throw new BookNotWritableException(
                        file, "its backup is no longer what the last save kept");
            }
            byte[] earlier = Files.readAllBytes(backup);
            Replaced replaced =
                    SafeReplace.replace(file, saved, out -> out.write(earlier), XlsxBook::open);
            return new Backup(file, replaced.backup().orElse(backup));
        } catch (IOException e) {
            throw BookNotWritableException.because(file, e);
        }
    }
}
