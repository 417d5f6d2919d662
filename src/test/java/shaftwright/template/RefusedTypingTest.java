package shaftwright.template;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.util.CellAddress;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFDataValidation;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.book.Area;
import shaftwright.book.CellPlace;
import shaftwright.build.Side;
import shaftwright.contract.Contract;
import shaftwright.contract.Input;
import shaftwright.live.LiveLine;
import shaftwright.live.LiveLines;
import shaftwright.units.LengthUnit;
import shaftwright.xlsx.XlsxBook;

class RefusedTypingTest {
    @TempDir static Path folder;

    private static Map<String, Area> names;

    /** Cells of the visible sheets, and those of them in which nothing may be typed. */
    private static final Set<String> VISIBLE = new HashSet<>();

    private static final Set<String> REFUSED = new HashSet<>();

    /** What is said where a word of a list was wanted. */
    private static final List<String> CHOICE_WANTED = new ArrayList<>();

    @BeforeAll
    static void readValidations() throws Exception {
        Path file = folder.resolve("blank.xlsx");
        Template.write(file, LengthUnit.INCH, 2, Map.of());
        names = XlsxBook.open(file).names();
        try (InputStream in = Files.newInputStream(file);
                XSSFWorkbook workbook = new XSSFWorkbook(in)) {
            for (int index = 0; index < workbook.getNumberOfSheets(); index++) {
                if (!workbook.isSheetHidden(index)) {
                    VISIBLE.add(workbook.getSheetName(index));
                    read(workbook.getSheetAt(index));
                }
            }
        }
    }

    private static void read(XSSFSheet sheet) {
        for (XSSFDataValidation validation : sheet.getDataValidations()) {
            String said = validation.getErrorBoxText();
            if (said != null && said.startsWith("One of: ")) {
                CHOICE_WANTED.add(said);
            }
            if (validation.getErrorStyle() == DataValidation.ErrorStyle.STOP
                    && validation.getShowErrorBox()
                    && "FALSE".equals(validation.getValidationConstraint().getFormula1())) {
                for (CellRangeAddress range : validation.getRegions().getCellRangeAddresses()) {
                    for (CellAddress cell : range) {
                        REFUSED.add(sheet.getSheetName() + "!" + cell);
                    }
                }
            }
        }
    }

    @Test
    void typingIntoAnyVisibleResultIsRefused() {
        List<String> open = new ArrayList<>();
        int seen = 0;
        for (LiveLine line : LiveLines.all().lines()) {
            for (Side side : line.grid().sided() ? Side.values() : new Side[] {Side.LEFT}) {
                for (String cell : visible(names.get(line.definedName(side)))) {
                    seen++;
                    if (!REFUSED.contains(cell)) {
                        open.add(line.definedName(side) + " " + cell);
                    }
                }
            }
        }
        assertThat(seen).isGreaterThan(1000);
        assertThat(open).isEmpty();
    }

    @Test
    void noTypedCellIsClosed() {
        List<String> closed = new ArrayList<>();
        for (Input input : Contract.inputs()) {
            for (Side side : input.grid().sided() ? Side.values() : new Side[] {Side.LEFT}) {
                for (String cell : visible(names.get(input.definedName(side)))) {
                    if (REFUSED.contains(cell)) {
                        closed.add(input.name() + " " + cell);
                    }
                }
            }
        }
        assertThat(closed).isEmpty();
    }

    /** A typed "no" becomes the column's "not met" in programs that complete words. */
    @Test
    void refusedChoiceSaysWhatToDoAgainstCompletion() {
        assertThat(CHOICE_WANTED)
                .contains("One of: yes, no. Completed to another word? Press Delete before Enter.")
                .allMatch(said -> said.endsWith(" Press Delete before Enter."))
                .allMatch(said -> said.length() <= 255);
    }

    private static List<String> visible(Area area) {
        List<String> cells = new ArrayList<>();
        if (VISIBLE.contains(area.sheet())) {
            for (int offset = 0; offset < area.size(); offset++) {
                CellPlace place = area.place(offset);
                cells.add(area.sheet() + "!" + new CellAddress(place.row(), place.column()));
            }
        }
        return cells;
    }
}
