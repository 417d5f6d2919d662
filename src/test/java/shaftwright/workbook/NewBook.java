package shaftwright.workbook;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import shaftwright.book.Area;
import shaftwright.book.CellPlace;
import shaftwright.book.CellValue;
import shaftwright.contract.Contract;
import shaftwright.contract.Input;
import shaftwright.template.Template;
import shaftwright.units.LengthUnit;
import shaftwright.xlsx.XlsxBook;

/** New workbooks as the tool lays them out, which takes seconds, so each kind is laid out once. */
public final class NewBook {
    private record Kind(LengthUnit unit, int scenarios) {}

    private static final Map<Kind, byte[]> LAID_OUT = new ConcurrentHashMap<>();

    private NewBook() {}

    /** Writes one that nothing is typed into. */
    public static Path write(Path file, LengthUnit unit, int scenarios) {
        try {
            byte[] made = LAID_OUT.get(new Kind(unit, scenarios));
            if (made != null) {
                return Files.write(file, made);
            }
            Template.write(file, unit, scenarios, Map.of());
            LAID_OUT.put(new Kind(unit, scenarios), Files.readAllBytes(file));
            return file;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Writes one and types into it, by defined name, one entry a cell; the other cells of these
     * names are emptied.
     */
    static Path write(Path file, LengthUnit unit, int scenarios, Map<String, List<String>> typed) {
        XlsxBook book = XlsxBook.open(write(file, unit, scenarios));
        Map<CellPlace, CellValue> cells = new HashMap<>();
        for (Map.Entry<String, List<String>> column : typed.entrySet()) {
            Input input = Contract.named(column.getKey());
            Area area = book.names().get(column.getKey());
            List<String> texts = column.getValue();
            if (texts.size() > area.size()) {
                return laidOutLarger(file, unit, scenarios, typed);
            }
            for (int offset = 0; offset < area.size(); offset++) {
                cells.put(
                        area.place(offset),
                        offset < texts.size() ? input.typed(texts.get(offset)) : CellValue.BLANK);
            }
        }
        book.write(cells);
        book.save(file);
        return file;
    }

    /** With more rows in a table than a new workbook has. */
    private static Path laidOutLarger(
            Path file, LengthUnit unit, int scenarios, Map<String, List<String>> typed) {
        try {
            Template.write(file, unit, scenarios, typed);
            return file;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
