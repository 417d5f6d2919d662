package shaftwright.badinput;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Edits a workbook through another library, as a builder would in a spreadsheet program. */
final class EditedByBuilder {
    /** What the builder does. */
    interface Edit {
        void on(XSSFWorkbook workbook) throws IOException;
    }

    private EditedByBuilder() {}

    /** Opens the file and leaves it alone. */
    static void look(Path file, Edit look) {
        try (InputStream in = Files.newInputStream(file);
                XSSFWorkbook workbook = new XSSFWorkbook(in)) {
            look.on(workbook);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Opens the file, edits it and saves it. */
    static void edit(Path file, Edit edit) {
        try (InputStream in = Files.newInputStream(file);
                XSSFWorkbook workbook = new XSSFWorkbook(in)) {
            edit.on(workbook);
            try (OutputStream out = Files.newOutputStream(file)) {
                workbook.write(out);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
