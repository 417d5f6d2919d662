package shaftwright.template;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.poi.xssf.usermodel.XSSFHyperlink;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.units.LengthUnit;

class HiddenSheetsTest {
    @TempDir private Path folder;

    /** LibreOffice prints a hidden sheet that has a print area. */
    @Test
    void sheetsHiddenAtFirstAreNotPrinted() throws Exception {
        Path file = folder.resolve("blank.xlsx");
        Template.write(file, LengthUnit.MILLIMETRE, 1, Map.of());

        List<String> hidden = new ArrayList<>();
        List<String> printed = new ArrayList<>();
        try (InputStream in = Files.newInputStream(file);
                XSSFWorkbook workbook = new XSSFWorkbook(in)) {
            for (int index = 0; index < workbook.getNumberOfSheets(); index++) {
                if (workbook.isSheetHidden(index)) {
                    hidden.add(workbook.getSheetName(index));
                    if (workbook.getPrintArea(index) != null) {
                        printed.add(workbook.getSheetName(index));
                    }
                }
            }
        }
        assertThat(hidden).containsAll(OptionalSheet.all().toList());
        assertThat(printed).isEmpty();
    }

    /** Programs can't follow a link to a hidden sheet, and lose one to an address that moves. */
    @Test
    void linksOfTheFirstSheetLeadToNamesOnVisibleSheets() throws Exception {
        Path file = folder.resolve("blank.xlsx");
        Template.write(file, LengthUnit.INCH, 1, Map.of());

        List<String> sheets = new ArrayList<>();
        try (InputStream in = Files.newInputStream(file);
                XSSFWorkbook workbook = new XSSFWorkbook(in)) {
            for (XSSFHyperlink link : workbook.getSheet(StartSheet.NAME).getHyperlinkList()) {
                String sheet = workbook.getName(link.getLocation()).getSheetName();
                assertThat(workbook.isSheetHidden(workbook.getSheetIndex(sheet))).isFalse();
                sheets.add(sheet);
            }
        }
        assertThat(sheets)
                .containsExactly(
                        "Guide", "Measure", "Parts", "Scenarios", "Tables left", "Card left");
    }
}
