package shaftwright.badinput;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.poifs.crypt.EncryptionInfo;
import org.apache.poi.poifs.crypt.EncryptionMode;
import org.apache.poi.poifs.crypt.Encryptor;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.cli.Run;

/** Files that are no .xlsx workbook, given to every command that reads one. */
class FileFormatsTest {
    @TempDir private Path folder;

    private void refused(String name, byte[] bytes, String found) throws IOException {
        Path file = Files.write(folder.resolve(name), bytes);
        for (String command : new String[] {"fill", "check", "show"}) {
            Run run = Run.of(command, file);
            assertThat(run.code()).as(command).isEqualTo(3);
            assertThat(run.out()).isEmpty();
            assertThat(run.err())
                    .startsWith("shaftwright: " + name + ": ")
                    .contains(found, "expected an .xlsx workbook")
                    .hasLineCount(1);
            assertThat(file).hasBinaryContent(bytes);
        }
        assertThat(folder.toFile().list()).containsExactly(name);
    }

    @Test
    void oldXls() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (HSSFWorkbook workbook = new HSSFWorkbook()) {
            workbook.createSheet("Shafts").createRow(0).createCell(0).setCellValue(645);
            workbook.write(out);
        }
        refused("shafts.xls", out.toByteArray(), "old .xls format");
    }

    @Test
    void ods() throws IOException {
        Path ods =
                new FileParts()
                        .put("mimetype", "application/vnd.oasis.opendocument.spreadsheet")
                        .put("content.xml", "<office:document-content/>")
                        .write(folder.resolve("shafts.ods"));
        refused("shafts.ods", Files.readAllBytes(ods), "an OpenDocument file (.ods)");
    }

    @Test
    void csv() throws IOException {
        refused("shafts.csv", text("height;distance\n18 5/16;26 1/4\n"), "a text file (CSV?)");
    }

    @Test
    void textRenamedToXlsx() throws IOException {
        refused("shafts.xlsx", text("shaft length 25 3/8\n"), "a text file");
    }

    @Test
    void emptyFile() throws IOException {
        refused("shafts.xlsx", new byte[0], "an empty file");
    }

    @Test
    void truncatedWorkbook() throws IOException {
        byte[] whole = SmallBook.in(folder).bytes();
        refused(
                "shafts.xlsx",
                Arrays.copyOf(whole, whole.length * 2 / 3),
                "a zip archive whose end is missing");
    }

    @Test
    void encryptedWorkbook() throws Exception {
        byte[] whole = SmallBook.in(folder).bytes();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (POIFSFileSystem container = new POIFSFileSystem()) {
            Encryptor encryptor = new EncryptionInfo(EncryptionMode.agile).getEncryptor();
            encryptor.confirmPassword("secret");
            try (var encrypted = encryptor.getDataStream(container)) {
                encrypted.write(whole);
            }
            container.writeFilesystem(out);
        }
        refused("shafts.xlsx", out.toByteArray(), "encrypted with a password");
    }

    @Test
    void textDocument() throws IOException {
        FileParts parts = FileParts.of(SmallBook.in(folder).file());
        parts.put("xl/workbook.xml", "<w:document xmlns:w=\"urn:w\"/>")
                .write(folder.resolve("shafts.xlsx"));
        refused(
                "shafts.xlsx",
                Files.readAllBytes(folder.resolve("shafts.xlsx")),
                "text document (.docx)");
    }

    private static byte[] text(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
