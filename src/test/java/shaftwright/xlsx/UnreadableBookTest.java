package shaftwright.xlsx;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.zip.GZIPOutputStream;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.poifs.crypt.EncryptionInfo;
import org.apache.poi.poifs.crypt.EncryptionMode;
import org.apache.poi.poifs.crypt.Encryptor;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.book.Area;

/** Each kind of file that is no .xlsx workbook is told by its own words. */
class UnreadableBookTest {
    private static final PackageBuilder SOUND =
            PackageBuilder.withRows("<row r=\"1\"><c r=\"A1\"><v>1</v></c></row>");

    @TempDir Path folder;

    private void refused(byte[] bytes, String... words) throws IOException {
        Path file = Files.write(folder.resolve("forest.xlsx"), bytes);
        assertThatThrownBy(
                        () ->
                                XlsxBook.open(file)
                                        .read(List.of(new Area("Sheet1", 0, 0, 9, 9)))
                                        .filled())
                .isInstanceOf(UnreadableBookException.class)
                .hasMessageStartingWith("forest.xlsx: found ")
                .hasMessageContaining("expected")
                .message()
                .contains(words);
    }

    private static byte[] text(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    @Test
    void missingEmptyAndTextFiles() throws IOException {
        assertThatThrownBy(() -> XlsxBook.open(folder.resolve("none.xlsx")))
                .isInstanceOf(UnreadableBookException.class)
                .hasMessageContaining("none.xlsx: file not found");
        assertThatThrownBy(() -> XlsxBook.open(folder))
                .isInstanceOf(UnreadableBookException.class)
                .hasMessageContaining("a folder");
        refused(new byte[0], "an empty file");
        refused(text("a;b;c\n1;2;3\n"), "a text file (CSV?)");
        refused(text("<?xml version=\"1.0\"?><Workbook/>"), "an XML or HTML file");
        refused(text("<html><table/></html>"), "an XML or HTML file");
        refused(new byte[] {0, 1, 2, 3}, "some other kind");
    }

    @Test
    void oldAndEncryptedWorkbooks() throws Exception {
        ByteArrayOutputStream old = new ByteArrayOutputStream();
        try (HSSFWorkbook workbook = new HSSFWorkbook()) {
            workbook.createSheet("S");
            workbook.write(old);
        }
        refused(old.toByteArray(), "old .xls format");
        refused(new byte[] {9, 8, 16, 0, 0, 6}, "old .xls format");
        try (POIFSFileSystem encrypted = new POIFSFileSystem()) {
            EncryptionInfo info = new EncryptionInfo(EncryptionMode.standard);
            Encryptor encryptor = info.getEncryptor();
            encryptor.confirmPassword("secret");
            try (var out = encryptor.getDataStream(encrypted)) {
                out.write(SOUND.bytes());
            }
            ByteArrayOutputStream file = new ByteArrayOutputStream();
            encrypted.writeFilesystem(file);
            refused(file.toByteArray(), "encrypted with a password");
        }
    }

    @Test
    void otherDocumentsInZipOrGzip() throws IOException {
        refused(
                SOUND.without("_rels/.rels")
                        .part("mimetype", "application/vnd.oasis.opendocument.spreadsheet")
                        .part("content.xml", "<x/>")
                        .bytes(),
                "OpenDocument file (.ods)");
        refused(
                PackageBuilder.withRows("").without("xl/workbook.xml").bytes(),
                "a zip archive without a workbook");
        refused(
                PackageBuilder.withRows("")
                        .part("xl/workbook.xml", "<w:document xmlns:w=\"urn:w\"/>")
                        .bytes(),
                "text document (.docx)");
        refused(
                PackageBuilder.withRows("")
                        .rename("xl/workbook.xml", "xl/workbook.bin")
                        .swap("_rels/.rels", "workbook.xml", "workbook.bin")
                        .bytes(),
                "binary workbook (.xlsb)");
        ByteArrayOutputStream gzip = new ByteArrayOutputStream();
        try (GZIPOutputStream out = new GZIPOutputStream(gzip)) {
            out.write(1);
        }
        refused(gzip.toByteArray(), "a gzip file");
    }

    @Test
    void fileCutOffAnywhereIsRefused() throws IOException {
        byte[] whole = PackageBuilder.withRows("<row r=\"1\"/>").bytes();
        refused(Arrays.copyOf(whole, whole.length - 1), "end is missing");
        for (int length = 4; length < whole.length; length += 97) {
            refused(Arrays.copyOf(whole, length), "found");
        }
    }

    @Test
    void bytesBehindTheArchiveAreToldFromACutOffOne() throws IOException {
        byte[] whole = PackageBuilder.withRows("<row r=\"1\"/>").bytes();
        refused(Arrays.copyOf(whole, whole.length + 1), "1 byte behind the end");
        refused(Arrays.copyOf(whole, whole.length + 200_000), "200000 bytes behind the end");
    }

    @Test
    void damagedByteInASheetIsRefused() throws IOException {
        byte[] bytes =
                PackageBuilder.withRows("<row r=\"1\"><c r=\"A1\"><v>123456789</v></c></row>")
                        .bytes();
        int name = new String(bytes, StandardCharsets.ISO_8859_1).indexOf("sheet1.xmlPK");
        int data = new String(bytes, StandardCharsets.ISO_8859_1).indexOf("sheet1.xml") + 10;
        assertThat(name).isNotEqualTo(data);
        bytes[data + 60] ^= 0x55;
        refused(bytes, "xl/worksheets/sheet1.xml");
    }

    @Test
    void doctypeIsRefusedWhereverItStands() throws IOException {
        String bomb =
                "<!DOCTYPE x [<!ENTITY a \"aaaaaaaaaa\"><!ENTITY b \"&a;&a;&a;\">"
                        + "<!ENTITY c SYSTEM \"file:///etc/passwd\">]>";
        String[] parts = {"xl/workbook.xml", "xl/worksheets/sheet1.xml", "_rels/.rels"};
        for (String part : parts) {
            refused(
                    PackageBuilder.withRows("").swap(part, "?>\n", "?>\n" + bomb).bytes(),
                    "a DOCTYPE in part " + part);
        }
    }

    @Test
    void brokenXmlIsRefused() throws IOException {
        String[] rows = {
            "<row r=\"1\"><c r=\"A1\"></row>",
            "<row r=\"1\"><c r=A1/></row>",
            "<row r=\"1\"><c r=\"A1\"><v>&nbsp;</v></c></row>",
            "<row r=\"1\"><c r=\"A1\"><v>1<b/></v></c></row>",
            "<row r=\"0\"><c><v>1</v></c></row>",
            "<row r=\"1\"><c r=\"1A\"><v>1</v></c></row>",
            "<row r=\"1\"><c r=\"A1\" t=\"zz\"><v>1</v></c></row>",
            "<row r=\"1\"><c r=\"A1\"><v>1</v></c>",
            "</sheetData><pageMargins>",
        };
        for (String row : rows) {
            refused(PackageBuilder.withRows(row).bytes(), "xl/worksheets/sheet1.xml");
        }
    }

    @Test
    void decompressionBombIsRefused() throws IOException {
        byte[] zeros = new byte[40 << 20];
        refused(
                PackageBuilder.withRows("").part("xl/worksheets/sheet1.xml", zeros).bytes(),
                "xl/worksheets/sheet1.xml inflating to 40 MB");
    }

    @Test
    void sizeThatLiesIsRefused() throws IOException {
        byte[] bytes = PackageBuilder.withRows("<row r=\"1\"/>").bytes();
        String text = new String(bytes, StandardCharsets.ISO_8859_1);
        int central = text.lastIndexOf("xl/worksheets/sheet1.xml") - 46;
        bytes[central + 24]--;
        refused(bytes, "xl/worksheets/sheet1.xml with a wrong checksum");
    }

    @Test
    void duplicateEntriesAndPathTricksAreRefused() throws IOException {
        refused(
                PackageBuilder.withRows("").part("XL/Workbook.xml", "<x/>").bytes(),
                "part XL/Workbook.xml twice");
        refused(PackageBuilder.withRows("").part("xl/../../x", "").bytes(), "xl/../../x");
        refused(PackageBuilder.withRows("").part("/etc/x", "").bytes(), "/etc/x");
        refused(PackageBuilder.withRows("").part("C:\\x", "").bytes(), "C:/x");
        byte[] bytes = PackageBuilder.withRows("").part("xl/abc.bin", "abc").bytes();
        int local = new String(bytes, StandardCharsets.ISO_8859_1).indexOf("xl/abc.bin");
        bytes[local + 3] = 'z';
        refused(bytes, "xl/abc.bin under two names");
    }

    @Test
    void entriesThatOverlapAreRefused() throws IOException {
        byte[] bytes =
                PackageBuilder.withRows("").part("xl/a.bin", "abc").part("xl/b.bin", "abc").bytes();
        String text = new String(bytes, StandardCharsets.ISO_8859_1);
        int first = text.indexOf("xl/a.bin") - 30;
        int central = text.lastIndexOf("xl/b.bin") - 46;
        for (int i = 0; i < 4; i++) {
            bytes[central + 42 + i] = (byte) (first >> (8 * i));
        }
        refused(bytes, "damaged");
    }
}
