package shaftwright.xlsx;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import shaftwright.book.Area;
import shaftwright.book.CellContent;
import shaftwright.book.CellPlace;
import shaftwright.book.CellValue;

/** Forms of cells, strings, names and parts that ECMA-376 (parts 1, 2 and 4) allows. */
class XlsxBookReadTest {
    private static final Area ALL = new Area("Sheet1", 0, 0, 99, 99);

    @TempDir Path folder;

    private static CellPlace at(String address) {
        return new CellPlace(
                "Sheet1", AreaReference.rowOf(address), AreaReference.columnOf(address));
    }

    private XlsxBook open(PackageBuilder builder) throws IOException {
        return XlsxBook.open(builder.save(folder.resolve("book.xlsx")));
    }

    private CellContent read(PackageBuilder builder, String address) throws IOException {
        return open(builder).read(List.of(ALL)).at(at(address));
    }

    private CellValue value(String cell) throws IOException {
        return read(PackageBuilder.withRows("<row r=\"1\">" + cell + "</row>"), "A1").value();
    }

    @Test
    void numberTruthErrorAndTextAreTold() throws IOException {
        assertThat(value("<c r=\"A1\"><v>-1.5E-3</v></c>")).isEqualTo(CellValue.of(-0.0015));
        assertThat(value("<c r=\"A1\" t=\"b\"><v>1</v></c>")).isEqualTo(new CellValue.Truth(true));
        assertThat(value("<c r=\"A1\" t=\"e\"><v>#DIV/0!</v></c>"))
                .isEqualTo(new CellValue.Fault("#DIV/0!"));
        assertThat(value("<c r=\"A1\" t=\"str\"><f>B1</f><v> 3/8&quot;</v></c>"))
                .isEqualTo(CellValue.of(" 3/8\""));
        assertThat(value("<c r=\"A1\" t=\"str\"><f>B1</f><v></v></c>")).isEqualTo(CellValue.of(""));
        assertThat(value("<c r=\"A1\" t=\"d\"><v>2026-01-31</v></c>"))
                .isEqualTo(CellValue.of("2026-01-31"));
        assertThat(value("<c r=\"A1\" s=\"4\"/>")).isEqualTo(CellValue.BLANK);
    }

    @Test
    void numberThatIsNoneIsRefusedWithItsPlace() {
        assertThatThrownBy(() -> value("<c r=\"A1\"><v>0x1p3</v></c>"))
                .isInstanceOf(UnreadableBookException.class)
                .hasMessageContaining("\"0x1p3\"")
                .hasMessageContaining("cell A1");
        assertThatThrownBy(() -> value("<c r=\"A1\"><v>1e999</v></c>"))
                .hasMessageContaining("\"1e999\"");
    }

    @Test
    void inlineTextJoinsItsRunsWithoutPhoneticHints() throws IOException {
        assertThat(
                        value(
                                "<c r=\"A1\" t=\"inlineStr\"><is><r><rPr><b/></rPr><t>25</t></r>"
                                        + "<r><t xml:space=\"preserve\"> 3/8</t></r>"
                                        + "<rPh sb=\"0\" eb=\"1\"><t>no</t></rPh></is></c>"))
                .isEqualTo(CellValue.of("25 3/8"));
    }

    @Test
    void sharedTextsAreLookedUpAndUnescaped() throws IOException {
        PackageBuilder builder =
                PackageBuilder.withRows(
                                "<row r=\"1\"><c r=\"A1\" t=\"s\"><v>2</v></c><c r=\"B1\" t=\"s\"><v>0</v></c></row>")
                        .sharedStrings(
                                "<si><t>first_x000D_</t></si><si><t>unused</t></si>"
                                        + "<si><r><t>a &amp; </t></r><r><t>b_x005F_x0041_</t></r></si>");
        Map<CellPlace, CellContent> cells = open(builder).read(List.of(ALL)).filled();
        assertThat(cells.get(at("A1")).value()).isEqualTo(CellValue.of("a & b_x0041_"));
        assertThat(cells.get(at("B1")).value()).isEqualTo(CellValue.of("first\r"));
    }

    @Test
    void sharedTextThatDoesNotExistIsRefused() {
        PackageBuilder builder =
                PackageBuilder.withRows("<row r=\"1\"><c r=\"A1\" t=\"s\"><v>7</v></c></row>")
                        .sharedStrings("<si><t>one</t></si>");
        assertThatThrownBy(() -> read(builder, "A1").value())
                .isInstanceOf(UnreadableBookException.class)
                .hasMessageContaining("shared text 7 of 1");
    }

    @Test
    void cellsAndRowsWithoutAddressFollowTheOnesBefore() throws IOException {
        PackageBuilder builder =
                PackageBuilder.withRows(
                        "<row><c><v>1</v></c><c r=\"D1\"><v>2</v></c><c><v>3</v></c></row>"
                                + "<row r=\"5\"><c><v>4</v></c></row><row><c><v>5</v></c></row>"
                                + "<row><c r=\"B9\"><v>6</v></c></row>");
        assertThat(open(builder).read(List.of(ALL)).filled().keySet())
                .containsExactlyInAnyOrder(
                        at("A1"), at("D1"), at("E1"), at("A5"), at("A6"), at("B9"));
    }

    @Test
    void cellOfASharedFormulaCarriesTheFirstCellsText() throws IOException {
        PackageBuilder builder =
                PackageBuilder.withRows(
                        "<row r=\"1\"><c r=\"A1\"><f t=\"shared\" ref=\"A1:A2\" si=\"0\">B1*2</f><v>2</v></c></row>"
                                + "<row r=\"2\"><c r=\"A2\"><f t=\"shared\" si=\"0\"/><v>4</v></c></row>");
        assertThat(open(builder).read(List.of(new Area("Sheet1", 1, 0, 1, 0))).filled())
                .containsExactly(Map.entry(at("A2"), CellContent.of(CellValue.of(4), "B1*2")));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 63, 64, 1000, 65_535, 65_536, 999_999_999})
    void sharedFormulasOfAnyNumberAreFound(int number) throws IOException {
        String first = "<f t=\"shared\" ref=\"A1:A3\" si=\"" + number + "\">B1*2</f><v>2</v>";
        String other = "<f t=\"shared\" ref=\"C1:C2\" si=\"5\">D1*3</f><v>3</v>";
        String next = "<f t=\"shared\" si=\"" + number + "\"/><v>4</v>";
        String unknown = "<f t=\"shared\" si=\"7\"/><v>5</v>";
        PackageBuilder builder =
                PackageBuilder.withRows(
                        "<row r=\"1\"><c r=\"A1\">"
                                + first
                                + "</c><c r=\"C1\">"
                                + other
                                + "</c></row><row r=\"2\"><c r=\"A2\">"
                                + next
                                + "</c></row><row r=\"3\"><c r=\"A3\">"
                                + unknown
                                + "</c></row>");
        assertThat(read(builder, "A2")).isEqualTo(CellContent.of(CellValue.of(4), "B1*2"));
        assertThat(read(builder, "C1")).isEqualTo(CellContent.of(CellValue.of(3), "D1*3"));
        assertThat(read(builder, "A3").hasFormula()).isFalse();
    }

    @Test
    void whatIfTableIsAFormula() throws IOException {
        assertThat(
                        read(
                                        PackageBuilder.withRows(
                                                "<row r=\"1\"><c r=\"A1\"><f t=\"dataTable\" ref=\"A1:A3\" r1=\"C1\" dt2D=\"0\"/><v>1</v></c></row>"),
                                        "A1")
                                .hasFormula())
                .isTrue();
    }

    @Test
    void anyNamespacePrefixWillDo() throws IOException {
        PackageBuilder builder =
                PackageBuilder.withSheet(
                        "<x:worksheet xmlns:x=\""
                                + PackageBuilder.MAIN
                                + "\" xmlns=\"urn:other\"><sheetData><row/></sheetData><x:sheetData>"
                                + "<x:row r=\"1\"><x:c r=\"A1\"><v>9</v><x:v>1</x:v></x:c></x:row></x:sheetData></x:worksheet>");
        assertThat(read(builder, "A1").value()).isEqualTo(CellValue.of(1));
    }

    @Test
    void strictNamespacesAreRead() throws IOException {
        PackageBuilder builder =
                PackageBuilder.withRows("<row r=\"1\"><c r=\"A1\"><v>1</v></c></row>")
                        .workbook(
                                "<definedNames><definedName name=\"u\">Sheet1!$A$1</definedName></definedNames>");
        String[] parts = {
            "_rels/.rels",
            "xl/workbook.xml",
            "xl/_rels/workbook.xml.rels",
            "xl/worksheets/sheet1.xml"
        };
        for (String part : parts) {
            boolean main = !part.endsWith(".rels");
            builder.swap(
                    part,
                    main ? PackageBuilder.MAIN : PackageBuilder.RELATIONS,
                    main
                            ? "http://purl.oclc.org/ooxml/spreadsheetml/main"
                            : "http://purl.oclc.org/ooxml/officeDocument/relationships");
        }
        XlsxBook book = open(builder);
        assertThat(book.names()).containsOnlyKeys("u");
        assertThat(book.read(book.names().values()).at(at("A1")).value())
                .isEqualTo(CellValue.of(1));
    }

    @Test
    void alternateContentIsPassedOver() throws IOException {
        String alternate =
                "<mc:AlternateContent xmlns:mc=\"http://schemas.openxmlformats.org/markup-compatibility/2006\">"
                        + "<mc:Choice Requires=\"x14\"><sheetData><row r=\"1\"/></sheetData></mc:Choice></mc:AlternateContent>";
        PackageBuilder builder =
                PackageBuilder.withSheet(
                                "<worksheet xmlns=\""
                                        + PackageBuilder.MAIN
                                        + "\">"
                                        + alternate
                                        + "<sheetData><row r=\"1\"><c r=\"A1\"><v>1</v></c></row></sheetData>"
                                        + alternate
                                        + "</worksheet>")
                        .workbook(
                                alternate
                                        + "<definedNames><definedName name=\"u\">Sheet1!$A$1</definedName></definedNames>");
        XlsxBook book = open(builder);
        assertThat(book.names()).containsOnlyKeys("u");
        assertThat(book.read(List.of(ALL)).at(at("A1")).value()).isEqualTo(CellValue.of(1));
    }

    @Test
    void partsMayHaveOtherNamesAndAbsoluteTargets() throws IOException {
        PackageBuilder builder =
                PackageBuilder.withRows("<row r=\"1\"><c r=\"A1\" t=\"s\"><v>0</v></c></row>")
                        .sharedStrings("<si><t>odd</t></si>")
                        .rename("xl/worksheets/sheet1.xml", "Tabs/One.XML")
                        .rename("xl/sharedStrings.xml", "texts.xml")
                        .rename("xl/workbook.xml", "deep/er/Book.xml")
                        .rename("xl/_rels/workbook.xml.rels", "deep/er/_rels/Book.xml.rels")
                        .swap("_rels/.rels", "xl/workbook.xml", "/deep/er/Book.xml")
                        .swap(
                                "deep/er/_rels/Book.xml.rels",
                                "worksheets/sheet1.xml",
                                "/tabs/one.xml")
                        .swap(
                                "deep/er/_rels/Book.xml.rels",
                                "sharedStrings.xml",
                                "./../../texts.xml");
        assertThat(read(builder, "A1").value()).isEqualTo(CellValue.of("odd"));
    }

    @Test
    void otherEncodingsAreRead() throws IOException {
        String sheet =
                "<worksheet xmlns=\""
                        + PackageBuilder.MAIN
                        + "\"><sheetData><row r=\"1\"><c r=\"A1\" t=\"str\"><v>ø 25</v></c></row></sheetData></worksheet>";
        String part = "xl/worksheets/sheet1.xml";
        PackageBuilder builder = PackageBuilder.withSheet(sheet);
        builder.part(part, ("\uFEFF" + sheet).getBytes(StandardCharsets.UTF_16LE));
        assertThat(read(builder, "A1").value()).isEqualTo(CellValue.of("ø 25"));
        builder.part(part, ("\uFEFF" + sheet).getBytes(StandardCharsets.UTF_16BE));
        assertThat(read(builder, "A1").value()).isEqualTo(CellValue.of("ø 25"));
        builder.part(part, ("\uFEFF" + sheet).getBytes(StandardCharsets.UTF_8));
        assertThat(read(builder, "A1").value()).isEqualTo(CellValue.of("ø 25"));
        builder.part(
                part,
                ("<?xml version='1.0' encoding='iso-8859-1'?>" + sheet)
                        .getBytes(StandardCharsets.ISO_8859_1));
        assertThat(read(builder, "A1").value()).isEqualTo(CellValue.of("ø 25"));
    }

    @Test
    void namesOfOnePlainAreaAreFound() throws IOException {
        PackageBuilder builder =
                PackageBuilder.withRows("")
                        .swap("xl/workbook.xml", "name=\"Sheet1\"", "name=\"Bench 'B' &amp; co\"")
                        .swap(
                                "xl/workbook.xml",
                                "</sheets>",
                                "</sheets><definedNames>"
                                        + "<definedName name=\"Quoted\">'Bench ''B'' &amp; co'!$B$2:$C$30</definedName>"
                                        + "<definedName name=\"OTHER_CASE\">'bench ''b'' &amp; CO'!$A$1</definedName>"
                                        + "<definedName name=\"constant\">0.5</definedName>"
                                        + "<definedName name=\"formula\">SUM('Bench ''B'' &amp; co'!$A$1:$A$2)</definedName>"
                                        + "<definedName name=\"two\">'Bench ''B'' &amp; co'!$A$1,'Bench ''B'' &amp; co'!$A$3</definedName>"
                                        + "<definedName name=\"column\">'Bench ''B'' &amp; co'!$A:$A</definedName>"
                                        + "<definedName name=\"external\">[1]Bench!$A$1</definedName>"
                                        + "<definedName name=\"gone\">'Bench ''B'' &amp; co'!#REF!</definedName>"
                                        + "</definedNames>");
        XlsxBook book = open(builder);
        assertThat(book.sheetNames()).containsExactly("Bench 'B' & co");
        assertThat(book.names())
                .containsOnly(
                        Map.entry("quoted", new Area("Bench 'B' & co", 1, 1, 29, 2)),
                        Map.entry("other_case", new Area("Bench 'B' & co", 0, 0, 0, 0)));
        assertThat(book.deletedNames()).containsExactly("gone");
    }

    @Test
    void nameOfTheWholeWorkbookGoesBeforeASheetsOwn() throws IOException {
        PackageBuilder builder =
                PackageBuilder.withRows("")
                        .workbook(
                                "<definedNames>"
                                        + "<definedName name=\"unit\" localSheetId=\"0\">Sheet1!$A$1</definedName>"
                                        + "<definedName name=\"unit\">Sheet1!$B$1</definedName>"
                                        + "<definedName name=\"alone\" localSheetId=\"0\">Sheet1!$C$1</definedName>"
                                        + "<definedName name=\"twice\" localSheetId=\"0\">Sheet1!$D$1</definedName>"
                                        + "<definedName name=\"twice\" localSheetId=\"1\">Sheet1!$E$1</definedName>"
                                        + "<definedName name=\"lost\" localSheetId=\"0\">Sheet1!$F$1</definedName>"
                                        + "<definedName name=\"lost\">Sheet1!#REF!</definedName>"
                                        + "</definedNames>");
        XlsxBook book = open(builder);
        assertThat(book.names())
                .containsOnly(
                        Map.entry("unit", new Area("Sheet1", 0, 1, 0, 1)),
                        Map.entry("alone", new Area("Sheet1", 0, 2, 0, 2)));
        assertThat(book.deletedNames()).containsExactly("lost");
    }

    @Test
    void onlySheetsThatHoldAskedForCellsAreInflated() throws IOException {
        PackageBuilder builder =
                PackageBuilder.withRows("<row r=\"1\"><c r=\"A1\"><v>1</v></c></row>")
                        .swap(
                                "xl/workbook.xml",
                                "</sheets>",
                                "<sheet name=\"Mine\" sheetId=\"2\" r:id=\"rId3\"/></sheets>")
                        .swap(
                                "xl/_rels/workbook.xml.rels",
                                "</Relationships>",
                                "<Relationship Id=\"rId3\" Type=\""
                                        + PackageBuilder.RELATIONS
                                        + "/worksheet\" Target=\"worksheets/mine.xml\"/></Relationships>")
                        .part("xl/worksheets/mine.xml", "this is not even XML");
        XlsxBook book = open(builder);
        assertThat(book.read(List.of(ALL)).filled()).hasSize(1);
        assertThat(book.inflatedSheets()).containsExactly("Sheet1");
        List<Area> mine = List.of(new Area("Mine", 0, 0, 1, 1));
        assertThatThrownBy(() -> book.read(mine))
                .isInstanceOf(UnreadableBookException.class)
                .hasMessageContaining("xl/worksheets/mine.xml");
    }

    @Test
    void onlyTheAskedForCellsAreReturned() throws IOException {
        XlsxBook book =
                open(
                        PackageBuilder.withRows(
                                "<row r=\"1\"><c r=\"A1\"><v>1</v></c><c r=\"B1\"><v>2</v></c></row>"
                                        + "<row r=\"2\"><c r=\"A2\"><v>3</v></c></row>"));
        assertThat(book.read(List.of(ALL)).filled()).hasSize(3);
        assertThat(book.read(List.of(new Area("Sheet1", 0, 1, 5, 1))).filled().keySet())
                .containsExactly(at("B1"));
    }
}
