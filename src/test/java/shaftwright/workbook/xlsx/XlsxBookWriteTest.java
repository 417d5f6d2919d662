package shaftwright.workbook.xlsx;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.workbook.CellPlace;
import shaftwright.workbook.CellValue;

/** What a save does to the text of a sheet; forms of cells as in ECMA-376 part 1, 18.3.1.4. */
class XlsxBookWriteTest {
    private static final String SHEET = "xl/worksheets/sheet1.xml";

    @TempDir Path folder;

    private static CellPlace at(String address) {
        return new CellPlace(
                "Sheet1", AreaReference.rowOf(address), AreaReference.columnOf(address));
    }

    /** Writes values into a workbook with these rows and returns the rows that result. */
    private String rowsAfter(String rows, Map<CellPlace, CellValue> values) throws IOException {
        Path file = PackageBuilder.withRows(rows).save(folder.resolve("book.xlsx"));
        Path before = Files.copy(file, folder.resolve("before.xlsx"));
        XlsxBook book = XlsxBook.open(file);
        book.write(values);
        book.save(file);
        assertThat(PackageDifference.changedParts(before, file).keySet()).isSubsetOf(SHEET);
        String text = PackageDifference.text(file, SHEET);
        int from = text.indexOf("<sheetData>");
        return text.substring(from + 11, text.indexOf("</sheetData>"));
    }

    @Test
    void formulaKeepsItsTextAndGetsANewCachedNumber() throws IOException {
        assertThat(
                        rowsAfter(
                                "<row r=\"1\"><c r=\"A1\" s=\"3\"><f aca='false' >B1 &lt; 2</f><v>1</v></c></row>",
                                Map.of(at("A1"), CellValue.of(2.5))))
                .isEqualTo(
                        "<row r=\"1\"><c r=\"A1\" s=\"3\"><f aca='false' >B1 &lt; 2</f><v>2.5</v></c></row>");
    }

    @Test
    void equalNumberInAnotherSpellingStaysAsItIs() throws IOException {
        String rows = "<row r=\"1\"><c r=\"A1\"><v>1.50E0</v></c></row>";
        assertThat(rowsAfter(rows, Map.of(at("A1"), CellValue.of(1.5)))).isEqualTo(rows);
    }

    @Test
    void textOfAFormulaIsStrAndOfAPlainCellInline() throws IOException {
        assertThat(
                        rowsAfter(
                                "<row r=\"1\"><c r=\"A1\"><f>B1</f><v>1</v></c><c r=\"B1\" t=\"b\"><v>1</v></c></row>",
                                Map.of(
                                        at("A1"), CellValue.of("3/8\" & <up>"),
                                        at("B1"), CellValue.of(" x"))))
                .isEqualTo(
                        "<row r=\"1\"><c r=\"A1\" t=\"str\"><f>B1</f><v>3/8\" &amp; &lt;up&gt;</v></c>"
                                + "<c r=\"B1\" t=\"inlineStr\"><is><t xml:space=\"preserve\"> x</t></is></c></row>");
    }

    @Test
    void missingCellsAndRowsAreInsertedInOrder() throws IOException {
        assertThat(
                        rowsAfter(
                                "<row r=\"2\" spans=\"2:2\" s=\"7\" customFormat=\"1\"><c r=\"B2\"><v>1</v></c></row><row r=\"4\"/>",
                                Map.of(
                                        at("A1"), CellValue.of(1),
                                        at("A2"), CellValue.of(2),
                                        at("C2"), CellValue.of(3),
                                        at("D2"), CellValue.of(4),
                                        at("A3"), CellValue.of(5),
                                        at("A4"), CellValue.of(6),
                                        at("AA5"), CellValue.of(7))))
                .isEqualTo(
                        "<row r=\"1\"><c r=\"A1\"><v>1</v></c></row>"
                                + "<row r=\"2\" s=\"7\" customFormat=\"1\"><c r=\"A2\" s=\"7\"><v>2</v></c><c r=\"B2\"><v>1</v></c>"
                                + "<c r=\"C2\" s=\"7\"><v>3</v></c><c r=\"D2\" s=\"7\"><v>4</v></c></row>"
                                + "<row r=\"3\"><c r=\"A3\"><v>5</v></c></row>"
                                + "<row r=\"4\"><c r=\"A4\"><v>6</v></c></row>"
                                + "<row r=\"5\"><c r=\"AA5\"><v>7</v></c></row>");
    }

    @Test
    void blankRemovesValueAndType() throws IOException {
        assertThat(
                        rowsAfter(
                                "<row r=\"1\"><c r=\"A1\" t=\"str\"><f>B1</f><v>x</v></c><c r=\"B1\" s=\"2\" t=\"n\"><v>1</v></c></row>",
                                Map.of(at("A1"), CellValue.BLANK, at("B1"), CellValue.BLANK)))
                .isEqualTo(
                        "<row r=\"1\"><c r=\"A1\"><f>B1</f></c><c r=\"B1\" s=\"2\" t=\"n\"></c></row>");
    }
}
