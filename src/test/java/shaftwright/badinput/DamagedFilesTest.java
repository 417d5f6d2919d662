package shaftwright.badinput;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import shaftwright.cli.Run;

/**
 * Workbooks whose package is damaged where no input is read: refused by part, and neither they nor
 * the good backup beside them are touched.
 */
class DamagedFilesTest {
    private static final String TYPES = "[Content_Types].xml";
    private static final String STYLES = "xl/styles.xml";
    private static final String SHEET = "xl/worksheets/sheet1.xml";

    @TempDir private Path folder;

    private static FileParts parts() throws IOException {
        Path folder = Files.createTempDirectory("parts");
        Path file = SmallBook.in(folder).file();
        FileParts parts = FileParts.of(file);
        Files.delete(file);
        Files.delete(folder);
        return parts;
    }

    private void refused(FileParts parts, String... found) throws IOException {
        refused(Files.readAllBytes(parts.write(folder.resolve("shafts.xlsx"))), found);
    }

    private void refused(byte[] bytes, String... found) throws IOException {
        Path file = Files.write(folder.resolve("shafts.xlsx"), bytes);
        Path backup = Files.writeString(folder.resolve("shafts.backup.xlsx"), "good");
        Object[][] lines = {
            {"fill", "--set", "hub_shift[A]=1/2", file},
            {"fill", file},
            {"check", file},
            {"show", file},
            {"pack", file},
        };
        for (Object[] line : lines) {
            Run run = Run.of(line);
            assertThat(run.code()).as(line[0] + run.out() + run.err()).isEqualTo(3);
            assertThat(run.err()).startsWith("shaftwright: shafts.xlsx: found ").contains(found);
            assertThat(file).hasBinaryContent(bytes);
            assertThat(backup).hasContent("good");
        }
        assertThat(folder.toFile().list())
                .containsExactlyInAnyOrder("shafts.xlsx", "shafts.backup.xlsx");
    }

    @ParameterizedTest
    @ValueSource(strings = {STYLES, "docProps/core.xml", "xl/charts/chart1.xml", "xl/drawings/"})
    void partWithAWrongChecksum(String part) throws IOException {
        byte[] bytes = SmallBook.in(folder).bytes();
        String text = new String(bytes, StandardCharsets.ISO_8859_1);
        // Of the directory's last header for such a part, the checksum's first byte.
        int header = text.lastIndexOf("PK\1\2", text.lastIndexOf(part));
        bytes[header + 16] ^= 1;
        refused(bytes, "part " + part, "with a wrong checksum");
    }

    @Test
    void partWithADamagedByte() throws IOException {
        byte[] bytes = SmallBook.in(folder).bytes();
        String text = new String(bytes, StandardCharsets.ISO_8859_1);
        int data = text.indexOf(STYLES) + STYLES.length();
        bytes[data + 300] ^= 0x55;
        refused(bytes, "part " + STYLES);
    }

    @ParameterizedTest
    @ValueSource(strings = {SHEET, "xl/worksheets/sheet5.xml", STYLES, "xl/sharedStrings.xml"})
    void partCutOffByTwoHundredBytes(String part) throws IOException {
        FileParts parts = parts();
        byte[] whole = parts.parts().get(part);
        refused(parts.put(part, Arrays.copyOf(whole, whole.length - 200)), part);
    }

    @Test
    void sheetOfTheBuildersOwnWithoutItsEndTag() throws IOException {
        FileParts parts = parts();
        String sheets = "application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml";
        parts.replace(
                        "xl/workbook.xml",
                        "</sheets>",
                        "<sheet name=\"Mine\" sheetId=\"999\" r:id=\"mine\"/></sheets>")
                .replace(
                        "xl/_rels/workbook.xml.rels",
                        "</Relationships>",
                        "<Relationship Id=\"mine\" Type=\"http://schemas.openxmlformats.org/"
                                + "officeDocument/2006/relationships/worksheet\""
                                + " Target=\"worksheets/mine.xml\"/></Relationships>")
                .replace(
                        TYPES,
                        "</Types>",
                        "<Override PartName=\"/xl/worksheets/mine.xml\" ContentType=\""
                                + sheets
                                + "\"/></Types>")
                .put(
                        "xl/worksheets/mine.xml",
                        "<worksheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\">"
                                + "<sheetData/>");
        refused(parts, "part xl/worksheets/mine.xml cut off, its last tag </worksheet> missing");
    }

    @Test
    void noListOfContentTypes() throws IOException {
        refused(without(TYPES), "no part [Content_Types].xml");
    }

    @ParameterizedTest
    @ValueSource(strings = {SHEET, STYLES, "xl/workbook.xml", "xl/sharedStrings.xml"})
    void partMissingFromTheListOfContentTypes(String part) throws IOException {
        FileParts parts = parts();
        String listed = parts.text(TYPES);
        String without = listed.replaceAll("<Override [^>]*\"/" + part + "\"[^>]*/>", "");
        assertThat(without).isNotEqualTo(listed);
        refused(parts.put(TYPES, without), "part " + part + " missing from the list " + TYPES);
    }

    @Test
    void noStyles() throws IOException {
        refused(without(STYLES), "no part " + STYLES);
    }

    @Test
    void noStylesAndNoMentionOfThem() throws IOException {
        FileParts parts = without(STYLES);
        String links = "xl/_rels/workbook.xml.rels";
        String without = parts.text(links).replaceAll("<Relationship [^>]*styles[^>]*/>", "");
        refused(parts.put(links, without), "no styles part, though cells of part xl/worksheets/");
    }

    private static FileParts without(String part) throws IOException {
        FileParts parts = parts();
        parts.parts().remove(part);
        return parts;
    }
}
