package shaftwright.workbook;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** The demo workbook in inches as program version 0.1.0 wrote it, of contract version 1. */
public final class FirstVersion {
    /** Scenario columns of it. */
    public static final int SCENARIOS = 8;

    private FirstVersion() {}

    /** Puts a copy there. */
    public static Path copyTo(Path file) {
        try (InputStream kept =
                FirstVersion.class.getResourceAsStream("forest-special-0.1.0.xlsx")) {
            Files.copy(kept, file, StandardCopyOption.REPLACE_EXISTING);
            return file;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
