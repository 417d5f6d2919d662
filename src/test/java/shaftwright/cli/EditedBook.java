package shaftwright.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import shaftwright.book.CellPlace;
import shaftwright.xlsx.XlsxBook;

/** A workbook in which a builder has edited a formula, made by a library of its own. */
final class EditedBook {
    private EditedBook() {}

    /** Replaces the formula of a cell, or removes it when the new one is null. */
    static Path replace(Path file, Path target, String name, int offset, String formula) {
        CellPlace place = XlsxBook.open(file).names().get(name).place(offset);
        try (InputStream in = Files.newInputStream(file);
                XSSFWorkbook workbook = new XSSFWorkbook(in);
                OutputStream out = Files.newOutputStream(target)) {
            XSSFCell cell =
                    workbook.getSheet(place.sheet()).getRow(place.row()).getCell(place.column());
            if (formula == null) {
                cell.removeFormula();
            } else {
                cell.setCellFormula(formula);
            }
            workbook.write(out);
            return target;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
