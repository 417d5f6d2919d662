package shaftwright.xlsx;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.commons.compress.archivers.zip.Zip64Mode;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import shaftwright.book.Area;
import shaftwright.book.CellContent;
import shaftwright.book.CellPlace;
import shaftwright.book.CellValue;
import shaftwright.book.CellWrite;

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
        Path file =
                PackageBuilder.withRows(rows)
                        .sharedStrings("<si><t>same</t></si>")
                        .save(folder.resolve("book.xlsx"));
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

    @Test
    void sharedTextIsReplacedInTheCellOnly() throws IOException {
        assertThat(
                        rowsAfter(
                                "<row r=\"1\"><c r=\"A1\" t=\"s\" s=\"1\"><v>0</v></c><c r=\"B1\" t=\"s\"><v>0</v></c></row>",
                                Map.of(
                                        at("A1"), CellValue.of("new"),
                                        at("B1"), CellValue.of("same"))))
                .isEqualTo(
                        "<row r=\"1\"><c r=\"A1\" t=\"inlineStr\" s=\"1\"><is><t>new</t></is></c>"
                                + "<c r=\"B1\" t=\"s\"><v>0</v></c></row>");
    }

    @Test
    void selfClosingCellIsOpenedAndKeepsItsPrefix() throws IOException {
        Path file =
                PackageBuilder.withSheet(
                                "<x:worksheet xmlns:x=\""
                                        + PackageBuilder.MAIN
                                        + "\"><x:cols><x:col min=\"2\" max=\"3\" style=\"5\"/></x:cols><x:sheetData>"
                                        + "<x:row r=\"1\"><x:c r=\"A1\" s=\"4\" /></x:row></x:sheetData></x:worksheet>")
                        .save(folder.resolve("book.xlsx"));
        XlsxBook book = XlsxBook.open(file);
        book.write(Map.of(at("A1"), new CellValue.Truth(true), at("B1"), CellValue.NOT_AVAILABLE));
        book.save(file);
        assertThat(PackageDifference.text(file, SHEET))
                .contains(
                        "<x:row r=\"1\"><x:c r=\"A1\" s=\"4\" t=\"b\"><x:v>1</x:v></x:c>"
                                + "<x:c r=\"B1\" s=\"5\" t=\"e\"><x:v>#N/A</x:v></x:c></x:row>");
    }

    @Test
    void emptySheetGetsItsRows() throws IOException {
        Path file =
                PackageBuilder.withSheet(
                                "<worksheet xmlns=\""
                                        + PackageBuilder.MAIN
                                        + "\"><sheetData /></worksheet>")
                        .save(folder.resolve("book.xlsx"));
        XlsxBook book = XlsxBook.open(file);
        book.write(Map.of(at("B2"), CellValue.of(1), at("A3"), CellValue.of(2)));
        book.save(file);
        assertThat(PackageDifference.text(file, SHEET))
                .contains(
                        "<sheetData><row r=\"2\"><c r=\"B2\"><v>1</v></c></row><row r=\"3\"><c r=\"A3\"><v>2</v></c></row></sheetData>");
    }

    @Test
    void metadataOfTheOldValueGoesWithIt() throws IOException {
        assertThat(
                        rowsAfter(
                                "<row r=\"1\"><c r=\"A1\" t=\"e\" vm=\"1\" cm=\"2\"><f>B1</f><v>#VALUE!</v></c></row>",
                                Map.of(at("A1"), CellValue.of(1))))
                .isEqualTo("<row r=\"1\"><c r=\"A1\" cm=\"2\"><f>B1</f><v>1</v></c></row>");
    }

    @Test
    void rowsAndCellsOutOfOrderAreStillFound() throws IOException {
        assertThat(
                        rowsAfter(
                                "<row r=\"2\"><c r=\"B2\"><v>1</v></c><c r=\"A2\"><v>1</v></c></row><row r=\"1\"><c r=\"A1\"><v>1</v></c></row>",
                                Map.of(
                                        at("A1"), CellValue.of(2),
                                        at("A2"), CellValue.of(3),
                                        at("B2"), CellValue.of(4))))
                .isEqualTo(
                        "<row r=\"2\"><c r=\"B2\"><v>4</v></c><c r=\"A2\"><v>3</v></c></row><row r=\"1\"><c r=\"A1\"><v>2</v></c></row>");
    }

    @Test
    void commentsAndCdataAroundValuesDoNotHurt() throws IOException {
        assertThat(
                        rowsAfter(
                                "<!--a<c>--><row r=\"1\"><?pi <c>?><c r=\"A1\"><f><![CDATA[B1<2]]></f><!-- x --><v><!--1-->2</v></c></row>",
                                Map.of(at("A1"), CellValue.of(3))))
                .isEqualTo(
                        "<!--a<c>--><row r=\"1\"><?pi <c>?><c r=\"A1\"><f><![CDATA[B1<2]]></f><!-- x --><v>3</v></c></row>");
    }

    @Test
    void utf16PartStaysUtf16() throws IOException {
        String sheet =
                "<worksheet xmlns=\""
                        + PackageBuilder.MAIN
                        + "\"><sheetData><row r=\"1\"><c r=\"A1\"><f>\"ø\"</f><v>1</v></c></row></sheetData></worksheet>";
        for (Charset charset : List.of(StandardCharsets.UTF_16LE, StandardCharsets.UTF_16BE)) {
            Path file =
                    PackageBuilder.withSheet("")
                            .part(SHEET, ("\uFEFF" + sheet).getBytes(charset))
                            .save(folder.resolve("book.xlsx"));
            XlsxBook book = XlsxBook.open(file);
            book.write(Map.of(at("A1"), CellValue.of("Ω")));
            book.save(file);
            assertThat(PackageDifference.bytes(file, SHEET))
                    .isEqualTo(
                            ("\uFEFF"
                                            + sheet.replace("\"A1\"", "\"A1\" t=\"str\"")
                                                    .replace("<v>1", "<v>Ω"))
                                    .getBytes(charset));
        }
    }

    @Test
    void charactersThatXmlCannotCarryComeBack() throws IOException {
        Path file = PackageBuilder.withRows("").save(folder.resolve("book.xlsx"));
        String text = "a\u0001\r\n\t_x0041_ \ud800 \ud83d\ude00 <&>\"'\uffff ";
        XlsxBook book = XlsxBook.open(file);
        book.write(Map.of(at("A1"), CellValue.of(text)));
        book.save(file);
        assertThat(XlsxBook.open(file).read(List.of(new Area("Sheet1", 0, 0, 0, 0))).filled())
                .containsOnly(Map.entry(at("A1"), CellContent.of(CellValue.of(text), "")));
        try (XSSFWorkbook poi = new XSSFWorkbook(Files.newInputStream(file))) {
            assertThat(poi.getSheetAt(0).getRow(0).getCell(0).getStringCellValue()).isEqualTo(text);
        }
    }

    @Test
    void nothingIsWrittenWhenNothingChanged() throws IOException {
        Path file =
                PackageBuilder.withRows("<row r=\"1\"><c r=\"A1\"><v>1</v></c></row>")
                        .save(folder.resolve("book.xlsx"));
        Files.setLastModifiedTime(file, FileTime.fromMillis(1_000_000_000_000L));
        XlsxBook book = XlsxBook.open(file);
        book.write(Map.of(at("A1"), CellValue.of(1.0), at("B7"), CellValue.BLANK));
        assertThat(book.save(file)).isEqualTo(new SaveReport(0, 0, List.of(), Replaced.NOTHING));
        assertThat(Files.getLastModifiedTime(file).toMillis()).isEqualTo(1_000_000_000_000L);
        assertThat(folder.toFile().list()).containsExactly("book.xlsx");
    }

    /** First and last of many, which are compared while others are written. */
    @Test
    void ofValuesWrittenToOneCellTheLastCounts() throws IOException {
        int many = 2000;
        StringBuilder rows = new StringBuilder();
        List<CellWrite> other = new ArrayList<>();
        List<CellWrite> same = new ArrayList<>();
        for (int row = 1; row <= many; row++) {
            rows.append("<row r=\"%d\"><c r=\"A%d\"><v>%d</v></c></row>".formatted(row, row, row));
            other.add(new CellWrite(at("A" + row), CellValue.of(row + 0.5)));
            other.add(new CellWrite(at("B" + row), CellValue.of(row)));
            same.add(new CellWrite(at("B" + row), CellValue.BLANK));
            same.add(new CellWrite(at("A" + row), CellValue.of(row)));
        }
        Path file = PackageBuilder.withRows(rows.toString()).save(folder.resolve("book.xlsx"));
        byte[] before = Files.readAllBytes(file);

        XlsxBook book = XlsxBook.open(file);
        book.write(other);
        book.write(same);
        assertThat(book.save(file)).isEqualTo(new SaveReport(0, 0, List.of(), Replaced.NOTHING));
        assertThat(file).hasBinaryContent(before);

        List<CellWrite> both = new ArrayList<>(other);
        both.addAll(same.subList(2, same.size()));
        book = XlsxBook.open(file);
        book.write(both);
        assertThat(book.save(file).changed()).isEqualTo(2);
        String text = PackageDifference.text(file, SHEET);
        assertThat(text).contains("<c r=\"A1\"><v>1.5</v></c><c r=\"B1\"><v>1</v></c>");
        assertThat(text).contains("<c r=\"A2\"><v>2</v></c></row>");
    }

    @Test
    void writingTwiceGivesTheSameBytes() throws IOException {
        Path first =
                PackageBuilder.withRows("<row r=\"1\"><c r=\"A1\"><v>1</v></c></row>")
                        .save(folder.resolve("a.xlsx"));
        Path second = Files.copy(first, folder.resolve("b.xlsx"));
        for (Path file : List.of(first, second)) {
            XlsxBook book = XlsxBook.open(file);
            book.write(Map.of(at("A1"), CellValue.of(0.1), at("C9"), CellValue.of("x")));
            book.save(file);
        }
        assertThat(Files.readAllBytes(second)).isEqualTo(Files.readAllBytes(first));
    }

    @Test
    void everyPartThatNobodyHereKnowsIsCopiedRaw() throws IOException {
        byte[] noise = new byte[10_000];
        new Random(7).nextBytes(noise);
        PackageBuilder builder =
                PackageBuilder.withSheet(
                        "<worksheet xmlns=\""
                                + PackageBuilder.MAIN
                                + "\" xmlns:r=\""
                                + PackageBuilder.RELATIONS
                                + "\" xmlns:mc=\"http://schemas.openxmlformats.org/markup-compatibility/2006\" mc:Ignorable=\"x14ac xr\""
                                + " xmlns:x14ac=\"http://schemas.microsoft.com/office/spreadsheetml/2009/9/ac\" xmlns:xr=\"http://schemas.microsoft.com/office/spreadsheetml/2014/revision\" xr:uid=\"{0}\">"
                                + "<sheetPr codeName=\"Tab1\"/><dimension ref=\"A1\"/><sheetFormatPr x14ac:dyDescent=\"0.3\"/>"
                                + "<sheetData><row r=\"1\" spans=\"1:1\" x14ac:dyDescent=\"0.3\"><c r=\"A1\"><v>1</v></c></row></sheetData>"
                                + "<sheetProtection sheet=\"1\"/><mergeCells count=\"1\"><mergeCell ref=\"C1:D1\"/></mergeCells>"
                                + "<drawing r:id=\"rId1\"/><legacyDrawing r:id=\"rId2\"/>"
                                + "<extLst><ext uri=\"{05C60535-1F16-4fd2-B633-F4F36F0B64E0}\" xmlns:x14=\"http://schemas.microsoft.com/office/spreadsheetml/2009/9/main\">"
                                + "<x14:sparklineGroups xmlns:xm=\"http://schemas.microsoft.com/office/excel/2006/main\"><x14:sparklineGroup><x14:sparklines><x14:sparkline>"
                                + "<xm:f>Sheet1!A1:A9</xm:f><xm:sqref>B1</xm:sqref></x14:sparkline></x14:sparklines></x14:sparklineGroup></x14:sparklineGroups></ext>"
                                + "<ext uri=\"{A8765BA9-456A-4dab-B4F3-ACF838C121DE}\"><slicerList/></ext></extLst></worksheet>");
        String[] parts = {
            "xl/threadedComments/threadedComment1.xml",
            "xl/persons/person.xml",
            "xl/slicers/slicer1.xml",
            "xl/pivotTables/pivotTable1.xml",
            "xl/pivotCache/pivotCacheDefinition1.xml",
            "xl/drawings/drawing1.xml",
            "xl/drawings/vmlDrawing1.vml",
            "customXml/item1.xml",
            "xl/vbaProject.bin",
            "xl/media/image1.png",
            "docProps/app.xml",
            "xl/calcChain.xml",
            "xl/richData/rdrichvalue.xml",
            "unknown/part.dat"
        };
        for (String part : parts) {
            builder.part(part, noise);
        }
        Path file = builder.save(folder.resolve("book.xlsm"));
        Path before = Files.copy(file, folder.resolve("before.xlsm"));
        XlsxBook book = XlsxBook.open(file);
        book.write(Map.of(at("A1"), CellValue.of(2)));
        book.save(file);
        Map<String, String> changed = PackageDifference.changedParts(before, file);
        assertThat(changed).containsOnlyKeys(SHEET);
        assertThat(changed.get(SHEET).replace("<v>2</v>", "<v>1</v>"))
                .isEqualTo(PackageDifference.text(before, SHEET));
    }

    @ParameterizedTest
    @ValueSource(strings = {"_xmlsignatures/", "seals/"})
    void signedWorkbookIsReadButNotChanged(String seals) throws IOException {
        String kinds = "http://schemas.openxmlformats.org/package/2006/relationships";
        String relation =
                "<Relationship Id=\"s1\" Type=\""
                        + kinds
                        + "/digital-signature/%s\" Target=\"%s\"/></Relationships>";
        Path file =
                PackageBuilder.withRows("<row r=\"1\"><c r=\"A1\"><v>1</v></c></row>")
                        .swap(
                                "_rels/.rels",
                                "</Relationships>",
                                relation.formatted("origin", seals + "first.sigs"))
                        .part(seals + "first.sigs", "")
                        .part(
                                seals + "_rels/first.sigs.rels",
                                "<Relationships xmlns=\""
                                        + kinds
                                        + "\">"
                                        + relation.formatted("signature", "one.xml"))
                        .part(seals + "one.xml", "<Signature/>")
                        .save(folder.resolve("book.xlsx"));
        XlsxBook book = XlsxBook.open(file);
        book.write(Map.of(at("A1"), CellValue.of(2)));
        assertThatThrownBy(() -> book.save(file))
                .isInstanceOf(BookNotWritableException.class)
                .hasMessageContaining("digitally signed");
    }

    @Test
    void signatureThatOnlyTheContentTypesNameIsSeen() throws IOException {
        Path file =
                PackageBuilder.withRows("<row r=\"1\"><c r=\"A1\"><v>1</v></c></row>")
                        .swap(
                                "[Content_Types].xml",
                                "</Types>",
                                "<Default Extension=\"seal\" ContentType=\"application/"
                                        + "vnd.openxmlformats-package.digital-signature-"
                                        + "xmlsignature+xml\"/></Types>")
                        .part("xl/one.seal", "<Signature/>")
                        .save(folder.resolve("book.xlsx"));
        XlsxBook book = XlsxBook.open(file);
        book.write(Map.of(at("A1"), CellValue.of(2)));
        assertThatThrownBy(() -> book.save(file)).hasMessageContaining("digitally signed");
    }

    @Test
    void fileWithTheSameTimeButOtherContentIsNotOverwritten() throws IOException {
        Path file =
                PackageBuilder.withRows("<row r=\"1\"><c r=\"A1\"><v>1</v></c></row>")
                        .save(folder.resolve("book.xlsx"));
        FileTime time = Files.getLastModifiedTime(file);
        XlsxBook book = XlsxBook.open(file);
        byte[] other = Files.readAllBytes(file);
        other[other.length / 2] ^= 1;
        Files.write(file, other);
        Files.setLastModifiedTime(file, time);
        book.write(Map.of(at("A1"), CellValue.of(2)));
        assertThatThrownBy(() -> book.save(file))
                .isInstanceOf(BookNotWritableException.class)
                .hasMessageContaining("changed it since");
        assertThat(file).hasBinaryContent(other);
        assertThat(folder.toFile().list()).containsExactly("book.xlsx");
    }

    @Test
    void fileOfAnotherBookIsReplacedOnlyWhileItIsWhatItWas() throws IOException {
        String row = "<row r=\"1\"><c r=\"A1\"><v>1</v></c></row>";
        Path earlier = PackageBuilder.withRows(row).save(folder.resolve("earlier.xlsx"));
        Path made = PackageBuilder.withRows(row).save(folder.resolve("made.xlsx"));
        XlsxBook read = XlsxBook.open(earlier);
        Files.write(earlier, "saved meanwhile".getBytes(StandardCharsets.UTF_8));
        XlsxBook book = XlsxBook.open(made);
        book.write(Map.of(at("A1"), CellValue.of(2)));

        assertThatThrownBy(() -> book.saveOver(earlier, read))
                .isInstanceOf(BookNotWritableException.class)
                .hasMessageContaining("changed it since");

        assertThat(earlier).hasContent("saved meanwhile");
        assertThat(folder.resolve("earlier.backup.xlsx")).doesNotExist();
    }

    @Test
    void fileChangedSinceItWasReadIsNotOverwritten() throws IOException {
        Path file =
                PackageBuilder.withRows("<row r=\"1\"><c r=\"A1\"><v>1</v></c></row>")
                        .save(folder.resolve("book.xlsx"));
        XlsxBook book = XlsxBook.open(file);
        Files.setLastModifiedTime(file, FileTime.fromMillis(1_000_000_000_000L));
        book.write(Map.of(at("A1"), CellValue.of(2)));
        assertThatThrownBy(() -> book.save(file))
                .isInstanceOf(BookNotWritableException.class)
                .hasMessageContaining("changed it since");
    }

    @Test
    void numberThatIsNotFiniteIsAProgrammersError() throws IOException {
        XlsxBook book =
                XlsxBook.open(PackageBuilder.withRows("").save(folder.resolve("book.xlsx")));
        assertThatThrownBy(() -> book.write(Map.of(at("A1"), CellValue.of(Double.NaN))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("NaN");
    }

    @Test
    void zipWithDescriptorsCommentAndExtraFieldsKeepsThem() throws IOException {
        byte[] sheet =
                ("<worksheet xmlns=\""
                                + PackageBuilder.MAIN
                                + "\"><sheetData><row r=\"1\"><c r=\"A1\"><v>1</v></c></row></sheetData></worksheet>")
                        .getBytes(StandardCharsets.UTF_8);
        Path plain = PackageBuilder.withSheet("").part(SHEET, sheet).save(folder.resolve("p.zip"));
        Path file = folder.resolve("book.xlsx");
        try (ZipFile zip = ZipFile.builder().setPath(plain).get();
                ZipArchiveOutputStream out =
                        new ZipArchiveOutputStream(Files.newOutputStream(file))) {
            // As streaming writers do: sizes in 64-bit fields, data descriptors after the data.
            out.setUseZip64(Zip64Mode.Always);
            out.setComment("made by hand");
            for (ZipArchiveEntry old : Collections.list(zip.getEntries())) {
                ZipArchiveEntry entry = new ZipArchiveEntry(old.getName());
                entry.setTime(1_600_000_000_000L);
                entry.setComment("c");
                out.putArchiveEntry(entry);
                zip.getInputStream(old).transferTo(out);
                out.closeArchiveEntry();
            }
        }
        Path before = Files.copy(file, folder.resolve("before.xlsx"));
        XlsxBook book = XlsxBook.open(file);
        book.write(Map.of(at("A1"), CellValue.of(2)));
        book.save(file);
        assertThat(PackageDifference.changedParts(before, file)).containsOnlyKeys(SHEET);
        try (java.util.zip.ZipFile zip = new java.util.zip.ZipFile(file.toFile())) {
            assertThat(zip.getComment()).isEqualTo("made by hand");
            assertThat(zip.getEntry(SHEET).getComment()).isEqualTo("c");
        }
    }

    @Test
    void extraFieldsOfEntriesStayAsTheyAre() throws IOException {
        // Owner and group as Info-ZIP writes them, each longer than it would have to be.
        byte[] owner = {'u', 'x', 11, 0, 1, 4, 0, 0, 0, 0, 4, 0, 0, 0, 0};
        Path plain =
                PackageBuilder.withRows("<row r=\"1\"><c r=\"A1\"><v>1</v></c></row>")
                        .save(folder.resolve("p.zip"));
        Path file = folder.resolve("book.xlsx");
        try (java.util.zip.ZipFile zip = new java.util.zip.ZipFile(plain.toFile());
                ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(file))) {
            for (ZipEntry old : Collections.list(zip.entries())) {
                ZipEntry entry = new ZipEntry(old.getName());
                entry.setExtra(owner);
                out.putNextEntry(entry);
                zip.getInputStream(old).transferTo(out);
                out.closeEntry();
            }
        }
        XlsxBook book = XlsxBook.open(file);
        book.write(Map.of(at("A1"), CellValue.of(2)));
        book.save(file);
        try (java.util.zip.ZipFile zip = new java.util.zip.ZipFile(file.toFile())) {
            assertThat(Collections.list(zip.entries()))
                    .allSatisfy(entry -> assertThat(entry.getExtra()).isEqualTo(owner));
        }
    }
}
