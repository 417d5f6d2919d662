package shaftwright.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import shaftwright.book.Area;
import shaftwright.book.CellContent;
import shaftwright.book.CellPlace;
import shaftwright.book.CellValue;
import shaftwright.xlsx.XlsxBook;

/** The demo workbook, made once, copied for each test. */
final class Demo {
    /** Scenario columns, used or not. */
    static final int SCENARIOS = 8;

    private static final byte[] INCH = make("inch");
    private static final byte[] MILLIMETRE = make("mm");

    private Demo() {}

    static Path inches(Path folder) {
        return write(folder.resolve("forest.xlsx"), INCH);
    }

    static Path millimetres(Path folder) {
        return write(folder.resolve("forest-mm.xlsx"), MILLIMETRE);
    }

    private static byte[] make(String unit) {
        try {
            Path folder = Files.createTempDirectory("demo");
            Path file = folder.resolve("demo.xlsx");
            Run run = Run.of("new", "--demo", "--unit", unit, file);
            if (run.code() != 0) {
                throw new IllegalStateException(run.err());
            }
            byte[] bytes = Files.readAllBytes(file);
            Files.delete(file);
            Files.delete(folder);
            return bytes;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Path write(Path file, byte[] bytes) {
        try {
            return Files.write(file, bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** One cell of a defined name. */
    static CellContent cell(Path file, String name, int offset) {
        XlsxBook book = XlsxBook.open(file);
        Area area = book.names().get(name);
        return book.read(List.of(area)).at(area.place(offset));
    }

    /** Types into a cell as a builder would. */
    static CellPlace type(Path file, String name, int offset, CellValue value) {
        XlsxBook book = XlsxBook.open(file);
        CellPlace place = book.names().get(name).place(offset);
        book.write(Map.of(place, value));
        book.save(file);
        return place;
    }

    /** Every cell of every defined name. */
    static Map<CellPlace, CellContent> all(Path file) {
        XlsxBook book = XlsxBook.open(file);
        Collection<Area> areas = book.names().values();
        return book.read(areas).filled();
    }
}
