package shaftwright.template;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.book.Area;
import shaftwright.book.CellPlace;
import shaftwright.contract.Contract;
import shaftwright.units.LengthUnit;
import shaftwright.workbook.NewBook;
import shaftwright.xlsx.XlsxBook;

/** How typed cells look in a new workbook. */
class TypedCellsTest {
    /** Cells of a row that may be empty between two. */
    private static final int NEAR = 7;

    @TempDir private Path folder;

    /**
     * Where LibreOffice 7.4 takes two styles for one, it draws the second cell without its indent;
     * empty cells between them do not count.
     */
    @Test
    void typedCellsNearEachOtherHaveStylesOfTheirOwn() throws Exception {
        Path file = NewBook.write(folder.resolve("blank.xlsx"), LengthUnit.INCH, 2);
        Map<String, Area> names = XlsxBook.open(file).names();
        Map<CellPlace, String> typed = new HashMap<>();
        for (String name : Contract.definedNames()) {
            Area area = names.get(name);
            for (int offset = 0; offset < area.size(); offset++) {
                typed.put(area.place(offset), name);
            }
        }
        List<String> alike = new ArrayList<>();
        int pairs = 0;
        try (XSSFWorkbook book = new XSSFWorkbook(file.toFile())) {
            for (Map.Entry<CellPlace, String> cell : typed.entrySet()) {
                CellPlace here = cell.getKey();
                for (int before = 1; before <= NEAR; before++) {
                    CellPlace left =
                            new CellPlace(here.sheet(), here.row(), here.column() - before);
                    if (!cell.getValue().equals(typed.getOrDefault(left, cell.getValue()))) {
                        pairs++;
                        if (style(book, here) == style(book, left)) {
                            alike.add(here.toString());
                        }
                    }
                }
            }
        }
        assertThat(pairs).isGreaterThan(1000);
        assertThat(alike).isEmpty();
    }

    private static short style(XSSFWorkbook book, CellPlace place) {
        return book.getSheet(place.sheet())
                .getRow(place.row())
                .getCell(place.column())
                .getCellStyle()
                .getIndex();
    }
}
