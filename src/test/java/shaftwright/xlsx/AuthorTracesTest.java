package shaftwright.xlsx;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.apache.poi.xssf.usermodel.XSSFComment;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Names of authors, written and looked for by Apache POI. */
class AuthorTracesTest {
    private static final String AUTHOR = "Invented Author";

    @TempDir private Path folder;

    @Test
    void takesOutWhoWroteItAndNothingElse() throws IOException {
        Path file = written();
        Map<String, String> before = parts(file);

        XlsxBook book = XlsxBook.open(file);
        assertThat(book.authors()).isEqualTo(5);
        book.saveWithoutAuthors(file);

        Map<String, String> after = parts(file);
        assertThat(after.keySet()).isEqualTo(before.keySet());
        for (Map.Entry<String, String> part : before.entrySet()) {
            String name = part.getKey();
            if (part.getValue().contains(AUTHOR)) {
                assertThat(part.getValue().replace(AUTHOR, "")).isEqualTo(after.get(name));
            } else {
                assertThat(after.get(name)).as(name).isEqualTo(part.getValue());
            }
        }
        try (XSSFWorkbook poi = new XSSFWorkbook(Files.newInputStream(file))) {
            assertThat(poi.getProperties().getCoreProperties().getCreator()).isNullOrEmpty();
            XSSFComment note = poi.getSheetAt(0).getRow(1).getCell(1).getCellComment();
            assertThat(note.getAuthor()).isEmpty();
            assertThat(note.getString().getString()).isEqualTo("measured twice");
        }
    }

    @Test
    void aSecondTimeThereIsNothingToWrite() throws IOException {
        Path file = written();
        XlsxBook.open(file).saveWithoutAuthors(file);
        byte[] once = Files.readAllBytes(file);

        XlsxBook again = XlsxBook.open(file);

        assertThat(again.authors()).isZero();
        assertThat(again.saveWithoutAuthors(file)).isEqualTo(Replaced.NOTHING);
        assertThat(Files.readAllBytes(file)).isEqualTo(once);
    }

    @Test
    void personsOfThreadedCommentsKeepTheirIdOnly() throws IOException {
        Path file =
                PackageBuilder.withRows("<row r=\"1\"><c r=\"A1\"><v>1</v></c></row>")
                        .part(
                                "xl/persons/person.xml",
                                "<personList xmlns=\"http://schemas.microsoft.com/office/spreadsheetml/2018/threadedcomments\">"
                                        + "<person displayName=\"Invented Author\" id=\"{1}\" userId=\"x@y\" providerId=\"AD\"/>"
                                        + "</personList>")
                        .save(folder.resolve("persons.xlsx"));

        XlsxBook.open(file).saveWithoutAuthors(file);

        assertThat(parts(file).get("xl/persons/person.xml"))
                .contains("id=\"{1}\"")
                .doesNotContain("Invented")
                .doesNotContain("x@y");
    }

    @Test
    void theFolderItWasSavedInIsForgotten() throws IOException {
        Path file = folder.resolve("path.xlsx");
        Path plain = written();
        try (FileSystem zip = FileSystems.newFileSystem(plain)) {
            Path part = zip.getPath("xl/workbook.xml");
            String text = Files.readString(part);
            Files.writeString(
                    part,
                    text.replaceFirst(
                            "<sheets>",
                            "<fileSharing readOnlyRecommended=\"1\" userName=\"Invented Author\"/>"
                                    + "<mc:AlternateContent xmlns:mc=\"http://schemas.openxmlformats.org/markup-compatibility/2006\">"
                                    + "<mc:Choice Requires=\"x15\"><x15ac:absPath url=\"/home/Invented Author/\" xmlns:x15ac=\"http://schemas.microsoft.com/office/spreadsheetml/2010/11/ac\"/>"
                                    + "</mc:Choice></mc:AlternateContent><sheets>"));
        }

        XlsxBook.open(plain).saveWithoutAuthors(file);

        assertThat(parts(file).get("xl/workbook.xml"))
                .contains("readOnlyRecommended=\"1\" userName=\"\"", "<x15ac:absPath url=\"\"")
                .doesNotContain(AUTHOR);
        assertThat(XlsxBook.open(file).authors()).isZero();
    }

    private Path written() throws IOException {
        Path file = folder.resolve("authors.xlsx");
        try (XSSFWorkbook workbook = new XSSFWorkbook()) {
            XSSFSheet sheet = workbook.createSheet("Own");
            var cell = sheet.createRow(1).createCell(1);
            cell.setCellValue(25.375);
            var helper = workbook.getCreationHelper();
            XSSFComment note =
                    sheet.createDrawingPatriarch().createCellComment(helper.createClientAnchor());
            note.setString(helper.createRichTextString("measured twice"));
            note.setAuthor(AUTHOR);
            cell.setCellComment(note);
            workbook.getProperties().getCoreProperties().setCreator(AUTHOR);
            workbook.getProperties().getCoreProperties().setLastModifiedByUser(AUTHOR);
            workbook.getProperties().getExtendedProperties().setCompany(AUTHOR);
            workbook.getProperties().getExtendedProperties().setManager(AUTHOR);
            try (var out = Files.newOutputStream(file)) {
                workbook.write(out);
            }
        }
        return file;
    }

    private static Map<String, String> parts(Path file) throws IOException {
        Map<String, String> parts = new TreeMap<>();
        try (ZipFile zip = new ZipFile(file.toFile())) {
            for (ZipEntry entry : Collections.list(zip.entries())) {
                parts.put(
                        entry.getName(),
                        new String(
                                zip.getInputStream(entry).readAllBytes(),
                                StandardCharsets.ISO_8859_1));
            }
        }
        return parts;
    }
}
