package shaftwright.bench;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * A workbook opened and saved with POI's model of the whole file, and nothing computed: a
 * yardstick.
 */
public final class OpenAndSave {
    private OpenAndSave() {}

    /** Takes the file to open and the one to write. */
    public static void main(String[] args) throws IOException {
        try (InputStream in = Files.newInputStream(Path.of(args[0]));
                XSSFWorkbook workbook = new XSSFWorkbook(in);
                OutputStream out = Files.newOutputStream(Path.of(args[1]))) {
            workbook.write(out);
        }
    }
}
