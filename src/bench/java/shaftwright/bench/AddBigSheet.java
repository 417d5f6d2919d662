package shaftwright.bench;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Puts a builder's own long sheet beside a workbook's: 100,000 rows of a logger's readings. */
public final class AddBigSheet {
    private static final int ROWS = 100_000;
    private static final int COLUMNS = 6;

    private AddBigSheet() {}

    /** Takes the file to open and the one to write. */
    public static void main(String[] args) throws IOException {
        try (InputStream in = Files.newInputStream(Path.of(args[0]));
                SXSSFWorkbook workbook = new SXSSFWorkbook(new XSSFWorkbook(in));
                OutputStream out = Files.newOutputStream(Path.of(args[1]))) {
            Sheet sheet = workbook.createSheet("Logger");
            for (int at = 0; at < ROWS; at++) {
                Row row = sheet.createRow(at);
                for (int column = 0; column < COLUMNS; column++) {
                    row.createCell(column).setCellValue(Math.sin(at * (column + 1) / 1e3));
                }
            }
            workbook.write(out);
        }
    }
}
