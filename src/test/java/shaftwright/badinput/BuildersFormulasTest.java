package shaftwright.badinput;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import shaftwright.book.Area;
import shaftwright.book.CellContent;
import shaftwright.book.CellPlace;
import shaftwright.book.CellValue;
import shaftwright.cli.Run;
import shaftwright.xlsx.XlsxBook;

/** Formulas of the builder's beside ours, and whatever else stands in their files. */
class BuildersFormulasTest {
    @TempDir Path folder;
    private SmallBook book;
    private FileParts parts;

    /** Address of a result that follows from the first scenario's hub shift. */
    private String result;

    private double before;

    @BeforeEach
    void copy() {
        book = SmallBook.in(folder);
        parts = FileParts.of(book.file());
        CellPlace place = book.place("e_final_left", 0);
        result = "'" + place.sheet() + "'!" + place.address();
        before = result();
    }

    private double result() {
        return ((CellValue.Numeric) book.value("e_final_left", 0)).value();
    }

    private static String cell(String address, String formula, Object stored) {
        return "<c r=\"" + address + "\"><f>" + formula + "</f><v>" + stored + "</v></c>";
    }

    private Run fill() {
        parts.write(book.file());
        return Run.of("fill", "--set", "hub_shift[A]=1", book.file());
    }

    private Map<CellPlace, CellContent> mine() {
        return XlsxBook.open(book.file()).read(List.of(new Area("Mine", 0, 0, 99, 25))).filled();
    }

    private CellValue mine(int row, int column) {
        CellContent content = mine().get(new CellPlace("Mine", row, column));
        return content == null ? CellValue.BLANK : content.value();
    }

    private boolean computesOnOpening() {
        return FileParts.of(book.file()).text("xl/workbook.xml").contains("fullCalcOnLoad=\"1\"");
    }

    /** A part that some libraries refuse, by what it is. */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    private record Odd(String name, String part, byte[] bytes) {
        @Override
        public String toString() {
            return name;
        }
    }

    static Stream<Odd> oddParts() {
        return Stream.of(
                new Odd("a blank picture that packs too well", "xl/media/i.bmp", new byte[8 << 20]),
                odd("comments that are no XML", "xl/comments9.xml", "<comments><"),
                odd("a drawing that is no XML", "xl/drawings/drawing99.xml", "<wsDr>"),
                odd("a pivot table that is no XML", "xl/pivotTables/pivotTable1.xml", "&"),
                odd("a table that is no XML", "xl/tables/table9.xml", "<table"),
                odd("a drawing of notes with HTML", "xl/drawings/vml9.vml", "<xml>&nbsp;</xml>"));
    }

    private static Odd odd(String name, String part, String text) {
        return new Odd(name, part, text.getBytes(StandardCharsets.UTF_8));
    }

    @ParameterizedTest
    @MethodSource("oddParts")
    void otherPartsStopNoFill(Odd odd) {
        parts.addSheet("Mine", cell("A1", result + "*2", before * 2));
        String part = parts.sheet("Mine");
        String links = part.replace("worksheets/", "worksheets/_rels/") + ".rels";
        String kind = odd.part().contains("table") ? "table" : "comments";
        parts.put(
                links,
                "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/"
                        + "relationships\"><Relationship Id=\"rId1\" Type=\"http://schemas"
                        + ".openxmlformats.org/officeDocument/2006/relationships/"
                        + kind
                        + "\" Target=\"/"
                        + odd.part()
                        + "\"/></Relationships>");
        parts.put(odd.part(), odd.bytes());
        parts.replace(
                "[Content_Types].xml",
                "</Types>",
                "<Override PartName=\"/"
                        + odd.part()
                        + "\" ContentType=\"application/vnd.example\"/></Types>");

        Run run = fill();

        assertThat(run.code()).as(run.err()).isZero();
        assertThat(mine(0, 0)).isEqualTo(CellValue.of(result() * 2));
        assertThat(FileParts.of(book.file()).parts().get(odd.part())).isEqualTo(odd.bytes());
    }

    @Test
    void aThousandPartsStopNoFill() {
        parts.addSheet("Mine", cell("A1", result + "*2", before * 2));
        parts.replace(
                "[Content_Types].xml",
                "</Types>",
                "<Default Extension=\"txt\" ContentType=\"text/plain\"/></Types>");
        for (int i = 0; i < 1_001; i++) {
            parts.put("xl/own/" + i + ".txt", "mine");
        }

        Run run = fill();

        assertThat(run.code()).as(run.err()).isZero();
        assertThat(mine(0, 0)).isEqualTo(CellValue.of(result() * 2));
    }

    @Test
    void cellOfAnUnknownTypeCostsItsReadersOnly() {
        parts.addSheet(
                "Mine",
                "<c r=\"A1\" t=\"zz\"><v>5</v></c>"
                        + cell("B1", result + "+A1", before + 5)
                        + cell("C1", result + "*2", before * 2)
                        + cell("D1", result + "*3", before * 3).replace("<c ", "<c t=\"zz\" "));

        Run run = fill();

        assertThat(run.code()).as(run.err()).isZero();
        XlsxBook now = XlsxBook.open(book.file());
        Area cells = new Area("Mine", 0, 0, 0, 2);
        assertThat(now.read(List.of(cells)).at(cells.place(1)).value()).isEqualTo(CellValue.BLANK);
        assertThat(now.read(List.of(cells)).at(cells.place(2)).value())
                .isEqualTo(CellValue.of(result() * 2));
        assertThat(run.out()).contains("(sheet \"Mine\": B1, D1)");
    }

    @Test
    void dependentsThroughARelativeNameLoseTheirValuesAndAreNamed() {
        // Relative to A1: used in A3, it stands for the result as many rows and columns further.
        CellPlace place = book.place("e_final_left", 0);
        String relative =
                "'"
                        + place.sheet()
                        + "'!"
                        + CellPlace.columnLetters(place.column())
                        + (place.row() - 1);
        parts.addName("over_there", relative);
        parts.addSheetOfRows(
                "Mine",
                "<row r=\"3\">"
                        + cell("A3", "over_there", before)
                        + cell("B3", "over_there", 777)
                        + cell("C3", "A3+1", before + 1)
                        + "</row>");

        Run run = fill();

        assertThat(run.code()).as(run.err()).isZero();
        assertThat(mine(2, 0)).isEqualTo(CellValue.BLANK);
        assertThat(mine(2, 2)).isEqualTo(CellValue.BLANK);
        assertThat(run.out())
                .contains("are left for your spreadsheet program to compute")
                .contains("(sheet \"Mine\": A3");
        assertThat(computesOnOpening()).isTrue();
    }

    @Test
    void whatIfTableOfOurCellsLosesItsValuesWithItsReaders() {
        parts.addSheetOfRows(
                "Mine",
                "<row r=\"1\">"
                        + cell("B1", result, before)
                        + "</row><row r=\"2\"><c r=\"A2\"><v>1</v></c><c r=\"B2\"><f t=\"dataTable\""
                        + " ref=\"B2:B3\" dt2D=\"0\" dtr=\"0\" r1=\"D1\"/><v>5</v></c>"
                        + cell("C2", "B3*2", 12)
                        + "</row><row r=\"3\"><c r=\"A3\"><v>2</v></c><c r=\"B3\"><v>6</v></c></row>");

        Run run = fill();

        assertThat(run.code()).as(run.err()).isZero();
        assertThat(mine(1, 1)).isEqualTo(CellValue.BLANK);
        assertThat(mine(2, 1)).isEqualTo(CellValue.BLANK);
        assertThat(mine(1, 2)).isEqualTo(CellValue.BLANK);
        assertThat(computesOnOpening()).isTrue();
    }

    @Test
    void whatIfTableThatHasNothingToDoWithOursStays() {
        parts.addSheetOfRows(
                "Mine",
                "<row r=\"1\">"
                        + cell("B1", "D1*2", 8)
                        + "<c r=\"D1\"><v>4</v></c></row>"
                        + "<row r=\"2\"><c r=\"A2\"><v>1</v></c><c r=\"B2\"><f t=\"dataTable\""
                        + " ref=\"B2:B3\" dt2D=\"0\" dtr=\"0\" r1=\"D1\"/><v>2</v></c></row>"
                        + "<row r=\"3\"><c r=\"A3\"><v>2</v></c><c r=\"B3\"><v>4</v></c></row>"
                        + "<row r=\"5\"><c r=\"A5\"><f t=\"dataTable\" r1=\"D1\"/><v>9</v></c></row>");

        Run run = fill();

        assertThat(run.code()).as(run.err()).isZero();
        assertThat(mine(1, 1)).isEqualTo(CellValue.of(2));
        assertThat(mine(2, 1)).isEqualTo(CellValue.of(4));
        assertThat(mine(4, 0)).isEqualTo(CellValue.of(9));
        assertThat(run.out()).doesNotContain("your own formulas");
    }

    @Test
    void fractionAsATextUnderArithmeticLosesItsValue() {
        CellPlace typed = book.place("hub_shift", 0);
        String address = "Scenarios!" + typed.address();
        parts.cell(typed, "<v>2</v>");
        parts.addSheet(
                "Mine",
                cell("A1", address + "+1", 3)
                        + cell(
                                "B1",
                                "IF(" + result + "&gt;0,SQRT(" + address + "),0)",
                                Math.sqrt(2))
                        + cell("C1", "IFERROR(" + address + "*2,0)", 4)
                        + cell("D1", address + "&amp;\" in\"", "2 in")
                                .replace("<c ", "<c t=\"str\" "));
        parts.write(book.file());

        Run run = Run.of("fill", "--set", "hub_shift[A]=1/2", book.file());

        assertThat(run.code()).as(run.err()).isZero();
        assertThat(mine(0, 0)).isEqualTo(CellValue.BLANK);
        assertThat(mine(0, 1)).isEqualTo(CellValue.BLANK);
        assertThat(mine(0, 2)).isEqualTo(CellValue.BLANK);
        assertThat(mine(0, 3)).isEqualTo(CellValue.of("1/2 in"));
    }

    @Test
    void checkNamesTheCellsThatAFillWouldEmpty() {
        CellPlace typed = book.place("hub_shift", 0);
        parts.cell(typed, "<v>2</v>");
        parts.addSheet(
                "Mine",
                cell("A1", "NOSUCHFUNCTION(" + result + ")", 5)
                        + cell("B1", result + "*2", before * 2));
        parts.write(book.file());

        Run check = Run.of("check", book.file());

        assertThat(check.out())
                .contains(
                        "note: after a fill 1 of your own formulas is left for your spreadsheet"
                                + " program to compute when it opens the file (sheet \"Mine\":"
                                + " A1).");
        Run fill = Run.of("fill", book.file());
        assertThat(fill.out()).contains("(sheet \"Mine\": A1)");
        assertThat(mine(0, 0)).isEqualTo(CellValue.BLANK);
    }

    @Test
    void formulasThatNobodyHereReadsButThatReadNothingOfOursStay() {
        parts.addSheet(
                "Mine",
                "<c r=\"A1\"><v>3</v></c>"
                        + cell("B1", "_xlfn.LET(_xlpm.x,A1,_xlpm.x*2)", 6)
                        + cell("C1", "_xlfn.XLOOKUP(A1,A1:A9,A1:A9)", 3)
                        + cell("D1", "[1]Other!A1+A1", 9)
                        + cell("E1", "SUM(A:A)+MINE(A1)", 12));

        Run run = fill();

        assertThat(run.code()).as(run.err()).isZero();
        assertThat(mine(0, 1)).isEqualTo(CellValue.of(6));
        assertThat(mine(0, 2)).isEqualTo(CellValue.of(3));
        assertThat(mine(0, 3)).isEqualTo(CellValue.of(9));
        assertThat(mine(0, 4)).isEqualTo(CellValue.of(12));
        assertThat(run.out()).doesNotContain("your own formulas");
    }

    @Test
    void sharedFormulasFollow() {
        parts.addSheetOfRows(
                "Mine",
                "<row r=\"1\">"
                        + cell("A1", result, before)
                        + "<c r=\"B1\"><v>1</v></c></row><row r=\"2\"><c r=\"A2\"><v>10</v></c>"
                        + "<c r=\"B2\"><f t=\"shared\" ref=\"B2:B3\" si=\"0\">A1+1</f><v>"
                        + (before + 1)
                        + "</v></c></row>"
                        + "<row r=\"3\"><c r=\"B3\"><f t=\"shared\" si=\"0\"/><v>11</v></c></row>");

        Run run = fill();

        assertThat(run.code()).as(run.err()).isZero();
        assertThat(mine(1, 1)).isEqualTo(CellValue.of(result() + 1));
        assertThat(mine(2, 1)).isEqualTo(CellValue.of(11));
    }

    @Test
    void longChainsFollowToTheirEnd() {
        StringBuilder rows = new StringBuilder();
        rows.append("<row r=\"1\">").append(cell("A1", result, before)).append("</row>");
        for (int row = 2; row <= 5_000; row++) {
            rows.append("<row r=\"").append(row).append("\">");
            rows.append(cell("A" + row, "A" + (row - 1) + "+1", before + row - 1)).append("</row>");
        }
        parts.addSheetOfRows("Mine", rows.toString());

        Run run = fill();

        assertThat(run.code()).as(run.err()).isZero();
        Area last = new Area("Mine", 4_999, 0, 4_999, 0);
        assertThat(XlsxBook.open(book.file()).read(List.of(last)).at(last.place(0)).value())
                .isEqualTo(CellValue.of(result() + 4_999));
    }
}
